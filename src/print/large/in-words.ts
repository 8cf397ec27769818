/** A text without signs that are hard to tell apart in large print or by ear: times, ranges, equals and minus in words. */
export function inWords(text: string): string {
  return text
    .replace(/(?<=[\d½¼¾⅓⅔⅛]\)?)\s*×\s*(?=\d[\d.,½¼¾⅓⅔⅛ ()]*\s*(?:cm|mm|m|in|inches)\b)/g, ' by ')
    .replace(/×\s*(\d+(?:\s\([^()]*\))?)(?!\s*(?:cm|mm|m|in)\b)/g, (_, times: string) => `${times} times`)
    .replace(/(\d+(?:\s\([^()]*\))?)\s*×(?=\s*[([{*])/g, (_, times: string) => `${times} times`)
    .replace(/(?<=\d)\s*–\s*(?=\d)/g, ' to ')
    .replace(/\s=\s/g, ' equal ')
    .replace(/\s&\s/g, ' and ')
    .replace(/(?<=^|[\s(])−(?=\d)/g, 'minus ')
}

/** `6 ×` -> `6 repeats`, `6–9 ×` -> `6 to 9 repeats`, `6 ×, 2 ×` -> `6 repeats, then 2 repeats`; nothing for none. */
export function repeatsInWords(repeats: string): string {
  return repeats.split(/,\s(?=\d+(?:[–\d]*)\s×|\d+(?:\s\([^()]*\))?\s×)/).filter((one) => one.trim() !== '').map((one) => {
    const times = one.replace(/\s*×\s*$/, '').trim()
    return times === '1' ? '1 repeat' : `${inWords(times)} repeats`
  }).join(', then ')
}

/** `+6` -> `6 more`, `−6` -> `6 fewer`; `no change` for nothing. With sizes that differ in sign each has its own word. */
export function changeInWords(change: string): string {
  if (change === '') return 'no change'
  const word = (one: string) => (one.startsWith('−') ? `${one.slice(1)} fewer` : `${one.replace('+', '')} more`)
  const [, first = change, others] = /^([+−]\d+)\s\(([^()]*)\)$/.exec(change) ?? []
  if (others === undefined) return word(first)
  const sign = first.startsWith('−') ? '−' : '+'
  return /[+−]/.test(others) ? [first, ...others.split(/,\s*/)].map(word).join(', ') : `${first.slice(1)} (${others}) ${sign === '−' ? 'fewer' : 'more'}`
}

/** `36` -> `36 stitches`. */
export function stitchesInWords(stitches: string): string {
  if (stitches === '1') return '1 stitch'
  return stitches === '?' ? 'stitches not reckoned' : `${stitches} stitches`
}
