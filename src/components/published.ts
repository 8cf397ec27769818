import { getCollection } from 'astro:content'
import type { Card } from './card.ts'
import type { HelpEntry } from './help-entry.ts'
import type { PatternEntry } from './pattern-entry.ts'
import { publisherOf } from './shelf-line.ts'

/** Every pattern. In a build only the cards are here: booklets are handed over apart. */
export async function patternEntries(): Promise<readonly PatternEntry[]> {
  const entries: readonly { readonly data: PatternEntry }[] = await getCollection('patterns')
  return entries.map(({ data }) => data)
}

/** The card of every pattern that has one. */
export async function cards(): Promise<readonly Card[]> {
  return (await patternEntries()).flatMap(({ card }) => (card ? [card] : []))
}

/** Whose site it is. */
export async function publisherName(): Promise<string> {
  return publisherOf(await cards())
}

/** Every help page, by its code. */
export async function helpEntries(): Promise<readonly HelpEntry[]> {
  const entries: readonly { readonly data: HelpEntry }[] = await getCollection('help')
  return entries.map(({ data }) => data)
}
