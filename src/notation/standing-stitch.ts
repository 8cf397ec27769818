import { nthToJoin } from './parse-ordinal.ts'
import { takeTarget } from './parse-target.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Work } from './syntax.ts'

/** `Skip first 14 sc, standing sc in next sc`: the row's first stitch joins the yarn where it goes. */
export function joinsWith({ target }: Work, before: readonly Instruction[]): boolean {
  return target?.walk === 'next' && target.count === undefined && before.every(({ node }) => node === 'aside' || node === 'skip' || node === 'turn')
}

/** The yarn joined in the place of a stitch, and the stitch there. */
export function joined(work: Work): readonly Instruction[] {
  const { target, start, end } = work
  return [{ node: 'start', target: target!, start, end }, { ...work, target: { ...target!, walk: 'same' } }]
}

/** `with sc in next sc`, `with a standing dc in any ch-2 sp` behind `join`, at the beginning of a row: its first stitch joins the yarn. */
export function joinedWithStitch(reader: Reader, start: number): readonly Instruction[] | undefined {
  const { at } = reader
  reader.take('new|the?', 'yarn|thread')
  const stitch = reader.take('with|by|using', 'a|an|1|one?', 'standing?') ? takeStitchName(reader) : undefined
  const target = stitch !== undefined && stitch !== 'sl st' && stitch !== '' ? (nthToJoin(reader) ?? takeTarget(reader)) : undefined
  if (target && target.count === undefined && /^(?:next|first)$/.test(target.walk)) return joined({ node: 'work', stitch: stitch!, target, start, end: reader.end })
  reader.at = at
  return undefined
}
