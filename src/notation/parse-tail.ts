import { numberAhead } from './numbers.ts'
import { takeLeftBehind } from './left-behind.ts'
import { takeAdded } from './parse-added.ts'
import { alongEdge } from './parse-edge.ts'
import { takeOpening } from './parse-held.ts'
import { takeLoop } from './parse-loop.ts'
import { partAhead, withPart } from './parse-part.ts'
import { takeOfPiece, takePieceName, takePieceOrPart } from './parse-piece-name.ts'
import { takeKeepBack, takeToEnd, takeUntilMade } from './parse-reach.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import { takeWhereabouts } from './parse-where.ts'
import { takeUpTo } from './up-to.ts'
import { takeUpToAndIn } from './up-to-and-in.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import { corner, type Target } from './target.ts'

/** A target while it is read. */
export type Draft = { -readonly [K in keyof Target]?: Target[K] }

/** `next Rnd-2 dc` */
export function takeRowPrefix(reader: Reader): number | undefined {
  if (!/^(rnd|row|round)$/.test(reader.word()) || reader.word(1) !== '-' || reader.peek(2)?.kind !== 'number') return undefined
  const row = reader.peek(2)!.value
  reader.at += 3
  return row
}

/** `front loops left empty in Round 8`, `back loops left by Row 3`, `front loop that was left in Rnd 4`: free loops of that row, or of the one that it was worked on. */
function takeLeftLoops(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  reader.take(',?', 'that|which|you?', 'you|we?', 'were|was|are|have?')
  const left = reader.take('left', 'unworked|empty|free|open|unused|over|behind?')
  const ofRow = left ? takeRowNamed(reader, 'in|by|at|after|when|while', 'working|making?') : undefined
  if (ofRow === undefined) reader.at = at
  else Object.assign(draft, { ofRow, leftBy: true })
  return ofRow !== undefined
}

/** `left unworked at Row 9`, `that were left free when working Row 9`, `left at the end of Row 9`: they are those of that row, or of the one that it was worked on. */
const leftUnworked = ['that|which?', 'were|are?', 'left', 'unworked|empty|free|open|behind', 'on|of|in|from|at|by|after|during|when|while', 'working|making|turning?', 'on|for|of|at?']

/** `of Rnd 2`, `of the previous row` */
export function takeRowOf(reader: Reader, draft: Draft): void {
  if (draft.loop !== undefined && takeLeftLoops(reader, draft)) return
  if (reader.take('of|on|from', 'the?', 'prev|previous|last', 'row|rnd|round')) return
  reader.take('that|which?', 'you|were|was', 'skipped|missed|held|left') && (reader.at -= 1)
  const skipped = takeRowNamed(reader, 'skipped|missed|held|left', 'on|of|in|from|at|by', 'the?')
    ?? takeRowNamed(reader, 'skipped|missed|held|left', 'for|under|behind|below|beneath|at', 'the|a|each|one?', 'first|second|left|right?', 'handle|thumb|sleeve|strap|buttonhole|opening|gap|armhole', 'in|of|on|from')
  if (skipped !== undefined) draft.held = 'skipped'
  // `left unworked on Row 8` lie on that row and no other.
  const onRow = takeRowNamed(reader, 'left', 'unworked|empty|free|open', 'on|of|from')
  const leftBy = onRow !== undefined ? undefined : takeRowNamed(reader, ...leftUnworked) ?? takeRowNamed(reader, ...leftUnworked, 'the?', 'end|start|beginning|beg', 'of')
  const ofRow = skipped ?? onRow ?? leftBy ?? takeRowNamed(reader, 'unworked|left?', 'of|on|from|left|in', 'of|on|from?', 'the?')
  if (ofRow === undefined) return
  draft.ofRow = ofRow
  if ((leftBy ?? skipped) !== undefined && draft.loop === undefined) draft.leftBy = true
  // `4 sc of Rnd 9 left unworked`
  reader.take('that|which?', 'were|are?', 'left', 'unworked|free|open|empty')
}

/** What may follow: `across`, `of next tile` (which has one space), `to last 3 sts`, `of ch-3`, `around`, `below`, `BLO`. */
export function takeTail(reader: Reader, draft: Draft): void {
  const ahead = partAhead(reader)
  tail(reader, draft)
  // `6 sc of last row of first shoulder`
  const part = ahead ?? (draft.thing?.kind === 'stitch' ? partAhead(reader) : undefined)
  if (part) Object.assign(draft, withPart(reader, draft, part))
}

