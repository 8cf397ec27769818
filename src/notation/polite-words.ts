import type { Token } from './tokens.ts'

/** Verbs that some put before a stitch for fun: `Pop a hdc in the next st`. */
const playful = /^(?:pop|plop|stick|tuck|squeeze|whack|sneak)$/
const amount = /^(?:an?|one|two|three|four|five|six|\d+)$/

/** Words that a friendly designer adds and that say nothing of places or stitches. */
const dropped: readonly (readonly RegExp[])[] = [
  [/^so$/, /^that$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^so$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^you$/, /^will$/, /^now$/],
  [/^as$/, /^you$/, /^go$/],
  [/^we$/, /^(?:go|work|come)$/],
  [/^(?:very|carefully|neatly|firmly|gently|simply|just|please)$/],
]

/** Words that are read as another. */
const readAs: Readonly<Record<string, string>> = { your: 'the', rd: 'rnd', rds: 'rnds' }

/** The tokens of a row without them; `your` is read as `the`, `Rd 4` as `Rnd 4`, `every single ch` as `every ch`. */
export function withoutPoliteWords(all: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  for (let at = 0; at < all.length; ) {
    if (playful.test(all[at]!.text.toLowerCase()) && amount.test(all[at + 1]?.text ?? '')) {
      at += 1
      continue
    }
    const words = dropped.find((polite) => polite.every((word, ahead) => word.test(all[at + ahead]?.text.toLowerCase() ?? '')))
    if (words) {
      at += words.length
      continue
    }
    const token = all[at]!
    const other = readAs[token.text.toLowerCase()]
    const single = /^single$/i.test(token.text) && /^(?:each|every)$/i.test(all[at - 1]?.text ?? '') && !/^cro/i.test(all[at + 1]?.text ?? '')
    if (!single) out.push(other === undefined ? token : { ...token, text: other })
    at += 1
  }
  return out
}
