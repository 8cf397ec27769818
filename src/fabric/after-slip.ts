import { isStitch, type Edge, type Place } from './place.ts'
import type { RowTry } from './work-row.ts'
import type { Says } from './worked-row.ts'

/** Another edge that the row below may have left, and why, in words. */
export interface OtherEdge {
  readonly edge: Edge
  readonly words: string
}

/** After a slip the next row may be worked on what the row says instead. */
export function bySaying(tried: RowTry, says: Says | undefined): readonly OtherEdge[] {
  const spaces = bySpaces(tried)
  if (spaces) return [spaces]
  const count = tried.comparison.totalAgrees ? undefined : saidCount(says)
  if (count === undefined || count === tried.makes || count > 100_000) return []
  return [{ edge: { ...tried.next, places: resized(tried.next.places, count) }, words: `the row below is taken to have the ${count} stitches it says` }]
}

/** A row whose spaces have another length than it says: the next row may find them as they are said. */
function bySpaces({ comparison, next }: RowTry): OtherEdge | undefined {
  const { kindSlip, says, totalAgrees } = comparison
  const said = Object.keys(says?.spaces ?? {}).map((name) => Number(/^ch-(\d+)$/.exec(name)?.[1]))
  const chains = Number(/^ch-(\d+)$/.exec(kindSlip?.name ?? '')?.[1])
  if (!totalAgrees || kindSlip?.sort !== 'space' || Number.isNaN(chains)) return undefined
  const places = next.places.map((place) => (place.kind === 'space' && !said.includes(place.chains ?? 0) ? { ...place, chains } : place))
  return { edge: { ...next, places }, words: `the spaces of the row below are taken to be the ch-${chains} that it says` }
}

/** Stitches that a row says it has: its total, or all its kinds together. */
export function saidCount(says: Says | undefined): number | undefined {
  if (says?.count !== undefined) return says.count
  const kinds = Object.entries(says?.kinds ?? {}).filter(([kind]) => kind !== 'sh')
  return kinds.length === 0 ? undefined : kinds.reduce((sum, [, count]) => sum + count, 0)
}

/** The same places with stitches left off or added at the end, to so many. */
function resized(places: readonly Place[], count: number): readonly Place[] {
  const out: Place[] = []
  let stitches = 0
  for (const place of places) {
    if (isStitch(place)) {
      if (stitches >= count) continue
      stitches += 1
    }
    out.push(place)
  }
  const last = places.findLast(isStitch) ?? { kind: 'sc', row: 0 }
  while (stitches < count) {
    out.push({ kind: last.kind, row: last.row })
    stitches += 1
  }
  return out
}
