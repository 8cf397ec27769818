/** Shaping over several rows, told by a rule: how many stitches more or fewer each of them has. */
export interface Schedule {
  readonly kind: 'schedule'
  /** One entry a row, in order: the change against the row before. Empty when it goes on as the rows before did. */
  readonly changes: readonly number[]
  /** The stitches at which it stops. */
  readonly until?: number
  readonly start: number
  readonly end: number
}

const untilCount = /until (?:there are |you have |only )?(\d{1,5}) (?:sts?|sc|dc|hdc)\b/i

/**
 * Reads a rule of shaping; undefined when the text is none.
 *
 *   Cont to inc 6 sts every rnd as set until there are 54 sts    Cont in this way until 12 sts rem
 *   dec 1 st at each end every 4th row 3 times, then every 2nd row 5 times    dec 2-1-5 at neck edge
 */
export function readSchedule(text: string, start: number, end: number): Schedule | undefined {
  const words = text.slice(start, end).replace(/\s+/g, ' ').replace(/[\s.]+$/, '')
  const until = untilCount.exec(words)
  const stop = until ? { until: Number(until[1]) } : {}
  const place = { kind: 'schedule' as const, start, end }
  if (/^(?:cont|continue) in this (?:way|manner)/i.test(words) && until) return { ...place, changes: [], ...stop }
  if (/^each (?:rnd|round|row) has (?:1|one) more \w+ between/i.test(words)) return { ...place, changes: [], ...stop }
  const every = /\b(inc|dec)\w* (\d{1,3}) (?:sts?|sc|dc|hdc)(?: evenly)? (?:every|each|on every) (?:rnd|round|row)\b(?! \d)/i.exec(words)
  if (every && until) return { ...place, changes: [signed(every[1]!, Number(every[2]))], ...stop }
  const changes = rates(words)
  return changes.length > 0 ? { ...place, changes, ...stop } : undefined
}

function signed(by: string, count: number): number {
  return /^dec/i.test(by) ? -count : count
}

/** Rates of shaping: rows, stitches at once, and how often. */
function rates(words: string): readonly number[] {
  const triple = /\b(inc|dec)\w* (\d{1,2})-(\d{1,2})-(\d{1,2})\b/i.exec(words)
  if (triple) return spread(Number(triple[2]), signed(triple[1]!, Number(triple[3])), Number(triple[4]))
  const shaping = /\b(inc|dec)\w* (\d{1,2}) sts? at (each|both|neck|armhole|side|front|beg\w*|end|one)\b/i.exec(words)
  if (!shaping) return []
  const change = signed(shaping[1]!, Number(shaping[2])) * (/^(each|both)$/i.test(shaping[3]!) ? 2 : 1)
  const rate = /(?:every|each) (?:(\d{1,2})(?:st|nd|rd|th)|(other|alt|alternate))? ?rows? (\d{1,3}) times|on (?:the )?next (\d{1,3}) rows|on (?:the )?foll(?:owing)? (\d{1,3}) alt(?:ernate)? rows/gi
  return [...words.matchAll(rate)].flatMap(([, nth, other, times, next, alternate]) => {
    if (next) return spread(1, change, Number(next))
    if (alternate) return spread(2, change, Number(alternate))
    return spread(nth ? Number(nth) : other ? 2 : 1, change, Number(times))
  })
}

/** Every so many rows, so often. */
function spread(every: number, change: number, times: number): readonly number[] {
  if (every < 1 || every * times > 2_000) return []
  return Array.from({ length: every * times }, (_, index) => ((index + 1) % every === 0 ? change : 0))
}
