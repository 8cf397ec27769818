import { teens, units } from '../notation/number-words.ts'

const words = { ...units, ...teens }
const number = `(\\d+(?:\\s*\\([\\d,;\\s]+\\))?|${Object.keys(words).join('|')})`
const stitches = '(?:(?:extra|more|additional|surplus|spare) )?(?:sts?|stitch(?:es)?|row[ -]?ends?|rows?|places?|sc|hdc|htr|dc|tr)'
const forms = [
  new RegExp(`\\beas(?:e|ed|ing)\\b(?: in)?(?: (?:the|those|these|its))?(?: extra)? ${number} ${stitches}\\b(.*)`, 'i'),
  new RegExp(`\\b${number} ${stitches}\\b((?: [\\w-]+){0,8}?) (?:eased|to ease)\\b`, 'i'),
]
/** Not the number in all: `1 stitch at each corner`, `1 stitch every 10`. */
const again = /\b(?:each|every|per|either|both)\b/i

/** `whip stitch, easing in the 2 extra stitches of the Back`: how many are eased in, in each size, where the words tell it. */
export function easedIn(by: string): readonly number[] | undefined {
  const found = forms.map((form) => form.exec(by)).find((match) => match !== null)
  if (!found || again.test(found[2] ?? '')) return undefined
  const word = words[found[1]!.toLowerCase()]
  return word === undefined ? (found[1]!.match(/\d+/g) ?? []).map(Number) : [word]
}
