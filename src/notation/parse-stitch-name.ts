import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Work } from './syntax.ts'

/** A stitch while it is read. */
type Draft = { -readonly [K in keyof Work]?: Work[K] }

const incWords = ['inc|incs|increase|increases']
const decWords = ['dec|decs|decrease|decreases|invdec']

/** The stitch's name, inc and dec in their spellings, or an unknown word that stands where a stitch would. */
export function takeName(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  if (reader.word(1) === 'evenly' && /^(inc|dec|increase|decrease)$/.test(reader.word())) return false
  if (reader.take('inv|invisible|invis?', ...decWords) || (reader.take('invisible|inv', '.', ...decWords))) {
    draft.stitch = 'dec'
    return true
  }
  if (reader.take(...incWords)) {
    draft.stitch = 'inc'
    return true
  }
  if (letterName(reader, draft)) return true
  if (reader.take('pull|draw', 'up', 'a|1|one?', 'lp|loop|lps|loops')) {
    draft.stitch = 'lp'
    return true
  }
  // `inc3`, `sc3inc`: three in one place.
  const triple = /^(?:inc)?([a-z]+)(\d)inc$/.exec(reader.word()) ?? undefined
  if (triple && reader.vocabulary.stitchAt([triple[1]!])) {
    draft.stitch = 'inc'
    draft.base = reader.vocabulary.stitchAt([triple[1]!])!.stitch
    draft.of = Number(triple[2])
    reader.at += 1
    return true
  }
  const stitch = takeStitchName(reader)
  if (!stitch) {
    reader.at = at
    return unknownName(reader, draft)
  }
  draft.stitch = stitch
  // `sc inc`, `dc dec`: the stitch that is increased or decreased.
  if (reader.take(...incWords)) {
    draft.stitch = 'inc'
    draft.base = stitch
  } else if (reader.take(...decWords)) {
    draft.stitch = 'dec'
    draft.base = stitch
  }
  return true
}

/** Letters for stitches, as many toy patterns write them: X sc, V inc, A dec, W 3 in one, M 3 together, T hdc, F dc. */
const letters: Readonly<Record<string, Pick<Work, 'stitch' | 'of' | 'base'>>> = {
  X: { stitch: 'sc' }, V: { stitch: 'inc', base: 'sc' }, A: { stitch: 'dec', base: 'sc' }, W: { stitch: 'inc', base: 'sc', of: 3 }, M: { stitch: 'dec', base: 'sc', of: 3 },
  T: { stitch: 'hdc' }, F: { stitch: 'dc' },
}

function letterName(reader: Reader, draft: Draft): boolean {
  const text = reader.peek()?.text ?? ''
  const meaning = letters[text]
  // A letter is a stitch only where the piece writes its plain stitch as X, and no yarn has that letter.
  if (!meaning || reader.vocabulary.yarns.includes(text) || reader.vocabulary.letters !== true) return false
  reader.at += 1
  Object.assign(draft, meaning)
  return true
}

/** A word that is no known stitch but is used as one: `3 sx in next st`, `dcx in each dc`. */
function unknownName(reader: Reader, draft: Draft): boolean {
  const token = reader.peek()
  if (token?.kind !== 'word' || token.text.length > 20) return false
  const next = reader.word(1)
  const after = reader.word(2)
  const used = /^(st|stitch)$/.test(next) && draft.count === undefined && /^(in|across|around)$/.test(after) || /^(in|into)$/.test(next) && /^(next|each|same|first|last|ring|ch|the|every|\d+nd|\d+th|\d+rd|\d+st|top|st|sp|magic)$/.test(after)
    || draft.count !== undefined && /^(in|into|,|;|\.|\)|\])?$/.test(next)
  if (!used || /^(row|rows|rnd|rnds|round|rounds|continue|continuing|times|more|st|sts|stitches|ch|rep|repeat|from|to|in|cm|mm|g|m|and|sps?|pm|sm|rm|place|leg|first|second|working|taking|making|placing|loop|loops)$/i.test(token.text)) return false
  draft.stitch = token.text.toLowerCase()
  draft.unknown = true
  reader.at += 1
  reader.take('st|stitch')
  return true
}
