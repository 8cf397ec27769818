import { pencilLine, sectionsOf, type Line, type Section } from '../support/squared-paper.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'

/** A stepped piece: its rows on squared paper and in words. */
export interface SteppedPiece {
  readonly lines: readonly Line[]
  readonly rows: readonly string[]
  readonly slips: Slips
  readonly worked: Worked
}

/** Whether slip stitches at the edges are in the totals. */
export type Slips = 'counted' | 'not counted'

/** What a piece is worked in. A turning chain that counts takes the place of the row's first stitch. */
export interface Worked {
  readonly stitch: 'sc' | 'hdc' | 'dc'
  readonly chainCounts: boolean
}

const inSc: Worked = { stitch: 'sc', chainCounts: false }

/** A border in parts: each part works so many places of one sort. */
export interface Border {
  readonly turned: boolean
  readonly sections: readonly Section[]
}

/** Rows to and fro that step in and out on either side. Rows may close with a slip stitch that the next one skips. */
export function steppedPiece(draw: Draw, fewest: number, most: number, slips: Slips = 'not counted', worked: Worked = inSc): SteppedPiece {
  const width = whole(draw, 6, 24)
  const lines: Line[] = [{ from: 0, to: width, toRight: true }]
  const rows = [...firstRows(width, worked)]
  const wanted = whole(draw, fewest, most)
  let before = { closes: false, ledIn: 0 }
  while (lines.length < wanted) {
    const below = lines.at(-1)!
    const { from, to } = below
    const room = to - from
    // At least three stitches of the row below are worked over.
    const atStart = before.closes ? 0 : oneOf(draw, [0, 0, 0, whole(draw, 1, 6), worked.chainCounts ? 0 : -whole(draw, 1, 6)])
    const stepIn = Math.min(Math.max(atStart, 0), room - 3)
    const added = Math.max(-atStart, 0)
    const left = Math.min(oneOf(draw, [0, 0, 0, whole(draw, 1, 6)]), room - 3 - stepIn)
    const closes = left > 0 && before.ledIn === 0 && !worked.chainCounts && oneOf(draw, [true, false, false])
    const line = below.toRight
      ? { from: from + left, to: to - stepIn + added, toRight: false }
      : { from: from + stepIn - added, to: to - left, toRight: true }
    const counted = slips === 'counted'
    const total = line.to - line.from + (counted ? stepIn + (closes ? 1 : 0) : 0)
    const words = wordsOf(draw, { stepIn, added, left, over: room - stepIn - left, closes, skipsSlip: before.closes, slipsBelow: before.ledIn, counted }, worked)
    rows.push(`Row ${lines.length + 1}: ${words} (${total})`)
    before = { closes, ledIn: counted ? stepIn : 0 }
    lines.push(line)
  }
  return { lines, rows, slips, worked }
}

interface Shaping {
  readonly stepIn: number
  readonly added: number
  readonly left: number
  /** Stitches of the row below that are worked over. */
  readonly over: number
  /** The first of those left holds a slip stitch that closes the row. */
  readonly closes?: boolean
  /** The row below closed with a slip stitch. */
  readonly skipsSlip?: boolean
  /** Slip stitches that led the row below in, and are counted: they lie at this row's end. */
  readonly slipsBelow?: number
  /** Slip stitches are in the totals. */
  readonly counted?: boolean
}

const sts = (count: number): string => (count === 1 ? 'next st' : `next ${count} sts`)
const firstSts = (count: number): string => (count === 1 ? 'first st' : `first ${count} sts`)

/** The foundation and the first row of so many stitches. */
function firstRows(width: number, { stitch, chainCounts }: Worked): readonly string[] {
  if (chainCounts) return [`Foundation: Ch ${width + 2}.`, `Row 1: Dc in 4th ch from hook (skipped ch count as dc) and in each ch across. (${width})`]
  const named = `${stitch[0]!.toUpperCase()}${stitch.slice(1)}`
  return [`Foundation: Ch ${width + (stitch === 'dc' ? 2 : 1)}.`, `Row 1: ${named} in ${stitch === 'dc' ? '3rd' : '2nd'} ch from hook and in each ch across. (${width})`]
}

