import type { SpecialStitch } from '../pattern/pattern.ts'
import type { Stitch } from '../stitches/define.ts'
import { stitches } from '../stitches/table.ts'
import { stitchNamed, wordFor, type Terms } from '../stitches/terms.ts'
import type { Abbreviation } from './booklet.ts'
import { nbsp } from './figures.ts'
import { signsIn } from './signs.ts'
import { tradeWords, type TradeWord } from './trade-words.ts'

/** Where abbreviations are looked for. */
export interface AbbreviationSearch {
  /** Rows, heads of parts, and how special stitches are made: here every word is a word of the trade. */
  readonly rows: string
  /** Notes and finishing: here only what can be no ordinary word counts. */
  readonly prose: string
  readonly terms: Terms
  readonly special: readonly SpecialStitch[]
  readonly sizes: readonly string[]
  /** Whether a column of the rows shows RS and WS. */
  readonly sides: boolean
  /** Stitches of the rows by kind, in US words: what `inc` and `dec` are made of. */
  readonly kinds: readonly string[]
}

/** All abbreviations that the pattern uses and no others: stitches first, then words, then signs. */
export function abbreviationsOf(search: AbbreviationSearch): readonly Abbreviation[] {
  const rows = search.rows.replaceAll(nbsp, ' ')
  const prose = search.prose.replaceAll(nbsp, ' ')
  return [
    ...chain(rows, prose),
    ...stitchesUsed(rows, prose, search),
    ...shaping(rows, prose, search),
    ...search.special.filter(({ abbr }) => uses(rows, abbr) || uses(prose, abbr)).map((own) => specialEntry(own)),
    ...wordsUsed({ rows: `${rows}${search.sides ? '\nRS WS' : ''}`, prose }, search.terms),
    ...signsIn(rows, search.sizes),
  ]
}

function uses(text: string, word: string): boolean {
  const escaped = word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
  const flags = word === word.toLowerCase() ? 'i' : ''
  return new RegExp(`(?<![A-Za-z-])${escaped}(?![A-Za-z-])`, flags).test(text)
}

function chain(rows: string, prose: string): readonly Abbreviation[] {
  return [rows, prose].some((text) => /(?<![A-Za-z])ch(?![A-Za-z])/i.test(text))
    ? [{ kind: 'stitch', us: 'ch', uk: 'ch', meaning: 'chain' }]
    : []
}

/** Stitches of the table, in its order, each by the word that the pattern writes for it. */
function stitchesUsed(rows: string, prose: string, { terms, special }: AbbreviationSearch): readonly Abbreviation[] {
  const side = terms === 'US' ? 'us' : 'uk'
  const found = new Map<Stitch, string>()
  const own = new Set(special.map(({ abbr }) => abbr.toLowerCase()))
  const note = (word: string, all: boolean): boolean => {
    const stitch = own.has(word.toLowerCase()) ? undefined : stitchNamed(word.toLowerCase(), terms)
    if (stitch === undefined || !(all || word.toLowerCase() === stitch[side].toLowerCase())) return false
    const known = [...found.keys()].find((other) => other.us === stitch.us)
    if (known === undefined) found.set(stitch, word.toLowerCase() === stitch[side].toLowerCase() ? stitch[side] : word.toLowerCase())
    return true
  }
  for (const [text, all] of [[rows, true], [prose, false]] as const) eachPhrase(text, (phrase) => note(phrase, all))
  // The meaning of a stitch that is made of others names them, so they are explained as well.
  for (const stitch of found.keys()) {
    for (const [, us = ''] of stitch.meaning.matchAll(/\{([^}]+)\}/g)) note(wordFor(us, terms), true)
  }
  const place = new Map([...stitches.keys()].map((us, index) => [us, index]))
  return [...found].sort(([a], [b]) => (place.get(a.us) ?? place.size) - (place.get(b.us) ?? place.size)).map(([stitch, word]) => ({
    kind: 'stitch',
    us: terms === 'US' ? word : stitch.us,
    uk: terms === 'UK' ? word : stitch.uk,
    meaning: stitchMeaning(stitch, terms),
  }))
}

