import { handedStitch, takeHandOfRow } from './hand-of-row.ts'
import { joinedPlaces } from './joined-places.ts'
import { numberAhead } from './numbers.ts'
import { ontoBody } from './onto-body.ts'
import { takeItsCorner } from './parse-apposition.ts'
import { beyond, takeBeside } from './parse-beside.ts'
import { takeBesideJoin } from './parse-joins.ts'
import { takeNeighbour } from './parse-neighbour.ts'
import { nthToJoin } from './parse-ordinal.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { takeTarget } from './parse-target.ts'
import { takeStitchName } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import { centreInWords, cornerInWords, endInWords, footOfSide, isAtStep } from './place-in-words.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Aside, Instruction, Join, Skip, Work } from './syntax.ts'
import type { Target } from './target.ts'
import { toSeparator } from './to-separator.ts'

const ringWords = ['to|and', 'form|make', 'a|the?', 'ring|circle|loop']

/** `join with sl st in first sc`, `join`, `sl st in first ch to form ring`, `sl st to top of beg ch-3`. */
export function parseJoin(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  if (reader.take('join|joining|rejoin|rejoining|reattach') || reader.take('attach', 'the|a|one?', 'new|main|contrast|contrasting|second|other|next|fresh?', 'yarn|thread|strand|wool|cotton|color|colour') && (reader.at -= 1) > 0) return joinWord(reader, start, before)
  // `Ch 1 after joining yarn in first ch`: the row's opening puts them in order.
  if (before.every(({ node }) => node === 'aside' || node === 'chain') && reader.take('after', 'joining|rejoining|attaching')) return joinWord(reader, start, [])
  if (reader.take('beginning|starting|begin|start', 'with', 'the?', 'yarn|thread', 'joined|attached')) return joinWord(reader, start, before)
  const first = before.every(({ node }) => node === 'aside' || node === 'skip')
  if (first && drawsUpLoop(reader)) return joinWord(reader, start, before)
  const inserted = first ? insertsHook(reader, before) : undefined
  if (inserted) return inserted
  if (reader.take('close', 'with|rnd|round?', 'sl?')) return closing(reader, start)
  if (!reader.take('with?', 'a|1|one?', 'sl', '-?', 'st|stitch') && !reader.take('with?', 'a|1|one?', 'ss|slst')) {
    reader.at = at
    return undefined
  }
  // `slip stitch the two ends together, one slip stitch through each pair`: what is done is told behind.
  if (reader.take('the', 'two|2?', 'ends|edges|sides|halves', 'together')) return [{ node: 'aside', start, end: reader.end }]
  const sideways = joinedPlaces(reader, before) ? undefined : ontoBody(reader, start)
  if (sideways) return [sideways]
  const join = slipJoin(reader, start, before)
  if (!join) reader.at = at
  return join && [join]
}

/** `join with sc in first ch`, `join yarn with a standing dc in any ch-2 sp`: the stitch that the yarn is joined with, the first of the row. */
function takeWithStitch(reader: Reader): Work | undefined {
  const { at, start } = reader
  const stitch = reader.take('yarn|thread?', 'with|using|by', 'a|an|1|one?', 'standing?') ? takeStitchName(reader) : undefined
  if (stitch !== undefined && stitch !== 'sl st' && /^(?:in|into|to)$/.test(reader.word())) return { node: 'work', stitch, target: { walk: 'same', start, end: reader.end }, start, end: reader.end }
  reader.at = at
  return undefined
}

/** `draw up a loop in first ch`, `fasten yarn on at the top corner`: the yarn is joined there. */
function drawsUpLoop(reader: Reader): boolean {
  const { at } = reader
  const drawn = reader.take('draw|drawing|pull|pulling', 'up|through?', 'a', 'loop|lp', 'up|through|of?', 'yarn?') || reader.take('fasten|fastening', 'the|new?', 'yarn|thread', 'on|in?')
  if (drawn && reader.word(-1) === 'through') reader.at -= 1
  // `draw up a loop in each st`: loops that are worked.
  if (drawn && /^(?:in|at|through|from|to|into)$/.test(reader.word()) && ![1, 2].some((ahead) => /^(?:each|every|next)$/.test(reader.word(ahead)))) return true
  reader.at = at
  return false
}

