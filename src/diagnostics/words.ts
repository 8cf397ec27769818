/**
 * The word for so many: `stitch` for 1, `stitches` for 2, also for `st` (`sts`) and `ch-2 sp` (`ch-2 sps`).
 * Abbreviations of stitches stay as they are: 17 dc, 5 ch, 2 sl st.
 */
export function plural(word: string, count: number): string {
  if (count === 1) return word
  const [, before = '', last = ''] = /^(.*[\s-])?(\S+)$/.exec(word) ?? []
  if (unchanging.test(word) || unchanging.test(last)) return word
  if (/(?:s|x|z|ch|sh)$/.test(last) && last.length > 2) return `${before}${last}es`
  if (/[^aeiou]y$/.test(last)) return `${before}${last.slice(0, -1)}ies`
  return `${before}${last}s`
}

// The trade writes stitch abbreviations without an s, whatever their number.
const unchanging = /^(?:ch|sl st|ss|(?:\w+ )?(?:(?:fp|bp|f|e|l|r|s)?(?:sc|hdc|dc|htr|tr|dtr|trtr|ttr)(?:\d+tog)?))$/i

/** A number with its word: `1 stitch`, `2 stitches`, `0 rows`. */
export function counted(count: number, word: string): string {
  return `${count} ${plural(word, count)}`
}

/** `1st`, `2nd`, `3rd`, `11th`, `22nd`. */
export function ordinal(number: number): string {
  const tens = number % 100
  if (tens >= 11 && tens <= 13) return `${number}th`
  return `${number}${['th', 'st', 'nd', 'rd'][number % 10] ?? 'th'}`
}

/** `once`, `twice`, `3 times`. */
export function timesInWords(times: number): string {
  if (times === 1) return 'once'
  return times === 2 ? 'twice' : `${times} times`
}

/** `a`, `a and b`, `a, b and c`; with another word: `a, b or c`. */
export function listOf(words: readonly string[], joinedBy = 'and'): string {
  const last = words.at(-1)
  if (words.length < 2 || last === undefined) return last ?? ''
  return `${words.slice(0, -1).join(', ')} ${joinedBy} ${last}`
}

/** A change with its sign: `+6`, `−2` (a true minus, as wide as the plus), `0`. */
export function signed(change: number): string {
  if (change === 0) return '0'
  return change > 0 ? `+${change}` : `−${-change}`
}

/** How a number lies to another: `1 more`, `2 fewer`, `the same`. */
export function moreOrFewer(count: number, than: number): string {
  if (count === than) return 'the same'
  return count > than ? `${count - than} more` : `${than - count} fewer`
}

/**
 * Stitches and chain spaces by kind: `17 dc, 5 ch-2 sps`. Kinds of which there are none are left out.
 * Spaces stand under `ch-2`, a space of no said length under `ch`.
 */
export function byKind(
  kinds: Readonly<Record<string, number>>,
  spaces: Readonly<Record<string, number>> = {},
): string {
  const stitches = Object.entries(kinds).filter(([, count]) => count !== 0).map(([kind, count]) => `${count} ${kind}`)
  const gaps = Object.entries(spaces).filter(([, count]) => count !== 0).map(([kind, count]) => counted(count, `${kind} sp`))
  return [...stitches, ...gaps].join(', ')
}
