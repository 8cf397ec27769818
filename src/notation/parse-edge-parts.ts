import { takeInsteadOfOne } from './instead-of-one.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { parseAgain } from './parse-again.ts'
import { closeOf } from './parse-bracket.ts'
import { takeStitchName, takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import { Reader } from './reader.ts'
import type { Instruction, Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

/**
 * An edge told at once, and behind it how its stitches lie:
 *
 *   24 sc along top (3 in first st, 1 in each of next 18, 3 in last)
 *   sc in each st across top (3 sc in first and in last)   sc in each of the 20 ch, putting 3 sc in the first and 3 in the last
 *
 * Gives the instructions before it with the edge taken apart; nothing where no such words come.
 */
export function parseEdgeParts(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const last = before.at(-1)
  if (last?.node !== 'work') return undefined
  const { at } = reader
  const parts = inBracket(reader, last) ?? withEnds(reader, last)
  if (parts) return [...before.slice(0, -1), ...parts]
  reader.at = at
  return undefined
}

/** `(3 in first st, 1 in each of next 18, 3 in last)`: together they are as many as were told. */
function inBracket(reader: Reader, told: Work): readonly Instruction[] | undefined {
  const close = told.count && /^[([]$/.test(reader.word()) ? closeOf(reader) : undefined
  if (close === undefined || told.target?.count) return undefined
  const start = reader.start
  const inner = new Reader(reader.all.slice(reader.at + 1, close), reader.vocabulary)
  const parts: Instruction[] = []
  while (!inner.done) {
    if (inner.take(',|;|and|then')) continue
    const part = numberAhead(inner) === undefined ? undefined : parseAgain(inner, [told, ...parts])
    if (!part) return undefined
    parts.push(...part)
  }
  const endsTold = parts.some((part) => part.node === 'work' && /^(?:first|last)$/.test(part.target?.walk ?? ''))
  if (!endsTold) return undefined
  reader.at = close + 1
  return [...edgeOf(told), ...parts, { node: 'aside', stated: { count: told.count!, kind: told.stitch, scope: 'side' }, start, end: reader.end }]
}

/** Where the stitches go along, as the beginning of what is worked there. */
function edgeOf({ target, start, end }: Work): readonly Instruction[] {
  return target?.edge && target.edge !== 'any' && target.edge !== 'all' ? [{ node: 'start', target: { walk: 'edge', edge: target.edge, start, end }, start, end }] : []
}

/** `(3 sc in first and in last)`, `with 3 sc in each end stitch`, `but put 3 sc instead of 1 in the first and in the last`: what its ends have more than the others. */
function withEnds(reader: Reader, all: Work): readonly Instruction[] | undefined {
  const { target } = all
  const places = target && (target.walk === 'each' && !target.keepBack && !target.until || target.walk === 'next' && target.count)
  if (!places || target.thing?.kind !== 'stitch' && target.thing?.kind !== 'chain' || all.count && all.count.values.some((count) => count !== 1)) return undefined
  const bracket = reader.take('(')
  if (!bracket) reader.take(',|–|—')
  const led = reader.take('but|again?', 'with|putting|placing|making|working|having') || reader.take('but|again', 'put|place|make|work')
  const first = bracket || led ? atEnds(reader, all) : undefined
  const more = first && reader.take(',?', 'and') ? atEnds(reader, all, first.count) : undefined
  const ends = [...(first?.ends ?? []), ...(more?.ends ?? [])]
  if (ends.length === 0 || (bracket ? !reader.take(')') : !placeEnds(reader))) return undefined
  const single = (count: Num): Work => ({ ...all, count, target: { walk: 'next', count: { ...count, values: [1] }, thing: target.thing!, ...(target.ofRow !== undefined && { ofRow: target.ofRow }), start: target.start, end: target.end } })
  const leading = ends.find(({ end }) => end === 'first')
  const closing = ends.find(({ end }) => end === 'last')
  return [...edgeOf(all), ...(leading ? [single(leading.count)] : []), { ...all, target: without(target, leading !== undefined, closing) }, ...(closing ? [single(closing.count)] : [])]
}

/** The places without those at the ends. */
function without(target: Target, first: boolean, last: { readonly count: Num } | undefined): Target {
  const { edge: _, toEnd: __, across: ___, ...places } = target
  if (places.count) return { ...places, count: { ...places.count, values: places.count.values.map((count) => count - (first ? 1 : 0) - (last ? 1 : 0)) } }
  return last ? { ...places, keepBack: { ...last.count, values: [1] } } : { ...target }
}

interface AtEnds {
  readonly count: Num
  readonly ends: readonly { readonly end: 'first' | 'last'; readonly count: Num }[]
}

/** `3 sc in the first and last sts`, `3 in the last`, `in last` of as many as before, `3 sc in each end st`. */
function atEnds(reader: Reader, all: Work, before?: Num): AtEnds | undefined {
  const count = takeNumber(reader) ?? before
  if (!count) return undefined
  const stitch = takeStitchName(reader)
  if (stitch !== undefined && stitch !== all.stitch) return undefined
  takeInsteadOfOne(reader)
  if (!reader.take('in|into', 'both|the?', 'the?') && !before) return undefined
  reader.take('the')
  if (reader.take('each|both', 'end', 'st|sts|stitch|stitches|ch|chain|chains')) return { count, ends: [{ end: 'first', count }, { end: 'last', count }] }
  const end = reader.take('first') ? 'first' : reader.take('last|end') ? 'last' : undefined
  if (!end) return undefined
  const both = end === 'first' && reader.take('and', 'the?', 'last')
  takeThing(reader)
  reader.take('of', 'them|these')
  return { count, ends: [{ end, count }, ...(both ? [{ end: 'last' as const, count }] : [])] }
}
