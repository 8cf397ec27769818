import type { Card } from '../components/card.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'

/** What a build hands to the pages. */
export interface HandedOver {
  readonly publisher: string
  /** Of every pattern, whether its pages are made now or were before. */
  readonly cards: readonly Card[]
  /** The patterns whose pages are made, as the public site may know them. */
  readonly shown: readonly PatternEntry[]
  /** Those of them that are sold, with their rows: for the folder of what is sold. */
  readonly forSale: readonly PatternEntry[]
  /** Whether pictures for links are drawn beside the pages. */
  readonly pictures: boolean
}

// Astro bundles the pages with what they import, as modules of their own. The process is what they have in common with the build.
const shelf: { [key: symbol]: Promise<HandedOver> | undefined } = globalThis as never
const key = Symbol.for('loopledger.handed-over')

/** Keeps for the pages of this process what the build knows, or will know when its patterns have been worked. */
export function handOver(what: Promise<HandedOver>): void {
  // Whoever asks for it hears what went wrong. It may go wrong before anybody asks.
  what.catch(() => undefined)
  shelf[key] = what
}

/** What the build knows; undefined where pages are not made by `npm run build`. */
export function handedOver(): Promise<HandedOver> | undefined {
  return shelf[key]
}
