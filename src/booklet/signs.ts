import type { Abbreviation } from './booklet.ts'
import { unparted } from './figures.ts'

/** The signs that rows are written with: when one is there, and what it says. */
const signs: readonly { readonly sign: string; readonly meaning: string; readonly stands: RegExp }[] = [
  { sign: '* … ;', meaning: 'the part to repeat; it is underlined', stands: /\*[^*\n]+(?:\*\*[^*\n]+)?;/ },
  { sign: '* … *', meaning: 'the part to repeat; it is underlined', stands: /(?<!\*)\*[^*;\n]+\*(?!\*)/ },
  { sign: '**', meaning: 'where the last repeat stops', stands: /\*\*/ },
  { sign: '†', meaning: 'a second repeat, inside the first', stands: /†/ },
  { sign: '[ ] 2 times', meaning: 'work all that stands in the brackets as often as is said', stands: /\](?:,? (?:×|\d+\s(?:more\s)?times|twice|once|around|across))/ },
  { sign: '( ) 2 times', meaning: 'work all that stands in the brackets as often as is said', stands: /\)(?:,? (?:×|\d+\s(?:more\s)?times|twice|around|across))/ },
  { sign: '( ) in', meaning: 'work all that stands in the brackets into the one place', stands: /\([^()]*[a-z][^()]*,[^()]*\) (?:all )?(?:in|into)\b/ },
  { sign: '×', meaning: 'times', stands: /×/ },
]

/** The signs that a text uses, its spaces all of one kind. With sizes, the brackets of the numbers are explained first. */
export function signsIn(text: string, sizes: readonly string[]): readonly Abbreviation[] {
  // `rep from *` points back at a star and opens nothing.
  const opening = text.replace(/\bfrom \*+/g, 'from')
  const found = signs.filter(({ stands }) => stands.test(opening)).map(({ sign, meaning }) => ({ sign, meaning }))
  const [first, ...others] = sizes.map(unparted)
  const bySize = sizes.length > 1 && /\d\s?[([]\d+(?:, ?\d+)*[)\]]/.test(text)
    ? [{ sign: '6 (8)', meaning: `numbers for the sizes: ${first} first, in brackets ${others.join(', ')}; one number is for all` }]
    : []
  return [...bySize, ...found].map(({ sign, meaning }) => ({ kind: 'sign', us: sign, uk: sign, meaning }))
}
