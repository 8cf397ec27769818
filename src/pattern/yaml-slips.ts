import { isCollection, isScalar, visit, type Document } from 'yaml'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Span } from '../text/span.ts'
import { rowsSlip, type RowsSlip } from './rows-slips.ts'
import { quoted } from './shown.ts'
import { endOfValue, lineAfter, lineAt, type YamlLine } from './yaml-lines.ts'
import { signTrouble, type SignTrouble } from './yaml-signs.ts'

/** The sign that stands for a value that could not be read. It is of the private use area, so that no file has it for itself. */
export const unread = '\uE000'

/** A slip of YAML: what to say, and what to take out so that the rest can be read. Spans are offsets in the front-matter. */
export interface Slip {
  readonly code: Diagnostic['code']
  readonly trouble: SignTrouble
  readonly mask: Span
  /** `value`: the sign for an unread value stands there; `space-value`: a space and then the sign; `blank`: nothing does. */
  readonly leaves: 'value' | 'space-value' | 'blank'
  /** A key may have been lost with what was taken out, so that nothing can be called missing. */
  readonly losesKeys: boolean
  readonly rows?: RowsSlip
}

/** Where YAML stumbled first: its code and offset. */
export interface YamlStop {
  readonly code: string
  readonly at: number
}

/**
 * The slip behind the first place where YAML stumbles. One slip often makes many stumbles further down (an open bracket swallows
 * the lines after it), so only the first is looked at; the rest is looked at again once the slip is out of the way.
 */
export function slipBehind(text: string, document: Document.Parsed, stop: YamlStop): Slip {
  if (stop.code === 'MULTIPLE_DOCS') return endedEarly(text, stop)
  const line = lineAt(text, startOfBroken(document, stop.at) ?? stop.at)
  const rows = rowsSlip(text, line)
  if (rows) return { code: 'rows-not-in-block', trouble: rows.trouble, mask: rows.mask, leaves: rows.leaves, losesKeys: false, rows }
  const value = { start: line.valueSpan.start, end: endOfValue(text, line) }
  const isValue = (line.key !== undefined || line.dashes) && line.value !== '' && line.value !== unread
  return (isValue ? valueSlip(text, line, value, stop) : undefined) ?? lineSlip(text, line, stop)
}

/** Lines indented with tabs: one slip, however many lines. */
export function tabSlip(text: string, tabs: readonly number[]): SignTrouble {
  const lines = new Set(tabs.map((at) => lineAt(text, at).start))
  const start = Math.min(...tabs)
  return {
    message: lines.size === 1 ? 'a line of the front-matter is indented with a tab' : `${lines.size} lines of the front-matter are indented with tabs`,
    span: { start, end: start + 1 },
    label: 'a tab',
    note: 'in YAML, lines are indented with spaces',
  }
}

function valueSlip(text: string, line: YamlLine, value: Span, stop: YamlStop): Slip | undefined {
  const broken = { code: 'front-matter-broken', mask: value, leaves: 'value', losesKeys: false } as const
  const key = line.key === undefined ? {} : { key: line.key }
  const trouble = signTrouble({ text, value, at: Math.min(Math.max(stop.at, value.start), value.end), ...key })
  if (trouble) return { ...broken, trouble }
  const next = lineAfter(text, line)
  if (line.key !== undefined && next?.key !== undefined && next.start < value.end) {
    // The line below stands further in, as if it belonged to a value that is complete already.
    const mask = { start: line.valueSpan.end, end: value.end }
    const span = { start: next.keySpan?.start ?? next.start, end: next.valueSpan.end }
    const message = `\`${next.key}\` stands further in than \`${line.key}\`, which has a value of its own`
    return { ...broken, mask, leaves: 'blank', losesKeys: true, trouble: { message, span, label: `further in than \`${line.key}\`` } }
  }
  if (stop.code === 'BAD_INDENT' || stop.code === 'KEY_OVER_1024_CHARS') return undefined
  const message = line.key === undefined ? `${quoted(line.value)} does not read as an entry of a list` : `the value of \`${line.key}\` does not read as YAML`
  return { ...broken, trouble: { message, span: line.valueSpan, label: 'from here on' } }
}

