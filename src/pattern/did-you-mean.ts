import type { Hint } from '../diagnostics/diagnostic.ts'
import { nearest } from '../diagnostics/nearest.ts'

/** The name that was likely meant: first one that differs in capitals alone, then the nearest within a third of its letters. */
export function meant(written: string, names: Iterable<string>): string | undefined {
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
export function didYouMean(written: string, names: Iterable<string>): { readonly hint?: Hint } {
  const name = meant(written, names)
  return name === undefined || name === written ? {} : { hint: { text: `did you mean \`${name}\`?` } }
}
