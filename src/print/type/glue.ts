/** A number as a pattern writes it: `6`, `1,200`, `2.5`, `3¾`, `9–10`, `−6`, with an opening bracket or star before it. */
const number = /^[(\[*“"]*[+−–-]?(?:\d(?:[\d.,/×–]*\d)?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])$/
/** The end of a bracket of sizes: `(8)`, `12)`. */
const sizesEnd = /\d[½¼¾⅓⅔⅛⅜⅝⅞]?\)$/
const sizesStart = /^\(\d/
/** What a number counts or measures: lengths and weights, stitches by name and by abbreviation, rows. */
const measures = 'mm|cm|m|km|in|inch|inches|ft|yds?|metres?|yards?|g|kg|oz|lb|grams?|%|times|more|balls?|skeins?|repeats?'
const stitches = 'sts?|stitch|stitches|ch|chs|chains?|sps?|spaces?|loops?|lps?|ss|sl|inc|dec|rows?|rounds?|rnds?|[a-zA-Z]{0,5}(?:sc|dc|tr|hdc|htr)(?:\\d*tog)?'
const unit = new RegExp(`^(?:${measures}|${stitches})(?![a-zA-Z])`)
const counted = /^[(\[*]*(?:rows?|rounds?|rnds?|steps?|sizes?|pages?|parts?|ch|no\.|versions?)$/i

/**
 * Between which words a line may not break, as the places after the words that hold on to the next one:
 * a number and its unit, a word and its number, a star and the words beside it, a bracket of sizes, and `rep from * around.`
 */
export function gluedAfter(words: readonly string[]): ReadonlySet<number> {
  const glued = new Set<number>()
  let inSizes = false
  for (const [at, word] of words.entries()) {
    const next = words[at + 1]
    if (next === undefined) break
    if (sizesStart.test(word)) inSizes = true
    if (word.includes(')')) inSizes = false
    const isNumber = number.test(word)
    if (
      inSizes || word.endsWith('*') || (isNumber && (unit.test(next) || sizesStart.test(next) || next === '×'))
      || (sizesEnd.test(word) && (unit.test(next) || next === '×')) || (word === '×' && number.test(next.replace(/[.,;:)]+$/, '')))
      || /^\*+[,;.]?$/.test(next) || (/^ch-\d+$/.test(word) && /^sps?\b/.test(next)) || (counted.test(word) && /^[(\[]?\d/.test(next))
    ) glued.add(at)
    if (/^rep(?:eat)?$/i.test(word) && next === 'from') holdRepeat(words, at, glued)
  }
  return glued
}

/** `rep from * around.`, `rep from * to end.`, `rep from ** across to …`: held up to the word that says how far. */
function holdRepeat(words: readonly string[], at: number, glued: Set<number>): void {
  if (!/^\*+,?$/.test(words[at + 2] ?? '')) return
  for (const step of [0, 1, 2]) glued.add(at + step)
  if (words[at + 3] === 'to') glued.add(at + 3)
}
