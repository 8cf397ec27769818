import type { Collected } from './collect-patterns.ts'

// Astro loads the content loader a second time, as a module of its own. What the build has worked already is handed to it here,
// so that every pattern is worked once.
const shelf: { [key: symbol]: ReadonlyMap<string, Collected> | undefined } = globalThis as never
const key = Symbol.for('loopledger.collected')

/** Keeps the patterns that were worked already in this process, by their sources' paths. */
export function handOver(collected: readonly Collected[]): void {
  shelf[key] = new Map(collected.map((one) => [one.source.path, one]))
}

/** The patterns that are sold, of those that were worked already in this process: none where nothing was handed over. */
export function handedOverSold(): readonly Collected[] {
  return [...shelf[key]?.values() ?? []].filter(({ sold }) => sold)
}

/** A pattern that was worked already in this process from just these bytes. */
export function handedOver(path: string, digest: string): Collected | undefined {
  const found = shelf[key]?.get(path)
  return found?.digest === digest ? found : undefined
}
