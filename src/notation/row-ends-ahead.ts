import type { Reader } from './reader.ts'

/** `working along the lower edge, 1 ch, dc in each of the 43 row-ends`: of a piece worked sideways the lower edge is a side of its rows. */
export function rowEndsAhead(reader: Reader): boolean {
  const ahead = reader.all.slice(reader.at, reader.at + 24).map(({ text }) => text.toLowerCase()).join(' ')
  return /^(?:[,;:.] )?(?:with [^,;.]+, )?(?:(?:ch \d|\d ch)(?: \([^)]*\))? [,;.:] )?(?:work )?[^,;.:]*?\b(?:in|into|along|of)\b[^,;.:]*?\brow(?: -)? ?ends?\b/.test(ahead)
}
