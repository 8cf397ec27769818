import { signed } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { figure, perSize } from './figures.ts'
import { isOnlyChains } from './gather-lines.ts'

/** The stitches of a row as they are printed; `?` where they cannot be told, a dash for a size that leaves the row out. */
export function stitchesText(row: WorkedRow | undefined): string {
  if (row === undefined) return '–'
  return row.verdict === 'cannot-tell' ? '?' : figure(row.makes)
}

/** A row in one size, and the row that its stitches are compared with. */
export interface Compared {
  readonly own: WorkedRow | undefined
  readonly before: WorkedRow | undefined
}

/** The stitches against those before, in each size: `+6`, `−6`, `+6 (8)`; nothing when nothing changes or the row begins the piece. */
export function changeText(sizes: readonly Compared[]): string {
  const changes = sizes.map(({ own, before }) => {
    if (own === undefined) return undefined
    return before === undefined || before.verdict === 'cannot-tell' || isOnlyChains(before) ? 0 : own.makes - before.makes
  })
  const told = changes.findIndex((change) => change !== undefined)
  if (changes.every((change) => change === undefined || change === 0)) return ''
  const first = changes[told] ?? 0
  const alike = changes.every((change) => change === first)
  return perSize(changes.map((change, size) => {
    if (change === undefined) return '–'
    // One sign holds for all that go the same way: `+6 (8)`.
    return size > told && !alike && change * first > 0 ? figure(Math.abs(change)) : signed(change)
  }))
}
