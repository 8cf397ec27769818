import type { Instruction, Work } from './syntax.ts'

/**
 * `dc in 2nd ch from hook, dc in next 8 ch, 3 dc in last ch; 8 dc along the other side`: in the row that begins in the foundation chain, its
 * other side is the underside of that chain, and so many stitches are one in each. Gives the instructions with its last one told so.
 */
export function alongOtherSide(items: readonly Instruction[]): readonly Instruction[] | undefined {
  const work = items.at(-1)
  if (work?.node !== 'work' || !work.count || !isOtherSide(work) || !items.some(isFromHook) || items.some(({ node }) => node === 'start' || node === 'turn')) return undefined
  const { count, numberLast: _, ...stitch } = work
  const span = { start: work.start, end: work.end }
  return [...items.slice(0, -1), { node: 'start', target: { walk: 'other-side', edge: 'underside', ...span }, ...span }, { ...stitch, target: { walk: 'next', count, eachOf: true, thing: { kind: 'chain' }, ...span } }]
}

const isOtherSide = ({ target }: Work): boolean => target?.walk === 'edge' && !target.evenly && (target.edge === 'underside' || target.edge === 'side' && /^(?:other|opposite|second) side$/.test(target.ofPart ?? ''))

const isFromHook = (item: Instruction): boolean => (item.node === 'work' || item.node === 'group') && item.target?.walk === 'from-hook'
