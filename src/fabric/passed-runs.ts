import { isSpace, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/**
 * A round that begins in a space, such as that of a shell, ends with the stitches before that space. They are passed over there when
 * the row passed over the same before another space: `*ch 5, sc in next sc, ch 5, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from *`.
 */
export function passedAsElsewhere({ edge, at, round, outline, made }: Walk): boolean {
  if (!round || outline || !edge[0] || !isSpace(edge[0])) return false
  const worked = new Set(made.map(({ into }) => into))
  if (!worked.has(edge[0])) return false
  const left = kindsOf(edge.slice(at))
  let from = 1
  for (let index = 1; index < at; index += 1) {
    if (!worked.has(edge[index])) continue
    if (isSpace(edge[index]!) && kindsOf(edge.slice(from, index)) === left) return true
    from = index + 1
  }
  return false
}

/** Whether only places are left that no stitch needs to go into: spaces, and slip stitches of the row below. */
export function nothingNeeded({ edge, onSpace }: Walk, from: number, worksSpaces: boolean): boolean {
  for (let index = from; index < edge.length; index += 1) {
    const place = edge[index]!
    if (place.travel) continue
    if (worksSpaces && onSpace ? place.kind === 'space' : !isSpace(place)) return false
  }
  return true
}

function kindsOf(places: readonly Place[]): string {
  return places.filter(({ travel }) => !travel).map(({ kind, chains }) => `${kind}${chains ?? ''}`).join(' ')
}
