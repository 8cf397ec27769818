import type { PieceFacts } from '../../checks/facts.ts'
import type { Label } from '../../diagnostics/diagnostic.ts'
import type { Span } from '../../text/span.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
import type { Pattern } from '../pattern.ts'
import type { Passage } from './passages.ts'

/** All that a check of sense looks at: what the front-matter says, what the rows came to, and the words around them. */
export interface SenseFacts {
  readonly pattern: Pattern
  /** Every piece in every size, as it was worked. */
  readonly pieces: readonly WorkedPiece[]
  /** The same pieces with their written rows. */
  readonly facts: readonly PieceFacts[]
  /** Every written row once, its label and total included. */
  readonly rows: readonly Passage[]
  /** Everything that is said outside the rows: remarks, notes, the body and the sentences of the front-matter. */
  readonly prose: readonly Passage[]
}

/** Pieces in the order of the file, each in one size; the first size when none is said. */
export function inSizeAt({ pattern, pieces }: SenseFacts, size = 0): readonly WorkedPiece[] {
  return pieces.slice(size * pattern.pieces.length, (size + 1) * pattern.pieces.length)
}

/** Number of sizes, 1 for a pattern that names none. */
export function sizeCount({ pattern }: SenseFacts): number {
  return Math.max(1, pattern.sizes.length)
}

/** The names of those sizes that something holds for; nothing to say where it holds for all. */
export function onlyIn(facts: SenseFacts, held: readonly number[]): { readonly sizes?: readonly string[] } {
  return held.length === sizeCount(facts) ? {} : { sizes: held.map((size) => facts.pattern.sizes[size] ?? '') }
}

/** Where a key stands, or the first of several that is there; the head of the file when none is. */
export function placeOfKey({ pattern }: SenseFacts, ...paths: readonly string[]): Span {
  for (const path of paths) {
    const span = pattern.places.get(path)
    if (span) return span
  }
  return { start: 0, end: 3 }
}

/** A key as something to point at beside the place itself; nothing when it is not there. */
export function labelAt({ pattern }: SenseFacts, path: string, text: string): readonly Label[] {
  const span = pattern.places.get(path)
  return span ? [{ span, text }] : []
}

/** Everything that the pattern says, rows and prose, in one text. */
export function allWords({ rows, prose }: SenseFacts): string {
  return [...rows, ...prose].map(({ text }) => text).join('\n')
}

/** A number as people write it: at most two places behind the point, none that say nothing. */
export function plainNumber(value: number, places = 1): string {
  return String(Number(value.toFixed(places)))
}

/** A pattern with a version is on its way to buyers: only there is it worth saying how something is written. */
export function toPublish({ pattern }: SenseFacts): boolean {
  return pattern.version !== undefined
}
