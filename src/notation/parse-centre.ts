import { ordinals } from './number-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { takeWhichCorner } from './which-corner.ts'
import { ofGroup } from './parse-ordinal.ts'
import { partAhead } from './parse-part.ts'
import { takeOfPiece } from './parse-piece-name.ts'
import type { Draft } from './parse-tail.ts'
import { takeStitchName, takeThing } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { corner, type Num, type Thing } from './target.ts'

/** `centre sc of next corner`, `middle ch of ch-3`, `middle one of the 3 sc at the corner`, `2nd of the three corner sc`: the middle one of several. */
export function takeCentre(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const nth = reader.peek()?.kind === 'ordinal' ? reader.peek()!.value : (ordinals[reader.word()] ?? firstOfCorner(reader))
  const middle = nth === undefined ? reader.take('center|centre|central|middle') : (reader.at += 1) > 0
  const named = middle && (reader.take('ch|st|stitch|one') || takeStitchName(reader) !== undefined)
  if (nth === undefined && named && ofOddGroup(reader, draft)) return true
  if (!middle || !reader.take('of|in|at')) {
    reader.at = at
    return false
  }
  reader.take('the')
  const group = ofCornerGroup(reader) ?? (nth === undefined ? undefined : ofCornerStitches(reader))
  const all = reader.take('each|every|all', 'of?', 'the?')
  const any = reader.take('any')
  const before = takeCornerSize(reader)
  // `centre sc of the first top corner`: the corner is sought, wherever the row begins.
  const told = takeCornerNamed(reader)
  const sized = takeCornerSize(reader)
  const counted = countOfCorners(reader)
  const size = sized ?? counted?.size ?? before ?? group
  const every = all || counted !== undefined
  // `the 3 sc at the right-hand end`: there the corner lies.
  const inside = takeThing(reader) ?? (group !== undefined && told && reader.take('end') || every && takeTip(reader) ? corner : undefined)
  if (inside?.where === 'corner') behindCorner(reader)
  if (every && inside?.where === 'corner') {
    const some = takeWhereOnEdge(reader) || told === 'some' || counted?.some === true
    // `3rd sc of each corner`: not the middle one, or who knows.
    const other = nth !== undefined && size !== 2 * nth - 1 && inside.chains === undefined
    const thing: Thing = { kind: 'stitch', ...(other ? { ofGroup: { nth, ...(size && { size }) } } : { where: 'corner', ...(size && { size }) }), ...(some && { some }) }
    Object.assign(draft, { walk: 'each', thing, ...(counted && { count: counted.count }) })
    return true
  }
  // `in the center sc of the corner at the beginning of the foundation edge`
  const where = inside?.where === 'corner' && takeWhereOnEdge(reader)
  // `2nd sc of next corner`: how many it has, the fabric tells.
  if (nth !== undefined && size === undefined && named && inside?.where === 'corner' && !inside.chains && !/^chs?$|^chain/.test(reader.all[at + 1]!.text)) {
    Object.assign(draft, { walk: 'next', thing: { kind: 'stitch', ofGroup: { nth } } })
    return true
  }
  // `2nd sc of the 3-sc corner` is its middle one; `the middle of` or the 2nd of anything else is no stitch.
  if (nth !== undefined && size !== 2 * nth - 1 || (nth !== undefined || !named) && inside?.where !== 'corner') {
    reader.at = at
    return false
  }
  if (inside?.where === 'corner' && (told || any || where || nth !== undefined || named)) {
    Object.assign(draft, { walk: 'next', thing: { kind: 'stitch', where: 'corner' } })
    return true
  }
  draft.walk = 'nth'
  if (inside) draft.thing = inside
  return true
}

/** `first sc of next corner` */
const firstOfCorner = (reader: Reader): 1 | undefined => (reader.word() === 'first' && reader.word(2) === 'of' && (reader.word(3) === 'next' ? reader.word(4) : reader.word(3)) === 'corner' ? 1 : undefined)

/** `last dc of the 3 dc at the point`, `first of the 3 sc made in the tip`, `centre sc of the 5 sc at the corner`: one of those that were made in one place there. */
export function takeOneOfPoint(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const which = reader.peek()?.kind === 'ordinal' ? reader.peek()!.value : (ordinals[reader.word()] ?? (/^(?:last|final|center|centre|middle)$/.test(reader.word()) ? reader.word() : undefined))
  if (which !== undefined) {
    reader.at += 1
    reader.take('st|stitch|one') || takeStitchName(reader)
    const size = reader.take('of', 'the|those?') ? takeNumber(reader)?.values[0] : undefined
    if (size !== undefined && size > 1) {
      reader.take('-')
      takeThing(reader)
      reader.take('group|cluster|set')
      reader.take('made|worked')
      const there = reader.take('at|in|into|on', 'the|this?', 'very|same?', 'point|tip|apex|peak|corner') && (placeEnds(reader) || takeOfPiece(reader))
      const nth = which === 'last' || which === 'final' ? size : typeof which === 'number' ? which : size % 2 === 1 ? (size + 1) / 2 : undefined
      if (there && nth !== undefined && nth <= size) {
        Object.assign(draft, { walk: 'next', thing: { kind: 'stitch', ofGroup: { nth, size } } })
        return true
      }
    }
  }
  reader.at = at
  return false
}

