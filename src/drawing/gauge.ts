import type { Place } from '../fabric/place.ts'
import { isStitch } from '../fabric/place.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { stitchOf } from '../stitches/terms.ts'

/** How large stitches are, in mm. Without a stitch the gauge is of the pattern as worked, and all its rows are alike. */
export interface StitchSize {
  readonly width: number
  readonly height: number
  /** US word of the stitch that the gauge was worked in. */
  readonly stitch?: string
}

/** A row to draw, with the place of its yarn among the yarns of the pattern, from 0. */
export interface InkedRow {
  readonly row: WorkedRow
  readonly yarn: number
  /** Of a row in several yarns, that of each place it made. */
  readonly yarns?: readonly number[]
}

/** Chains of a stitch's turning chain: how tall it is. A kind of the pattern's own stands as a single crochet. */
export function tallness(kind: string): number {
  return stitchOf(kind)?.height ?? 1
}

/**
 * Height of a row in mm. A double crochet is twice as tall as a single crochet and a half double lies between them, as handbooks have
 * it: heights go as the turning chain and one more.
 */
export function rowHeight(row: WorkedRow, size: StitchSize): number {
  if (size.stitch === undefined) return size.height
  const stitches = workedStitches(row.fabric.made)
  if (stitches.length === 0) return size.height
  const mean = stitches.reduce((sum, { kind }) => sum + tallness(kind) + 1, 0) / stitches.length
  return (size.height * mean) / (tallness(size.stitch) + 1)
}

/** The stitches among places, without slip stitches that only carry the yarn. */
export function workedStitches(places: readonly Place[]): readonly Place[] {
  return places.filter((place) => isStitch(place) && place.travel !== true)
}

/** How much of its row a place takes up, in stitches: a chain of a short space as much as a stitch, chains of a loop less. */
export function placeWidth(place: Place): number {
  if (place.travel === true || place.kind === 'ring' || place.kind === 'row-end') return 0
  if (place.kind === 'gap') return 0
  const { chains = 0 } = place
  return place.kind === 'space' ? (chains <= 2 ? chains : 2 + (chains - 2) * 0.5) : 1
}

/** Neighbours in one yarn, by their places in the row. */
export function yarnRuns(yarns: readonly number[]): readonly { readonly yarn: number; readonly from: number; readonly to: number }[] {
  const runs: { readonly yarn: number; readonly from: number; to: number }[] = []
  for (const [at, yarn] of yarns.entries()) {
    const open = runs.at(-1)
    if (open?.yarn === yarn) open.to = at + 1
    else runs.push({ yarn, from: at, to: at + 1 })
  }
  return runs
}

/** Width of a row in stitches. */
export const rowWidth = (row: WorkedRow): number => row.fabric.made.reduce((sum, place) => sum + placeWidth(place), 0)
