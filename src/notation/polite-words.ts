import type { Token } from './tokens.ts'

/** Words that a friendly designer adds and that say nothing of places or stitches. */
const dropped: readonly (readonly RegExp[])[] = [
  [/^so$/, /^that$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^so$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^you$/, /^will$/, /^now$/],
  [/^as$/, /^you$/, /^go$/],
  [/^(?:carefully|neatly|firmly|gently|simply|just|please)$/],
]

/** The tokens of a row without them; `your` is read as `the`. */
export function withoutPoliteWords(all: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  for (let at = 0; at < all.length; ) {
    const words = dropped.find((polite) => polite.every((word, ahead) => word.test(all[at + ahead]?.text.toLowerCase() ?? '')))
    if (words) {
      at += words.length
      continue
    }
    const token = all[at]!
    out.push(/^your$/i.test(token.text) ? { ...token, text: 'the' } : token)
    at += 1
  }
  return out
}
