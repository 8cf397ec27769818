import { tokens, withoutGaps, type Token } from '../../notation/tokens.ts'
import { inOtherTerms, otherTerms } from '../../stitches/other-terms.ts'
import type { Terms } from '../../stitches/terms.ts'
import type { Span } from '../../text/span.ts'
import { gaugeWord } from './gauge-word.ts'
import { isWork, longestWord, tradeWordInOther } from './trade-words.ts'

/** A stretch of a source and what comes in its place. */
export interface Edit extends Span {
  readonly text: string
}

/** How a text is read: in rows every word is a word of the trade, in prose only what can be nothing else. */
export type Manner = 'rows' | 'prose'

/** What stays as it is whatever it spells: names of pieces, and stitches of the pattern's own with a meaning of their own. Small letters. */
export interface Keeping {
  readonly terms: Terms
  readonly kept: ReadonlySet<string>
}

/** The most words that a stitch's name has: `front post half double crochet`. */
const longestName = 6

/** Edits that put a stretch of a source into the other terms: each is of one word, or of the words of one name, where it stands. */
export function editsIn(text: string, span: Span, manner: Manner, { terms, kept }: Keeping): readonly Edit[] {
  const all = withoutGaps(tokens(text, span.start, span.end))
  const edits: Edit[] = []
  for (let at = 0; at < all.length;) {
    const keeps = phrases(text, all, at).find(({ words }) => kept.has(words.toLowerCase()))
    const found = keeps ?? turnedAt(text, all, at, manner, terms)
    if (found && 'edit' in found) edits.push(found.edit)
    at += found?.length ?? 1
  }
  return edits
}

interface Phrase {
  readonly words: string
  readonly length: number
}

interface Turned {
  readonly edit: Edit
  readonly length: number
}

/** What begins at a token and is joined by nothing but spaces and hyphens, the longest first. */
function phrases(text: string, all: readonly Token[], at: number): readonly Phrase[] {
  const first = all[at]
  if (first === undefined || first.kind === 'gap') return []
  const found: Phrase[] = []
  for (let length = 1; length <= longestName + 2; length += 1) {
    const last = all[at + length - 1]
    if (last === undefined || length > 1 && !(last.kind === 'word' || last.kind === 'number' || /^[-–]$/.test(last.text))) break
    found.unshift({ words: text.slice(first.start, last.end).replace(/\s+/g, ' '), length })
  }
  return found
}

function turnedAt(text: string, all: readonly Token[], at: number, manner: Manner, terms: Terms): Turned | undefined {
  const first = all[at]
  if (first?.kind !== 'word') return undefined
  // `US sc`, `UK: dc`: words that say themselves whose they are stay true as they stand.
  if (manner === 'prose' && namesTerms.test(text.slice(Math.max(0, first.start - 24), first.start))) return undefined
  const own = terms === 'US' ? 'US' : 'UK'
  if (manner === 'prose' && first.text === own && isOfTerms.test(text.slice(first.end, first.end + 40))) return edited(first, first, otherTerms(terms))
  for (const { words, length } of phrases(text, all, at)) {
    const last = all[at + length - 1] ?? first
    if (last.kind !== 'word') continue
    if (manner === 'prose' && words === words.toUpperCase()) continue
    const stitch = isProsaic(words, manner) ? undefined : inOtherTerms(words, terms)
    if (stitch !== undefined) return { ...edited(first, last, stitch), length }
    const trade = length > longestWord ? undefined : tradeWordInOther(words.toLowerCase(), terms)
    if (trade && (manner === 'rows' || !trade.everyday || isWork.test(text.slice(last.end, last.end + 60)))) {
      return { ...edited(first, last, withCapital(words, trade.text)), length }
    }
  }
  const gauge = manner === 'prose' ? gaugeWord(text, first, terms) : undefined
  return gauge === undefined ? undefined : edited(first, first, withCapital(first.text, gauge))
}

/** `US`, `(UK`, `British terms:` just before a word. */
const namesTerms = /(?:^|[^\p{L}])(?:US|USA|UK|American|British)(?: terms?)?[\s(:=“"'*_]*$/u
const isOfTerms = /^\s+(?:crochet\s+)?(?:terms|terminology|abbreviations|stitch names|names)\b/i

/** Spellings that prose has in other senses: `s c`, `lp st`, the letters of a list. */
const isProsaic = (words: string, manner: Manner) => manner === 'prose' && /^(?:[a-z]|[a-z]{1,3}(?: [a-z]{1,2})+)$/i.test(words) && !/^(?:sl|rev) (?:sts?|sc|dc)$/i.test(words)

function edited(first: Span, last: Span, text: string): Turned {
  return { edit: { start: first.start, end: last.end, text }, length: 1 }
}

const withCapital = (written: string, text: string) => (/^\p{Lu}/u.test(written) ? text.replace(/^\p{L}/u, (letter) => letter.toUpperCase()) : text)