/** `insert hook in first of the 6 skipped sc, pull up a loop`: joined there as well. */
function insertsHook(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take('insert|inserting', 'the|your?', 'hook') && /^(?:in|into|through|under)$/.test(reader.word())) {
    const joined = joinWord(reader, start, before)
    if (joined && reader.take(',?', 'and?', 'pull|draw|pulling|drawing', 'up|through?', 'a', 'loop|lp')) return joined
  }
  reader.at = at
  return undefined
}

function joinWord(reader: Reader, start: number, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const piece = reader.at
  const ofPiece = reader.take('to') ? takePieceName(reader) : undefined
  if (ofPiece !== undefined) {
    const stitch = reader.take('with|by|using', 'a|an|1|one?') ? takeStitchName(reader) : undefined
    const { end } = reader
    toSeparator(reader)
    const join: Instruction = { node: 'join', piece: true, start, end }
    // `join to first leg with a sc in any st`: it is the first of that leg's stitches.
    if (stitch === undefined || stitch === 'sl st') return [join]
    return [join, { node: 'work', stitch, count: { values: [1], start, end }, target: { walk: 'next', ofPiece, start, end }, start, end }]
  }
  reader.at = piece
  const begins = !before.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat' || item.node === 'chain' || item.node === 'shape')
  const yarn = yarnLetter(reader)
  const standing = begins ? takeWithStitch(reader) : undefined
  const target = joinTail(reader)
  const ring = reader.take(...ringWords)
  if (begins && (target || yarn !== undefined)) {
    const aside: Instruction = { node: 'aside', ...(yarn !== undefined && { yarn }), start, end: reader.end }
    const atCorner = target !== undefined && takeItsCorner(reader)
    return target ? [aside, ...passedOver(target), { node: 'start', target: fromTheEnd(reader, piece, target), ...(atCorner && { atCorner }), start, end: reader.end }, ...(standing ? [{ ...standing, end: reader.end }] : [])] : [aside]
  }
  // `Join the yarn and work 1 sc into …`, `Join yarn, ch 1, …`
  const { at: here } = reader
  const yarnOnly = begins && /^(yarn|thread|color|colour)$/.test(reader.word(-1)) && (reader.done || /^([,;.:]|and|then)$/.test(reader.word()))
  if (yarnOnly) return [{ node: 'aside', start, end: reader.all[here - 1]!.end }]
  if (begins) toWork(reader)
  else {
    toSeparator(reader)
    takeHow(reader)
  }
  // `Join yarn at top of left neck edge`: where on the piece, in words.
  if (begins && reader.all.slice(piece, reader.at).some(({ text }) => /^(at|edge|side|neck|shoulder|seam|corner|centre|center|armhole|beginning|end)$/i.test(text))) return [{ node: 'aside', start, end: reader.end }]
  // A place that is told by a number, in words that are not understood: the row may begin elsewhere.
  if (begins && reader.all.slice(piece, reader.at).some(({ kind }) => kind === 'number' || kind === 'ordinal')) return [{ node: 'unreadable', why: 'word', reason: 'where the yarn is joined', start, end: reader.end }]
  return [{ node: 'join', ...(ring && { ring }), start, end: reader.end }]
}

/** `join (sl st in first sc)`: how it is done. */
function takeHow(reader: Reader): void {
  const { at } = reader
  const slip = reader.take('(', 'with?', 'a?', 'sl|slip', '-?', 'st|stitch') || reader.take('(', 'with?', 'a?', 'ss|slst')
  if (slip) toSeparator(reader)
  if (!slip || !reader.take(')')) reader.at = at
}

