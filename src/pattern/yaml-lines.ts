import type { Span } from '../text/span.ts'

/** One line of front-matter, cut as a person sees it: `    - name: Front` has a dash, the key `name` and the value `Front`. */
export interface YamlLine {
  /** Offset of the line's first column, and of its end without the line break. */
  readonly start: number
  readonly end: number
  /** Column (0-based) in which the key begins, or the value when there is no key. */
  readonly indent: number
  readonly dashes: boolean
  readonly key?: string
  readonly keySpan?: Span
  readonly value: string
  readonly valueSpan: Span
}

/** The line that holds an offset; when nothing stands on it, the last line before it that has words. */
export function lineAt(text: string, offset: number): YamlLine {
  let at = Math.min(offset, text.length)
  for (;;) {
    const start = startOfLine(text, at)
    const line = cutLine(text, start)
    if (line.dashes || line.key !== undefined || line.value !== '' || start === 0) return line
    at = start - 1
  }
}

/** The line after one, or undefined at the end. */
export function lineAfter(text: string, line: YamlLine): YamlLine | undefined {
  const end = text.indexOf('\n', line.start)
  return end === -1 || end + 1 >= text.length ? undefined : cutLine(text, end + 1)
}

/** The line before one, or undefined at the start. */
export function lineBefore(text: string, line: YamlLine): YamlLine | undefined {
  return line.start === 0 ? undefined : cutLine(text, startOfLine(text, line.start - 1))
}

/** Whether nothing stands on a line. */
export function isBlank(line: YamlLine): boolean {
  return !line.dashes && line.key === undefined && line.value === ''
}

/** Where the lines end that belong to a line's value: those that stand further in than its key. */
export function endOfValue(text: string, line: YamlLine): number {
  let end = line.valueSpan.end
  for (let next = lineAfter(text, line); next; next = lineAfter(text, next)) {
    if (isBlank(next)) continue
    const outside = next.dashes ? dashColumn(text, next) : next.indent
    const inside = line.dashes && line.key === undefined ? dashColumn(text, line) : line.indent
    if (outside <= inside) break
    end = Math.max(end, next.valueSpan.end)
  }
  return end
}

/** Whether a key is the label of a row: `Row 2 (RS)`, `Rnds 4-8`, `Foundation`. */
export function isRowLabel(key: string): boolean {
  return /^(?:(?:rows?|rnds?|rounds?|rds?|r)\.? *\d|\d+(?:st|nd|rd|th) (?:row|rnd|round)|(?:foundation|set-?up|next|last)\b|\d+$|Note$)/i.test(key)
    && key !== 'note'
}

function dashColumn(text: string, line: YamlLine): number {
  let column = 0
  while (text[line.start + column] === ' ') column += 1
  return column
}

function startOfLine(text: string, offset: number): number {
  // At the very start there is nothing to look back at, and lastIndexOf would take -1 for 0.
  return offset <= 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1
}

function cutLine(text: string, start: number): YamlLine {
  const newline = text.indexOf('\n', start)
  let end = newline === -1 ? text.length : newline
  if (text[end - 1] === '\r' && end > start) end -= 1
  let at = afterSpaces(text, start, end)
  let dashes = false
  while (text[at] === '-' && (text[at + 1] === ' ' || at + 1 === end)) {
    dashes = true
    at = afterSpaces(text, Math.min(at + 1, end), end)
  }
  const colon = colonAfterKey(text, at, end)
  const indent = at - start
  if (colon === undefined) return { start, end, indent, dashes, ...valueFrom(text, at, end) }
  const keyEnd = at + text.slice(at, colon).trimEnd().length
  const key = text.slice(at, keyEnd)
  const value = valueFrom(text, afterSpaces(text, colon + 1, end), end)
  return { start, end, indent, dashes, key, keySpan: { start: at, end: keyEnd }, ...value }
}

/** The colon that ends a key: a key begins with a letter or figure, and its colon has a space or nothing after it. */
function colonAfterKey(text: string, at: number, end: number): number | undefined {
  const line = text.slice(at, end)
  if (!/^[\p{L}\p{N}_]/u.test(line)) return undefined
  const colon = line.search(/:(?:[ \t]|$)/)
  return colon === -1 || /["'[\]{}]/.test(line.slice(0, colon)) ? undefined : at + colon
}

function valueFrom(text: string, at: number, end: number): { readonly value: string; readonly valueSpan: Span } {
  const value = text.slice(at, end).trimEnd()
  return { value, valueSpan: { start: at, end: at + value.length } }
}

function afterSpaces(text: string, at: number, end: number): number {
  let next = at
  while (next < end && (text[next] === ' ' || text[next] === '\t')) next += 1
  return next
}
