import { ordinals } from './number-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { takeFromEdge } from './from-edge.ts'
import { unworked } from './parse-adjective.ts'
import { takeBehindPiece } from './parse-behind.ts'
import { takeLoop } from './parse-loop.ts'
import { takeOfStep, takeRowOf, type Draft } from './parse-tail.ts'
import { takeOfPiece } from './parse-piece-name.ts'
import { chainWords, takeStitchName, takeThing } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Target } from './target.ts'

/** `2nd ch from hook`, `3rd ch of beg ch-5`, `2nd st`. */
export function ordinal(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  const token = reader.peek()
  const value = token?.kind === 'ordinal' ? token.value : ordinals[reader.word()]
  if (!token || value === undefined) return false
  reader.at += 1
  const num = { values: [value], start: token.start, end: token.end }
  if (nthOfRow(reader, draft, value) || nthOfStep(reader, draft, value)) return true
  const thing = takeThing(reader)
  // `3 sc in second corner sc`: corners come one after another.
  if (thing?.where === 'corner' && reader.vocabulary.stitchAt([reader.all[at - 2]?.text.toLowerCase() ?? ''])) {
    Object.assign(draft, { walk: 'next', thing })
    return true
  }
  // `3rd of 4 ch`: of the chain that begins the round.
  if (!thing && reader.word() === 'of' && numberAhead(reader, 1) !== undefined && chainWords.has(reader.word(2))) {
    reader.at += 1
    const chains = takeNumber(reader)
    reader.at += 1
    Object.assign(draft, { walk: 'nth', count: num, thing: { kind: 'space', ...(chains && { chains }) } })
    return true
  }
  if (reader.take('from|of', 'the?', 'hook|hk')) {
    draft.walk = 'from-hook'
    draft.count = num
    return true
  }
  const group = thing && ofGroup(reader)
  if (group) {
    Object.assign(draft, { walk: group.walk, thing: { ...thing, ofGroup: { nth: value, ...(group.size && { size: group.size }) } } })
    return true
  }
  if (thing && reader.take('of', 'the?', 'next|each|same|first|last?', 'beg|beginning|starting|turning?')) {
    const inside = takeThing(reader)
    draft.walk = 'nth'
    draft.count = num
    if (inside) draft.thing = inside
    return true
  }
  // `Sc in 2nd ch`: chains are told off from the hook when nothing else is said.
  if (thing?.kind === 'chain' && value > 1) {
    draft.walk = 'from-hook'
    draft.count = num
    return true
  }
  reader.at = at
  return false
}

const groups = 'scallop|scallops|shell|shells|fan|fans|group|groups|petal|petals|cluster|clusters|set|sets'

/** `of every 5-tr scallop`, `of the last 5-dc group`, `of the group of 5 dc`, `of any shell`: which of the groups, and how many stitches stand in it. */
export function ofGroup(reader: Reader): { readonly walk: 'each' | 'last' | 'next'; readonly size?: number } | undefined {
  const { at } = reader
  if (reader.take('of|in', 'the?')) {
    const each = reader.take('every|each', 'of?', 'the?')
    const last = !each && reader.take('last|final')
    const one = !each && !last && (reader.take('next|first|any|a|one') || reader.word(-1) === 'the')
    const size = takeNumber(reader)?.values[0]
    const named = size === undefined || (reader.take('-?') || true) && takeStitchName(reader) !== undefined
    if ((each || last || one) && named && reader.take(groups)) {
      const told = size ?? sizeBehind(reader)
      // A shell or a cluster of no said size may be a stitch of its own name.
      if (told !== undefined || !each) return { walk: each ? 'each' : last ? 'last' : 'next', ...(told !== undefined && { size: told }) }
    }
  }
  reader.at = at
  return undefined
}

/** `group of 5 dc` */
function sizeBehind(reader: Reader): number | undefined {
  const { at } = reader
  const size = reader.take('of') ? takeNumber(reader) : undefined
  if (size && takeStitchName(reader) !== undefined) return size.values[0]
  reader.at = at
  return undefined
}

