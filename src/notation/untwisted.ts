import type { Token } from './tokens.ts'

/** How a chain must lie before it is closed to a ring (common practice, no source). */
const clauses = [
  /^(?:being |taking )?(?:very )?(?:careful|care)(?: (?:that|so that))? not to (?:twist|let)(?: (?:the|your|it|work|chain|chains|ch|sts|stitches|twist))*$/,
  /^(?:without|not|do not|don't|avoid|avoiding) twist(?:ing)?(?: (?:the|your|it|them|work|chain|chains|ch|sts|stitches))*$/,
  /^(?:making|make) sure(?: that)?(?: (?:the|your|it|work|chain|chains|ch|sts|stitches))* (?:is|are) (?:not twisted|untwisted)$/,
  /^(?:the )?(?:chain|chains|ch)? ?(?:not twisted|untwisted)$/,
]

/** `Ch 28, without twisting, sl st in first ch`: the words and a sign beside them are taken out, so that the chain and its join stand together. */
export function untwisted(all: readonly Token[]): readonly Token[] {
  if (!all.some(({ text }) => /twist/i.test(text))) return all
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const end = clauseEnd(all, at)
    if (end === undefined || all[at - 1] !== undefined && !/^(?:[,;.(]|and)$/i.test(all[at - 1]!.text)) {
      out.push(all[at]!)
      continue
    }
    const [before, behind] = [out.at(-1)?.text.toLowerCase(), all[end]?.text]
    if (before === '(' && behind === ')') {
      out.pop()
      at = end
    } else if (/^[,;]$/.test(before ?? '') && (behind === undefined || /^[.)]$/.test(behind))) {
      out.pop()
      at = end - 1
    } else at = behind === ',' || behind === ';' ? end : end - 1
  }
  return out
}

/** Index behind the longest clause that begins here. */
function clauseEnd(all: readonly Token[], at: number): number | undefined {
  for (let length = Math.min(10, all.length - at); length > 0; length -= 1) {
    const words = all.slice(at, at + length).map(({ text }) => text.toLowerCase()).join(' ')
    if (clauses.some((clause) => clause.test(words))) return at + length
  }
  return undefined
}
