import { plural } from '../diagnostics/words.ts'
import { hookLabel } from '../measures/hooks.ts'
import { ouncesFromGrams } from '../measures/units.ts'
import { ballsToBuy, metresOf, yardsOf, type Ball } from '../measures/yarn.ts'
import { tradeName, yarnWeightLabel } from '../measures/yarn-weights.ts'
import type { Materials, Notion, Pattern, Yarn } from '../pattern/pattern.ts'
import type { Terms } from '../stitches/terms.ts'
import type { MaterialLine } from './booklet.ts'
import { capital, figure, forSizes, nbsp, perSize, withUnit } from './figures.ts'
import { typeset } from './typeset.ts'

/** The materials table: yarns, their sum where there is more than one, then hooks and notions. A shopping list, in order of cost. */
export function materialLines(pattern: Pattern): readonly MaterialLine[] {
  const { materials, terms } = pattern
  if (materials === undefined) return []
  const sizes = Math.max(1, pattern.sizes.length)
  return [
    ...materials.yarns.map((yarn) => yarnLine(yarn, sizes, terms)),
    ...(materials.yarns.length > 1 ? [totalLine(materials, sizes)] : []),
    ...materials.hooks.map((mm) => hookLine(mm, pattern)),
    ...materials.notions.map((notion) => notionLine(notion, sizes)),
  ]
}

/** What to mind in buying other yarn than the one that was used. */
export function buyingNotes({ materials, terms }: Pattern): readonly string[] {
  const yarns = materials?.yarns ?? []
  if (yarns.length === 0) return []
  const gauge = terms === 'UK' ? 'tension' : 'gauge'
  const buying = yarns.every(({ ball }) => ball !== undefined) ? ' Buy it by length and not by weight: of another fibre the same weight is longer or shorter.' : ''
  return [
    typeset(`Another yarn will do when it is of the same weight class and gives the ${gauge}.${buying}`),
    ...(yarns.some(({ needs }) => needs.length > 0) ? ['Buy all balls of a colour at once, of one dye lot.'] : []),
  ]
}

/** What a yarn is needed for in each size, reckoned from grams. */
export interface YarnNeed {
  readonly grams: readonly number[]
  /** Empty when the ball is not known. */
  readonly metres: readonly number[]
  readonly yards: readonly number[]
  readonly balls: readonly number[]
}

/** Grams as the designer weighed them; metres, yards and balls by the ball band. */
export function yarnNeed(yarn: Yarn, sizes: number): YarnNeed {
  const grams = forSizes(yarn.needs, sizes)
  const byBall = (reckon: (grams: number, ball: Ball) => number) => {
    const { ball } = yarn
    return ball === undefined ? [] : grams.map((weight) => reckon(weight, ball))
  }
  return { grams, metres: byBall(metresOf), yards: byBall(yardsOf), balls: byBall(ballsToBuy) }
}

function yarnLine(yarn: Yarn, sizes: number, terms: Terms): MaterialLine {
  const { grams, metres, yards, balls } = yarnNeed(yarn, sizes)
  const make = makeUp(yarn, terms)
  return {
    kind: 'yarn',
    item: typeset(yarnName(yarn)),
    ...(make === '' ? {} : { make }),
    for: typeset(capital(yarn.for ?? '')),
    amount: metres.length === 0 ? [] : [
      withUnit(metres, 'm'), withUnit(yards, 'yd'),
      `${perSize(balls.map(figure))}${nbsp}${plural('ball', Math.max(...balls))}`,
    ],
    weight: grams.length === 0 ? '' : withUnit(grams, 'g'),
    ...inOunces(grams),
  }
}

/** Ounces beside grams, to the tenth. */
function inOunces(grams: readonly number[]): Pick<MaterialLine, 'ounces'> {
  return grams.length === 0 ? {} : { ounces: withUnit(grams.map(shownOunces), 'oz') }
}

