import type { ReadRow } from '../notation/parse-row.ts'
import type { RowsEntry } from '../notation/split-rows.ts'

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

/** `With RS facing, skip next 6 unworked sts of Row 15, join yarn in next st.` on a line of its own, over a row with a number: that row begins so. */
export function skipsToJoin(read: ReadRow, next: RowsEntry | undefined): boolean {
  return read.items.some(({ node }) => node === 'skip') && begins(read) && isNumbered(next)
}

const begins = ({ items, totals, reference, stripes }: ReadRow): boolean =>
  items.some(({ node }) => node === 'start') && items.every(({ node }) => node === 'aside' || node === 'skip' || node === 'start') && totals.length === 0 && !reference && !stripes

const isNumbered = (next: RowsEntry | undefined): boolean => next?.kind === 'row' && (next.label?.numbers.length ?? 0) > 0

/** `Second side: With RS facing, skip 6 sts of Row 14, join yarn in next st.` over `Row 15: Ch 1, sc in same st`: a heading, and how the row under it begins. */
export function isLead({ label }: Extract<RowsEntry, { kind: 'row' }>, read: ReadRow, next: RowsEntry | undefined): boolean {
  return label?.word === 'unsaid' && label.numbers.length === 0 && begins(read) && isNumbered(next)
}
