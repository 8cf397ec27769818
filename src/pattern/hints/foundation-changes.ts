import { changeOfWords, rowsOf, type Change, type Slip } from './change.ts'
import { valueIn, withValues, writtenNumbers } from './written-numbers.ts'

/** The foundation chain, longer or shorter by what one of the first two rows is off. */
export function foundationChanges(slip: Slip): readonly Change[] {
  const rows = rowsOf(slip)
  const at = rows.indexOf(slip.row)
  const foundation = rows[0] ?? slip.row
  if (at > 2) return []
  const { written } = foundation
  const number = writtenNumbers(slip.source, written.text, slip.sizes).find(({ span }) => /\bch(?:ain)? $/i.test(slip.source.text.slice(written.text.start, span.start)))
  if (!number) return []
  return [...lengths(slip)].flatMap((by) => {
    const edit = withValues(slip.source, number, new Map([...slip.bySize.keys()].map((size) => [size, Math.max(1, valueIn(number, size) + by)])))
    return edit ? [{ ...changeOfWords(slip, written.text, edit.span, edit.replacement), carriesTotal: true }] : []
  })
}

function lengths({ row }: Slip): ReadonlySet<number> {
  const off = (row.says?.count ?? row.makes) - row.makes
  const by = new Set(off === 0 || Math.abs(off) > 400 ? [1, -1] : [off])
  for (const trouble of row.troubles) {
    if (trouble.kind === 'overrun') by.add(trouble.wants - trouble.offers)
    if (trouble.kind === 'left-over') by.add(-trouble.count)
    if (trouble.kind === 'does-not-divide' && trouble.each > 0) {
      const over = trouble.room % trouble.each
      by.add(trouble.each - over).add(-over)
    }
  }
  return by
}
