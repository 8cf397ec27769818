import type { Instruction, Work } from './syntax.ts'

/** `Skip first 14 sc, standing sc in next sc`: the row's first stitch joins the yarn where it goes. */
export function joinsWith({ target }: Work, before: readonly Instruction[]): boolean {
  return target?.walk === 'next' && (target.count?.values[0] ?? 1) === 1 && before.every(({ node }) => node === 'aside' || node === 'skip' || node === 'turn')
}

/** The yarn joined in the place of a stitch, and the stitch there. */
export function joined(work: Work): readonly Instruction[] {
  const { target, start, end } = work
  return [{ node: 'start', target: target!, start, end }, { ...work, target: { ...target!, walk: 'same' } }]
}
