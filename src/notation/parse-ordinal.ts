import { ordinals } from './number-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { takeLoop } from './parse-loop.ts'
import { takeOfStep, takeRowOf, type Draft } from './parse-tail.ts'
import { chainWords, takeStitchName, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'

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
  const ofGroup = thing && ofEveryGroup(reader)
  if (ofGroup) {
    Object.assign(draft, { walk: 'each', thing: { ...thing, ofGroup: { nth: value, size: ofGroup } } })
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

/** `of every 5-tr scallop`: how many stitches stand in one place. */
function ofEveryGroup(reader: Reader): number | undefined {
  const { at } = reader
  const size = reader.take('of|in', 'every|each', 'of?', 'the?') ? numberAhead(reader) : undefined
  if (size !== undefined) {
    reader.at += 1
    if (reader.take('-') && takeStitchName(reader) && reader.take('scallop|scallops|shell|shells|fan|fans|group|groups|petal|petals|cluster|clusters')) return size
  }
  reader.at = at
  return undefined
}

/** `the 5th unworked st`, `the 2nd st of the step`: told from where the step begins. */
function nthOfStep(reader: Reader, draft: Draft, value: number): boolean {
  const { at } = reader
  const left = reader.take('unworked|free|unused|leftover')
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
