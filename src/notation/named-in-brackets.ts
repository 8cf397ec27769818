import type { Token } from './tokens.ts'

const amount = /^(?:\d+|an?)$/
const separator = /^[,;.:*()[\]]$/

/**
 * Names that the row gives itself: `corner (3 sc) in next sc, sc in next 12 sc, corner in next sc`, or `3 sc in next sc (corner made), …, corner
 * in next sc`. Behind that the name is read as its stitches.
 */
export function namedInBrackets(all: readonly Token[], isStitch: (word: string) => boolean): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const stitchAt = (at: number): boolean => amount.test(word(at)) && isStitch(word(at + 1))
  const names = new Map<string, readonly Token[]>()
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    const name = word(at)
    const begins = token.kind === 'word' && !isStitch(name) && (at === 0 || separator.test(word(at - 1)) || /^(?:and|then|work|make)$/.test(word(at - 1)))
    const told = names.get(name)
    if (begins && word(at + 1) === '(' && stitchAt(at + 2) && word(at + 4) === ')' && /^(?:in|into)$/.test(word(at + 5))) {
      names.set(name, all.slice(at + 2, at + 4))
      out.push(...all.slice(at + 2, at + 4))
      at += 4
    } else if (begins && told && /^(?:in|into)$/.test(word(at + 1))) out.push(...told.map((part) => ({ ...part, start: token.start, end: token.end })))
    else out.push(token)
    if (name === '(' && word(at + 2) === 'made' && word(at + 3) === ')') {
      const from = all.findLastIndex((_, index) => index < at && (separator.test(word(index)) || index === 0))
      const first = separator.test(word(from)) ? from + 1 : from
      if (stitchAt(first) && /^(?:in|into)$/.test(word(first + 2)) && !names.has(word(at + 1))) names.set(word(at + 1), all.slice(first, first + 2))
    }
  }
  return out
}