/** A line that is no `key: value` where it stands. */
function lineSlip(text: string, line: YamlLine, stop: YamlStop): Slip {
  const start = line.keySpan?.start ?? line.valueSpan.start
  const span = { start, end: Math.max(line.valueSpan.end, line.keySpan?.end ?? start) }
  const written = text.slice(span.start, span.end)
  const broken = { code: 'front-matter-broken', mask: { start: line.start, end: endOfValue(text, line) }, leaves: 'blank', losesKeys: true } as const
  const close = /^([A-Za-z][\w-]*):(?=[^\s]{2})/.exec(written)
  if (close && line.key === undefined) {
    const mask = { start: start + close[0].length, end: span.end }
    const message = `\`${close[1]}\` has no space after its colon`
    return { ...broken, mask, leaves: 'space-value', losesKeys: false, trouble: { message, span, label: 'no space after the colon', note: `the space is part of the sign: \`${close[1]}: …\`` } }
  }
  if (line.key !== undefined || line.dashes) {
    const message = `${line.key === undefined ? 'this entry' : `\`${line.key}\``} stands further in or further out than the lines that it belongs with`
    return { ...broken, trouble: { message, span: nonEmpty(span, line), label: `${line.indent} spaces in`, note: 'lines that belong together begin in one column' } }
  }
  const message = stop.code === 'RESOURCE_EXHAUSTION' ? 'the front-matter is nested too deep to be read' : `${quoted(written)} has no key before it`
  const note = 'a line is a key, a colon, a space and a value; a value that goes on over lines is indented further than its key'
  return { ...broken, trouble: { message, span: nonEmpty(span, line), label: 'no `key: value`', note } }
}

/** A line of `...`, or one that begins with `---`: YAML holds the document to be over there. */
function endedEarly(text: string, stop: YamlStop): Slip {
  const ends = [...text.matchAll(/^(?:---|\.\.\.).*$/gm)].filter(({ index }) => index <= stop.at)
  const span = { start: ends.at(-1)?.index ?? 0, end: (ends.at(-1)?.index ?? 0) + (ends.at(-1)?.[0].trimEnd().length ?? 0) }
  const message = `${quoted(text.slice(span.start, span.end))} ends the front-matter in its midst`
  const note = 'a line that begins with three dashes or full stops ends what is before it'
  return { code: 'front-matter-broken', trouble: { message, span, label: 'ends it here', note }, mask: span, leaves: 'blank', losesKeys: false }
}

function nonEmpty(span: Span, line: YamlLine): Span {
  return span.end > span.start ? span : { start: line.start, end: line.end }
}

/**
 * The start of the bracketed or quoted value in which an offset lies: an open bracket or quote shows only further down,
 * where it has swallowed what follows.
 */
function startOfBroken(document: Document.Parsed, at: number): number | undefined {
  let start: number | undefined
  visit(document, {
    Node(_, node) {
      const range = node.range
      if (!range || range[0] > at) return visit.SKIP
      const holds = isCollection(node) ? node.flow === true : isScalar(node) && (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE')
      if (!holds || range[2] < at) return undefined
      start = range[0]
      return visit.BREAK
    },
  })
  return start
}

/** The text with a slip taken out, every other offset where it was. */
export function withoutSlip(text: string, { mask, leaves }: Slip): string {
  const written = text.slice(mask.start, mask.end)
  const hidden = written.replace(/[^\r\n]/g, ' ')
  const at = leaves === 'blank' ? -1 : written.search(/\S/)
  const sign = leaves === 'space-value' ? ` ${unread}` : unread
  return text.slice(0, mask.start) + (at === -1 ? hidden : hidden.slice(0, at) + sign + hidden.slice(at + sign.length)) + text.slice(mask.end)
}

/** The text with tabs at the start of lines, and at the given offsets, made into one space each. */
export function withoutTabs(text: string, tabs: readonly number[]): string {
  const at = new Set(tabs)
  return text.replace(/^[ \t]*\t[ \t]*/gm, (spaces) => ' '.repeat(spaces.length))
    .replace(/\t/g, (tab, offset: number) => (at.has(offset) ? ' ' : tab))
}

