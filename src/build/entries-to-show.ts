import type { PatternEntry } from '../components/pattern-entry.ts'
import { handedOverWorked } from './hand-over.ts'
import { fullEntry, listedEntry } from './to-entry.ts'

/** The patterns whose pages are made now: those that this process worked, or, where nothing was handed over, all that are stored. */
export function entriesToShow(stored: readonly PatternEntry[]): readonly PatternEntry[] {
  return handedOverWorked()?.map((collected) => (collected.sold ? listedEntry(collected, []) : fullEntry(collected, []))) ?? stored
}
