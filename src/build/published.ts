import { getCollection } from 'astro:content'
import type { Card } from '../components/card.ts'
import type { GuideEntry } from '../components/guide-entry.ts'
import type { HelpEntry } from '../components/help-entry.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { publisherOf } from '../components/shelf-line.ts'
import { handedOver } from './hand-over.ts'

// What a build hands over is in this process already. The store would carry every pattern into every build, and what is sold may not be there.

/** The patterns whose pages are made now: those that this build worked, or, where none was handed over, all that are stored. */
export async function patternsToShow(): Promise<readonly PatternEntry[]> {
  return (await handedOver())?.shown ?? stored()
}

/** Patterns that are sold, rows and all, for the pages of the release folder. Only a build has them. */
export async function patternsForSale(): Promise<readonly PatternEntry[]> {
  return (await handedOver())?.forSale ?? []
}

/** The card of every pattern that has one. */
export async function cards(): Promise<readonly Card[]> {
  return (await handedOver())?.cards ?? (await stored()).flatMap(({ card }) => (card ? [card] : []))
}

/** Addresses of patterns that cannot be read; there are some only while patterns are being written. */
export async function unreadablePatterns(): Promise<readonly string[]> {
  return handedOver() ? [] : (await stored()).filter(({ card }) => !card).map(({ slug }) => slug)
}

/** Whose site it is. */
export async function publisherName(): Promise<string> {
  return (await handedOver())?.publisher ?? publisherOf(await cards())
}

/** Whether pictures for links are drawn beside the pages that are made now. */
export async function picturesDrawn(): Promise<boolean> {
  return (await handedOver())?.pictures ?? false
}

/** Every help page, by its code. */
export async function helpEntries(): Promise<readonly HelpEntry[]> {
  const entries: readonly { readonly data: HelpEntry }[] = await getCollection('help')
  return entries.map(({ data }) => data)
}

/** The chapters of the guide to writing rows, in their order. */
export async function guideEntries(): Promise<readonly GuideEntry[]> {
  const entries: readonly { readonly data: GuideEntry }[] = await getCollection('guide')
  return entries.map(({ data }) => data).toSorted((one, other) => one.order - other.order)
}

async function stored(): Promise<readonly PatternEntry[]> {
  const entries: readonly { readonly data: PatternEntry }[] = await getCollection('patterns')
  return entries.map(({ data }) => data)
}
