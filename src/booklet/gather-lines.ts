import type { WorkedRow, WrittenRow } from '../fabric/worked-row.ts'

/** A line of a part before it is put into words: the real rows, size by size, that one written row gives in one go. */
export interface GatheredLine {
  readonly written: WrittenRow
  /** For each size the real rows; empty when the size leaves the line out. */
  readonly rows: readonly (readonly WorkedRow[])[]
  /** For each size the row that its first row goes on from. */
  readonly before: readonly (WorkedRow | undefined)[]
}

/** Whether a row is made of chains alone: there is no stitch in it to count from. */
export function isOnlyChains({ kinds }: WorkedRow): boolean {
  return Object.entries(kinds).every(([kind, count]) => kind === 'ch' || count === 0)
}

interface Stretch {
  readonly key: string
  readonly written: WrittenRow
  readonly rows: readonly WorkedRow[]
  readonly before: WorkedRow | undefined
}

/**
 * Brings the rows of all sizes together. Sizes may work a line different numbers of times or leave it out; the order of the
 * lines is the same in all of them, since all were written once.
 */
export function gatherLines(sizes: readonly (readonly WorkedRow[])[]): readonly GatheredLine[] {
  const stretches = sizes.map((rows) => new Map(inStretches(rows).map((stretch) => [stretch.key, stretch])))
  return inOrder(stretches.map((size) => [...size.keys()])).flatMap((key) => {
    const bySize = stretches.map((size) => size.get(key))
    const written = bySize.find((stretch) => stretch !== undefined)?.written
    if (written === undefined) return []
    return [{ written, rows: bySize.map((stretch) => stretch?.rows ?? []), before: bySize.map((stretch) => stretch?.before) }]
  })
}

/** All keys once, in an order that each of the lists agrees with. */
function inOrder(lists: readonly (readonly string[])[]): readonly string[] {
  const [order = [], ...others] = lists.map((list) => [...list])
  const known = new Set(order)
  for (const list of others) {
    let at = 0
    for (const key of list) {
      if (known.has(key)) at = order.indexOf(key, at) + 1
      else {
        order.splice(at, 0, key)
        known.add(key)
        at += 1
      }
    }
  }
  return order
}

/** Rows whose shaping is reversed have words of their own; alike ones stand in one line. */
function sameWords({ written: one }: WorkedRow, { written: other }: WorkedRow): boolean {
  return one.reversed === undefined && other.reversed === undefined || one.copies === other.copies && one.reversed !== undefined && other.reversed !== undefined
}

/** Real rows that follow each other and come from one written row. `Row 2 and all WS rows` gives a stretch each time it comes round. */
function inStretches(rows: readonly WorkedRow[]): readonly Stretch[] {
  const stretches: { written: WrittenRow; rows: WorkedRow[]; before: WorkedRow | undefined }[] = []
  rows.forEach((row, index) => {
    const open = stretches.at(-1)
    if (open && open.written.span.start === row.written.span.start && sameWords(open.rows.at(-1)!, row)) open.rows.push(row)
    else stretches.push({ written: row.written, rows: [row], before: rows[index - 1] })
  })
  const seen = new Map<number, number>()
  return stretches.map((stretch) => {
    const { start } = stretch.written.span
    const times = (seen.get(start) ?? 0) + 1
    seen.set(start, times)
    return { ...stretch, key: `${start}#${times}` }
  })
}
