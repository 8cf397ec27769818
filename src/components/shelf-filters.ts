import { yarnWeightWords } from '../booklet/yarn-weight-words.ts'
import type { Listing } from './pattern-entry.ts'

/** Attributes by which style sheets find what the filters leave. */
export interface FiledUnder {
  readonly 'data-level': string
  /** Several, parted by spaces. */
  readonly 'data-weight': string
  readonly 'data-made-for': string
}

/** A filter of the shelf with the choices that make a difference. */
export interface ShelfFilter {
  readonly name: string
  readonly label: string
  readonly any: string
  readonly choices: readonly { readonly value: string; readonly words: string }[]
}

const levels = ['basic', 'easy', 'intermediate', 'complex']
const purposes = ['home', 'garment', 'toy', 'baby', 'pet', 'kitchen']

/** What a pattern is filed under. */
export function filedUnder(listing: Listing | undefined): FiledUnder {
  return { 'data-level': listing?.level ?? '', 'data-weight': (listing?.weights ?? []).join(' '), 'data-made-for': listing?.madeFor ?? '' }
}

/** Filters by level, yarn weight and use. One that has no two choices among these patterns is left out. */
export function shelfFilters(listings: readonly Listing[]): readonly ShelfFilter[] {
  const there = (values: readonly string[], of: (listing: Listing) => readonly (string | undefined)[]) => values.filter((value) => listings.some((listing) => of(listing).includes(value)))
  const capital = (word: string) => word.replace(/^./, (letter) => letter.toUpperCase())
  const weights = there(Array.from({ length: 8 }, (_, weight) => String(weight)), (listing) => listing.weights.map(String))
  return [
    { name: 'level', label: 'Level', any: 'Any level', choices: there(levels, ({ level }) => [level]).map((value) => ({ value, words: capital(value) })) },
    { name: 'weight', label: 'Yarn weight', any: 'Any yarn', choices: weights.map((value) => ({ value, words: yarnWeightWords(Number(value)) })) },
    { name: 'made-for', label: 'Made for', any: 'Any use', choices: there(purposes, ({ madeFor }) => [madeFor]).map((value) => ({ value, words: capital(value) })) },
  ].filter(({ choices }) => choices.length > 1)
}
