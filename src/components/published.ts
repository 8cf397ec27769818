import { getCollection } from 'astro:content'
import type { Booklet } from '../booklet/booklet.ts'
import type { HelpEntry } from './help-entry.ts'
import type { PatternEntry } from './pattern-entry.ts'

/** Every pattern. */
export async function patternEntries(): Promise<readonly PatternEntry[]> {
  const entries: readonly { readonly data: PatternEntry }[] = await getCollection('patterns')
  return entries.map(({ data }) => data)
}

/** Every booklet that there is. */
export async function booklets(): Promise<readonly Booklet[]> {
  return (await patternEntries()).flatMap(({ booklet }) => (booklet ? [booklet] : []))
}

/** Every help page, by its code. */
export async function helpEntries(): Promise<readonly HelpEntry[]> {
  const entries: readonly { readonly data: HelpEntry }[] = await getCollection('help')
  return entries.map(({ data }) => data)
}
