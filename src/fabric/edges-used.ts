import type { Span } from '../text/span.ts'
import { rowAt } from './border-edge.ts'
import type { LaidRow, Stretch } from './laid-row.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'
import type { EdgeUse, Gap } from './worked-row.ts'

/** How many places of each edge a border used, how many stitches it made there, and where it began. */
export function edgesUsed(walk: Walk): readonly EdgeUse[] {
  const makes = new Map<Stretch | undefined, number>()
  for (const { into, kind, travel } of walk.made) {
    if (travel || kind === 'space') continue
    const stretch = into && walk.outline!.stretchOf.get(into)
    makes.set(stretch, (makes.get(stretch) ?? 0) + 1)
  }
  const [first] = walk.taken.keys()
  const named = namesOn(walk)
  return walk.outline!.stretches.map((stretch) => ({
    edge: stretch.edge, rows: stretch.rows.map(named), offers: stretch.places.length,
    worksOver: stretch.places.filter((place) => walk.taken.has(place)).length, makes: makes.get(stretch) ?? 0,
    ...(walk.throughBoth.size > 0 && { through: stretch.places.filter((place) => walk.throughBoth.has(place)).length }),
    ...(first && stretch.places.includes(first) && { beginsAt: stretch.places.indexOf(first) + 1 }),
  }))
}

/** The row-ends among places that a border passes on the way to those that the words at `span` work. */
export function gapIn(walk: Walk, passed: readonly Place[], before: Place | undefined, span: Span): { readonly gap?: Gap } {
  const rows = passed.flatMap((place) => (place.kind === 'row-end' && !walk.taken.has(place) && rowAt(walk.outline, place)) || [])
  const after = before && walk.taken.get(before)
  if (rows.length === 0) return {}
  const named = namesOn(walk)
  return { gap: { from: named(rows[0]!), to: named(rows.at(-1)!), ...(after && after.start !== span.start && { after: { start: after.start, end: after.end } }) } }
}

/** What a row is called: `Row 4`; on a fabric of several pieces `Row 4 of Back`. */
function namesOn({ outline, setting }: Walk): (row: LaidRow) => string {
  const pieces = new Set(outline?.stretches.flatMap(({ rows }) => rows.map(({ piece }) => piece)))
  return ({ name, piece }) => (piece !== undefined && pieces.size > 1 ? `${name} of ${setting.lexicon.pieces.find((known) => known.toLowerCase() === piece) ?? piece}` : name)
}
