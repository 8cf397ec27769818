import type { Terms } from '../../stitches/terms.ts'

/** A word of the trade that is no stitch and differs between the terms, in the forms in which it is written. */
interface WordPair {
  readonly US: string
  readonly UK: string
  /** In prose it is a word of everyday speech as well, and is turned only where what follows is work. */
  readonly everyday?: boolean
}

/** In the order in which they are tried; where several words of one side stand for one of the other, the first is the one it comes back as. */
const pairs: readonly WordPair[] = [
  { US: 'skip', UK: 'miss', everyday: true },
  { US: 'skips', UK: 'misses', everyday: true },
  { US: 'skipped', UK: 'missed', everyday: true },
  { US: 'skipping', UK: 'missing', everyday: true },
  { US: 'sk', UK: 'miss' },
  { US: 'skp', UK: 'miss' },
  { US: 'yarn over', UK: 'yarn round hook' },
  { US: 'yarn overs', UK: 'yarns round hook' },
  { US: 'yo', UK: 'yrh' },
]

/** The most words that one of these has. */
export const longestWord = 3

/** A word of the trade in the other terms, and whether prose has it in everyday speech too. Small letters. */
export function tradeWordInOther(word: string, terms: Terms): { readonly text: string; readonly everyday: boolean } | undefined {
  const pair = pairs.find((one) => one[terms] === word)
  return pair && { text: terms === 'US' ? pair.UK : pair.US, everyday: pair.everyday === true }
}

/** What follows `skip` and `miss` where they speak of places and not of anything else: `skip the next 2 sts`, `miss one ch`. */
export const isWork = /^[\s*]*(?:(?:the|a|an|each|every|this|that|next|first|last|one|two|three|four|same|other|turning|\d+|of|only|those|these|any)[\s-]+){0,4}(?:ch|chs|chains?|sts?|stitch(?:es)?|sps?|spaces?|rows?|rnds?|rounds?|loops?|lps?|sc|hdc|dc|tr|dtr|htr|ss|sl st|tch|row-ends?|places?)\b/i