/** Tries phrases of three, two and one words from every place, the longest first; a phrase that is taken is passed over. */
function eachPhrase(text: string, take: (phrase: string) => boolean): void {
  const words = [...text.matchAll(/[A-Za-z0-9]+(?:[-’'][A-Za-z0-9]+)*/g)]
  for (let at = 0; at < words.length;) {
    const taken = [3, 2, 1].find((length) => {
      const [first, last] = [words[at], words[at + length - 1]]
      if (first === undefined || last === undefined) return false
      const phrase = text.slice(first.index, last.index + last[0].length)
      return /^[^\s]+(?: [^\s]+)*$/.test(phrase) && !/[,;.()[\]*]/.test(phrase) && take(phrase)
    })
    at += taken ?? 1
  }
}

function stitchMeaning(stitch: Stitch, terms: Terms): string {
  const words = stitch.meaning.replace(/\{([^}]+)\}/g, (_, us: string) => wordFor(us, terms))
  const meaning = terms === 'UK' ? words.replaceAll('yarn over', 'yarn round hook') : words
  const madeOfOthers = stitch.worksOver > 1 || / cl$/.test(stitch.us)
  return madeOfOthers ? meaning : `${stitch.name[terms === 'US' ? 'us' : 'uk']}: ${meaning}`
}

/** `inc` and `dec` are made of the stitch that the rows are made of; where that is more than one, no stitch is named. */
function shaping(rows: string, prose: string, { terms, special, kinds }: AbbreviationSearch): readonly Abbreviation[] {
  const own = new Set(special.map(({ abbr }) => abbr.toLowerCase()))
  const plain = kinds.filter((kind) => !/tog$|^(?:inc|dec)$/.test(kind))
  const stitch = plain.length === 1 ? plain[0] : undefined
  const other = terms === 'US' ? 'UK' : 'US'
  const two = stitch === undefined ? '2 stitches' : `2 ${wordFor(stitch, terms)} (${other} 2 ${wordFor(stitch, other)})`
  return [
    { word: 'inc', meaning: `increase: ${two} in one stitch` },
    { word: 'dec', meaning: 'decrease: the next 2 sts worked together as one' },
  ].filter(({ word }) => !own.has(word) && [rows, prose].some((text) => uses(text, word)))
    .map(({ word, meaning }) => ({ kind: 'stitch', us: word, uk: word, meaning }))
}

function specialEntry({ abbr, name }: SpecialStitch): Abbreviation {
  return { kind: 'stitch', us: abbr, uk: abbr, meaning: `${name ?? abbr}, see Special stitches` }
}

/** English words too, or parts of names: in prose they abbreviate nothing, as in `pat it flat`. */
const everyday = new Set(['alt', 'approx', 'beg', 'bet', 'cont', 'ea', 'foll', 'opp', 'pat', 'patt', 'pm', 'prev', 'sm', 'sp', 'BL', 'FL', 'CC', 'MC'])

function wordsUsed({ rows, prose }: { readonly rows: string; readonly prose: string }, terms: Terms): readonly Abbreviation[] {
  return tradeWords.flatMap((word) => {
    const spellings = terms === 'US' ? word.us : word.uk
    const used = spellings.filter((spelling) => usesWord(rows, spelling) || !everyday.has(spelling) && usesWord(prose, spelling))
    if (used.length === 0) return []
    const both = used.length > 1 && word.meaning.length > 1
    return [{ kind: 'word', ...shown(word, used, terms), meaning: both ? meanings(word, spellings, used).join(', ') : meanings(word, spellings, used)[0] ?? '' } as const]
  })
}

/** `ch-sp` also stands in `ch-2 sp`; a word in full letters, such as the UK `miss`, needs no entry. */
function usesWord(text: string, spelling: string): boolean {
  if (spelling === 'miss') return false
  if (spelling === 'ch-sp' || spelling === 'ch-sps') {
    const plural = spelling.endsWith('s') ? 's' : '(?!s)'
    return new RegExp(`(?<![A-Za-z])(?:ch-(?:\\d+ )?|\\d+-ch )sp${plural}(?![A-Za-z])`, 'i').test(text)
  }
  if (spelling === 'sp' || spelling === 'sps') return uses(text.replace(/\bch-(?:\d+ )?sps?\b|\b\d+-ch sps?\b/gi, ''), spelling)
  return uses(spelling === 'st' ? text.replace(/\bsl st\b/gi, '') : text, spelling)
}

function shown(word: TradeWord, used: readonly string[], terms: Terms): { readonly us: string; readonly uk: string } {
  const other = (terms === 'US' ? word.uk : word.us)
  const same = other.every((spelling, index) => spelling === (terms === 'US' ? word.us : word.uk)[index])
  const own = used.join(', ')
  const theirs = same ? own : other[0] ?? own
  return terms === 'US' ? { us: own, uk: theirs } : { us: theirs, uk: own }
}

function meanings({ meaning }: TradeWord, spellings: readonly string[], used: readonly string[]): readonly string[] {
  return meaning.length === 1 ? meaning : used.map((spelling) => meaning[spellings.indexOf(spelling)] ?? '')
}
