import type { Card } from '../components/card.ts'
import type { Collected } from './collect-patterns.ts'

/** A pattern that is as it was in the build before, so that only its card is needed. */
export interface Known {
  readonly path: string
  /** Of the file's bytes. */
  readonly digest: string
  readonly card: Card
}

/** What the build hands to the pages. */
interface HandedOver {
  readonly worked: ReadonlyMap<string, Collected>
  readonly known: ReadonlyMap<string, Known>
  readonly pictures: boolean
}

// Astro loads the content loader a second time, as a module of its own. What the build has worked already is handed to it here,
// so that every pattern is worked once.
const shelf: { [key: symbol]: HandedOver | undefined } = globalThis as never
const key = Symbol.for('loopledger.collected')

/** Keeps, for the pages of this process, the patterns that were worked and those that are as they were. */
export function handOver(worked: readonly Collected[], known: readonly Known[], pictures: boolean): void {
  shelf[key] = { pictures, worked: new Map(worked.map((one) => [one.source.path, one])), known: new Map(known.map((one) => [one.path, one])) }
}

/** Whether pictures for links are drawn beside the pages that are made now. */
export function picturesDrawn(): boolean {
  return shelf[key]?.pictures === true
}

/** The patterns that were worked in this process, or undefined where nothing was handed over. */
export function handedOverWorked(): readonly Collected[] | undefined {
  const found = shelf[key]
  return found && [...found.worked.values()]
}

/** The patterns that are sold, of those that were worked already in this process: none where nothing was handed over. */
export function handedOverSold(): readonly Collected[] {
  return (handedOverWorked() ?? []).filter(({ sold }) => sold)
}

/** A pattern from just these bytes, worked already in this process or known from the build before. */
export function handedOver(path: string, digest: string): Collected | Known | undefined {
  const found = shelf[key]?.worked.get(path) ?? shelf[key]?.known.get(path)
  return found?.digest === digest ? found : undefined
}
