import { takeCornersListed } from './corners-listed.ts'
import { numberAhead, takeNumber, takeTimesWord } from './numbers.ts'
import { skippedCountLater, takeCountsAs } from './parse-counts-as.ts'
import { takeInsteadOfOne } from './instead-of-one.ts'
import { takeAcrossLeft } from './parse-across-left.ts'
import { parseAgain } from './parse-again.ts'
import { takeItsCorner } from './parse-apposition.ts'
import { endsSide, inAllAlong, oneInEach, onePerRow, takeEdgeCount } from './parse-edge-count.ts'
import { takeRows, takeSideAtRate } from './parse-rate.ts'
import { leftLater } from './parse-reach.ts'
import { takeNth } from './parse-nth.ts'
import { parseShape } from './parse-shape.ts'
import { joined, joinsWith } from './standing-stitch.ts'
import { takeLegs, takeTogether, takeUnnamedTogether } from './parse-together.ts'
import { takeInnerCorner } from './parse-inner-corner.ts'
import { takeLoop } from './parse-loop.ts'
import { takeTarget } from './parse-target.ts'
import { over } from './parse-over.ts'
import { takeName } from './parse-stitch-name.ts'
import { takeWayThrough, throughLayers, throughParts } from './parse-through.ts'
import { inColour } from './parse-yarn.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Repeat, Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

/** A stitch while it is read. */
type Draft = { -readonly [K in keyof Work]?: Work[K] }

/**
 * Stitches and where they go:
 *
 *   sc in next 3 sts   3 sc in next st   8 sc   sc 8   inc   sc2tog over next 2 sts   dc in each dc around
 */
export function parseStitch(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  return parseAgain(reader, before) ?? parseShape(reader) ?? stitches(reader, before)
}

function stitches(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  const draft: Draft = { node: 'work' }
  // `work in sc to last 2 sts`
  if (reader.word() === 'work' && reader.word(1) === 'in' && reader.vocabulary.stitchAt([reader.word(2)])) reader.at += 2
  reader.take('a|one|1', 'row|rnd|round', 'of')
  if (reader.word() === 'pick' && reader.word(1) === 'up' && reader.peek(2)?.kind === 'number' && !/^(lp|loop)s?$/.test(reader.word(3))) reader.at += 2
  takeLoop(reader, draft)
  const about = reader.take('about|approximately|approx')
  const legged = namesLegs(reader)
  const count = legged ? undefined : takeCount(reader)
  const times = count && multiplies(reader)
  if (count) draft.count = count
  if (!draft.loop) takeLoop(reader, draft)
  reader.take('more')
  // `last dc in top of tch`, `stacked sc`, `chainless starting dc`: words before the stitch that change no count.
  const nameFrom = reader.at
  const together = !count && takeUnnamedTogether(reader, draft)
  const last = reader.word() === 'the' && /^(?:last|final)$/.test(reader.word(1)) ? reader.vocabulary.stitchAt([reader.word(2), reader.word(3)]) : undefined
  if (last && /^(?:in|into|on|over)$/.test(reader.word(2 + last.words))) reader.at += 2
  else reader.take('last|final')
  // `…, last dc in top of tch` may be the last of those before it; `Work the last dc in …` is one more.
  const isLast = reader.at - at === 1 && /^(?:last|final)$/.test(reader.word(-1)) && reader.all[at - 1]?.text === ','
  const standing = reader.word() === 'standing'
  for (let word = reader.takeOne(beginnings); word && reader.vocabulary.stitchAt([word, reader.word()])?.words !== 2; word = reader.takeOne(beginnings));
  if (!together && !takeName(reader, draft) && !(count && atRate(reader, draft))) {
    reader.at = at
    return undefined
  }
  const those = before.at(-1)
  if (isLast && those?.node === 'work' && those.stitch === draft.stitch && those.target?.count) draft.lastOfThese = true
  draft.name = { start: reader.all[nameFrom]?.start ?? start, end: reader.end }
  const nth = takeNth(reader, before)
  if (nth && /tog$/.test(draft.stitch ?? '')) draft.over = nth.count
  else if (nth) draft.target = nth.target
  takeAfterName(reader, draft)
  const counts = takeCountsAs(reader) ?? (draft.target?.walk === 'from-hook' ? skippedCountLater(reader) : undefined)
  if (counts) draft.counts = counts
  if (about) {
    // Only an edge tells how many `about 12 sc` are.
    if (draft.target?.walk !== 'edge' && !draft.target?.evenly) {
      reader.at = at
      return undefined
    }
    draft.about = true
  }
  const led = count || draft.over ? undefined : takeLead(reader, draft, start)
  if (led) return led
  const edge = before.at(-1)
  if (!draft.target && !draft.over && (draft.count || reader.word() === 'evenly')) {
    const side = takeSideAtRate(reader)
    if (side) draft.target = side
  }
  // `along base, 24 dc; up side, 28 dc`: those of the edge that was named.
  if (draft.count && !draft.target && !draft.over && edge?.node === 'start' && edge.target.walk === 'edge' && edge.target.ofRow === undefined && endsSide(reader)) draft.target = edge.target
  const work = { ...(draft as Work), start, end: reader.end }
  if (standing && joinsWith(work, before)) return joined(work)
  if (times && count) {
    const { count: _, ...single } = work
    return [{ ...times2([single], count, start, reader.end), prefixed: true }]
  }
  if (work.layers && !work.target && !work.count && reader.word() === ',' && numberAhead(reader, 1) !== undefined && reader.word(2) === 'times') reader.at += 1
  return [...(nth?.skipped ? [nth.skipped] : []), multiplied(reader, work)]
}

