import { numberAhead, takeNumber } from './numbers.ts'
import { takeInnerCorner } from './parse-inner-corner.ts'
import type { Reader } from './reader.ts'
import type { Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

type Draft = { -readonly [K in keyof Work]?: Work[K] }

const placeWords = 'st|sts|stitch|stitches|sc|dc|hdc|tr|htr|dtr|ch|chs'

/**
 * Stitches worked together, told after the stitch's name:
 *
 *   sc 2 tog   double crochet 3 together   sc next 2 sts together   dc last 3 sts tog   2 dc tog
 */
export function takeTogether(reader: Reader, draft: Draft): void {
  const at = reader.at
  const { stitch, count } = draft
  if (stitch === undefined || stitch === 'inc' || stitch === 'dec' || /\d/.test(stitch)) return
  if (count && count.values.length === 1 && reader.take('tog|together')) {
    draft.stitch = `${stitch}${count.values[0]}tog`
    delete draft.count
    return
  }
  const legs = takeLegsTogether(reader)
  if (!legs) {
    reader.at = at
    return
  }
  draft.stitch = `${stitch}${legs.count.values[0]}tog`
  if (legs.which !== undefined) draft.over = legs.count
  if (legs.target) draft.target = legs.target
}

/** `work the next 2 stitches together`: with the stitch in hand. */
export function takeUnnamedTogether(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const legs = takeLegsTogether(reader)
  if (!legs?.which && !legs?.target) {
    reader.at = at
    return false
  }
  draft.stitch = 'dec'
  if (legs.which) draft.over = legs.count
  if (legs.target) draft.target = legs.target
  return true
}

/** `(over the) next 2 sts together`. */
function takeLegsTogether(reader: Reader): { readonly count: Num; readonly which: 'next' | 'first' | 'last' | undefined; readonly target?: Target } | undefined {
  reader.take('over|in?', 'the?')
  const which = reader.take('next|foll|following|those|these') ? 'next' : reader.take('first') ? 'first' : reader.take('last|final|remaining|rem') ? 'last' : undefined
  const start = reader.start
  const count = takeNumber(reader)
  if (count?.values.length !== 1) return undefined
  reader.take(placeWords)
  const inner = count.values[0] === 2 ? takeInnerCorner(reader) : undefined
  if (!reader.take('tog|together')) return undefined
  if (inner) return { count, which: undefined, target: inner }
  return { count, which, ...((which === 'first' || which === 'last') && { target: { walk: which, count, start, end: reader.end } }) }
}

/** `dc2tog (first leg in next st, sk 1 st, second leg in foll st)`: the places that its legs and what lies between use. */
export function takeLegs(reader: Reader, draft: Draft): void {
  if (!/tog$/.test(draft.stitch ?? '') || !/^[(:]$/.test(reader.word()) || !/^(first|1st)$/.test(reader.word(1)) || reader.word(2) !== 'leg') return
  const end = reader.word() === '(' ? ')' : ';'
  const start = reader.start
  let places = 0
  while (!reader.done && reader.word() !== end) {
    if (reader.word() === 'leg') places += 1
    if (/^(sk|skip|miss)$/.test(reader.word())) places += numberAhead(reader, 1) ?? numberAhead(reader, 2) ?? 1
    reader.at += 1
  }
  if (end === ')') reader.at += 1
  draft.over = { values: [places], start, end: reader.end }
  draft.legs = true
}