function tail(reader: Reader, draft: Draft): void {
  if (draft.thing?.kind === 'chain') {
    const opening = takeOpening(reader)
    if (opening) draft.held = opening
  }
  takeMade(reader, draft)
  if (draft.loop === undefined) takeLoop(reader, draft)
  takeRowOf(reader, draft)
  // `first ch of the Row 15 chain`
  if (draft.thing?.kind === 'chain' && draft.ofRow !== undefined && /^(?:row|rnd|round|\d+)$/.test(reader.word(-1))) reader.take('ch|chain')
  // `in each sc across Row 10 of first shoulder`
  const across = draft.ofRow === undefined && draft.thing?.kind === 'stitch' ? takeRowNamed(reader, 'across|along|over', 'the?') : undefined
  if (across !== undefined) draft.ofRow = across
  takeLeftBehind(reader, draft)
  takeOfStep(reader)
  if (draft.thing?.kind === 'stitch' && /^(?:first|last|next)$/.test(draft.walk ?? '')) takeOfEdge(reader)
  if (draft.count) takeToPiece(reader)
  if (draft.thing?.kind === 'space') reader.take('of', 'the|a?', 'next|same|last|each|first?', 'tile|tiles|block|blocks|shell|shells|sh|fan|fans|group|groups|cluster|clusters|v|v-st|v-sts', 'below?') && takeRowNamed(reader, 'in|of', 'the?')
  if (reader.take('held', 'tog|together')) draft.together = true
  const back = takeKeepBack(reader) ?? (draft.walk === 'each' ? upToTurningChain(reader) : undefined)
  if (back) {
    draft.keepBack = back
    return
  }
  if (draft.thing?.kind === 'chain') {
    takeFoundation(reader)
    if (draft.ofRow === undefined) takeAdded(reader)
  }
  const { at: piece } = reader
  // `along the top of the next flag`: the edge that its last row left.
  if (draft.ofPiece === undefined && (reader.take('along|across|over|at|on', 'the?', 'top|upper|last', 'edge|row|rnd?', 'of') || reader.take('around|round|of|on|from|along'))) {
    const ofPiece = takePieceOrPart(reader)
    if (ofPiece !== undefined) draft.ofPiece = ofPiece
    else reader.at = piece
    // `first ch of Back foundation`
    if (ofPiece !== undefined && draft.thing?.kind === 'chain' && reader.take('foundation', 'edge|row|ch|chain?')) draft.edge = 'underside'
    // `13 sc of Log 1 Row 7`
    const ofRow = ofPiece === undefined || draft.ofRow !== undefined ? undefined : takeRowNamed(reader, ',?')
    if (ofRow !== undefined) draft.ofRow = ofRow
    // `4 dc of Back left unworked`
    if (ofPiece !== undefined) takeLeftBehind(reader, draft)
  }
  const untilMade = draft.walk === 'each' ? takeUntilMade(reader) : undefined
  if (untilMade) {
    draft.untilMade = untilMade
    return
  }
  if (takeIncluded(reader, draft) || takeUntil(reader, draft)) return
  // `sc in each sc across the back wall`: by the name of the piece.
  const { at: whole } = reader
  if (draft.walk === 'each' && reader.take('across|along|over') && takePieceName(reader) !== undefined && placeEnds(reader)) {
    draft.toEnd = true
    return
  }
  reader.at = whole
  // `dc in each dc across front`: a part of the piece ends where the next thing is named.
  if (draft.walk === 'each' && reader.take('across|along|over', 'the?', 'left|right|first|second?', 'front|back|sleeve|body|yoke|shoulder|panel')) {
    draft.until = { kind: 'space' }
    return
  }
  takeReach(reader, draft)
  if (takeIncluded(reader, draft)) return
  if (draft.walk === 'next' && draft.thing && draft.toEnd && !draft.count) draft.walk = 'each'
  if (takeBelow(reader) && draft.walk !== 'skipped') draft.walk = 'below'
}

/** `loop just formed`, `last st that you made in Row 12`: the one at which the hook stands. */
function takeMade(reader: Reader, draft: Draft): void {
  const { at } = reader
  const made = reader.word(-1) === 'made' || reader.take('that|which?', 'you|we|was?', 'just?', 'formed|completed|made|worked|finished')
  if (!made || /^(so|in)$/.test(reader.word()) && reader.word(1) === 'far') {
    reader.at = at
    return
  }
  if (draft.walk !== 'last' && draft.walk !== 'first' || draft.count && draft.count.values[0] !== 1) return
  takeRowNamed(reader, 'in|on|of|at|for') ?? reader.take('in|on|of', 'the?', 'last|previous|prev|row', 'row|rnd|round?')
  // After a turn it is the first one of the edge.
  if (draft.walk === 'last') draft.walk = 'next'
}

