import type { Reader } from './reader.ts'

/** Takes which of the corners: `outer` ones jut out, and all of those are meant; `top`, `lower left-hand`, `foundation` tells where some of them lie. */
export function takeWhichCorner(reader: Reader): 'outer' | 'some' | undefined {
  const outer = reader.take('outer|outside|outermost|outward|projecting')
  const { at } = reader
  reader.take('foundation')
  reader.take('top|bottom|upper|lower')
  reader.take('left|right', '-?', 'hand?')
  return reader.at > at ? 'some' : outer ? 'outer' : undefined
}
