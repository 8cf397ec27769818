import { numberAhead, takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Work } from './syntax.ts'

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
  reader.take('over|in?', 'the?')
  const which = reader.take('next|foll|following|those|these') ? 'next' : reader.take('first') ? 'first' : reader.take('last|final|remaining|rem') ? 'last' : undefined
  const start = reader.start
  const legs = takeNumber(reader)
  if (legs && legs.values.length === 1) {
    reader.take(placeWords)
    if (reader.take('tog|together')) {
      draft.stitch = `${stitch}${legs.values[0]}tog`
      if (which !== undefined) draft.over = legs
      if (which === 'first' || which === 'last') draft.target = { walk: which, count: legs, start, end: reader.end }
      return
    }
  }
  reader.at = at
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
