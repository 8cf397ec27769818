import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

interface Draft {
  yarn?: string
  readonly count?: Num
}

/** `3 sc in A`, `2 dc with B`: the colour, and no place. */
export function inColour(reader: Reader, draft: Draft): void {
  if (letterBehind(reader, draft) || !/^(in|with|using)$/.test(reader.word())) return
  const text = reader.peek(1)?.text ?? ''
  if (reader.vocabulary.yarns.includes(text) || (/^[A-HJ-Z]$/.test(text) || isMainOrContrast(reader, text)) && /^([,;.)*\]]|and|$)/.test(reader.word(2))) {
    draft.yarn = text
    reader.at += 2
  }
}

/** `2 sc B, 1 sc A`: the letter stands behind its stitches. */
function letterBehind(reader: Reader, draft: Draft): boolean {
  const text = reader.peek()?.text ?? ''
  if (draft.count === undefined || !reader.vocabulary.yarns.includes(text) && !isMainOrContrast(reader, text) || !/^([,;.)*\]]|and)?$/.test(reader.word(1))) return false
  draft.yarn = text
  reader.at += 1
  return true
}

/** `MC` and `CC`, the main and the contrast colour; in a row without `CC` an `MC` may as well be a magic circle. */
export function isMainOrContrast(reader: Reader, text: string): boolean {
  return text === 'CC' || text === 'MC' && (reader.vocabulary.yarns.includes('MC') || reader.all.some((token) => token.text === 'CC'))
}
