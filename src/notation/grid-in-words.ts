import { motifWords } from './motif-words.ts'
import { upToNineteen } from './number-words.ts'

/** Motifs beside one another, and below. */
export interface GridInWords {
  readonly across: number
  readonly down: number
}

const number = String.raw`(\d{1,3}|${Object.keys(upToNineteen).join('|')})`
const motif = String.raw`(?: (?:${motifWords}))?`
const by = String.raw` ?(?:,|and|by|x|×)? ?`

/** `along the short edges` */
const along = String.raw`(?:along|on|across|at|down) (?:the|each|either|both) (?:short|long|shorter|longer|narrow|top|bottom|side|other)(?: (?:edges?|sides?|ends?))?`

/** How designers tell the size of what they joined; each form gives two numbers, or one for a single row of motifs. */
const forms: readonly RegExp[] = [
  new RegExp(String.raw`\b${number}${motif} (?:wide|across)${by}(?:and )?${number}${motif} (?:long|deep|high|tall|down)\b`),
  new RegExp(String.raw`\b${number} (?:by|x|×) ${number} (?:${motifWords})\b`),
  new RegExp(String.raw`\b${number}${motif} ${along}(?:,|;)?(?: and)? ${number}${motif} ${along}`),
  new RegExp(String.raw`\b${number} (?:rows|strips|columns) of ${number}${motif}\b`),
  new RegExp(String.raw`\b(?:strip|row|line|band|chain) of ${number} (?:${motifWords})\b`),
]

/** How many motifs a remark says were joined. */
export function gridInWords(words: string): GridInWords | undefined {
  const text = words.toLowerCase().replace(/\s+/g, ' ')
  const found = forms.map((form) => form.exec(text)).find((match) => match !== null)
  if (!found) return undefined
  const [first = 1, second = 1] = found.slice(1).map((word) => upToNineteen[word] ?? Number(word))
  return { across: first, down: second }
}
