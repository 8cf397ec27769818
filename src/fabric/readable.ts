import type { Instruction } from '../notation/syntax.ts'
import { TooDeep, type RowSetting } from './walk.ts'
import { workRowInEveryReading, type RowToWork, type RowTry } from './work-row.ts'
import type { Trouble } from './worked-row.ts'

/** What of a row cannot be read, wherever it stands: a row with a hole in it is not counted. */
export function unreadIn(items: readonly Instruction[]): readonly Trouble[] {
  return items.flatMap((item): readonly Trouble[] => {
    if (item.node === 'unreadable' && item.why === 'word') return [{ kind: 'unreadable', span: { start: item.start, end: item.end }, reason: item.reason }]
    if (item.node === 'work' && item.unknown) return [{ kind: 'unknown-stitch', span: item.name ?? { start: item.start, end: item.end }, word: item.stitch }]
    return item.node === 'repeat' || item.node === 'group' ? unreadIn([...item.items, ...(item.node === 'repeat' ? (item.ending ?? []) : [])]) : []
  })
}

/** A row in every reading; nothing when its repeats stand too deep in one another to be worked. */
export function everyReading(row: RowToWork, setting: RowSetting): { readonly usual?: RowTry; readonly others: readonly RowTry[] } {
  try {
    return workRowInEveryReading(row, setting)
  } catch (reason) {
    if (reason instanceof TooDeep) return { others: [] }
    throw reason
  }
}
