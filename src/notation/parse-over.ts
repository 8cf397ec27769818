import { takeNumber } from './numbers.ts'
import { partAhead, withPart } from './parse-part.ts'
import { takeSide } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Work } from './syntax.ts'
import type { Target } from './target.ts'

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
  if (!reader.take('the?', 'next|first|last|same?')) return undefined
  if (reader.take('row', '-?', 'end')) return 'row-end'
  const thing = takeThing(reader)
  return thing && (thing.kind === 'row-end' || thing.kind === 'edge' ? 'row-end' : 'stitch')
}

/** Stitches that stand in one place each: `sc over next 10 sts` is 10 sc, where `cl over next 9 sts` is one cluster. */
const plain = /^((FP|BP|e|rev )?(sc|hdc|dc|tr|dtr)|sl st|inc)$/

/** `dc2tog over next 2 sts`, `sc2tog over first 2 sts`. */
export function over(reader: Reader, draft: Draft): void {
  const at = reader.at
  if (!reader.take('over|using|across', 'all?', 'of?', 'the?', 'next|first|last|these?', 'of?')) return
  const which = reader.word(-1)
  const count = takeNumber(reader)
  if (!count) {
    reader.at = at
    overTwo(reader, draft)
    return
  }
  if (reader.take('row', '-?', 'ends|end')) {
    takeSide(reader)
    draft.target = { walk: 'next', count, thing: { kind: 'row-end' }, start: count.start, end: reader.end }
    return
  }
  reader.take('st|sts|stitch|stitches|sc|dc|hdc|tr|ch|chs|htr|dtr|lps|loops')
  if (plain.test(draft.stitch ?? '')) {
    const part = partAhead(reader)
    const target: Target = { walk: which === 'last' || which === 'first' ? which : 'next', count, start: count.start, end: reader.end }
    draft.target = part ? withPart(reader, target, part) : target
    return
  }
  draft.over = count
  if (which === 'last' || which === 'first') draft.target = { walk: which, count, start: reader.start, end: reader.end }
}
