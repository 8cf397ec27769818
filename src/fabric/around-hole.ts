import type { Held } from './held.ts'
import type { Outline } from './outline.ts'
import type { Place } from './place.ts'

/** A round on stitches that waited, or one that begins in a place of an opening; it is no round on a tube or along the outer edges. */
export function goesRoundHole(took: Held | undefined, made: readonly Place[], { openings }: Outline): boolean {
  const into = made.find((place) => place.into)?.into
  return took !== undefined || into !== undefined && openings.some((opening) => opening.walk(false).some(({ places }) => places.includes(into)))
}
