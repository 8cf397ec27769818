import { takeNumber } from './numbers.ts'
import { partAhead, withPart } from './parse-part.ts'
import { takeSide } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import { takeTopOfChain } from './parse-top-of-chain.ts'
import type { Reader } from './reader.ts'
import type { Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

type Draft = { -readonly [K in keyof Work]?: Work[K] }

/** `sc2tog over next row-end and next st`: its legs lie on two edges; `over same sc and next sc` they lie on one. */
function overTwo(reader: Reader, draft: Draft): void {
  const { at, start } = reader
  const first = reader.take('over|across') ? leg(reader) : undefined
  const corner = first !== undefined && reader.take('of', 'step|edge|top')
  const second = first !== undefined && reader.take('and') ? leg(reader) : undefined
  if (!second && !corner) {
    reader.at = at
    return
  }
  const count = { values: [2], start, end: reader.end }
  if (corner || first === 'row-end' || second === 'row-end') draft.target = { walk: 'next', count, thing: { kind: 'edge' }, start, end: reader.end }
  else draft.over = count
}

function leg(reader: Reader): 'row-end' | 'stitch' | undefined {
  if (takeChainTop(reader)) return 'stitch'
  if (!reader.take('the?', 'next|first|last|same?')) return undefined
  if (reader.take('row', '-?', 'end')) return 'row-end'
  const thing = takeThing(reader)
  return thing && (thing.kind === 'row-end' || thing.kind === 'edge' ? 'row-end' : 'stitch')
}

/** `the top of 3 ch`, `tch`: the chain that counts as the first stitch of the row below. */
function takeChainTop(reader: Reader): boolean {
  const { at } = reader
  reader.take('the')
  if (takeTopOfChain(reader, {}) || reader.take('tch') || reader.take('turning|beg', 'ch|chain')) return true
  reader.at = at
  return false
}

/** `last 2 tr and top of 3 ch`: one place more. */
function andChainTop(reader: Reader, count: Num): Num {
  const { at } = reader
  if (reader.take('and', 'the?') && takeChainTop(reader)) return { ...count, values: count.values.map((value) => value + 1), end: reader.end }
  reader.at = at
  return count
}

/** Stitches that stand in one place each: `sc over next 10 sts` is 10 sc, where `cl over next 9 sts` is one cluster. */
const plain = /^((FP|BP|e|rev )?(sc|hdc|dc|tr|dtr)|sl st|inc)$/

/** `dc2tog over next 2 sts`, `sc2tog over first 2 sts`. */
export function over(reader: Reader, draft: Draft): void {
  const at = reader.at
  if (!reader.take('over|using|across', 'all?', 'of?', 'the?', 'next|first|last|these?', 'of?')) return
  const which = reader.word(-1)
  const said = takeNumber(reader)
  if (!said) {
    reader.at = at
    overTwo(reader, draft)
    return
  }
  if (reader.take('row', '-?', 'ends|end')) {
    takeSide(reader)
    draft.target = { walk: 'next', count: said, thing: { kind: 'row-end' }, start: said.start, end: reader.end }
    return
  }
  reader.take('st|sts|stitch|stitches|sc|dc|hdc|tr|ch|chs|htr|dtr|lps|loops')
  const count = andChainTop(reader, said)
  if (plain.test(draft.stitch ?? '')) {
    const part = partAhead(reader)
    // `5 dc over next 5 tr`: one in each.
    if (draft.count && String(draft.count.values) === String(count.values)) delete draft.count
    const target: Target = { walk: which === 'last' || which === 'first' ? which : 'next', count, start: count.start, end: reader.end }
    draft.target = part ? withPart(reader, target, part) : target
    return
  }
  draft.over = count
  if (which === 'last' || which === 'first') draft.target = { walk: which, count, start: reader.start, end: reader.end }
}
