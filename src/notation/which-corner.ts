import type { Reader } from './reader.ts'

/** Corners that jut out, and those at which an edge turns inwards. */
export const outwards = 'outer|outside|outermost|outward|projecting'
export const inwards = 'inner|inside|inward|internal|concave'

/** Openings and steps, whose corners turn inwards. */
export const hollows = 'neck|neckline|armhole|shoulder|step|underarm'

const turns = 'corner|corners|angle|angles'

/** Takes `inner corner`, `inner neck corners`, `neck corners`, `inside angles`, `notch angles`, `valley`. */
export const takeInwardCorner = (reader: Reader): boolean =>
  reader.take(inwards, `${hollows}|notch?`, turns) || reader.take('front|back?', `${hollows}|notch`, turns) || reader.take('valley|valleys')

/** Takes which of the corners: `outer` ones jut out, and all of those are meant; `top`, `lower left-hand`, `foundation` tells where some of them lie. */
export function takeWhichCorner(reader: Reader): 'outer' | 'some' | undefined {
  const outer = reader.take(outwards)
  if (outer) reader.take('-?', 'pointing|facing')
  const { at } = reader
  reader.take('foundation')
  reader.take('top|bottom|upper|lower')
  reader.take('left|right', '-?', 'hand?')
  return reader.at > at ? 'some' : outer ? 'outer' : undefined
}
