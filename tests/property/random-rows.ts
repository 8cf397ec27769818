import fc, { type GeneratorValue } from 'fast-check'
import type { Place, Step } from '../support/naive-counter.ts'

/** Draws from fast-check, so that a failing row shrinks. */
export type Draw = GeneratorValue

export function whole(draw: Draw, min: number, max: number): number {
  return draw(fc.integer, { min, max })
}

export function oneOf<T>(draw: Draw, choices: readonly T[]): T {
  return choices[whole(draw, 0, choices.length - 1)]!
}

/** The stitches that a piece is made of. */
export type Palette = readonly string[]

const isStitch = (place: Place): boolean => 'stitch' in place
const sort = (place: Place): string => ('chains' in place ? `ch-${place.chains}` : 'st')

/** A row that comes out over these places: what it works over is all of them, or it says that it leaves some. */
export function rowOver(draw: Draw, places: readonly Place[], flat: boolean, palette: Palette): readonly Step[] {
  const plain = places.every(isStitch)
  const ways: ((() => readonly Step[] | undefined))[] = [() => periodic(draw, places, flat, palette), () => periodic(draw, places, flat, palette)]
  if (plain) ways.push(() => [{ step: 'each', stitch: oneOf(draw, palette), keepBack: 0 }], () => eachBetween(draw, places, palette))
  if (places.length <= 16) ways.push(() => cover(draw, places, palette))
  if (plain && flat && places.length >= 10) ways.push(() => shortRow(draw, places, palette))
  const stitch = oneOf(draw, palette)
  return oneOf(draw, ways)() ?? [plain ? { step: 'each', stitch, keepBack: 0 } : { step: 'everything', stitch }]
}

/** Some stitches, one in each as far as the last few, then those. */
function eachBetween(draw: Draw, places: readonly Place[], palette: Palette): readonly Step[] {
  const before = whole(draw, 0, Math.min(4, places.length - 2))
  const after = whole(draw, 0, Math.min(4, places.length - before - 1))
  return [
    ...cover(draw, places.slice(0, before), palette),
    { step: 'each', stitch: oneOf(draw, palette), keepBack: after },
    ...cover(draw, places.slice(places.length - after), palette),
  ]
}

function shortRow(draw: Draw, places: readonly Place[], palette: Palette): readonly Step[] {
  const worked = whole(draw, 4, places.length - 2)
  return [...cover(draw, places.slice(0, worked), palette), { step: 'leave' }]
}

/** A lead-in, a repeat and a tail, when the places below repeat themselves. */
function periodic(draw: Draw, places: readonly Place[], flat: boolean, palette: Palette): readonly Step[] | undefined {
  const lead = whole(draw, 0, Math.min(5, places.length - 4 < 0 ? 0 : places.length - 4))
  const longest = Math.min(9, Math.floor((places.length - lead) / 2))
  const units = Array.from({ length: Math.max(longest, 0) }, (_, index) => index + 1).filter((unit) => passesOf(places, lead, unit) >= 2)
  if (units.length === 0) return undefined
  const unit = oneOf(draw, units)
  const most = passesOf(places, lead, unit)
  const times = oneOf(draw, [most, most, whole(draw, 2, most)])
  const tail = places.slice(lead + times * unit)
  if (tail.length > 14) return undefined
  const steps = unitOver(draw, places.slice(lead, lead + unit), tail.length > 0 || !flat, palette)
  const toEnd = tail.every(isStitch) && tail.length <= 12 && oneOf(draw, [true, false])
  return [
    ...cover(draw, places.slice(0, lead), palette),
    toEnd ? { step: 'fill', steps, keepBack: tail.length } : { step: 'times', steps, times },
    ...cover(draw, tail, palette),
  ]
}

/** How often the places from `lead` on repeat themselves after `unit` of them. */
function passesOf(places: readonly Place[], lead: number, unit: number): number {
  let at = lead
  while (at + unit <= places.length && places.slice(at, at + unit).every((place, index) => sort(place) === sort(places[lead + index]!))) at += unit
  return Math.floor((at - lead) / unit)
}

/** What is repeated. It may end with chains over skipped stitches when a stitch follows. */
function unitOver(draw: Draw, places: readonly Place[], mayEndWithChain: boolean, palette: Palette): readonly Step[] {
  const skipped = places.length > 1 && mayEndWithChain && isStitch(places.at(-1)!) ? whole(draw, 0, 1) : 0
  const worked = cover(draw, places.slice(0, places.length - skipped), palette)
  return skipped === 0 ? worked : [...worked, { step: 'chain', chains: whole(draw, 1, 5) }, { step: 'skip', count: skipped }]
}

/** Steps that use up exactly these places. They begin and end with a stitch, and no two chains meet. */
export function cover(draw: Draw, places: readonly Place[], palette: Palette, nested = false): readonly Step[] {
  const steps: Step[] = []
  let at = 0
  let afterChain = true
  while (at < places.length) {
    const stitch = oneOf(draw, palette)
    const here = places[at]!
    const run = places.slice(at).findIndex((place) => !isStitch(place))
    const room = run === -1 ? places.length - at : run
    const more = places.length - at
    if ('chains' in here) {
      if (!afterChain && more > 1 && oneOf(draw, [true, false, false])) {
        steps.push({ step: 'chain', chains: whole(draw, 1, 5) }, { step: 'skip-space' })
        afterChain = true
      } else {
        steps.push({ step: 'space', stitch, of: whole(draw, 1, 3), chains: here.chains })
        afterChain = false
      }
      at += 1
      continue
    }
    const ways: (() => number)[] = [
      () => put({ step: 'work', stitch, count: whole(draw, 1, Math.min(room, 7)) }),
      () => put({ step: 'work', stitch, count: whole(draw, 1, Math.min(room, 7)) }),
      () => put({ step: 'many', stitch, of: whole(draw, 2, 3), count: whole(draw, 1, Math.min(room, 2)) }),
    ]
    if (room >= 2) ways.push(() => put({ step: 'together', stitch, over: whole(draw, 2, Math.min(room, 3)) }))
    if (!nested) ways.push(() => put({ step: 'group', stitch, chains: whole(draw, 1, 3) }))
    if (!nested && room >= 4) ways.push(() => twiceOver(places.slice(at, at + 2)))
    if (!afterChain && more >= 2) {
      ways.push(() => {
        const skipped = whole(draw, 1, Math.min(room, 3, more - 1))
        steps.push({ step: 'chain', chains: whole(draw, 1, 5) }, { step: 'skip', count: skipped })
        return skipped
      })
    }
    const before = steps.length
    at += oneOf(draw, ways)()
    afterChain = steps[before]?.step === 'chain'
  }
  return steps

  function put(step: Step & { step: 'work' | 'many' | 'together' | 'group' }): number {
    steps.push(step)
    if (step.step === 'together') return step.over
    return step.step === 'group' ? 1 : step.count
  }

  function twiceOver(unit: readonly Place[]): number {
    steps.push({ step: 'times', steps: cover(draw, unit, palette, true), times: 2 })
    return unit.length * 2
  }
}
