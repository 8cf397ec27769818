import { instructionWords, prefixOf, wordOf } from './label-words.ts'
import type { RowLabel } from './labels.ts'

/** `First side, 1st row (RS):`, `LEFT FRONT. Row 12:`, `Second side, neck row:`: the part of the piece, and the row of it. */
const partBefore = /^(\p{L}[\p{L}’'-]*(?: [\p{L}\d’'-]+){0,4})(?:\s*[,:;.]|\s+[-–—])\s+(?=(?:rows?|rnds?|rds?|rounds?|r)\s*\d|\d+(?:st|nd|rd|th)\b|(?:next|following|foll|last|first)\b.{0,16}?\b(?:rows?|rnds?|rounds?)\b|(?:\p{L}+ ){1,3}(?:row|rnd|round)\s*(?:[:(]|\d))/iu
/** `Outer round 1:`, `Left neck row (R.S.):`: what the row is for. */
const purposeBefore = /^(\p{L}[\p{L}’'-]*(?: [\p{L}’'-]+){0,3})\s+(?=(?:rows?|rnds?|rounds?)\b)/iu
/** `Armhole row (RS):`, `Neck row:` have no number: the word, and what may stand in brackets behind it. */
const unnumbered = /^(row|rnd|round)(?:\s*[([]\s*(?:(r\.?s\.?|w\.?s\.?|right[ -]side|wrong[ -]side)(?: facing)?)?[^()[\]]*[)\]]\s*[:.»›|]|\s*[:»›|])\s*/iu
/** `First neck side (RS):` has the side alone. */
const sided = /^(\p{L}[\p{L}’'-]*(?: [\p{L}’'-]+){0,3})\s*[([]\s*(r\.?s\.?|w\.?s\.?|right[ -]side|wrong[ -]side)(?: facing)?[^()[\]]*[)\]]\s*[:»›|]\s*/iu
const instructions = new RegExp(String.raw`^(?:${instructionWords}|across|around|up|down|from|to|at|after|before|of|the|each|every|rejoin|ss|htr|as|for|and|all|complete|finish|sew|this|same|begin|start|place|count|odd|even)\b`, 'i')

/**
 * A label that begins with words of its own. The words name the part that the row is of, whose numbers may begin again. `read` reads what stands
 * behind them.
 */
export function readWordedLabel(text: string, start: number, read: (from: number) => RowLabel | undefined): RowLabel | undefined {
  if (instructions.test(text)) return undefined
  const part = partBefore.exec(text)
  if (part) return withPart(text, start, part, ', ', read(part[0].length), true)
  const purpose = purposeBefore.exec(text)
  if (!purpose) {
    const [all, name, side] = sided.exec(text) ?? []
    return all === undefined ? undefined : { word: 'row', name: capital(name!), prefix: 'Row', numbers: [], start, end: start + all.trimEnd().length, side: sideOf(side)! }
  }
  const at = purpose[0].length
  const bare = unnumbered.exec(text.slice(at))
  if (!bare) return /\d/.test(text.slice(at, at + 12)) ? withPart(text, start, purpose, ' ', read(at)) : undefined
  const side = sideOf(bare[2])
  return { word: wordOf(bare[1]!), name: `${capital(purpose[1]!)} ${bare[1]!.toLowerCase()}`, prefix: prefixOf(bare[1]!), numbers: [], start, end: start + at + bare[0].trimEnd().length, ...(side && { side }) }
}

function withPart(text: string, start: number, [, lead]: RegExpExecArray, between: string, label: RowLabel | undefined, stop = false): RowLabel | undefined {
  const sign = stop ? /[:.»›|]\s*(?:[([][^()[\]]*[)\]])?$/ : /[:»›|]\s*(?:[([][^()[\]]*[)\]])?$/
  if (!label || !sign.test(text.slice(0, label.end - start).trimEnd())) return undefined
  const part = capital(lead!)
  return { ...label, start, part: part.toLowerCase(), name: `${part}${between}${label.name}`, prefix: `${part}${between}${label.prefix}` }
}

const sideOf = (words: string | undefined): 'RS' | 'WS' | undefined => (words === undefined ? undefined : /^r/i.test(words) ? 'RS' : 'WS')

const capital = (words: string): string => words[0]!.toUpperCase() + words.slice(1)
