import { inSize } from '../notation/target.ts'
import type { Stated } from '../notation/written-count.ts'
import type { Span } from '../text/span.ts'
import { isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/** A count in the middle of a row is that of the stitches up to there: all of them, those of a side, or those of the step before it. */
export function compareStated(walk: Walk, { count, kind, scope }: Stated, span: Span): void {
  // Along an edge without a number the total settles how many they are.
  if (walk.loose) return
  const says = inSize(count, walk.setting.size)
  const { made } = walk
  const numbers = (places: readonly Place[]): readonly number[] => {
    const stitches = places.filter((place) => isStitch(place) && !place.travel)
    const own = stitches.filter((place) => place.kind === kind || walk.setting.lexicon.stitch(place.kind)?.base === kind).length
    const chains = places.reduce((sum, place) => sum + (place.kind === 'space' ? (place.chains ?? 1) : 0), 0)
    return [kind === undefined || own === 0 ? stitches.length : own, stitches.length, stitches.length + chains]
  }
  const step = walk.steps.at(-1)
  const soFar = numbers(made)
  const last = step ? [...numbers(made.slice(step.from, step.to)), step.worksOver] : soFar
  const side = numbers(made.slice(sinceCorner(made)))
  const edge = numbers(made.slice(sinceEdge(walk)))
  const fits = scope === 'so-far' ? soFar : [...last, ...side, ...edge, ...soFar, ...(scope === 'side' ? withCorner(made, side[0]!) : [])]
  if (!fits.includes(says)) walk.trouble({ kind: 'stated-apart', span, says, makes: (scope === 'so-far' ? soFar : scope === 'side' ? side : last)[0]!, scope })
}

/** Of a border: index of the first stitch on the edge that the hook stands at, as along a side of rows of several kinds. */
function sinceEdge({ made, outline }: Walk): number {
  const stretch = (place: Place | undefined) => place?.into && outline?.stretchOf.get(place.into)
  const here = stretch(made.at(-1))
  return here ? made.findLastIndex((place) => stretch(place) !== here) + 1 : made.length
}

/** Index behind the last corner: a chain space, or stitches that stand together in one place. */
function sinceCorner(made: readonly Place[]): number {
  return made.findLastIndex(({ kind, group }) => kind === 'space' || group !== undefined) + 1
}

/** Some count the stitches of a corner, or some of them, to the side. */
function withCorner(made: readonly Place[], side: number): readonly number[] {
  const { group } = made[sinceCorner(made) - 1] ?? {}
  const corner = group === undefined ? 0 : made.filter((place) => place.group === group && isStitch(place)).length
  return Array.from({ length: corner + 1 }, (_, more) => side + more)
}
