import type { Span } from '../text/span.ts'
import { quoted } from './shown.ts'
import { endOfValue, isBlank, isRowLabel, lineAfter, lineBefore, type YamlLine } from './yaml-lines.ts'
import type { SignTrouble } from './yaml-signs.ts'

/** Says what rows must stand in. */
export const blockNote = 'rows stand in a block: `rows: |`, and each row on a line of its own below it, indented further than `rows`'

/** Rows that YAML stumbled over because they do not stand in their block. */
export interface RowsSlip {
  readonly trouble: SignTrouble
  readonly mask: Span
  readonly leaves: 'value' | 'blank'
  /** Rows that can still be read from the file: all of them for a key, or those that stand outside their block. */
  readonly found?: { readonly kind: 'all'; readonly key: number; readonly span: Span } | { readonly kind: 'stray'; readonly span: Span }
}

/** The slip, when the line where YAML stumbled is a row, or the `rows` that should have begun a block. */
export function rowsSlip(text: string, line: YamlLine): RowsSlip | undefined {
  const owner = line.key === 'rows' ? line : ownerOf(text, line)
  if (!owner?.keySpan || isOfGauge(text, owner)) return undefined
  if (/^\|[-+0-9]*\s*(?:#.*)?$/.test(owner.value)) return owner === line ? undefined : strayRows(text, line)
  const mask = { start: owner.value === '' ? owner.end : owner.valueSpan.start, end: endOfValue(text, owner) }
  if (text.slice(mask.start, mask.end).trim() === '') return undefined
  const first = lineAfter(text, owner)
  const found = owner.value === '' && first ? { kind: 'all', key: owner.keySpan.start, span: { start: first.start, end: mask.end } } as const : undefined
  const onLine = /^[|>]/.test(owner.value)
  return {
    trouble: {
      message: onLine ? `the first row stands on the line of its \`${owner.value[0]}\`` : '`rows` does not begin a `|` block',
      span: owner.value === '' ? owner.keySpan : owner.valueSpan,
      label: onLine ? 'a block begins on the next line' : 'no `|` block',
      note: blockNote,
    },
    mask,
    leaves: 'value',
    ...(found ? { found } : {}),
  }
}

/** The `rows` key that a row was written under: the first line above it that is no row. */
function ownerOf(text: string, line: YamlLine): YamlLine | undefined {
  if (line.dashes || (line.key !== undefined && !isRowLabel(line.key))) return undefined
  for (let above = lineBefore(text, line); above; above = lineBefore(text, above)) {
    if (above.key === 'rows') return above
    if (above.dashes || (above.key !== undefined && !isRowLabel(above.key))) return undefined
  }
  return undefined
}

/** A gauge has `rows` of its own: a number. */
function isOfGauge(text: string, line: YamlLine): boolean {
  let above = lineBefore(text, line)
  while (above && (isBlank(above) || above.indent >= line.indent)) above = lineBefore(text, above)
  return above?.key === 'gauge'
}

/** Rows below a `|` block that stand less far in than its first row, so that the block ends before them. */
function strayRows(text: string, line: YamlLine): RowsSlip {
  let end = line.valueSpan.end
  for (let next = lineAfter(text, line); next; next = lineAfter(text, next)) {
    if (isBlank(next)) continue
    if (next.dashes || (next.key !== undefined && !isRowLabel(next.key))) break
    end = next.valueSpan.end
  }
  const start = line.keySpan?.start ?? line.valueSpan.start
  return {
    trouble: strayTrouble(line.key ?? line.value, { start, end: line.valueSpan.end }),
    mask: { start: line.start, end },
    leaves: 'blank',
    found: { kind: 'stray', span: { start: line.start, end } },
  }
}

/** What is said of a row that stands outside its block. */
export function strayTrouble(label: string, span: Span): SignTrouble {
  return {
    message: `${quoted(label)} stands outside the \`|\` block of its piece`,
    span,
    label: 'outside the block',
    note: 'a block ends at the first line that stands less far in than its first row',
  }
}