/** `join yarn in 19th tr after Tab A`: 18 of those that are left are passed over. */
function passedOver({ ofLeft, passing = 0, thing, ofRow, start, end }: Target): readonly Skip[] {
  return ofLeft && passing > 0 ? [{ node: 'skip', count: { values: [passing], start, end }, ...(thing && { thing }), ...(ofRow !== undefined && { ofRow }), unworked: true, from: 'next', start, end }] : []
}

/** `join yarn in end ch`: the row goes on from there, so it is the first one. */
function fromTheEnd(reader: Reader, from: number, target: Target): Target {
  if (target.ofLeft) return { walk: 'next', thing: target.thing!, start: target.start, end: target.end }
  return target.walk === 'last' && !target.count && reader.all.slice(from, reader.at).some(({ text }) => /^end$/i.test(text)) ? { ...target, walk: 'first' } : target
}

/** What `left` and `right` are of, where they tell an end of a row: not `of the right front`, which is how a garment is worn. */
const handed = /^(?:-|hand|side|edge|end|corner|)$/

/** After `join`: `with sl st`, `in first sc`, `to top of ch-3`, `being careful not to twist`. */
function joinTail(reader: Reader) {
  reader.take('the|a?', 'contrast|contrasting|main|new|second|other|next', 'yarn|thread|strand|wool|cotton|color|colour') || reader.take('yarn|thread|strand|wool|cotton|rnd|round') || reader.take('ball|skein', 'of?', 'yarn|thread?')
  reader.take('with|using|by', 'a|an?', 'sl|ss|slst|standing?', '-?', 'st?')
  reader.take('yarn|thread|wool|cotton')
  reader.take('with?', 'rs|ws', 'facing', ',?') || reader.take('with?', 'the?', 'right|wrong', 'side', 'facing', ',?')
  if (/^(at|to|in|on)$/.test(reader.word()) && (cornerInWords(reader) || footOfSide(reader) || centreInWords(reader) || endInWords(reader))) return undefined
  const atRowItself = endOfRowNamed(reader)
  if (atRowItself) return atRowItself
  const { at: from } = reader
  takeAtSeam(reader)
  const whereFirst = whereThenPlace(reader)
  const into = /^(?:to|in|into)$/.test(reader.word())
  // `to the last sc of Row 4` goes into it, and not as far as it.
  const toLast = reader.word() === 'to' && /^(?:last|final)$/.test(reader.word(reader.word(1) === 'the' ? 2 : 1)) && reader.take('to')
  const named = nthToJoin(reader) ?? handedStitch(reader) ?? takeTarget(reader, !toLast)
  // `to the foundation chain below the start of Round 1`: into one of its chains.
  const place: Target | undefined = into && named?.walk === 'edge' && named.edge === 'underside' ? { walk: 'next', thing: { kind: 'chain' }, start: named.start, end: named.end } : named
  const after = place && takeAfter(reader)
  const ofRow = place?.walk === 'next' && place.thing?.kind === 'stitch' && !after ? takeHandOfRow(reader) : undefined
  const target = after ? { ...place, after, end: reader.end } : ofRow ? { ...place!, ...ofRow, end: reader.end } : place
  if (target) takeBesideJoin(reader)
  if (target) takeSideOfPart(reader)
  if (target?.thing?.kind === 'chain') takeUnderLast(reader)
  const whereBehind = target && takeWhereabouts(reader)
  const where = whereFirst ?? whereBehind
  // `to left edge of bag panel at Row 12`
  const atRow = target?.walk === 'edge' && target.ofRow === undefined ? takeRowNamed(reader, 'at', 'the?', 'end?', 'of?') : undefined
  if (target && atRow !== undefined) return { ...target, ofRow: atRow, end: reader.end } satisfies Target
  // `in the end of Row 1 at the right-hand edge`, `in first unworked st of Row 12 at the right-hand edge`
  const ofStep = target?.thing?.kind === 'stitch' && reader.all.slice(from, reader.at).some(({ text }) => /^(?:unworked|unused|free)$/i.test(text))
  const hand = (target?.walk === 'edge' || ofStep) && target?.ofRow !== undefined ? where?.find((word, index) => /^(?:left|right)$/.test(word) && handed.test(where[index + 1] ?? '')) : undefined
  if (target && hand) return { ...target, hand: hand as 'left' | 'right' }
  // `to the corner`: of the piece, and no place of the edge.
  if (target?.walk === 'each' && target.until) return undefined
  // `in the ch-2 sp before the first side`: one of the corners.
  if (target?.walk === 'next' && target.thing?.kind === 'space' && /^(before|after)$/.test(where?.[0] ?? '')) return { ...target, thing: { ...target.thing, where: 'corner' } } satisfies Target
  if (target && isAtStep(reader, from, target)) return { walk: 'first', thing: { kind: 'stitch' }, nthOfStep: 1, start: target.start, end: target.end } satisfies Target
  // `in the hdc of the top right corner`
  const atCorner = target !== undefined && target.walk === 'next' && target.thing?.kind === 'stitch' && target.thing.stitch !== undefined && where?.includes('corner') === true
  return atCorner ? { ...target, thing: { kind: 'stitch', where: 'corner' } } satisfies Target : target
}

