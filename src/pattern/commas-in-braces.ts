import { meant } from './did-you-mean.ts'
import type { Pair, Path, TextEntry } from './entry.ts'
import { patternSchema } from './schema/pattern.ts'
import { keysAt } from './schema/shape-at.ts'

/**
 * `{ by: whip stitch, easing in fullness }`: between braces a comma ends the value, and YAML makes a key without a value of the words behind
 * it. They go on the text before, unless they are a key, or one misspelt.
 */
export function goesOnBehindComma(name: string, path: Path): boolean {
  const known = keysAt(patternSchema, path)
  return !known.includes(name) && meant(name, known) === undefined && !/\S:\S/.test(name)
}

/** The text before the comma with the words behind it; `between` is what stands between the two. */
export function withWordsBehind({ key, value }: Pair & { readonly value: TextEntry }, { words, end, between }: { readonly words: string; readonly end: number; readonly between: string }): Pair {
  return { key, value: { ...value, span: { start: value.span.start, end }, value: `${value.value}${between.replace(/\s+/g, ' ')}${words}` } }
}
