import { isOnOutline } from './border-edge.ts'
import type { Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import type { Place } from './place.ts'
import { leaveLeg } from './over-pieces.ts'
import type { Rest } from './work-items.ts'
import type { Walk } from './walk.ts'

/** A row that a later one may come back to. */
export interface OlderRow {
  readonly made: readonly Place[]
  /** What of it the next row left at its end. */
  readonly left: readonly Place[]
  /** What the next row made, and in which loops. */
  readonly above?: readonly Place[]
  /** It was worked in the round. */
  readonly round: boolean
  /** Its count is in doubt. */
  readonly doubt: boolean
}

/** `in each front loop of Rnd 1`, `in unworked sts of Row 20`: the hook goes on along places that an older row left. */
export function goToRow(walk: Walk, target: Target, span: Span): void {
  if (walk.onRow === target.ofRow || isBelow(walk, target)) return
  const older = rowMeant(walk, target)
  if (!older) return walk.trouble({ kind: 'no-such-place', span, what: `row ${target.ofRow}` })
  if (walk.at > 0 && walk.left > 0 && !walk.outline && !walk.leaves) {
    walk.missed += walk.left
    walk.trouble({ kind: 'left-over', span, count: walk.left })
  }
  walk.onRow = target.ofRow
  const places = older.left.length > 0 && target.loop === undefined ? older.left : freeLoops(walk, target, older)
  if (places.length === 0) return walk.trouble({ kind: 'no-such-place', span, what: target.loop ? `a free ${target.loop === 'free' ? '' : `${target.loop} `}loop of row ${target.ofRow}` : `row ${target.ofRow}` })
  goOnWith(walk, places)
  // `in 3rd unworked st of Row 1`: those before it are passed.
  walk.at = Math.min(walk.at + (target.passing ?? 0), walk.edge.length)
  walk.last = walk.at - 1
}

/** What the row has worked so far stays worked; these places come after it. */
function goOnWith(walk: Walk, places: readonly Place[]): void {
  const worked = walk.made.length === 0 ? 0 : walk.at
  walk.edge = [...walk.edge.slice(0, worked), ...places]
  walk.at = worked
  walk.noneFrom.clear()
}

/** The row that is named; of what it left unworked it may be the row under it that is meant. */
function rowMeant(walk: Walk, { ofRow = -1, leftBy, loop }: Target): OlderRow | undefined {
  const named = walk.setting.rowsBefore.get(ofRow)
  const under = leftBy && loop === undefined && named?.left.length === 0 ? walk.setting.rowsBefore.get(ofRow - 1) : undefined
  return under && under.left.length > 0 ? under : named
}

/** Free loops of the row that is named, or of the one that it was worked on, where the words are those of both. */
function freeLoops(walk: Walk, { loop, ofRow, leftBy }: Target, older: OlderRow): readonly Place[] {
  const own = freeOf(older, loop)
  const under = leftBy ? walk.setting.rowsBefore.get(ofRow! - 1) : undefined
  const below = under ? freeOf(under, loop) : []
  if (own.length === 0 || below.length === 0) return own.length === 0 ? below : own
  return walk.choose(`left by ${ofRow}`, [`the free loops are those of the row that row ${ofRow} was worked on`, `the free loops are those of row ${ofRow}`]) === 0 ? below : own
}

/** Stitches of an older row of which a loop is free: the row on it went into the other loop. */
function freeOf({ made, above }: OlderRow, loop: Target['loop']): readonly Place[] {
  const stitches = made.filter((place) => !place.travel)
  if (loop === undefined || loop === 'third' || !above || above.length === 0) return stitches
  const loops = new Set(above.map((place) => place.loop ?? 'both'))
  // A row worked in one loop throughout leaves the other of every stitch, also of those that it worked together.
  if (loops.size === 1) return loops.has('both') || loop !== 'free' && loops.has(loop) ? [] : stitches
  const taken = new Map(above.map(({ into, loop: used }) => [into, used ?? 'both']))
  return stitches.filter((place) => !taken.has(place) || taken.get(place) !== 'both' && taken.get(place) !== loop)
}

/** `in first ch-2 sp of Rnd 1` where Rnd 1 is the row below: the row goes on as any other. A loop of it may be free, or a step left. */
export function isBelow(walk: Walk, { ofRow, loop, held }: Target): boolean {
  return ofRow !== undefined && ofRow === walk.setting.below && loop === undefined && held === undefined && (walk.setting.rowsBefore.get(ofRow)?.left.length ?? 0) === 0
}

/** Stitches of the piece worked so far that the row goes away from; the one that the join took up is not among them. */
export function leftOfPiece(walk: Walk): number {
  return Math.max(0, walk.left - (walk.bridge > 0 ? 1 : 0))
}

function leaveForPiece(walk: Walk, span: Span): void {
  const left = walk.onPiece === undefined ? 0 : leftOfPiece(walk)
  if (left === 0) return
  // `leave last 4 sts of Left leg unworked`: it is said, and said of this piece alone.
  if (walk.leaves) {
    walk.leaves = false
    return
  }
  walk.missed += left
  walk.trouble({ kind: 'left-over', span, count: left })
}

/** `sc in last st of First leg, sc in each of the other 14 sts of First leg`: the ring is begun with its last stitch. */
export function goesOnAlong({ items }: Rest, name: string): boolean {
  const next = items.find(({ node }) => node !== 'aside')
  return next?.node === 'work' && next.target?.ofPiece === name
}

/** `sc around Leg 1`: the hook goes on along the edge that another piece ended with, from its last stitch where the row begins there. */
export function goToPiece(walk: Walk, { ofPiece, edge, thing }: Target, span: Span, fromLast = false): void {
  const name = ofPiece!
  // `the 20 unworked sts of the leg` that this piece stands on: they lie on the way along the outline.
  if (walk.outline && walk.setting.hangsWith.has(name.toLowerCase()) || walk.ofPieces.has(name.toLowerCase())) return
  const piece = walk.setting.pieces.get(name.toLowerCase())
  // Where a piece is made several times, the next copy comes when the one before is used up.
  const copies = walk.onPiece?.name === name ? walk.onPiece.copies : 0
  if (copies > 0 && (walk.left > 0 || walk.bridge === 0 && copies >= (piece?.copies ?? 1))) return
  if (!piece) return walk.trouble({ kind: 'no-such-place', span, what: name })
  leaveForPiece(walk, span)
  leaveLeg(walk)
  const been = walk.legs.filter((leg) => (leg.piece?.toLowerCase() ?? walk.setting.standsOn) === name.toLowerCase()).length
  const there = piece.others?.[been - 1] ?? piece
  walk.onPiece = { name, copies: copies + 1 }
  if (walk.made.length === 0 && walk.bridge > 0) walk.own = walk.edge
  // Where the yarn was joined was told of the edge that the row leaves.
  if (walk.made.length === 0) walk.begunAt = 0
  // `each of the 15 foundation ch of next Pennant`, where its last row has no chains.
  const under = edge === 'underside' || thing?.kind === 'chain' && piece.places.every(({ kind }) => kind !== 'ch' && kind !== 'space')
  const places = under ? there.foundation() : there.places
  goOnWith(walk, fromLast ? [...places.slice(-1), ...places.slice(0, -1)] : places)
}

/** `ch 3, sc around First leg, sc in 3 ch, sc around`: behind the other piece the hook comes back to the edge that it left. */
export function backToOwn(walk: Walk, { ofPiece }: Target): void {
  if (walk.own.length === 0 || ofPiece !== undefined || walk.left > 0) return
  walk.edge = [...walk.edge.slice(0, walk.at), ...walk.own]
  walk.own = []
  walk.noneFrom.clear()
}

/** `ch 4, sc in the underside of each of the 18 ch of Second half`: a flat row goes over, by a chain or without one, to a piece that hangs together with nothing so far. */
export function toUnderside(walk: Walk, { sideOf, edge }: Target): boolean {
  const name = sideOf?.toLowerCase() ?? ''
  const piece = edge === 'underside' && !walk.round && walk.outline && walk.made.length > 0 && walk.onPiece?.name !== name ? walk.setting.pieces.get(name) : undefined
  const places = piece && !walk.setting.hangsWith.has(name) && !isOnOutline(walk.outline, name) ? piece.foundation() : []
  if (places.length === 0) return false
  leaveLeg(walk)
  walk.onPiece = { name, copies: 1 }
  goOnWith(walk, places)
  return true
}
