import { takeCornerCentre, takeCornerNamed } from './parse-centre.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Thing } from './target.ts'

/** Takes `up to and including the hdc of the top left corner`, `, ending in the center sc of the next corner`: the place with which something ends. */
export function takeUpToAndIn(reader: Reader): Thing | undefined {
  const { at } = reader
  const ends = reader.take('across?', 'up?', 'to', 'and', 'including', 'the?') || reader.take(',?', 'ending|finishing|stopping', 'in|at', 'the?')
  const thing = ends ? takeCornerPlace(reader) : undefined
  if (!thing) reader.at = at
  return thing
}

/** `the centre sc of the next corner`, `the corner st`, `the hdc of the top left corner`. */
export function takeCornerPlace(reader: Reader): Thing | undefined {
  const centre = takeCornerCentre(reader)
  if (centre) return centre
  const thing = takeThing(reader)
  if (thing?.where === 'corner') return thing.kind === 'space' ? thing : { kind: 'stitch', where: 'corner' }
  const { at } = reader
  const corner = reader.take('of|in|at', 'the?') && (takeCornerNamed(reader) || true) && reader.take('corner')
  if (!corner) reader.at = at
  return corner && thing?.kind === 'stitch' && thing.stitch !== undefined ? thing : undefined
}
