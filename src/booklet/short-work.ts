import { isStitch, type Place } from '../fabric/place.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { stitchOf, wordFor, type Terms } from '../stitches/terms.ts'
import { nbsp } from './figures.ts'

/** What a short form is put in: the terms, and whether the pattern itself says `inc` and `dec`. */
export interface ShortWords {
  readonly terms: Terms
  readonly inc: boolean
  readonly dec: boolean
}

/** One thing to do: stitches of which there may be several in a row, or an increase or a decrease. */
interface Unit {
  readonly word: string
  /** Plain stitches are counted even when there is one: `1 sc, inc`. */
  readonly plain: boolean
}

/**
 * A row in the short form of a checklist, from the stitches that it made: `(4 sc, inc) × 6`, `48 sc`. Undefined where the stitches alone do
 * not say what to do: places are skipped, spaces made, loops mixed.
 */
export function shortWork(row: WorkedRow, words: ShortWords): string | undefined {
  const { made } = row.fabric
  const [first] = made
  if (!first || row.verdict !== 'adds-up' || row.leaves > 0 || !made.every((place) => isStitch(place) && place.travel !== true && place.turning !== true)) return undefined
  const inRing = made.every(({ into }) => into?.kind === 'ring')
  if (!inRing && !oneAfterAnother(made)) return undefined
  const loops = new Set(made.map(({ loop }) => loop))
  const [loop] = loops
  if (loops.size > 1 || loop === 'third') return undefined
  const units = unitsOf(made, words, inRing)
  if (!units) return undefined
  const where = inRing ? ' in ring' : loop === undefined ? '' : ` in ${loop} loops`
  return `${compact(units)}${where}`
}

/** Every stitch stands on the next place of one row below, in the one direction or the other; only a decrease takes more places than one. */
function oneAfterAnother(made: readonly Place[]): boolean {
  const rows = new Set(made.map(({ into }) => into?.row))
  return rows.size === 1 && made.every(({ into }) => into !== undefined && isStitch(into))
}

function unitsOf(made: readonly Place[], { terms, inc, dec }: ShortWords, inRing: boolean): readonly Unit[] | undefined {
  const units: Unit[] = []
  for (let at = 0; at < made.length;) {
    const { kind, group } = made[at] as Place
    let together = 1
    while (!inRing && group !== undefined && made[at + together]?.group === group) together += 1
    if (made.slice(at, at + together).some((place) => place.kind !== kind)) return undefined
    const word = wordFor(kind, terms)
    const isDecrease = (stitchOf(kind)?.worksOver ?? 1) > 1
    if (together === 1) units.push(isDecrease ? { word: dec && /2tog$/.test(kind) ? 'dec' : word, plain: false } : { word, plain: true })
    else units.push({ word: inc && together === 2 ? 'inc' : `${together}${nbsp}${word} in 1`, plain: false })
    at += together
  }
  return units
}

/** The most stitches that may stand before or after what repeats. */
const mostAround = 8

/** Units in as few words as they can be said: what repeats is said once. */
function compact(units: readonly Unit[]): string {
  let best = listed(units)
  for (let before = 0; before <= Math.min(mostAround, units.length); before += 1) {
    for (let after = 0; after <= Math.min(mostAround, units.length - before); after += 1) {
      const middle = units.slice(before, units.length - after)
      const length = period(middle)
      if (length === 0) continue
      const times = middle.length / length
      const cycle = middle.slice(0, length)
      const body = listed(cycle)
      const repeated = length === 1 && cycle[0]?.plain === false ? `${body} × ${times}` : `(${body}) × ${times}`
      const text = [listed(units.slice(0, before)), repeated, listed(units.slice(units.length - after))].filter((part) => part !== '').join(', ')
      if (text.length <= best.length && !(length === 1 && cycle[0]?.plain === true)) best = text
    }
  }
  return best
}

/** The shortest stretch that the units are made of, over and over; 0 when they are made of none. */
function period(units: readonly Unit[]): number {
  for (let length = 1; length <= units.length / 2; length += 1) {
    if (units.length % length === 0 && units.every(({ word }, at) => word === units[at % length]?.word)) return length
  }
  return 0
}

/** `4 sc, inc`, runs of one kind counted. */
function listed(units: readonly Unit[]): string {
  const runs: { readonly unit: Unit; count: number }[] = []
  for (const unit of units) {
    const open = runs.at(-1)
    if (open?.unit.word === unit.word) open.count += 1
    else runs.push({ unit, count: 1 })
  }
  return runs.map(({ unit, count }) => {
    if (unit.plain) return `${count}${nbsp}${unit.word}`
    return count === 1 ? unit.word : /^\d/.test(unit.word) ? `(${unit.word}) ×${nbsp}${count}` : `${unit.word} ×${nbsp}${count}`
  }).join(', ')
}
