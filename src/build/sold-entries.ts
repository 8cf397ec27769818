import type { PatternEntry } from '../components/pattern-entry.ts'
import { handedOverSold } from './hand-over.ts'
import { fullEntry } from './to-entry.ts'

/**
 * Patterns that are sold, rows and all, for the pages of the release folder. They come from this process's memory and are never
 * stored with the site's content; where `npm run build` did not hand them over there are none.
 */
export function soldEntries(): readonly PatternEntry[] {
  return handedOverSold().filter(({ booklet }) => booklet !== undefined).map((collected) => fullEntry(collected, []))
}
