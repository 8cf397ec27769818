import { plural } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { wordFor, type Terms } from '../stitches/terms.ts'
import { textOf, type Source } from '../text/source.ts'
import type { RealRow, RowLine, Run } from './booklet.ts'
import { checkpointOf } from './checkpoint.ts'
import { figure, nbsp, perSize } from './figures.ts'
import type { GatheredLine } from './gather-lines.ts'
import type { WrittenIn } from './real-rows.ts'
import { changeText, stitchesText } from './row-figures.ts'
import { ahead, boxes, label } from './row-label.ts'
import { joined, outerRepeats, plainRuns, rowRuns } from './row-text.ts'
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
  readonly real: readonly RealRow[]
  /** Written rows of the whole pattern by where they begin. */
  readonly written: ReadonlyMap<number, WrittenIn>
  readonly corrected?: string
}

/** A line of the row table: everything reckoned stands beside the designer's words, never in them. */
export function rowLine(line: GatheredLine, setting: RowSetting): RowLine {
  const { source, terms } = setting
  const all = line.rows.flat()
  const text = line.written.text
  const untold = all.some((row) => row.verdict === 'cannot-tell')
  const repeats = outerRepeats(source, text, all)
  const runs = reversedRuns(line, setting) ?? joined([...ahead(line, setting), ...rowRuns(source, text, repeats.map(({ span }) => span))])
  const side = all[0]?.side
  // A buyer who stops at the question mark must learn what it means.
  const checkpoint = untold ? 'Count not checked.' : checkpointOf(line, source)
  return {
    kind: 'row',
    id: setting.id,
    label: label(line, source),
    boxes: boxes(line, setting),
    ...(side !== undefined && all.every((row) => row.side === side) ? { side } : {}),
    text: untold ? withTotal(runs, all, source) : runs,
    repeats: repeatsText(line, source),
    change: untold ? '' : changeText(line.rows.map((rows, size) => ({ own: rows.at(-1), before: line.before[size] }))),
    stitches: line.rows.map((rows) => stitchesText(rows.at(-1))),
    spaces: untold ? '' : madeOf(line, terms),
    ...(checkpoint === '' ? {} : { checkpoint }),
    ...(setting.corrected === undefined ? {} : { corrected: setting.corrected }),
    progress: setting.progress,
    real: untold ? setting.real.map(({ short: _short, ...row }) => ({ ...row, change: '' })) : setting.real,
  }
}

/**
 * A row with its shaping reversed, in words that are turned round. Where they are not simple, or not the same in every size, it is the row
 * of the other piece, to be read from its end.
 */
function reversedRuns(line: GatheredLine, { source, terms, written }: RowSetting): readonly Run[] | undefined {
  const rows = line.rows.flatMap((own) => own[0] ?? [])
  const [row] = rows
  if (!row?.written.reversed) return undefined
  const words = new Set(rows.map(({ written: { reversed } }) => reversed?.words?.map((part) =>
    (typeof part === 'string' ? part : 'stitch' in part ? wordFor(part.stitch, terms) : textOf(source, part.words).toLowerCase())).join('')))
  const [own] = words
  if (words.size === 1 && own !== undefined) return plainRuns(own)
  const piece = row.written.copies === undefined ? undefined : written.get(row.written.copies)?.piece
  return plainRuns(`As ${row.word} ${row.number ?? row.label} of ${piece ?? 'the piece that it copies'}, with its shaping reversed: what stands at its start is worked at its end`)
}

/** A count that could not be reckoned stays in the designer's words: a buyer needs it, and the Stitches column does not vouch for it. */
function withTotal(runs: readonly Run[], rows: readonly WorkedRow[], source: Source): readonly Run[] {
  const said = rows.find((row) => row.says !== undefined)?.says
  return said === undefined ? runs : joined([...runs, { text: ` ${typeset(textOf(source, said.span).replace(/\s+/g, ' '))}`, repeat: false }])
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

/** What the count is made of: chain spaces always, stitches by kind or by yarn where the designer counts them so: `28 dc, 4 ch-2 sps`, `40 B, 8 A`. */
function madeOf(line: GatheredLine, terms: Terms): string {
  const last = line.rows.map((rows) => rows.at(-1)).filter((row) => row !== undefined)
  const kinds = new Set(last.flatMap((row) => Object.keys(row.says?.kinds ?? {})))
  const colours = new Set(last.flatMap((row) => Object.keys(row.says?.colours ?? {})))
  const spaces = new Set(last.flatMap((row) => Object.keys(row.spaces)))
  return [
    ...(kinds.size < 2 ? [] : [...kinds].map((kind) => ofKind(last.map((row) => row.says?.kinds[kind] ?? 0), wordFor(kind, terms)))),
    ...[...colours].map((yarn) => `${perSize(last.map((row) => figure(row.says?.colours?.[yarn] ?? 0)))}${nbsp}${yarn}`),
    ...spacesText(last, [...spaces]),
  ].filter((text) => text !== '').join(', ')
}

/** Spaces by kind: `4 ch-2 sps`; of spaces that are larger in some sizes `2 ch-4 (4, 6, 6) sps`. */
function spacesText(rows: readonly WorkedRow[], kinds: readonly string[]): readonly string[] {
  const own = rows.map((row) => kinds.filter((kind) => (row.spaces[kind] ?? 0) > 0))
  if (kinds.length > 1 && own.every((kindsOfRow) => kindsOfRow.length === 1)) {
    const counts = rows.map((row, at) => row.spaces[own[at]?.[0] ?? ''] ?? 0)
    const chains = own.map(([kind = '']) => /^ch-(\d+)$/.exec(kind)?.[1])
    if (chains.every((count) => count !== undefined)) return [`${perSize(counts.map(figure))}${nbsp}ch-${perSize(chains)}${nbsp}${plural('sp', Math.max(...counts))}`]
  }
  return kinds.map((space) => ofKind(rows.map((row) => row.spaces[space] ?? 0), `${space} sp`))
}

function ofKind(counts: readonly number[], word: string): string {
  const most = Math.max(...counts)
  return most === 0 ? '' : `${perSize(counts.map(figure))}${nbsp}${plural(word, most)}`
}
