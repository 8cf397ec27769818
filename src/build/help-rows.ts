import type { Element, ElementContent } from 'hast'

interface Mark {
  readonly start: number
  readonly end: number
  readonly code: string
}

/**
 * Rows of a help page, one paragraph each. A line of carets under a row marks a stretch of it and names the code; on the page the
 * stretch is underlined and the code stands under the row, so that rows may run over on a phone.
 *
 *   2: ch 1, turn, sc in next 18 sts, hdc2tog. (20 sts)
 *                                              ^^^^^^^^ total-mismatch
 */
export function rowsElement(text: string): Element {
  const rows: { readonly text: string; readonly marks: Mark[] }[] = []
  for (const line of text.split('\n')) {
    const above = rows.at(-1)
    if (/^ *\^/.test(line) && above) above.marks.push(...marksIn(line))
    else rows.push({ text: line, marks: [] })
  }
  return element('div', ['rows-shown'], rows.flatMap(({ text, marks }) => shownRow(text, marks)))
}

function marksIn(line: string): readonly Mark[] {
  return [...line.matchAll(/(\^+) +([a-z][a-z-]*(?: \([^)]*\))?)/g)].map(({ index, 1: carets = '', 2: code = '' }) => ({
    start: index,
    end: index + carets.length,
    code,
  }))
}

function shownRow(row: string, marks: readonly Mark[]): readonly Element[] {
  const children: ElementContent[] = []
  let at = 0
  for (const { start, end } of [...marks].sort((a, b) => a.start - b.start)) {
    children.push(words(row.slice(at, start)), element('mark', [], [words(row.slice(start, end))]))
    at = end
  }
  children.push(words(row.slice(at)))
  return [
    element('p', marks.length > 0 ? ['wrong'] : [], children),
    ...marks.map(({ code }) => element('p', ['verdict'], [words(code)])),
  ]
}

function words(value: string): ElementContent {
  return { type: 'text', value }
}

function element(tagName: string, className: string[], children: readonly ElementContent[]): Element {
  return { type: 'element', tagName, properties: className.length > 0 ? { className } : {}, children: [...children] }
}
