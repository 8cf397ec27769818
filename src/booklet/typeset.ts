import { nbsp } from './figures.ts'

const units = 'mm|cm|m|in|g|kg|oz|yd|sts?|stitches|sps?|chs?|lps?|rows?|rnds?|rounds?|times|more|%'
const stitchWords = '(?:[A-Za-z]{0,3}(?:sc|hdc|dc|htr|tr|dtr|trtr)(?:\\d+tog)?|sl st|ss|inc|dec)'

/** Places where a line must not break, each as what stands round the space. */
const glue: readonly RegExp[] = [
  // a number and what it counts: `4 mm`, `6 sts`, `2 dc`
  new RegExp(`(?<=\\d[½¼¾]?\\)?) (?=(?:${units}|${stitchWords})(?![A-Za-z]))`, 'g'),
  // a word and its number: `Row 5`, `ch 2`, `next 5`
  /(?<=\b(?:rows?|rnds?|rounds?|ch|next|last|first) )(?=\d)/gi,
  // `with A`
  /(?<=\b(?:[Ww]ith|[Tt]o|[Yy]arn) )(?=[A-H]\b)/g,
  // the star and what it opens, the times sign and its numbers
  /(?<=[*†] )(?=\S)/g,
  /(?<=\S )(?=×)|(?<=× )(?=\S)/g,
]

/** Phrases that stay whole: the call to repeat, and the numbers of the sizes. */
const whole: readonly RegExp[] = [
  /\brep(?:eat)? from \*+(?: (?:around|across|to end|to last|once more|twice more|\d+ (?:more )?times))?/gi,
  /\d+ [([](?:[\d–-]+, ?)*[\d–-]+[)\]]/g,
]

/**
 * A text with the signs of print: × – − and curly quotes for what a keyboard gives, and no-break spaces where a line must not
 * break. Every change is one character for one, so that places in the text stay where they are.
 */
export function typeset(text: string): string {
  let set = signs(text)
  for (const phrase of whole) set = set.replace(phrase, (found) => found.replaceAll(' ', nbsp))
  for (const place of glue) set = glued(set, place)
  return set
}

function signs(text: string): string {
  return quotes(text)
    // `(sc, inc) x 6`, `2x (sc, inc)`: only where a number says that it is no stitch of the letter code
    .replace(/(?<=[\d)\]}*] ?)x(?= ?\d)|(?<=\d)x(?= ?[([{*\s])/g, '×')
    // `Rows 3-6`; a date or a code of three numbers keeps its hyphens
    .replace(/(?<![\d-])(\d{1,3})-(?=\d{1,3}(?![\d-]))/g, '$1–')
    .replace(/(?<=^|[\s(])-(?=\d)/g, '−')
}

function quotes(text: string): string {
  let open = false
  return text.replace(/(?<=[A-Za-z])'(?=[A-Za-z])/g, '’').replace(/"/g, (_, at: number) => {
    if (!open && /\d/.test(text[at - 1] ?? '')) return '″'
    open = !open
    return open ? '“' : '”'
  })
}

/** The space at or just before each place becomes one that does not break. */
function glued(text: string, place: RegExp): string {
  const characters = [...text.matchAll(place)].map((found) => (text[found.index] === ' ' ? found.index : found.index - 1))
  if (characters.length === 0) return text
  const at = new Set(characters)
  return text.split('').map((character, index) => (at.has(index) && character === ' ' ? nbsp : character)).join('')
}
