import type { Span } from '../text/span.ts'

/** The two halves of a pattern file. */
export interface FrontMatter {
  /** The opening `---`. */
  readonly opening: Span
  /** What stands between the two lines of `---`. */
  readonly yaml: Span
  /** Where the Markdown begins. */
  readonly body: number
  /** False when the second `---` is missing; the front-matter then ends where it no longer looks like one. */
  readonly closed: boolean
}

// A byte order mark and empty lines may stand before it.
const openingLine = /^\uFEFF?(?:[ \t]*\r?\n)*---[ \t]*(?:\r?\n|$)/
const closingLine = /---[ \t]*(?:\r?\n|$)/y

/** Finds the front-matter, which must be the first thing in the file. */
export function findFrontMatter(text: string): FrontMatter | undefined {
  const found = openingLine.exec(text)
  if (!found) return undefined
  const at = found[0].indexOf('---')
  const opening = { start: at, end: at + 3 }
  const start = found[0].length
  for (let line = start; line < text.length; line = nextLine(text, line)) {
    closingLine.lastIndex = line
    const closing = closingLine.exec(text)
    if (closing) return { opening, yaml: { start, end: line }, body: line + closing[0].length, closed: true }
  }
  const end = whereItCouldEnd(text, start)
  return { opening, yaml: { start, end }, body: end, closed: false }
}

/** The first line that is neither a key, nor an entry of a list, nor further in, nor empty, nor a comment: prose, most likely. */
function whereItCouldEnd(text: string, start: number): number {
  for (let line = start; line < text.length; line = nextLine(text, line)) {
    const head = text.slice(line, line + 80)
    if (/^#{2,} \S/.test(head) || !/^(?:[\s#]|- |[\w-]+:|$)/.test(head)) return line
  }
  return text.length
}

function nextLine(text: string, line: number): number {
  const end = text.indexOf('\n', line)
  return end === -1 ? text.length : end + 1
}