/** `sc through both pieces as follows: 1 sc in …`, `sc down the left edge: 1 sc in each row-end`: what is worked there is told behind. */
function takeLead(reader: Reader, { target, layers }: Draft, start: number): readonly Instruction[] | undefined {
  const { at } = reader
  const edge = target?.walk === 'edge' && !target.evenly && !target.rate ? target.edge : undefined
  const follows = (!target || edge || target.walk === 'each' && target.toEnd && !target.thing) && reader.take(',?', 'as|like', 'follows|this')
  const leads = follows || edge ? reader.take(':') : false
  const stitch = numberAhead(reader) === undefined ? 0 : 1
  const found = leads ? reader.vocabulary.stitchAt([reader.word(stitch), reader.word(stitch + 1)]) : undefined
  const worksThere = found && (follows || /^(?:in|into|tog|together)$/.test(reader.word(stitch + found.words)))
  if (!worksThere) {
    reader.at = at
    return undefined
  }
  const span = { start, end: reader.end }
  if (layers) return [{ node: 'start', target: { walk: 'layers', ...span }, ...span }]
  return edge === 'top' || edge === 'underside' ? [{ node: 'start', target: { walk: 'edge', edge, ...span }, ...span }] : [{ node: 'aside', ...span }]
}

/** `3 sts for every 2 rows`: of the stitch in hand. */
function atRate(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const rated = reader.take('sts|st|stitches|stitch') && /^(for|per|to)$/.test(reader.word()) && takeRows(reader) !== undefined
  reader.at = rated ? at + 1 : at
  if (rated) draft.stitch = 'st'
  return rated
}

/** `3-dc cl`, `4-dc bobble`: the number belongs to the stitch's name. */
function namesLegs(reader: Reader): boolean {
  if (reader.peek()?.kind !== 'number' || !/^[-–]$/.test(reader.word(1)) && reader.peek(1)?.kind !== 'word') return false
  const words = [0, 1, 2, 3].map((ahead) => reader.word(ahead))
  return (reader.vocabulary.stitchAt(words)?.words ?? 0) > 2
}

/** `3 sc`, `a dc`, `6 (7, 8) sc` */
function takeCount(reader: Reader): Num | undefined {
  const token = reader.peek()
  if (token && (token.text === 'a' || token.text === 'an')) {
    reader.at += 1
    return { values: [1], start: token.start, end: token.end }
  }
  return takeNumber(reader)
}

/** `2x inc`: the number multiplies what follows. */
function multiplies(reader: Reader): boolean {
  return !isLetterX(reader) && reader.take('x|×')
}

/** In letter code a large X is the stitch itself. */
function isLetterX(reader: Reader): boolean {
  return reader.vocabulary.letters === true && reader.peek()?.text === 'X'
}

function times2(items: readonly Instruction[], count: Num, start: number, end: number): Repeat {
  return { node: 'repeat', items, times: { kind: 'in-all', count }, unit: { start, end }, body: { start, end }, start, end }
}

/** `inc x 6`, `dec 6 times`, `sc2tog twice` */
function multiplied(reader: Reader, work: Work): Instruction {
  const at = reader.at
  const word = takeTimesWord(reader)
  if (word) return inOnePlace(reader, work, word) ?? times2([work], word, work.start, reader.end)
  const sign = !isLetterX(reader) && reader.take('x|×')
  const count = sign || numberAhead(reader) !== undefined ? takeNumber(reader) : undefined
  if (count && (reader.take('times|time|x|×') || sign)) return inOnePlace(reader, work, count) ?? times2([work], count, work.start, reader.end)
  reader.at = at
  return work
}

/** `sc twice in first st`, `dc 3 times in next sp`: so many in one place. */
function inOnePlace(reader: Reader, work: Work, count: Num): Work | undefined {
  if (work.target || work.count || !/^(in|into)$/.test(reader.word())) return undefined
  const { at } = reader
  const target = takeTarget(reader)
  if (target?.thing && !target.count && /^(next|first|last|same|each)$/.test(target.walk)) return { ...work, count, target, end: reader.end }
  reader.at = at
  return undefined
}

const beginnings = new Set(['stacked', 'chainless', 'standing', 'starting', 'chain-less', 'full'])

