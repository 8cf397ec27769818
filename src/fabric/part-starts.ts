import type { Instruction } from '../notation/syntax.ts'
import { wordsOf } from './joined-above.ts'
import type { WrittenEntry } from './real-rows.ts'

/** No range that a person writes is longer. */
const longest = 20_000

/** The numbers in a row's label, in one size. */
export function writtenNumbers({ label }: WrittenEntry, size: number): readonly number[] {
  const range = label?.bySize?.[size]
  if (!range) return label?.numbers ?? []
  return Array.from({ length: Math.max(0, Math.min(range.last - range.first + 1, longest)) }, (_, index) => range.first + index)
}

/**
 * Written rows whose numbers begin again: the second shoulder has a Row 51 of its own, the third strap a Row 11. Such a row stands under a
 * heading or joins the yarn anew, and its number is that of another part's first row, or the one after the row that it is worked on.
 */
export function partStarts(entries: readonly WrittenEntry[], size: number): ReadonlySet<WrittenEntry> {
  const starts = new Set<WrittenEntry>()
  const firsts = new Set<number>()
  const worked = new Set<number>()
  let last: number | undefined
  for (const entry of entries) {
    const numbers = writtenNumbers(entry, size)
    const [first] = numbers
    if (first === undefined) continue
    const begins = entry.headed === true || joinsYarn(entry)
    if (last === undefined || entry.headed) firsts.add(first)
    if (last !== undefined && first <= last && begins && beginsAgain(entry, first, last, firsts, worked)) {
      starts.add(entry)
      firsts.add(first)
    }
    for (const number of numbers) worked.add(number)
    last = numbers.at(-1)!
  }
  return starts
}

function beginsAgain(entry: WrittenEntry, first: number, last: number, firsts: ReadonlySet<number>, worked: ReadonlySet<number>): boolean {
  if (!worked.has(first) && first !== 1) return false
  const on = rowsNamed(wordsOf(entry))
  // The second flap has a Row 1 as the first one has, and goes back to the round under both.
  if (first === 1 && entry.headed && firsts.has(1) && on.length > 0 && !on.includes(last)) return true
  if (on.length > 0) return on.includes(first - 1) || firsts.has(first) && on.some((row) => row < first)
  return firsts.has(first) || first !== last && worked.has(first - 1)
}

function joinsYarn({ read }: WrittenEntry): boolean {
  return read.items.some((item) => item.node === 'start' || item.node === 'join' && item.piece === true || item.node === 'aside' && /\b(?:re)?(?:join|attach|new ball|yarn)/.test(item.words ?? ''))
}

/** Numbers of the older rows that a row is worked on. */
export function rowsNamed(items: readonly Instruction[]): readonly number[] {
  return items.flatMap((item) => {
    const on = item.node === 'skip' ? item.ofRow : 'target' in item ? item.target?.ofRow : undefined
    return on === undefined ? [] : [on]
  })
}