const tenth = (value: number) => Math.round(value * 10) / 10
const shownOunces = (grams: number) => tenth(ouncesFromGrams(grams))

/** `Yarn A, kelp`; a named yarn has its name before the colour. */
function yarnName({ letter, name, colour }: Yarn): string {
  const yarn = letter === undefined ? 'Yarn' : `Yarn${nbsp}${letter}`
  return [yarn, ...(name === undefined ? [] : [name]), ...(colour === undefined ? [] : [colour.toLowerCase()])].join(', ')
}

/** `Super bulky (6), super chunky, 100% polyester, 100 g = 68 m (74 yd)` */
function makeUp({ weight, fibre, ball, substitute }: Yarn, terms: Terms): string {
  const trade = weight === undefined ? undefined : tradeName(weight, terms)
  const label = weight === undefined ? undefined : yarnWeightLabel(weight)
  const parts = [
    ...(label === undefined ? [] : [label]),
    ...(trade === undefined || label?.toLowerCase().startsWith(trade) ? [] : [trade]),
    ...(fibre === undefined ? [] : [typeset(fibre)]),
    ...(ball === undefined ? []
      : [`${figure(ball.grams)}${nbsp}g = ${figure(ball.metres)}${nbsp}m (${figure(yardsOf(ball.grams, ball))}${nbsp}yd)`]),
  ]
  const whole = capital(parts.join(', '))
  return substitute === undefined ? whole : typeset(`${whole}${whole === '' ? '' : '. '}Instead: ${substitute}`)
}

/** The sum of the figures as they are shown above it, so that a buyer who adds them up finds the same. */
function totalLine({ yarns }: Materials, sizes: number): MaterialLine {
  const needs = yarns.map((yarn) => yarnNeed(yarn, sizes))
  const sum = (of: (need: YarnNeed) => readonly number[]) =>
    Array.from({ length: sizes }, (_, size) => needs.reduce((total, need) => total + (of(need)[size] ?? 0), 0))
  const known = needs.every(({ metres }) => metres.length > 0)
  return {
    kind: 'total',
    item: 'Yarn in all',
    for: '',
    amount: known ? [withUnit(sum(({ metres }) => metres), 'm'), withUnit(sum(({ yards }) => yards), 'yd')] : [],
    weight: withUnit(sum(({ grams }) => grams), 'g'),
    ...(needs.some(({ grams }) => grams.length > 0) ? { ounces: withUnit(sum(({ grams }) => grams.map(shownOunces)).map(tenth), 'oz') } : {}),
  }
}

function hookLine(mm: number, { gauge, terms }: Pattern): MaterialLine {
  const decides = gauge?.hook === undefined || gauge.hook === mm
  return {
    kind: 'tool',
    item: `Hook, ${hookLabel(mm, terms)}`,
    for: decides ? `Or the size that gives the ${terms === 'UK' ? 'tension' : 'gauge'}` : '',
    amount: ['1'],
    weight: '',
  }
}

function notionLine({ what, count, amount, for: purpose }: Notion, sizes: number): MaterialLine {
  const measured = forSizes(amount ?? [], sizes).map((text) => /^([\d.,]+)\s*(\S.*)$/.exec(text))
  const unit = measured[0]?.[2]
  const one = unit !== undefined && measured.every((found) => found?.[2] === unit)
  const text = one
    ? `${perSize(measured.map((found) => found?.[1] ?? ''))}${nbsp}${unit}`
    : perSize(forSizes(amount ?? [], sizes))
  const weighed = one && /^(?:g|kg)$/.test(unit)
  const number = count === undefined ? [] : [perSize(forSizes(count, sizes).map(figure))]
  return {
    kind: 'tool',
    item: typeset(capital(what)),
    for: typeset(capital(purpose ?? '')),
    amount: weighed || text === '' ? number : [...number, typeset(text)],
    weight: weighed ? text : '',
    ...(weighed && unit === 'g' ? inOunces(measured.map((found) => Number(found?.[1]))) : {}),
  }
}
