import { plural, signed } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { wordFor, type Terms } from '../stitches/terms.ts'
import { textOf, type Source } from '../text/source.ts'
import type { RowLine, Run } from './booklet.ts'
import { figure, nbsp, perSize } from './figures.ts'
import type { GatheredLine } from './gather-lines.ts'
import { outerRepeats, rowRuns } from './row-text.ts'
import { typeset } from './typeset.ts'

/** What a line needs to know of the part that it stands in. */
export interface RowSetting {
  readonly source: Source
  readonly terms: Terms
  /** Names of the sizes; empty for one size. */
  readonly sizes: readonly string[]
  readonly id: string
  /** How far through the piece the line ends, 0 to 1. */
  readonly progress: number
}

/** A line of the row table: everything reckoned stands beside the designer's words, never in them. */
export function rowLine(line: GatheredLine, setting: RowSetting): RowLine {
  const { source, terms } = setting
  const all = line.rows.flat()
  const text = line.written.text
  const untold = all.some((row) => row.verdict === 'cannot-tell')
  const repeats = outerRepeats(source, text, all)
  const runs = rowRuns(source, text, repeats.map(({ span }) => span))
  const side = all[0]?.side
  return {
    kind: 'row',
    id: setting.id,
    label: label(line, source),
    boxes: boxes(line, setting),
    ...(side !== undefined && all.every((row) => row.side === side) ? { side } : {}),
    text: untold ? withTotal(runs, all, source) : runs,
    repeats: repeatsText(line, source),
    change: untold ? '' : changeText(line),
    stitches: line.rows.map((rows) => stitchesText(rows.at(-1))),
    spaces: untold ? '' : madeOf(line, terms),
    progress: setting.progress,
  }
}

function stitchesText(row: WorkedRow | undefined): string {
  if (row === undefined) return '–'
  return row.verdict === 'cannot-tell' ? '?' : figure(row.makes)
}

/** A count that could not be reckoned stays in the designer's words: a buyer needs it, and the Stitches column does not vouch for it. */
function withTotal(runs: readonly Run[], rows: readonly WorkedRow[], source: Source): readonly Run[] {
  const said = rows.find((row) => row.says !== undefined)?.says
  return said === undefined ? runs : [...runs, { text: ` ${typeset(textOf(source, said.span).replace(/\s+/g, ' '))}`, repeat: false }]
}

/** `3`, `9–10`, for sizes that differ `9–12 (13, 14)`, for a row without a number its first word: `Next`. */
function label(line: GatheredLine, source: Source): string {
  const ranges = line.rows.filter((rows) => rows.length > 0).map((rows) => ({ first: rows[0]?.number, last: rows.at(-1)?.number }))
  if (line.written.first === undefined && line.written.last === undefined) return named(textOf(source, line.written.label))
  const firsts = ranges.map(({ first }) => first)
  const shown = ranges.map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`))
  const sameStart = firsts.every((first) => first === firsts[0]) && ranges.every(({ first, last }) => first !== last)
  return sameStart ? `${firsts[0]}–${perSize(ranges.map(({ last }) => `${last}`))}` : perSize(shown)
}

/** What a row without a number is called: `Next row (RS):` is `Next`, `Foundation:` is `Start`. */
function named(text: string): string {
  const word = text.replace(/[:.]\s*$/, '').replace(/\s*\(.*\)\s*$/, '').replace(/\s+\d*\s*(?:rows?|rnds?|rounds?)$/i, '').trim()
  return /^foundation/i.test(word) ? 'Start' : word
}

/** A box for each real row. A row that only some sizes work has their names beside its number. */
function boxes(line: GatheredLine, { sizes }: RowSetting): readonly string[] {
  const most = Math.max(...line.rows.map((rows) => rows.length))
  const longest = line.rows.find((rows) => rows.length === most) ?? []
  return longest.map((row, index) => {
    const without = line.rows.some((rows) => rows.length > 0 && rows.length <= index)
    const working = sizes.filter((_, size) => (line.rows[size]?.length ?? 0) > index)
    const number = `${row.number ?? index + 1}`
    return without ? `${number}${nbsp}${working.join(`,${nbsp}`)}` : number
  })
}

function repeatsText(line: GatheredLine, source: Source): string {
  const bySize = line.rows.filter((rows) => rows.length > 0).map((rows) => outerRepeats(source, line.written.text, rows))
  const most = Math.max(0, ...bySize.map((repeats) => repeats.length))
  const texts = Array.from({ length: most }, (_, index) =>
    `${perSize(bySize.map((repeats) => spread(repeats[index]?.times ?? [0])))}${nbsp}×`)
  if (texts.length > 0) return texts.join(', ')
  const cycles = line.rows.filter((rows) => rows.length > 0).map((rows) => cyclesIn(textOf(source, line.written.text), rows.length))
  return cycles.some((times) => times < 2) || cycles.length === 0 ? '' : `${perSize(cycles.map(figure))}${nbsp}×`
}

/** The times of a repeat in the rows of a range: `6`, or `6–9` where the rows differ. */
function spread(times: readonly number[]): string {
  const [least, most] = [Math.min(...times), Math.max(...times)]
  return least === most ? figure(least) : `${figure(least)}–${figure(most)}`
}

/** `Rep Rows 3 and 4` over eight rows goes through the two rows 4 times. 0 where the text copies no cycle or cuts one. */
function cyclesIn(text: string, rows: number): number {
  const [, first, last] = /^\s*rep(?:eat)?\s+(?:rows|rnds|rounds)\s+(\d+)\s*(?:-|–|to|and)\s*(\d+)/i.exec(text) ?? []
  const length = Number(last) - Number(first) + 1
  return length > 1 && rows % length === 0 ? rows / length : 0
}

/** The stitches against those of the line before: `+6`, `−6`, `+6 (8)`; nothing when nothing changes or the line begins the piece. */
function changeText(line: GatheredLine): string {
  const changes = line.rows.map((rows, size) => {
    const before = line.before[size]
    const last = rows.at(-1)
    if (last === undefined) return undefined
    return before === undefined || before.verdict === 'cannot-tell' || before.makes === 0 ? 0 : last.makes - before.makes
  })
  const first = changes.find((change) => change !== undefined && change !== 0)
  if (first === undefined) return ''
  return perSize(changes.map((change, size) => {
    if (change === undefined) return '–'
    return size > 0 && change * first > 0 && changes[0] !== undefined ? figure(Math.abs(change)) : signed(change)
  }))
}

/** What the count is made of: chain spaces always, stitches by kind where the designer counts more than one kind: `28 dc, 4 ch-2 sps`. */
function madeOf(line: GatheredLine, terms: Terms): string {
  const last = line.rows.map((rows) => rows.at(-1)).filter((row) => row !== undefined)
  const kinds = new Set(last.flatMap((row) => Object.keys(row.says?.kinds ?? {})))
  const spaces = new Set(last.flatMap((row) => Object.keys(row.spaces)))
  return [
    ...(kinds.size < 2 ? [] : [...kinds].map((kind) => ofKind(last.map((row) => row.says?.kinds[kind] ?? 0), wordFor(kind, terms)))),
    ...[...spaces].map((space) => ofKind(last.map((row) => row.spaces[space] ?? 0), `${space} sp`)),
  ].filter((text) => text !== '').join(', ')
}

function ofKind(counts: readonly number[], word: string): string {
  const most = Math.max(...counts)
  return most === 0 ? '' : `${perSize(counts.map(figure))}${nbsp}${plural(word, most)}`
}
