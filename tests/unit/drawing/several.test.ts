import { describe, expect, test } from 'vitest'
import { stitchYarns } from '../../../src/booklet/stitch-yarns.ts'
import { borderLines } from '../../../src/drawing/border-lines.ts'
import { drawPiece } from '../../../src/drawing/draw-piece.ts'
import { flatForm } from '../../../src/drawing/flat.ts'
import { layRows } from '../../../src/drawing/lay-rows.ts'
import { limbsOf } from '../../../src/drawing/limbs.ts'
import type { LineStroke } from '../../../src/drawing/piece-drawing.ts'
import { sideBySide } from '../../../src/drawing/side-by-side.ts'
import { turnedOver } from '../../../src/drawing/turned-over.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { round2, worked } from './worked-piece.ts'

const size = { width: 5, height: 4 }
const strip = (rows: number) => worked(['Foundation: Ch 11.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)', ...(rows > 1 ? [`Rows 2-${rows}: Ch 1, turn, sc in each st across. (10)`] : [])])
const form = (rows: number) => flatForm(strip(rows), { size, border: [] })!

describe('pieces beside one another', () => {
  // Two pieces of 60 by 20 mm: 60 + 7 + 60 = 127 mm is more than the 112 mm of the room, so one stands over the other.
  test('stand in two lines where they are larger so than in one', () => {
    const wide = flatForm(strip(5), { size: { width: 6, height: 4 }, border: [] })!
    const { form: both, scale } = sideBySide([{ form: wide, words: ['Front'] }, { form: wide, words: ['Back'] }])
    expect([scale, both.width]).toEqual([1, 60])
    // 20 mm of piece, 2.4 to its words, one line of 4; 7 between; and the same again.
    expect(round2(both.height)).toBe(2 * (20 + 2.4 + 4) + 7)
    expect(both.captions?.map(({ x, lines }) => [x, ...lines])).toEqual([[30, 'Front'], [30, 'Back']])
  })

  test('stand on one base line, and lengths are those of the pieces', () => {
    const { form: both } = sideBySide([{ form: form(3), words: [] }, { form: form(25), words: [] }])
    // 12 and 100 mm high, 50 + 7 + 50 wide.
    const feet = both.outlines.map((points) => Math.max(...points.map(([, y]) => y)))
    const tops = both.outlines.map((points) => Math.min(...points.map(([, y]) => y)))
    expect(feet.map((foot, at) => round2(foot - (tops[at] ?? 0)))).toEqual([12, 100])
  })

  test('have one scale, and what is drawn of each is what is drawn of it alone', () => {
    const both = drawPiece({ parts: [{ rows: strip(5) }], beside: [{ parts: [{ rows: strip(4) }] }], size, worn: false, words: (at) => [`Piece ${at + 1}`] })
    expect(both?.scale).toBe(1)
    expect(both?.rows).toBe(9)
    const lines = both?.strokes.filter((stroke): stroke is LineStroke => stroke.kind === 'line') ?? []
    expect(lines.map(({ x1, x2 }) => Math.abs(x2 - x1))).toEqual(Array.from({ length: 9 }, () => 50))
  })

  test('a piece that cannot be counted is left out, and the others are drawn', () => {
    expect(drawPiece({ parts: [{ rows: [] }], beside: [{ parts: [{ rows: strip(4) }] }], size, worn: false })?.rows).toBe(4)
  })
})

describe('a piece turned over', () => {
  test('has its first row at the top and is not mirrored: a point goes to the other side of the middle', () => {
    const over = turnedOver(flatForm(worked(['Foundation: Ch 11.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, sc in next 8 sts, leave rem 2 sts unworked. (8)']), { size, border: [] })!)
    // As worked Row 1 lies at 2 to 6 mm from the foot, Row 2 from the left edge over 40 of 50 mm.
    expect(over.rows(1).map(({ strokes }) => strokes[0] as LineStroke).map(({ x1, x2, y1 }) => [Math.min(x1, x2), Math.max(x1, x2), y1])).toEqual([[0, 50, 2], [10, 50, 6]])
  })
})

describe('slip stitches that count', () => {
  // Three slip stitches in, four stitches on, three left: the row that is seen is the four in the middle.
  test('lie flat on the row below at either end, so that the row steps in there', () => {
    const text = ['---', 'title: Piece', 'terms: US', 'conventions: { turning-chains: { sc: not counted }, slip-stitches: counted }', 'pieces:', '  - name: Piece', '    rows: |',
      '      Foundation: Ch 11.', '      Row 1: Sc in 2nd ch from hook and in each ch across. (10)', '      Row 2: Turn, sl st in first 3 sts, ch 1, sc in next 4 sts, leave last 3 sts unworked. (7)', '---', ''].join('\n')
    const rows = checkPattern({ path: 'piece.md', text }).pieces[0]!.rows.filter(({ number }) => number !== undefined).map((row) => ({ row, yarn: 0 }))
    expect(layRows(rows, size).map(({ left, right }) => [left, right])).toEqual([[0, 10], [3, 7]])
  })
})

