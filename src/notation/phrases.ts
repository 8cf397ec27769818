import { tokens, withoutGaps, type Token } from './tokens.ts'

/** A turn of phrase and what it is in the English of rows. */
export interface Phrase {
  readonly words: readonly PhraseWord[]
  readonly english: string
}

interface PhraseWord {
  /** `#` is a number, `*` a mark of repeats. */
  readonly any: ReadonlySet<string>
  readonly optional: boolean
}

/** Makes phrases ready for use, longest first. `usable` says which words may be taken at all. */
export function compilePhrases(written: Readonly<Record<string, string>>, usable: (word: string) => boolean): readonly Phrase[] {
  const phrases = Object.entries(written).map(([from, english]): Phrase => ({
    english,
    words: from.split(' ').map((part) => {
      const optional = part.length > 1 && part.endsWith('?')
      return { optional, any: new Set((optional ? part.slice(0, -1) : part).split('|').filter(usable)) }
    }),
  }))
  return phrases.toSorted((a, b) => b.words.length - a.words.length)
}

/** The tokens with every phrase put into English. What stands for a phrase has the place of the whole phrase. */
export function intoEnglish(all: readonly Token[], phrases: readonly Phrase[]): readonly Token[] {
  const out: Token[] = []
  let at = 0
  while (at < all.length) {
    const found = phraseAt(all, at, phrases)
    if (!found) {
      out.push(all[at]!)
      at += 1
      continue
    }
    const span = { start: all[at]!.start, end: all[at + found.taken.length - 1]!.end }
    const words = found.taken.filter(({ kind }) => kind === 'number' || kind === 'mark').map(({ text }) => text)
    const english = found.phrase.english.replace(/[#*]/g, () => words.shift() ?? '')
    out.push(...withoutGaps(tokens(english)).map((token) => ({ ...token, ...span })))
    at += found.taken.length
  }
  return out
}

function phraseAt(all: readonly Token[], from: number, phrases: readonly Phrase[]): { readonly phrase: Phrase; readonly taken: readonly Token[] } | undefined {
  for (const phrase of phrases) {
    let at = from
    const whole = phrase.words.every(({ any, optional }) => {
      if (!matches(all[at], any)) return optional
      at += 1
      return true
    })
    if (whole && at > from) return { phrase, taken: all.slice(from, at) }
  }
  return undefined
}

function matches(token: Token | undefined, any: ReadonlySet<string>): boolean {
  if (!token) return false
  return any.has(token.kind === 'number' ? '#' : token.kind === 'mark' ? '*' : token.text.toLowerCase())
}
