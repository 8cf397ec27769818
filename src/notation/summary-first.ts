import type { Token } from './tokens.ts'

const separator = /^[,;.:()[\]*]$/
const ways = /^(?:along|across|down|up|over|around|round)$/
/** What is gone round or along as a whole. */
const whole = /^(?:around|round|in every place\b.*|(?:around|round) (?:all )?(?:the )?(?:[a-z-]+ )*(?:edge|edges|sides|border|outline|half|piece|panel|mat|opening|neck|square|front|back|work)|along (?:all |both |the )?(?:two|three|four) (?:edges|sides))$/
const longest = 14

interface Summary {
  /** How many tokens it has, its colon among them. */
  readonly length: number
  readonly stitch?: Token
}

/**
 * A row told at once, and behind the colon part by part: `work sc evenly around the neck opening: 8 across the back, 4 down the side, …`,
 * `sc evenly around: 3 sc in first st, …`. What is worked is told by the parts, those that name no stitch are of the one before the colon.
 */
export function withoutSummary(all: readonly Token[], isStitch: (word: string) => boolean): readonly Token[] {
  const out: Token[] = []
  let stitch: Token | undefined
  for (let at = 0; at < all.length; at += 1) {
    const summary = summaryAt(all, at, isStitch)
    if (summary) {
      stitch = summary.stitch
      at += summary.length - 1
      continue
    }
    const token = all[at]!
    if (token.text === '.') stitch = undefined
    out.push(token)
    if (stitch && token.kind === 'number' && ways.test(all[at + 1]?.text ?? '') && separator.test(all[at - 1]?.text ?? '')) out.push({ ...stitch, start: token.start, end: token.end })
  }
  return out
}

function summaryAt(all: readonly Token[], at: number, isStitch: (word: string) => boolean): Summary | undefined {
  const word = (index: number): string => all[index]?.text.toLowerCase() ?? ''
  if (at > 0 && !separator.test(word(at - 1)) && !/^(?:and|then)$/.test(word(at - 1))) return undefined
  let from = at
  const led = /^(?:work|make|working)$/.test(word(from)) && (from += 1) > 0
  if (/^(?:1|one)$/.test(word(from))) from += 1
  const stitch = isStitch(word(from)) && !/^(?:sl|ch)$/.test(word(from)) ? all[from++] : undefined
  const evenly = word(from) === 'evenly' && (from += 1) > 0
  if (!stitch) return undefined
  let colon = from
  while (colon < all.length && colon - at <= longest && !separator.test(word(colon))) colon += 1
  if (word(colon) !== ':' || colon - at > longest) return undefined
  const said = all.slice(from, colon).map(({ text }) => text.toLowerCase()).join(' ')
  if (!whole.test(said) && !(evenly && led && said === '')) return undefined
  // One number behind it is that of the edge, and no list of parts.
  const end = all.findIndex(({ text }, index) => index > colon && text === '.')
  const parts = all.slice(colon, end < 0 ? undefined : end).filter(({ kind, text }, index, rest) => kind === 'number' && /^[,;:]$/.test(rest[index - 1]?.text ?? '') || /^\d/.test(text) && isStitch(rest[index + 1]?.text ?? ''))
  return parts.length > 1 ? { length: colon - at + 1, stitch } : undefined
}
