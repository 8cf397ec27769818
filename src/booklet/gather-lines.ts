import type { WorkedRow, WrittenRow } from '../fabric/worked-row.ts'

/** A line of a part before it is put into words: the real rows, size by size, that one written row gives in one go. */
export interface GatheredLine {
  readonly written: WrittenRow
  /** For each size the real rows; empty when the size leaves the line out. */
  readonly rows: readonly (readonly WorkedRow[])[]
  /** For each size the row that its first row goes on from. */
  readonly before: readonly (WorkedRow | undefined)[]
  /** The line as the designer wrote it, where the words of another piece's rows stand in its place. */
  readonly instead?: WrittenRow
}

/** The written row whose words are printed for a row, where they are those of another piece: `As for Front`. */
export type CopiedFrom = (row: WorkedRow) => WrittenRow | undefined

/** Whether a row is made of chains alone: there is no stitch in it to count from. */
export function isOnlyChains({ kinds }: WorkedRow): boolean {
  return Object.entries(kinds).every(([kind, count]) => kind === 'ch' || count === 0)
}

interface Stretch {
  readonly key: string
  readonly written: WrittenRow
  readonly rows: readonly WorkedRow[]
  readonly before: WorkedRow | undefined
  readonly instead?: WrittenRow
}

/**
 * Brings the rows of all sizes together. Sizes may work a line different numbers of times or leave it out; the order of the
 * lines is the same in all of them, since all were written once.
 */
export function gatherLines(sizes: readonly (readonly WorkedRow[])[], copiedFrom: CopiedFrom = () => undefined): readonly GatheredLine[] {
  const stretches = sizes.map((rows) => new Map(inStretches(rows, copiedFrom).map((stretch) => [stretch.key, stretch])))
  return inOrder(stretches.map((size) => [...size.keys()])).flatMap((key) => {
    const bySize = stretches.map((size) => size.get(key))
    const [found] = bySize.filter((stretch) => stretch !== undefined)
    if (found === undefined) return []
    const { written, instead } = found
    return [{ written, ...(instead === undefined ? {} : { instead }), rows: bySize.map((stretch) => stretch?.rows ?? []), before: bySize.map((stretch) => stretch?.before) }]
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
function inStretches(rows: readonly WorkedRow[], copiedFrom: CopiedFrom): readonly Stretch[] {
  const stretches: { own: WrittenRow; copied: WrittenRow | undefined; rows: WorkedRow[]; before: WorkedRow | undefined }[] = []
  rows.forEach((row, index) => {
    const open = stretches.at(-1)
    const copied = copiedFrom(row)
    const goesOn = open?.own.span.start === row.written.span.start && open.copied?.span.start === copied?.span.start && sameWords(open.rows.at(-1)!, row)
    if (open && goesOn) open.rows.push(row)
    else stretches.push({ own: row.written, copied, rows: [row], before: rows[index - 1] })
  })
  const seen = new Map<string, number>()
  return stretches.map(({ own, copied, rows: stretch, before }) => {
    const from = `${own.span.start}${copied === undefined ? '' : `<${copied.span.start}`}`
    const times = (seen.get(from) ?? 0) + 1
    seen.set(from, times)
    const [first, last] = [stretch[0]?.number, stretch.at(-1)?.number]
    const numbers = { ...(first === undefined ? {} : { first }), ...(last === undefined ? {} : { last }) }
    const written = copied === undefined ? own : { ...own, text: copied.text, ...numbers }
    return { written, rows: stretch, before, key: `${from}#${times}`, ...(copied === undefined ? {} : { instead: own }) }
  })
}
