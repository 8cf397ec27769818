import { readRow } from '../notation/rows-read.ts'
import type { Instruction } from '../notation/syntax.ts'
import { saidCount } from './after-slip.ts'
import type { Lexicon } from './lexicon.ts'
import { TooDeep } from './limits.ts'
import type { RowSetting } from './row-setting.ts'
import { workRowInEveryReading } from './other-readings.ts'
import { workRow, type RowToWork, type RowTry } from './work-row.ts'
import type { Trouble } from './worked-row.ts'

/** What of a row cannot be read, wherever it stands: a row with a hole in it is not counted. */
export function unreadIn(items: readonly Instruction[]): readonly Trouble[] {
  return items.flatMap((item): readonly Trouble[] => {
    if (item.node === 'unreadable' && item.why !== 'cannot') return [{ kind: 'unreadable', span: { start: item.start, end: item.end }, reason: item.reason, ...(item.why === 'quiet' && { quiet: true }), ...(item.why === 'broken' && { broken: true }) }]
    if (item.node === 'work' && item.unknown) return [{ kind: 'unknown-stitch', span: item.name ?? { start: item.start, end: item.end }, word: item.stitch }]
    return item.node === 'repeat' || item.node === 'group' ? unreadIn([...item.items, ...(item.node === 'repeat' ? (item.ending ?? []) : [])]) : []
  })
}

/** Whether all words of a row, from `start` to `end` of the text, are understood. */
export function isReadWhole(text: string, start: number, end: number, lexicon: Lexicon): boolean {
  return unreadIn(readRow(text, start, end, lexicon).items).length === 0
}

/**
 * Words that tell no number, no stitch and no work can only say where. Where the row states its total and comes out without them, they are
 * passed over, and that is told.
 */
export function withoutQuiet(unread: readonly Trouble[], tried: RowTry): RowTry | undefined {
  const { says } = tried.comparison
  if (!tried.comesOut || saidCount(says) === undefined && Object.keys(says?.kinds ?? {}).length === 0) return undefined
  return { ...tried, troubles: unread.map((trouble) => (trouble.kind === 'unreadable' ? { kind: 'words-passed-over', span: trouble.span } : trouble)) }
}

export interface Readings {
  readonly usual?: RowTry
  readonly others: readonly RowTry[]
}

/** A row in every reading; nothing when its repeats stand too deep in one another to be worked. */
export function everyReading(row: RowToWork, setting: RowSetting): Readings {
  return ifNotTooDeep(() => workRowInEveryReading(row, setting)) ?? { others: [] }
}

/** A row in its usual reading alone. */
export function asUsual(row: RowToWork, setting: RowSetting): RowTry | undefined {
  return ifNotTooDeep(() => workRow(row, setting))
}

function ifNotTooDeep<Worked>(work: () => Worked): Worked | undefined {
  try {
    return work()
  } catch (reason) {
    if (reason instanceof TooDeep) return undefined
    throw reason
  }
}

/** The last piece on a row ends where that ends, as the first one begins where it begins (common practice, no source). */
export function atRowsEnd(row: RowToWork, setting: RowSetting): RowToWork {
  if (setting.beside !== 'last' || setting.round || row.edge.outline || row.edge.held) return row
  const leaves = everyReading(row, setting).usual?.leaves ?? 0
  return leaves > 0 ? { ...row, edge: { ...row.edge, places: row.edge.places.slice(leaves) } } : row
}

/** Whether a row makes anything, and is no needlework on what is there. */
export function workedAnything(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node !== 'aside' && item.node !== 'unreadable' && item.node !== 'turn' && item.node !== 'join')
}