/** `center st of each 3-sc group`: the 2nd of three. */
function ofOddGroup(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const group = ofGroup(reader)
  if (group?.size !== undefined && group.size % 2 === 1 && reader.word(-1) !== 'corner' && !/^(?:at|in|of|on|made|worked)$/.test(reader.word())) {
    Object.assign(draft, { walk: group.walk, thing: { kind: 'stitch', ofGroup: { nth: (group.size + 1) / 2, size: group.size } } })
    return true
  }
  reader.at = at
  return false
}

/** `at the beginning of the edge`, `on the lower side`, `of the foundation edge`: where a corner lies. */
function takeWhereOnEdge(reader: Reader): boolean {
  const { at } = reader
  const lies = /^(at|on|nearest|near|beside)$/.test(reader.word())
  const where = lies || /^(of|along)$/.test(reader.word()) ? takeWhereabouts(reader) : undefined
  if (where && (lies || /^(edge|side|end|hem|top|bottom)$/.test(where.at(-1)!))) return true
  reader.at = at
  return false
}

/** `of the 3 corner sc`: how many stitches the corner has. Takes the number. */
function ofCornerStitches(reader: Reader): number | undefined {
  return numberAhead(reader) !== undefined && reader.word(1) === 'corner' ? takeNumber(reader)?.values[0] : undefined
}

/** `corner group of 3`, `corner 3-sc group`: how many stitches were made in it. */
function behindCorner(reader: Reader): void {
  const { at } = reader
  const size = takeNumber(reader) && reader.take('-?') && takeStitchName(reader) !== undefined
  if (!reader.take('group|groups|cluster|clusters|set|sets')) reader.at = at
  else if (!size && reader.word() === 'of' && numberAhead(reader, 1) !== undefined) reader.at += 2
}

/** `centre sc of the second top corner`, `middle st of next corner`. */
export function takeCornerCentre(reader: Reader): Thing | undefined {
  const { at } = reader
  const draft: Draft = {}
  if (takeCentre(reader, draft) && draft.walk !== 'each' && draft.thing?.where === 'corner') return { kind: 'stitch', where: 'corner' }
  if (draft.walk === 'next' && draft.thing?.ofGroup) return draft.thing
  reader.at = at
  return undefined
}

/** `each of the eight 3-dc corners`, `the 5 outer corners`: how many there are, and which. */
function countOfCorners(reader: Reader): { readonly count: Num; readonly some: boolean; readonly size?: number } | undefined {
  const { at } = reader
  const count = takeNumber(reader)
  const some = count !== undefined && (takeWhichCorner(reader) === 'some' || /^corners?$/.test(reader.word(1)) && reader.take('flap|tab|wing|hem|yoke|bib|lapel|collar|pocket|tail'))
  const size = count && takeCornerSize(reader)
  if (count && /^(?:tips|points|peaks)$/.test(reader.word())) return { count, some: true }
  if (count && (reader.word() === 'corners' || reader.word() === 'corner' && /^(?:groups|clusters|sets)$/.test(reader.word(1)))) return { count, some, ...(size && { size }) }
  reader.at = at
  return undefined
}

/** `tips`, `point`: the corners that jut out there, which need not be all that there are. */
const takeTip = (reader: Reader): boolean => reader.take('tip|tips|point|points|peak|peaks')

/** `any 3-sc corner`, `3-dc corners`: the stitches that were made in it. Gives how many. */
export function takeCornerSize(reader: Reader): number | undefined {
  const size = numberAhead(reader)
  if (size === undefined || reader.word(1) !== '-' || !/^corners?$/.test(reader.word(3))) return undefined
  reader.at += 3
  return size
}

/** `3 sc in the point`, `in the tip of the flag`, `of First point`: the one stitch in which a piece ends is a corner of its edge. */
export function takePoint(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  // `2 dc along the tip` goes along an edge.
  if (!/^(in|into)$/.test(reader.word(reader.word(-1) === 'the' ? -2 : -1))) return false
  if (reader.take('single|last?', 'st|stitch?', 'at?', 'the?', 'very?', 'point|tip|apex|peak')) {
    reader.take('st|stitch')
    const to = reader.at
    if (!takeOfPiece(reader) && !reader.take('of|on', 'the', 'piece|work|flag|triangle|pennant|shape')) reader.at = partAhead(reader)?.to ?? to
    if (reader.done || /^([,;.:()]|and|then)$/.test(reader.word())) {
      Object.assign(draft, { walk: 'next', thing: { kind: 'stitch', where: 'corner' } })
      return true
    }
  }
  reader.at = at
  return false
}

/** `centre dc of the 3 dc at each corner`, `of the 3 at the lower corner`: the stitches of the corner are told as well. */
function ofCornerGroup(reader: Reader): number | undefined {
  const { at } = reader
  reader.take('next|first|last|group|cluster|set', 'of?')
  const count = takeNumber(reader)
  reader.take('-')
  if (count) takeThing(reader)
  reader.take('group|cluster|shell|set')
  const told = count && reader.take('made|worked?', 'at|in|into|of|on', 'the?')
  const corners = /^(each|every|all|next|same|first|second|third|fourth|last|other|opposite|top|bottom|upper|lower|left|right|corner)$/.test(reader.word()) && [0, 1, 2, 3, 4, 5].some((ahead) => /^(corners?|end)$/.test(reader.word(ahead)))
  if (told && corners) return count.values[0]
  reader.at = at
  return undefined
}

/** `first top`, `lower left-hand`: which of the corners, where that is told. */
export function takeCornerNamed(reader: Reader): ReturnType<typeof takeWhichCorner> {
  reader.take('first|second|third|fourth|next|last|same|other|opposite|any|one')
  return takeWhichCorner(reader)
}