function takeAfterName(reader: Reader, draft: Draft): void {
  reader.take('loosely|tightly')
  reader.take('st|sts|stitch|stitches')
  takeInsteadOfOne(reader)
  if (!draft.target && !draft.over) takeTogether(reader, draft)
  takeLegs(reader, draft)
  if (draft.stitch === 'inc' && reader.touches(0) && reader.word() === '3' && draft.count === undefined) {
    reader.at += 1
    draft.of = 3
  }
  if (!draft.loop) takeLoop(reader, draft)
  if (numberAhead(reader) !== undefined && !/^(x|×|times|time)$/.test(reader.word(1)) && !(reader.word(1) === 'more' && /^times?$/.test(reader.word(2))) && draft.count === undefined) {
    const { at } = reader
    const count = takeNumber(reader)
    // `dc2tog 6 (9) times`: in sizes too.
    if (/^times?$/.test(reader.word())) reader.at = at
    else if (count) {
      draft.count = count
      draft.numberLast = true
    }
    reader.take('more')
    reader.take('st|sts|stitch|stitches')
    if (!draft.loop) takeLoop(reader, draft)
  }
  if (!draft.target && !draft.over) {
    const left = takeAcrossLeft(reader, draft.count)
    if (left) {
      draft.target = left
      delete draft.count
    }
  }
  const inner = /[23]tog$|^dec$/.test(draft.stitch ?? '') && !draft.target ? takeInnerCorner(reader, draft.stitch!.endsWith('3tog')) : undefined
  if (inner) draft.target = inner
  else over(reader, draft)
  inColour(reader, draft)
  const layers = throughLayers(reader)
  throughParts(reader)
  // `sc2tog beginning in the same st as joining`: where its first leg goes.
  if (reader.take('beginning|starting', 'in|at|with', 'the?', 'same|next', 'st|stitch|place', 'as?')) reader.take('the?', 'joining|join')
  const to = reader.word() === 'to'
  const { at: where } = reader
  const told = draft.target ? undefined : takeTarget(reader)
  const along = told && inAllAlong(reader, where, draft.count, told)
  const ones = along?.walk === 'edge' ? undefined : along && oneInEach(reader, where, draft.count, along)
  if (ones) {
    delete draft.count
    // `8 dc up the edge of Rows 7 to 14, one into each row end`
    reader.take(',', 'one|1', 'in|into', 'each', 'row', '-?', 'end')
  }
  const target = ones ?? (along && !draft.count ? onePerRow(along) : along)
  // `sl st in next sc, which is the center of the first corner`
  if (target?.thing?.kind === 'stitch' && !target.count && /^(next|same|first)$/.test(target.walk)) takeItsCorner(reader)
  if (target?.thing?.where === 'corner' && target.walk === 'each') takeCornersListed(reader, target.count)
  takeWayThrough(reader)
  if (throughLayers(reader) || layers) draft.layers = true
  throughParts(reader)
  // `dc to centre ch-2 sp` ends before it; `sl st to first sc` goes into it.
  if (target && reader.take('to', 'join|close')) draft.joins = true
  if (target && to && target.thing && target.walk !== 'each' && draft.stitch !== 'sl st') place(draft, { walk: 'each', until: target.thing, start: target.start, end: target.end })
  else if (target) {
    // `sc in each st across, leaving last 4 sts unworked`: across goes as far as those.
    const left = target.walk === 'each' && (target.toEnd || target.thing?.kind === 'stitch') && !target.keepBack && !target.until && !target.every ? leftLater(reader) : undefined
    place(draft, left ? { ...target, keepBack: left } : target)
  }
  // `sc evenly down side of Rows 12-7 (6 sc)`: as many as there are row-ends is one in each.
  if (draft.target?.evenly && draft.target.ofRows && !draft.count) {
    const { at: behind } = reader
    const { evenly: _, ...each } = draft.target
    if (takeEdgeCount(reader, draft.stitch)?.values.join() === draft.target.count?.values.join()) draft.target = each
    else reader.at = behind
  }
  if (draft.target?.walk === 'edge' && !draft.count) {
    const count = takeEdgeCount(reader, draft.stitch)
    if (count) draft.count = count
  }
  // `over next 2 sts` may follow the place, and `across` may follow `over`.
  over(reader, draft)
  inColour(reader, draft)
}

/** The number before the stitch says how many in each place when the place is told. */
function place(draft: Draft, target: Target): void {
  if (!draft.loop && target.loop && target.loop !== 'free') draft.loop = target.loop
  // `18 sc in BLO`: the loop is said, and no place.
  if (draft.count && target.loop && target.walk === 'next' && !target.thing && !target.count && target.ofRow === undefined) return
  // `36 sc along the underside of the foundation ch`: so many in all.
  const inAll = draft.count !== undefined && target.edge === 'underside' && target.across && target.held === undefined && target.ofRow === undefined
  draft.target = inAll ? { walk: 'edge', edge: 'underside', start: target.start, end: target.end } : target
}
