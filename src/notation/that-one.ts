import type { Token } from './tokens.ts'

const nouns = /^(?:sts?|stitch(?:es)?|[hd]?d?sc|h?dc|h?d?tr|chs?|chains?|sps?|spaces?|loops?)$/i
const singular: Readonly<Record<string, string>> = { sts: 'st', stitches: 'stitch', chs: 'ch', chains: 'chain', sps: 'sp', spaces: 'space', ends: 'end', loops: 'loop' }

/**
 * Places by the one before them: `2 sc in the one after`, `1 sc in the row-end after that`, `in the following one` are in the next place of
 * that kind.
 */
export function nextByTheOneBefore(all: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const word = (ahead: number): string => all[at + ahead]?.text.toLowerCase() ?? ''
    const token = all[at]!
    const one = word(0) === 'one' && /^(?:next|following)$/.test(word(-1)) && /^(?:[,;.)\]]|and|)$/.test(word(1))
    const after = word(0) === 'one' && word(-1) === 'the' && word(1) === 'after'
    const noun = one || after ? nounBefore(out) : []
    if (noun.length > 0) {
      if (after) out.push({ ...token, text: 'next', kind: 'word' })
      out.push(...noun.map((part) => ({ ...part, start: token.start, end: token.end })))
      if (after) at += /^(?:that|it)$/.test(word(2)) ? 2 : 1
      continue
    }
    // `first 4 of the 5 sts, 3 dc in the last of them`: `first 4` leave one.
    const lastOne = word(0) === 'the' && word(1) === 'last' && word(2) === 'of' && /^(?:them|these|those)$/.test(word(3)) && /^(?:[,;.)]|and|then|)$/.test(word(4)) && firstSaid(out)
    if (lastOne) {
      out.push({ ...token, text: 'next' }, { ...token, text: 'st' })
      at += 3
      continue
    }
    const the = word(0) === 'the' ? nounAt(all, at + 1) : 0
    if (the > 0 && word(the + 1) === 'after' && /^(?:that|it)$/.test(word(the + 2))) {
      out.push({ ...token, text: 'next' }, ...all.slice(at + 1, at + 1 + the))
      at += the + 2
      continue
    }
    out.push(token)
  }
  return out
}

/** How many tokens a noun has here: `st`, `row-end`, `row end`. */
function nounAt(all: readonly Token[], at: number): number {
  const text = (ahead: number): string => all[at + ahead]?.text ?? ''
  if (/^row$/i.test(text(0))) return text(1) === '-' && /^ends?$/i.test(text(2)) ? 3 : /^ends?$/i.test(text(1)) ? 2 : 0
  return nouns.test(text(0)) ? 1 : 0
}

/** The clause before the one that is being read. */
function clauseBefore(out: readonly Token[]): readonly Token[] {
  const ends = out.flatMap(({ text }, index) => (/^(?:[,;.(]|and)$/i.test(text) ? [index] : []))
  return out.slice((ends.at(-2) ?? -1) + 1, ends.at(-1))
}

/** Whether the first so many of stitches were worked just before. */
const firstSaid = (out: readonly Token[]): boolean => clauseBefore(out).some(({ text }, index, clause) => /^first$/i.test(text) && clause[index + 1]?.kind === 'number')

/** The last place that was named, in the singular. */
function nounBefore(out: readonly Token[]): readonly Token[] {
  for (let at = out.length - 1; at > 0; at -= 1) {
    const length = nounAt(out, at)
    if (length > 0 && /^(?:next|first|last|same|the|each|following)$/i.test(out[at - 1]!.text)) {
      return out.slice(at, at + length).map((token) => ({ ...token, text: singular[token.text.toLowerCase()] ?? token.text }))
    }
  }
  return []
}
