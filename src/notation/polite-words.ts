import type { Token } from './tokens.ts'

/** Verbs that some put before a stitch for fun: `Pop a hdc in the next st`. */
const playful = /^(?:pop|plop|stick|tuck|squeeze|whack|sneak)$/
const amount = /^(?:an?|one|two|three|four|five|six|\d+)$/

/** Words that a friendly designer adds and that say nothing of places or stitches. */
const dropped: readonly (readonly RegExp[])[] = [
  [/^so$/, /^that$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^so$/, /^you$/, /^(?:can|are|will|may)$/],
  [/^you$/, /^will$/, /^now$/],
  [/^as$/, /^you$/, /^(?:come|get)$/, /^to$/, /^each$/, /^one$/],
  [/^as$/, /^you$/, /^(?:come|get)$/, /^to$/, /^(?:it|them|each)$/],
  [/^as$/, /^you$/, /^(?:reach|meet|pass)$/, /^(?:it|them|each)$/],
  [/^as$/, /^you$/, /^go$/],
  [/^we$/, /^(?:go|work|come)$/],
  [/^your$/, /^way$/, /^(?:along|around|round|across)$/, /^with$/],
  [/^your$/, /^way$/],
  [/^(?:very|carefully|neatly|firmly|gently|simply|just|please)$/],
]
/** Words that only stress the one behind them: `exactly as Row 2`. */
const stressing: readonly (readonly [RegExp, RegExp])[] = [
  [/^(?:exactly|precisely|much)$/, /^(?:as|the|like)$/],
]

/** Words that are read as another. */
const readAs: Readonly<Record<string, string>> = { your: 'the', its: 'the' }

/** `in 1st ch`, `1st 4 unworked sc`: read as `first`. */
const isFirst = (all: readonly Token[], at: number): boolean => all[at]?.kind === 'ordinal' && all[at]!.value === 1 && (all[at + 1]?.kind === 'number' || /^(?:sts?|stitch(?:es)?|chs?|chains?|foundation|s[cl]|ss|[hdt]+[cr]|unworked|free|row)$/i.test(all[at + 1]?.text ?? '') && /^(?:in|into|the|sk|skip|miss)$/i.test(all[at - 1]?.text ?? ''))

/** `3 sc in each of the 8 ch-1 corners`: their spaces. */
function cornerSpace(word: (at: number) => string, at: number): string | undefined {
  const made = /^corners?$/.test(word(at)) && /^\d+$/.test(word(at - 1)) && word(at - 2) === '-' && word(at - 3) === 'ch' && !/^(?:sps?|spaces?)$/.test(word(at + 1))
  return made ? (word(at) === 'corner' ? 'sp' : 'sps') : undefined
}

/** `work evenly in sc across`, as `work even in sc`: without increases or decreases. Along an edge it says more. */
const isEven = (word: (at: number) => string, at: number): boolean =>
  word(at) === 'evenly' && /^work(?:ing|ed)?$/.test(word(at - 1)) && word(at + 1) === 'in' && /^(?:sc|hdc|htr|dc|tr)$/.test(word(at + 2)) && /^(?:across|[,.;(])?$/.test(word(at + 3))

/** The tokens of a row without them; `w/` is read as `with`, `your` and `its` are read as `the`, `every single ch` as `every ch`. */
export function withoutPoliteWords(all: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  const wordAt = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  for (let at = 0; at < all.length; ) {
    if (playful.test(wordAt(at)) && amount.test(all[at + 1]?.text ?? '')) {
      at += 1
      continue
    }
    const words = dropped.find((polite) => polite.every((word, ahead) => word.test(wordAt(at + ahead))))
    if (words) {
      at += words.length
      continue
    }
    if (wordAt(at) === 'w' && wordAt(at + 1) === '/') {
      out.push({ ...all[at]!, text: 'with', end: all[at + 1]!.end })
      at += 2
      continue
    }
    const token = isFirst(all, at) ? { ...all[at]!, kind: 'word' as const, text: 'first' } : all[at]!
    const other = readAs[wordAt(at)] ?? cornerSpace(wordAt, at)
    const stresses = stressing.some(([word, next]) => word.test(wordAt(at)) && next.test(wordAt(at + 1)))
    const single = wordAt(at) === 'single' && /^(?:each|every)$/.test(wordAt(at - 1)) && !/^cro/.test(wordAt(at + 1))
    if (!stresses && !single && !isEven(wordAt, at)) out.push(other === undefined ? token : { ...token, text: other })
    at += 1
  }
  return out
}
