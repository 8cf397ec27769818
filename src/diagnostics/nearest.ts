import { distance } from 'fastest-levenshtein'

/**
 * The word that was likely meant, or undefined where none lies near: a third of the letters may differ, and two
 * words at the same distance are no answer. Capital letters do not matter, and two letters that changed places are one slip.
 */
export function nearest(word: string, list: Iterable<string>): string | undefined {
  const typed = word.toLowerCase()
  const furthest = Math.max(1, Math.ceil(typed.length / 3))
  let best: { readonly meant: string; readonly slips: number } | undefined
  let alone = true
  for (const candidate of new Set(list)) {
    const slips = slipsBetween(typed, candidate.toLowerCase())
    if (slips > furthest || slips >= typed.length || (best && slips > best.slips)) continue
    alone = !best || slips < best.slips
    best = { meant: candidate, slips }
  }
  return alone ? best?.meant : undefined
}

/** How many letters are too many, too few or wrong; two that changed places are one slip. */
export function slipsBetween(typed: string, meant: string): number {
  const slips = distance(typed, meant)
  const lettersChangedPlaces = slips === 2 && typed.length === meant.length && sorted(typed) === sorted(meant)
  return lettersChangedPlaces ? 1 : slips
}

function sorted(word: string): string {
  return [...word].sort().join('')
}
