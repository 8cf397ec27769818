import type { ReadRow } from '../notation/parse-row.ts'

/** `Hold the two pieces with wrong sides together.`, `With RS facing, join yarn in the corner sp.` on a line of its own, without a label: the row under it begins so. */
export function worksNothing({ items, totals, reference, stripes }: ReadRow): boolean {
  return items.length > 0 && totals.length === 0 && !reference && !stripes && items.every((item) => item.node === 'start' || item.node === 'aside' && !item.stated && !item.neighbour && !item.picot && !item.tie)
}

/** `Join yarn in the underside of first ch of Body, ch 6.` on a line of its own, and under it `Row 1: Sc in 2nd ch from hook`: that row begins with it. */
export function beginsNext({ items, totals, reference }: ReadRow, next: ReadRow | undefined): boolean {
  const told = items.filter(({ node }) => node !== 'aside')
  const first = next?.items.find(({ node }) => node !== 'aside' && node !== 'turn')
  return told.length === 2 && told[0]!.node === 'start' && told[1]!.node === 'chain' && totals.length === 0 && !reference && first?.node === 'work' && first.target?.walk === 'from-hook'
}