function wordsOf(draw: Draw, shaping: Shaping, worked: Worked = inSc): string {
  const { stepIn, added, left, over, skipsSlip = false, slipsBelow = 0, counted = false } = shaping
  const { stitch } = worked
  const plain = left === 0 && stepIn === 0 && added === 0 && slipsBelow === 0 && !skipsSlip
  const end = endWords(draw, shaping)
  if (worked.chainCounts) {
    const rest = `dc in ${sts(over - 1)}${end}.`
    if (stepIn > 0) return `Turn, sl st in ${firstSts(stepIn + 1)}, ch 3 (counts as dc), ${rest}`
    return `Ch 3 (counts as dc), turn, ${plain ? oneOf(draw, [rest, 'dc in next st and in each st across.', 'skip first st, dc in each st across.']) : rest}`
  }
  const chain = stitch === 'dc' ? 2 : 1
  const middle = plain && oneOf(draw, [true, false]) ? `${stitch} in each st across` : `${skipsSlip ? 'skip sl st, ' : ''}${stitch} in ${sts(over)}`
  if (stepIn > 0) {
    return oneOf(draw, [
      `Turn, sl st in ${firstSts(stepIn)}, ch ${chain}, ${middle}${end}.`,
      `Ch ${chain}, turn, sl st in ${sts(stepIn)}, ${middle}${end}.`,
      // One stitch holds a slip stitch and another: whether that counts twice is no matter of steps.
      ...(counted ? [] : [`Turn, sl st in ${firstSts(stepIn + 1)}, ch ${chain}, ${stitch} in same st as last sl st, ${stitch} in ${sts(over - 1)}${end}.`]),
    ])
  }
  if (added > 0) return `Ch ${added + chain}, turn, ${stitch} in ${chain === 2 ? '3rd' : '2nd'} ch from hook${added === 1 ? '' : ` and in ${added === 2 ? 'next ch' : `next ${added - 1} ch`}`}, ${middle}${end}.`
  return `Ch ${chain}, turn, ${middle}${end}.`
}

function endWords(draw: Draw, { left, closes = false, slipsBelow = 0 }: Shaping): string {
  if (slipsBelow > 0) {
    if (left > 0) return ', leave rem sts unworked'
    return oneOf(draw, [`, leave ${slipsBelow} sl ${slipsBelow === 1 ? 'st' : 'sts'} unworked`, ', leave rem sts unworked'])
  }
  const rest = closes ? left - 1 : left
  const slip = closes ? `, sl st in ${rest === 0 ? oneOf(draw, ['last st', 'next st']) : 'next st'}` : ''
  if (rest === 0) return slip
  return slip + oneOf(draw, [`, leave last ${rest === 1 ? 'st' : `${rest} sts`} unworked`, ', leave rem sts unworked', `, leave rem ${rest === 1 ? 'st' : `${rest} sts`} unworked`])
}

/** A piece that steps in on either side, and its mirror image: what is slipped over at a row's start is left at its end, and the reverse. */
export function mirrorable(draw: Draw, fewest: number, most: number): SteppedPiece & { readonly mirroredRows: readonly string[] } {
  const width = whole(draw, 10, 30)
  const first = [`Foundation: Ch ${width + 1}.`, `Row 1: Sc in 2nd ch from hook and in each ch across. (${width})`]
  const [lines, rows, mirroredRows]: [Line[], string[], string[]] = [[{ from: 0, to: width, toRight: true }], [...first], [...first]]
  const wanted = whole(draw, fewest, most)
  while (lines.length < wanted) {
    const below = lines.at(-1)!
    const room = below.to - below.from
    const stepIn = Math.min(oneOf(draw, [0, 0, whole(draw, 1, 4)]), room - 3)
    const left = Math.min(oneOf(draw, [0, 0, whole(draw, 1, 4)]), room - 3 - stepIn)
    const over = room - stepIn - left
    const label = `Row ${lines.length + 1}: `
    rows.push(`${label}${wordsOf(draw, { stepIn, added: 0, left, over })} (${over})`)
    mirroredRows.push(`${label}${wordsOf(draw, { stepIn: left, added: 0, left: stepIn, over })} (${over})`)
    lines.push(below.toRight ? { from: below.from + left, to: below.to - stepIn, toRight: false } : { from: below.from + stepIn, to: below.to - left, toRight: true })
  }
  return { lines, rows, mirroredRows, slips: 'not counted', worked: inSc }
}

/** The border that goes all round the piece, one stitch a place. */
export function borderRound(draw: Draw, { lines }: SteppedPiece): Border {
  const turned = oneOf(draw, [true, false])
  return { turned, sections: sectionsOf(pencilLine(lines, turned)) }
}

/** A border in words, with what it says that it makes. */
export function borderWords({ turned, sections }: Border, total: number): string {
  const parts = sections.map(({ side, count }) => {
    if (side === 'row-end') return count === 1 ? 'sc in next row-end' : `sc in each of next ${count} row-ends`
    if (side === 'underside') return count === 1 ? 'sc in the underside of next ch' : `sc in the underside of each of next ${count} ch`
    return `sc in ${sts(count)}`
  })
  return `Rnd 1: Ch 1, ${turned ? 'turn' : 'do not turn'}, ${parts.join(', ')}, join with sl st in first sc. (${total})`
}

/** A pattern of the piece and a border on it. */
export function patternOf({ rows, slips, worked: { stitch, chainCounts } }: SteppedPiece, border: string): string {
  const block = (lines: readonly string[]): string => lines.map((line) => `      ${line}`).join('\n')
  return `---
title: Steps
terms: US
conventions: { turning-chains: { sc: not counted${stitch === 'sc' ? '' : `, ${stitch}: ${chainCounts ? 'counted' : 'not counted'}`} }, slip-stitches: ${slips} }
pieces:
  - name: Half
    rows: |
${block(rows)}
  - name: Border
    on: Half
    rows: |
${block([border])}
---
`
}