/** `dc in each st to top of turning ch`: the chain, which is a stitch, is kept back. */
function upToTurningChain(reader: Reader): Draft['keepBack'] {
  const { at, start } = reader
  if (reader.take('across?', 'to|until', 'the?')) {
    reader.take('top', 'of', 'the?')
    if (takeThing(reader)?.kind === 'turning-chain') return { values: [1], start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `across the bottom`, `around`, `to next corner`: as far as an edge goes. */
function takeReach(reader: Reader, draft: Draft): void {
  const { at } = reader
  // `in any sc along an edge`: one as well as another.
  if (reader.take('along|on|of', 'a|an|any|one', 'long|short|straight|outer?', 'edge|side') && placeEnds(reader)) return
  reader.at = at
  const edge = alongEdge(reader, reader.start)
  if (edge?.walk === 'edge' && edge.edge) {
    // `across the bottom`, `along the top edge`
    draft.toEnd = true
    draft.edge = edge.edge
  } else {
    reader.at = at
    // `in each of 18 dc across the forehead`: so many, and words that tell where.
    if (draft.count && /^(across|along)$/.test(reader.word()) && takeWhereabouts(reader)) return
    if (takeToEnd(reader)) {
      draft.toEnd = true
      if (reader.all.slice(at, reader.at).some(({ text }) => /^(across|along)$/i.test(text))) draft.across = true
      if (reader.word(-1) === 'corner') draft.until = corner
    }
  }
}

/** `4 sts of the next step`, `row-end of the step`: the step that comes next anyway. */
export function takeOfStep(reader: Reader): void {
  // A piece may be called like a step: `of Stair Edging`.
  const { at } = reader
  if (takeOfPiece(reader)) reader.at = at
  else reader.take('of|on|at|along', 'the|each|this?', 'first|second|third|fourth|next|last|same|other|left|right|upper|lower?', '-?', 'hand?', 'armhole|neck|shoulder|side?', 'step|steps|stair|stairs|ledge|shelf')
}

/** `first sc of top`, `last st of the lower edge`, `first st of its tip`: of the edge that comes next anyway. */
function takeOfEdge(reader: Reader): void {
  const { at } = reader
  if (reader.take('of|on|along', 'the?', 'top|upper|bottom|lower', 'edge?') && placeEnds(reader)) return
  reader.at = at
  if (!reader.take('of|on|at|along', 'the|its|this?', 'flap|earflap|strap|tab|tongue?', 'tip|end') || !placeEnds(reader)) reader.at = at
}

/** `ch of foundation`, `ch on opposite side of foundation ch`, `ch of the underside`: which chains these are. */
function takeFoundation(reader: Reader): void {
  const { at } = reader
  if (reader.take('along|across|on|of', 'the?', 'foundation|base') && (reader.take('ch|chain|edge|row|ring|circle|loop') || reader.done || /^[,;.:()]$/.test(reader.word()))) return
  reader.at = at
  if (reader.take('of', 'both', 'foundations|chains')) return
  const side = reader.take('of|along|on|at', 'the?', 'underside|bottom|other|opposite', 'edge|side?')
  const { at: tail } = reader
  // `along the underside of the Row 15 chain`
  if (side && reader.take('of', 'the?') && takeRowNamed(reader) !== undefined && reader.take('ch|chain|chs')) return
  reader.at = tail
  const chain = reader.take('of', 'the?', 'foundation|beginning|beg|starting|base?', 'ch|chain|chs') || reader.take('of', 'the?', 'foundation', 'edge|row?')
  if (!chain) reader.at = side ? tail : at
}

/** `each of the 16 tr to Tab 2`: so many, and what they lead to. */
function takeToPiece(reader: Reader): void {
  const { at } = reader
  if (!reader.take('up?', 'to|towards', 'the?') || takePieceOrPart(reader) === undefined || !reader.done && !/^([,.;:()]|and)$/.test(reader.word())) reader.at = at
}

function takeIncluded(reader: Reader, draft: Draft): boolean {
  const until = draft.walk === 'each' ? takeUpToAndIn(reader) : undefined
  if (until) Object.assign(draft, { until, including: true })
  return until !== undefined
}

/** `sc in each sc to ch-2 sp`, `to next corner`: it ends before that. */
export function takeUntil(reader: Reader, draft: Draft): boolean {
  const until = draft.walk === 'each' ? takeUpTo(reader) : undefined
  if (until) draft.until = until
  return until !== undefined
}

export function takeBelow(reader: Reader): boolean {
  // `below the strap` tells where.
  if (reader.word() === 'below' && reader.word(1) !== 'the' && reader.take('below')) return true
  const at = reader.at
  const num = numberAhead(reader)
  if (num !== undefined) {
    reader.at += 1
    if (reader.take('row|rows|rnd|rnds|round|rounds', 'below|down')) return true
  }
  reader.at = at
  return false
}
