import type { Terms } from '../../stitches/terms.ts'
import type { Span } from '../../text/span.ts'

/** Words beside `tension` where it is the pull of the hand on the yarn, which both terms call so. */
const ofTheHand = /\b(?:even|loose|loosely|firm|firmly|tight|tightly|relaxed|yarn|hand|keep|light|steady|good)\b/i

/**
 * What US print calls gauge and UK print tension. Undefined where the word means something else: a wire's or a machine's gauge, to
 * gauge the length, the tension of the hand.
 */
export function gaugeWord(text: string, word: Span, terms: Terms): string | undefined {
  const written = text.slice(word.start, word.end).toLowerCase()
  const before = text.slice(Math.max(0, word.start - 24), word.start)
  const after = text.slice(word.end, word.end + 24)
  if (terms === 'US') {
    const isVerb = /\b(?:to|can|will|you|and|then)\s+$/i.test(before) && /^\s+(?:the|how|your|it|by|whether)\b/i.test(after)
    return written === 'gauge' && !isVerb && !/(?:\d[\s-]*|\p{L}-)$/u.test(before) ? 'tension' : undefined
  }
  if (written !== 'tension') return undefined
  const sentence = `${before.replace(/^.*[.!?]\s/s, '')} ${after.replace(/[.!?](?:\s.*)?$/s, '')}`
  return ofTheHand.test(sentence) ? undefined : 'gauge'
}
