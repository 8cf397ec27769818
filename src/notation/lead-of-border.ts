import type { Instruction, Work } from './syntax.ts'

/** `sc evenly around, working 1 sc in each st and row-end, and 3 sc in each corner`: what goes all round is told a second time, place by place. */
export function withoutLeadOfBorder(items: readonly Instruction[]): readonly Instruction[] {
  const at = items.findIndex((item) => item.node === 'work' && goesRound(item))
  const next = items.find((item, index) => index > at && item.node !== 'aside')
  const lead = items[at]
  if (lead?.node !== 'work' || next?.node !== 'work' || next.stitch !== lead.stitch || next.target?.walk !== 'each' || next.target.thing?.kind !== 'edge' || (next.count?.values[0] ?? 1) !== 1) return items
  return items.toSpliced(at, 1)
}

const goesRound = ({ count, target }: Work): boolean => count === undefined && (target?.walk === 'edge' ? target.edge === 'all' && !target.rate : target?.walk === 'each' && target.toEnd === true && !target.thing && !target.keepBack)
