import type { Instruction } from '../notation/syntax.ts'

/**
 * `Rep Rows 2 to 7` where Row 6 takes up `the 6 unworked dc of Row 3`: six rows on, they are those of Row 9. Rows before the block, but
 * the one that it stands on, are not repeated and stay what they are.
 */
export function shiftedRows(items: readonly Instruction[], by: number, from: number): readonly Instruction[] {
  const shifted = <T extends { readonly ofRow?: number }>(named: T): T => (named.ofRow !== undefined && named.ofRow >= from - 1 ? { ...named, ofRow: named.ofRow + by } : named)
  return by === 0 ? items : items.map((item) => {
    switch (item.node) {
      case 'skip': return shifted(item)
      case 'start': return { ...item, target: shifted(item.target) }
      case 'repeat': return { ...item, items: shiftedRows(item.items, by, from), ...(item.ending && { ending: shiftedRows(item.ending, by, from) }) }
      case 'group':
      case 'work': return item.target ? { ...item, target: shifted(item.target) } : item
      default: return item
    }
  })
}
