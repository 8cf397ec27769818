import { countNaively, type NaiveCount, type Place, type Step } from '../support/naive-counter.ts'
import { oneOf, rowOver, whole, type Draw, type Palette } from './random-rows.ts'
import { wordsFor, type Manner } from './wordings.ts'

/** A row in steps, what it comes to, and a line that says it in words. */
export interface RandomRow {
  readonly label: string
  readonly steps: readonly Step[]
  readonly count: NaiveCount
}

/** A piece of some rows over a base, all of which come out. */
export interface RandomPiece {
  readonly flat: boolean
  readonly base: number
  readonly palette: Palette
  readonly rows: readonly RandomRow[]
}

/** Flat or in rounds, every row over what the one before it makes. */
export function pieceOf(draw: Draw, fewest: number, most: number): RandomPiece {
  const flat = oneOf(draw, [true, false])
  const base = whole(draw, 4, 40)
  const palette = oneOf(draw, [['sc'], ['sc', 'hdc', 'dc'], ['hdc', 'dc']])
  let below: readonly Place[] = Array.from({ length: base }, () => ({ stitch: 'sc' }))
  const rows: RandomRow[] = []
  const wanted = whole(draw, fewest, most)
  while (rows.length < wanted && below.length >= 4 && below.length <= 160) {
    const offered = flat ? [...below].reverse() : below
    const steps = rowOver(draw, offered, flat, palette)
    const count = countNaively(offered, steps, flat)
    if (count.trouble !== undefined || count.unclear !== undefined) {
      throw new Error(`a row that comes out was wanted: ${count.trouble ?? count.unclear}: ${JSON.stringify(steps)}`)
    }
    rows.push({ label: `${flat ? 'Row' : 'Rnd'} ${rows.length + 1}`, steps, count })
    below = count.top
  }
  return { flat, base, palette, rows }
}

/** Words of a fence for a piece: what lies below, and that chains are no stitches. */
export function fenceOf({ flat, base }: RandomPiece): string {
  return `${flat ? 'last' : 'lastround'}=${base} chains=not`
}

/** A whole row: label, how it begins, its words, its total. */
export function lineOf({ label, steps, count }: RandomRow, manner: Manner, joined: boolean, total = totalOf(count, manner)): string {
  const [first] = steps
  const counted = first?.step === 'work' && first.stitch === 'dc' && first.count >= 2 && !manner.plain && (manner.flat || joined) && oneOf(manner.draw, [true, false])
  const rest: readonly Step[] = counted ? [{ ...first, count: first.count - 1 }, ...steps.slice(1)] : steps
  const chain = counted ? 'ch 3 (counts as dc)' : oneOf(manner.draw, ['ch 1', 'ch 1 (does not count as a st)'])
  const begin = manner.flat ? [chain, 'turn'] : joined ? [chain] : []
  const end = joined ? [counted ? 'join in top of ch-3' : 'join'] : []
  const text = [...begin, wordsFor(rest, manner), ...end].join(', ')
  return `${label}: ${text[0]!.toUpperCase()}${text.slice(1)}. ${total}`
}

/** A total that is true, in one of its dresses. */
export function totalOf(count: NaiveCount, { draw, plain }: Pick<Manner, 'draw' | 'plain'>): string {
  const kinds = Object.entries(count.kinds).map(([kind, number]) => `${number} ${kind}`)
  const spaces = Object.entries(count.spaces).map(([kind, number]) => `${number} ${kind} ${number === 1 ? 'sp' : 'sps'}`)
  const byKind = [...kinds, ...spaces].join(', ')
  const inAll = [`${count.makes} sts`, ...spaces].join(', ')
  if (plain) return `(${inAll})`
  return oneOf(draw, [`(${count.makes})`, `[${count.makes}]`, `(${inAll})`, `(${byKind})`, `— ${count.makes} sts`])
}