describe('a border', () => {
  const edge = [[0, 0], [60, 0], [60, 30], [0, 30]] as const
  test('of plain stitches is a straight line, half a round outside what is there', () => {
    const [line] = borderLines(worked(['Rnd 1: Make an adjustable ring; 6 sc in ring. (6)']), size, edge)
    expect(line?.points.map(([x, y]) => [round2(x), round2(y)])).toEqual([[-2, -2], [62, -2], [62, 32], [-2, 32]])
  })

  test('of shells has one bow over each shell', () => {
    const rows = worked(['Rnd 1: Make an adjustable ring; 12 sc in ring, join with sl st in first sc. (12)', 'Rnd 2: Ch 1, *sc in next st, 5 dc in next st; rep from * around, join with sl st in first sc. (36)'])
    const [, line] = borderLines(rows, size, edge)
    // Six shells; a bow has seven points. The highest stand out by a whole round over the lowest.
    expect(line?.points).toHaveLength(6 * 7)
    const out = line?.points.map(([x, y]) => Math.max(-x, x - 60, -y, y - 30)) ?? []
    expect(Math.max(...out)).toBeGreaterThan(Math.min(...out) + 2)
  })
})

describe('a garment in rounds', () => {
  const yoke = worked(['Rnd 1: Make an adjustable ring; 40 sc in ring, join with sl st in first sc. (40)', 'Rnd 2: Ch 1, sc in each st around, join with sl st in first sc. (40)'])
  const tube = (stitches: number) => worked([`Rnd 1: Make an adjustable ring; ${stitches} sc in ring, join with sl st in first sc. (${stitches})`, 'Rnd 2: Ch 1, sc in each st around, join with sl st in first sc.'.concat(` (${stitches})`)])
  /** A tube that stands on the last round of another. */
  const on = (under: typeof yoke, own: typeof yoke) => own.map(({ row, yarn }, at) => at > 0 ? { row, yarn } : {
    yarn, row: { ...row, fabric: { ...row.fabric, made: row.fabric.made.map((place, index) => ({ ...place, into: under.at(-1)!.row.fabric.made[index] })) } },
  })

  test('has the wider of two parts as its trunk and the others at its sides', () => {
    const { trunk, limbs } = limbsOf([{ rows: yoke }, { rows: on(yoke, tube(28)) }, { rows: on(yoke, tube(12)), make: 2 }])
    expect(trunk.map(({ row }) => row.makes)).toEqual([40, 40, 28, 28])
    expect(limbs.map(({ rows, after }) => [rows.length, after])).toEqual([[2, 2], [2, 2]])
  })

  test('that goes on without a fork has none', () => {
    expect(limbsOf([{ rows: yoke }, { rows: on(yoke, tube(36)) }]).limbs).toEqual([])
  })

  test('is wider with its sleeves than without, its body as high', () => {
    const drawn = (parts: Parameters<typeof drawPiece>[0]['parts']) => drawPiece({ parts, size, worn: true })!
    const body = { rows: on(yoke, tube(28)), shape: 'tube' as const }
    const without = drawn([{ rows: yoke, shape: 'cone' }, body])
    const within = drawn([{ rows: yoke, shape: 'cone' }, body, { rows: on(yoke, tube(12)), make: 2 }])
    expect(within.width).toBeGreaterThan(without.width)
    expect(within.outlines).toHaveLength(3)
    // Four rounds of 4 mm: laid flat a garment is as high as its rounds.
    expect(Math.max(...within.outlines[0]!.map(([, y]) => y))).toBe(16)
  })
})

describe('the yarn of each stitch', () => {
  const row = (text: string, stitches: number) => {
    const file = ['---', 'title: Piece', 'terms: US', 'materials: { yarns: [{ letter: A }, { letter: B }] }', 'pieces:', '  - name: Piece', '    rows: |',
      `      Rnd 1: With A, make an adjustable ring; ${stitches} sc in ring, join with sl st in first sc. (${stitches})`, `      Rnd 2: ${text} (${stitches})`, '---', ''].join('\n')
    const checked = checkPattern({ path: 'piece.md', text: file })
    return stitchYarns(checked.pieces[0]!.rows.at(-1)!, checked.source, 'A')?.join('')
  }

  // Worked by hand from the words.
  test.each([
    ['Ch 1, *with B, sc in next 2 sts; with A, sc in next st; rep from * around, join with sl st in first sc.', 6, 'BBABBA'],
    ['Ch 1, with A, sc in next 3 sts; with B, sc in next st, 1 sc in each of next 2 sts, join with sl st in first sc.', 6, 'AAABBB'],
    ['Ch 1, sc in each st around, join with sl st in first sc.', 6, undefined],
  ])('%s', (text, stitches, yarns) => {
    expect(row(text, stitches)).toBe(yarns)
  })
})
