import type { Hint } from '../diagnostics/diagnostic.ts'
import { nearest } from '../diagnostics/nearest.ts'

// Among more names than any pattern has, looking for the nearest to each slip would take longer than all else.
const mostNames = 1000

/** The name that was likely meant: first one that differs in capitals alone, then the nearest within a third of its letters. */
export function meant(written: string, names: readonly string[]): string | undefined {
  if (names.length > mostNames) return undefined
  const word = written.trim()
  const small = word.toLowerCase()
  const near: string[] = []
  for (const name of names) {
    if (name.toLowerCase() === small) return name
    // Names that differ by more than a third in length alone cannot be near. Long words are never compared letter by letter.
    if (Math.abs(name.length - word.length) * 3 <= word.length + 2) near.push(name)
  }
  return nearest(word, near)
}

/** The hint that names what was likely meant. It is a question: nothing was tried. */
export function didYouMean(written: string, names: readonly string[]): { readonly hint?: Hint } {
  const name = meant(written, names)
  return name === undefined || name === written ? {} : { hint: { text: `did you mean \`${name}\`?` } }
}