/** `at the 1st row at right front`, `beside Row 4 on the left-hand side`: the end of that row. */
function endOfRowNamed(reader: Reader): Target | undefined {
  const { at, start } = reader
  const ofRow = reader.take('at|beside', 'the', 'first', 'row') ? 1 : takeRowNamed(reader, 'at|beside', 'the?')
  const flat = ofRow !== undefined && reader.all.slice(at, reader.at).some(({ text }) => /^(?:row|r)$/i.test(text))
  if (flat) reader.take(',')
  const where = flat ? takeWhereabouts(reader) : undefined
  if (flat && (where || reader.word(-1) !== ',') && placeEnds(reader, 'with')) {
    const hand = where?.find((word, index) => /^(?:left|right)$/.test(word) && handed.test(where[index + 1] ?? '')) as 'left' | 'right' | undefined
    return { walk: 'edge', edge: 'side', ofRow: ofRow!, ...(hand && { hand }), start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `after any ch-2 sp`, `to the left of a corner`, `following the last ch-3 sp`: behind which place the one lies that was named. */
function takeAfter(reader: Reader): Target['after'] {
  const { at } = reader
  const after = takeBeside(reader, beyond) ?? takeBeside(reader, 'to?', 'the?', 'left', 'of')
  if (after) takeRowNamed(reader, 'of|in')
  if (after && (placeEnds(reader, 'with') || takeWhereabouts(reader))) return after
  reader.at = at
  return undefined
}

/** `in the ch below the last sc of Row 1`, `at the base of the final st of Row 1`: with the right side facing, the chain that is come to first. */
function takeUnderLast(reader: Reader): void {
  const { at } = reader
  const under = reader.take('below|under|beneath|underneath') || reader.take('at', 'the?', 'base|foot|bottom', 'of')
  const last = under && reader.take('the?', 'last|final') && (reader.take('st|stitch') || takeStitchName(reader) !== undefined)
  const first = last && takeRowNamed(reader, 'of') === 1
  if (first) takeOfPiece(reader)
  if (!first || !placeEnds(reader, 'with')) reader.at = at
}

/** `in first unworked sc of Rnd 8, left of the flap`: on which side of another part. */
function takeSideOfPart(reader: Reader): void {
  const { at } = reader
  reader.take(',?', 'just|immediately?', 'to?', 'the?')
  const side = reader.take('left|right', '-?', 'hand?', 'side?', 'of', 'the?') && (takePieceName(reader) !== undefined || reader.take('flap|tab|strap|step|slit|opening|seam|handle|loop|prong|notch'))
  if (!side || !placeEnds(reader, 'with')) reader.at = at
}

/** `at seam in underside of foundation ch`: beside which seam the place lies that follows. */
function takeAtSeam(reader: Reader): void {
  const { at } = reader
  if (!reader.take('at|near|beside|by', 'the|one|either?', 'side|back|center|centre|inner?', 'seam') || !/^(?:in|into|to|with)$/.test(reader.word())) reader.at = at
}

/** `at the right-hand edge of the foundation, in the end of Row 1`: the place behind the words that tell where it lies. Takes and gives those words. */
function whereThenPlace(reader: Reader): readonly string[] | undefined {
  const { at } = reader
  const where = reader.take('in|at', 'the', 'inner|inside', 'corner|angle') ? ['inner', 'corner'] : takeWhereabouts(reader)
  if (where && reader.take(',', 'that?', 'is?') && /^(in|into|to|with)$/.test(reader.word())) return where
  reader.at = at
  return undefined
}

function yarnLetter(reader: Reader): string | undefined {
  if (/^(yarn|thread|color|colour|new)$/.test(reader.word(1))) reader.take('the|a')
  reader.take('yarn|thread|color|colour|new', 'yarn|color|colour?')
  const word = reader.peek()?.text ?? ''
  if (!reader.vocabulary.yarns.includes(word) && !/^[A-Z]$/.test(word)) return undefined
  reader.at += 1
  return word
}

function slipJoin(reader: Reader, start: number, before: readonly Instruction[]): Join | Aside | undefined {
  const along = joinedPlaces(reader, before)
  const neighbour = takeNeighbour(reader)
  // Nothing of this motif is used or made. The chain before it may lie between two pieces, as between two legs.
  if (neighbour) return { ...(neighbour.piece === undefined ? { node: 'aside' } : { node: 'join', piece: true, ...(along && { along }) }), neighbour, start, end: reader.end }
  const target = takeTarget(reader)
  const { at: after } = reader
  const piece = target?.ofPiece ?? (target && reader.take('of') ? takePieceName(reader) : undefined)
  if (piece !== undefined || along) return { node: 'join', piece: true, ...(along && { along }), start, end: reader.end }
  reader.at = after
  // `sl st through both layers across to close the heel`: a join goes into one place.
  if (target?.walk === 'layers' || target?.walk === 'each') return undefined
  const ring = reader.take(...ringWords)
  const tojoin = reader.take('to', 'join|close')
  const worked = before.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')
  const atStart = target?.walk === 'nth' || target?.walk === 'first' && (target.count?.values[0] ?? 1) === 1 || target?.thing?.kind === 'turning-chain'
    || target?.walk === 'from-hook' && worked
  // `Ch 96. Sl st to first ch`: a ring of chains.
  const onChain = !worked && before.at(-1)?.node === 'chain' && target?.walk === 'first' && target.thing?.kind === 'chain'
  if (!ring && !tojoin && !(worked && atStart) && !onChain && reader.word() !== 'join') return undefined
  if (!target && !tojoin && !ring) return undefined
  reader.take('join')
  toSeparator(reader)
  return { node: 'join', ...(ring && { ring }), ...(target?.walk === 'first' && { inFirst: true }), start, end: reader.end }
}

function closing(reader: Reader, start: number): readonly Join[] {
  toSeparator(reader)
  return [{ node: 'join', start, end: reader.end }]
}

/** As far as the clause goes, or as the work that begins there: `join yarn at the bottom right-hand corner and sc in …`. */
function toWork(reader: Reader): void {
  while (!reader.done && !/^[,;.:()[\]{}]$/.test(reader.word())) {
    const works = /^(?:and|then)$/.test(reader.word()) && (numberAhead(reader, 1) !== undefined || /^(?:ch|chain|work|make)$/.test(reader.word(1)) || reader.vocabulary.stitchAt([reader.word(1), reader.word(2)]) !== undefined)
    if (works) return
    reader.at += 1
  }
}
