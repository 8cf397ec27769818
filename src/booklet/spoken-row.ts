import type { Abbreviation, RowLine } from './booklet.ts'
import { nbsp } from './figures.ts'

/** The words that a pattern's abbreviations stand for, to be said aloud. */
export type SpokenWords = readonly (readonly [word: RegExp, said: string])[]

/** Words for the abbreviations of a pattern in its terms, longest first: `FPdc` before `dc`. */
export function spokenWords(abbreviations: readonly Abbreviation[], terms: 'US' | 'UK'): SpokenWords {
  const pairs = abbreviations.filter(({ kind }) => kind !== 'sign').flatMap(({ us, uk, meaning }) => {
    const words = (terms === 'US' ? us : uk).split(', ')
    const meanings = meaning.split(', ')
    // `st, sts` has a meaning for each; `yo` has one with a comma in it.
    return words.map((word, at) => [word, plainMeaning(words.length === meanings.length ? meanings[at] ?? '' : meaning)] as const)
  })
  return pairs.filter(([word, said]) => said !== '' && said.toLowerCase() !== word.toLowerCase())
    .sort(([a], [b]) => b.length - a.length)
    .map(([word, said]) => [new RegExp(`(?<![A-Za-z-])${word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![A-Za-z-])`, word === word.toLowerCase() ? 'gi' : 'g'), said])
}

/** `single crochet: insert the hook …` -> `single crochet` */
function plainMeaning(meaning: string): string {
  return meaning.replace(/[:(;,].*$/s, '').replace(/\bsee Special stitches$/, '').trim()
}

/**
 * A row as it is said aloud, its number aside: stars and brackets in words, abbreviations spelled out, and how often the
 * repeat is worked: `Single crochet in next 4 stitches, increase; repeat this around. The repeat is worked 6 times in all.`
 */
export function spokenRow(line: RowLine, words: SpokenWords): string {
  const text = line.text.map((run) => run.text).join('').replaceAll(nbsp, ' ')
  const signs = text
    .replace(/\brep(?:eat)? from (\*\*?|†)/gi, 'repeat this')
    .replace(/\s*\*\*\s*/g, ', the last repeat stops here, ')
    .replace(/^[*†]\s*/, '').replace(/[*†]\s*/g, 'repeat begins: ')
    .replace(/\[/g, 'bracket, ').replace(/\]/g, ', end of bracket,')
    .replace(/\((?=[^()]*,[^()]*\)\s*(?:all )?in)/gi, 'together, ')
    .replace(/×/g, ' times ').replace(/(?<=\d)–(?=\d)/g, ' to ')
    .replace(/\s+/g, ' ').replace(/,(?:\s*,)+/g, ',').replace(/\s+([,;.])/g, '$1').replace(/,([;.])/g, '$1')
  const said = words.reduce((so, [word, meaning]) => so.replace(word, meaning), signs)
  const times = line.repeats === '' || !line.text.some(({ repeat }) => repeat) ? '' : ` The repeat is worked ${line.repeats.replaceAll(nbsp, ' ').replaceAll('–', ' to ').replaceAll(/ ×/g, ' times')} in all.`
  return `${said.replace(/^./, (letter) => letter.toUpperCase())}${times}`
}