/** `the 5th unworked st`, `the 2nd st of the step`: told from where the step begins. */
function nthOfStep(reader: Reader, draft: Draft, value: number): boolean {
  const { at } = reader
  const left = reader.take(unworked)
  const thing = takeThing(reader)
  const { at: tail } = reader
  takeOfStep(reader)
  if (thing?.kind === 'stitch' && (left || reader.at > tail) && (reader.done || /^([,.;:()]|and)$/.test(reader.word()))) {
    Object.assign(draft, { walk: 'next', thing: { kind: 'stitch' }, nthOfStep: value })
    return true
  }
  reader.at = at
  return false
}

/** `8th front loop of Row 10`, `5th skipped st of Rnd 3`: so many places of an older row are passed first. */
function nthOfRow(reader: Reader, draft: Draft, value: number): boolean {
  const { at } = reader
  takeLoop(reader, draft)
  reader.take('unworked|free')
  if (draft.loop === undefined) takeThing(reader)
  takeRowOf(reader, draft)
  if (draft.ofRow !== undefined) {
    Object.assign(draft, { walk: 'next', thing: { kind: 'stitch' }, passing: value - 1 })
    return true
  }
  delete draft.loop
  reader.at = at
  return false
}

/**
 * `in 4th htr`, `in the 5th st from the right-hand edge`, `in the 4th row-end of the left side`, `in 3rd foundation ch`, `in the 19th tr after
 * Tab A`, `in 3rd unworked st of Row 4`, `in the underside of 9th ch`: where the yarn is joined, so many places along the edge, or along what others have left of it.
 */
export function nthToJoin(reader: Reader): Target | undefined {
  const { at, start } = reader
  reader.take('in|into|to|at', 'the?')
  const beneath = reader.take('underside|bottom|base|lower', 'edge|loop?', 'of', 'the?')
  const token = reader.peek()
  const value = token?.kind === 'ordinal' ? token.value : ordinals[reader.word()]
  if (value !== undefined) {
    reader.at += 1
    const free = reader.take(unworked)
    const first = reader.take('foundation|starting|beginning|base')
    const thing = takeThing(reader)
    const under = thing?.kind === 'chain' && (beneath || reader.take('of|on|along', 'the?', 'underside')) || first
    if (thing?.kind === 'chain' && under) takeOfPiece(reader)
    const before = takeFromEdge(reader)
    const counted = thing?.kind === 'stitch' && !before && takesRowThenFrom(reader)
    const ofRow = before || free || counted || takesRowThenPiece(reader) ? takeRowNamed(reader, 'of|on|along|in', 'the?') : undefined
    if (before && ofRow === undefined) reader.take('of|on|along', 'the?', 'last|final', 'row')
    const from = before || takeFromEdge(reader)
    if (thing?.kind === 'row-end') takeWhereabouts(reader)
    const behind = takeBehindPiece(reader)
    // `3rd ch` may be one of the chain that begins the round.
    const named = thing?.kind === 'stitch' || thing?.kind === 'row-end' || thing?.kind === 'chain' && (under || from)
    if (named && placeEnds(reader, 'with', 'through')) return { walk: 'next', thing, ...(thing.kind === 'chain' && under && { edge: 'underside' as const }), passing: value - 1, ...((free || behind) && { ofLeft: true }), ...(ofRow !== undefined && { ofRow }), start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `of Row 12, counting from the right`. Takes nothing. */
function takesRowThenFrom(reader: Reader): boolean {
  const { at } = reader
  const found = takeRowNamed(reader, 'of|on|along|in', 'the?') !== undefined && takeFromEdge(reader)
  reader.at = at
  return found
}

/** `of Round 4 after Tab A`: without the piece the row alone is what is named. Takes nothing. */
function takesRowThenPiece(reader: Reader): boolean {
  const { at } = reader
  const found = takeRowNamed(reader, 'of|on', 'the?') !== undefined && takeBehindPiece(reader)
  reader.at = at
  return found
}
