import type { Instruction, Work } from './syntax.ts'

/** `Skip first 14 sc, standing sc in next sc`: the row's first stitch joins the yarn where it goes. */
export function joinsWith({ target }: Work, before: readonly Instruction[]): boolean {
  const placed = target?.walk === 'next' || target?.walk === 'edge' && target.ofRow !== undefined
  return placed && (target.count?.values[0] ?? 1) === 1 && before.every(({ node }) => node === 'aside' || node === 'skip' || node === 'turn')
}

/** The yarn joined in the place of a stitch, and the stitch there. */
export function joined(work: Work): readonly Instruction[] {
  const { target, start, end } = work
  return [{ node: 'aside', words: 'standing', start, end }, { node: 'start', target: target!, start, end }, { ...work, target: target!.walk === 'edge' ? { walk: 'same', start, end } : { ...target!, walk: 'same' } }]
}
