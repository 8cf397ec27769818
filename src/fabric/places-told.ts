import { inSize, type Target } from '../notation/target.ts'
import { heldToRows } from './ends-of-rows.ts'
import { isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/** `(sc in next row-end, 2 sc in next row-end) 5 times down the 10 row-ends`: as many as are told must have been gone over since `from`. */
export function comparePlacesTold(walk: Walk, told: Target, from: number): void {
  if (walk.loose || walk.overrun || !told.count || !told.thing) return
  const says = inSize(told.count, walk.setting.size)
  const { kind } = told.thing
  const counts = kind === 'stitch' ? isStitch : kind === 'row-end' ? isRowEnd : () => true
  const over = walk.edge.slice(from, walk.at).filter(counts)
  const worksOver = over.length
  const span = { start: told.start, end: told.end }
  if (worksOver !== says) return walk.trouble({ kind: 'places-apart', span, says, worksOver, what: kind === 'row-end' || kind === 'chain' ? kind : 'stitch' })
  if (kind === 'row-end') return heldToRows(walk, told, span, from)
  const { ofRow } = told
  const row = ofRow === undefined || ofRow === walk.setting.below && !walk.outline ? undefined : (walk.setting.rowsBefore.get(ofRow)?.made ?? [])
  if (row && over.some((place) => !row.includes(place))) walk.trouble({ kind: 'no-such-place', span, what: `the stitches of row ${ofRow} there` })
}

const isRowEnd = ({ kind }: Place): boolean => kind === 'row-end'
