import { rowWords } from './languages.ts'

/** A row or a round in a label, as part of a regular expression. */
export const rowWord = String.raw`(?:rows?|rnds?\.?|rounds?|rds?\.?|rw)`

/** What a row may be named for before its word: `C2C Row 7` from corner to corner, `Edging Rnd 1`. It is part of the row's name. */
export const namedFor = /^(c2c|edging|border|brim|trim|band|collar|cuff|hem|ruffle|frill)\s+(?=r)/i

/** Such words begin an instruction, and no label. */
export const instructionWords = 'note|notes|with|working|work|along|in|into|over|on|repeat|rep|join|turn|ch|chain|skip|sk|miss|sc|dc|hdc|tr|sl|fasten|then|do|end|make|size|sizes|now'

/** Whether a label's word means a row or a round. */
export function wordOf(written: string): 'row' | 'round' {
  const word = written.replace(namedFor, '')
  return /^(rnd|round|rd)/i.test(word) || isAmong(rowWords.round, word) ? 'round' : 'row'
}

/** A label's word as it is shown before the number. */
export function prefixOf(word: string): string {
  const [whole, lead] = namedFor.exec(word) ?? []
  if (whole && lead) return `${/^c2c$/i.test(lead) ? 'C2C' : lead[0]!.toUpperCase() + lead.slice(1).toLowerCase()} ${prefixOf(word.slice(whole.length))}`
  if (/^round/i.test(word)) return 'Round'
  return wordOf(word) === 'round' ? 'Rnd' : 'Row'
}

export function isAmong(words: readonly string[], word: string): boolean {
  return words.includes(word.toLowerCase())
}
