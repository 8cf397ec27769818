import { describe, expect, test } from 'vitest'
import type { Booklet } from '../../src/booklet/booklet.ts'
import { layOut } from '../../src/print/layout.ts'
import type { PlacedLine, PlacedText, Tag } from '../../src/print/sheet/placed.ts'
import { isTag } from '../../src/print/sheet/placed.ts'
import { float, row } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { longPiece } from './booklets/hostile.ts'
import { frameOf, leaves, tagsOf, wordsOf } from './placed-tree.ts'

// The house's own sheet, in mm: no source outside it. Where a row's columns end or start tells a hand where to find a figure on every page.

/** The cells of the row with a label, in a booklet whose only part it is. */
function cellsOf(booklet: Booklet, label: string): readonly Tag[] {
  const row = tagsOf(layOut(booklet).root, 'TR').findLast((tr) => tagsOf(tr, 'TH').some((head) => head.scope === 'Row' && wordsOf(head) === label))
  return (row?.children ?? []).filter(isTag)
}

const ends = (cell: Tag | undefined) => Math.max(...leaves(cell as Tag).map((one) => frameOf(one).right))
const starts = (cell: Tag | undefined) => Math.min(...leaves(cell as Tag).map((one) => frameOf(one).left))

describe('columns', () => {
  test('of rounds', () => {
    const [box, number, work, repeats, change, stitches] = cellsOf({ ...float, parts: float.parts.slice(0, 1) }, '3')
    expect([starts(box), ends(box)].map((edge) => Number(edge.toFixed(2)))).toEqual([18, 22.6])
    expect(ends(number)).toBeCloseTo(37, 2)
    expect(starts(work)).toBeCloseTo(40, 2)
    expect([ends(repeats), ends(change), ends(stitches)].map((edge) => Number(edge.toFixed(2)))).toEqual([141, 154, 166])
  })

  test('of rows with sides', () => {
    const [, number, side, work, repeats, change, stitches] = cellsOf({ ...float, parts: float.parts.slice(1) }, '3')
    expect(ends(number)).toBeCloseTo(32.6, 2)
    expect(starts(side)).toBeCloseTo(35, 2)
    expect(starts(work)).toBeCloseTo(43, 2)
    expect([ends(repeats), ends(change), ends(stitches)].map((edge) => Number(edge.toFixed(2)))).toEqual([141, 154, 166])
  })

  test('of two sizes, one column of stitches for each', () => {
    const cells = cellsOf(gangway(2), '3')
    expect(cells).toHaveLength(8)
    expect(ends(cells[4])).toBeCloseTo(137, 2)
    expect([ends(cells[6]), ends(cells[7])].map((edge) => Number(edge.toFixed(2)))).toEqual([163, 177])
    expect(cells.slice(6, 8).map(wordsOf)).toEqual(['48', '64'])
  })

  test('of three sizes, without a Pencil column', () => {
    const cells = cellsOf(gangway(3), '3')
    expect(cells).toHaveLength(9)
    expect(cells.slice(6).map((cell) => Number(ends(cell).toFixed(2)))).toEqual([174, 185, 196])
  })

  test('of more sizes: the counts stand on their own line under the text', () => {
    const cells = cellsOf(gangway(5), '2')
    expect(cells).toHaveLength(6)
    expect(wordsOf(cells[3] as Tag)).toBe('Ch 1, turn. Sc in each st across.48 (64, 80, 96, 112)')
  })
})

describe('lines', () => {
  const laidOut = layOut(longPiece(40))
  const first = tagsOf(laidOut.root, 'TR').findLast((tr) => wordsOf(tr).startsWith('1RS')) as Tag
  const page = leaves(first)[0]?.page ?? 0
  const rules = (laidOut.pages[page]?.ruling ?? []).filter((one): one is PlacedLine => one.kind === 'line' && one.y1 === one.y2 && one.x2 - one.x1 > 177)

  test('begin with the head at 18.7, a heavy rule at 22.7 and a middle rule at 28.6', () => {
    const head = leaves(tagsOf(laidOut.root, 'H2').find((tag) => wordsOf(tag) === '1 The net') as Tag)[0] as PlacedText
    expect(head.y).toBeCloseTo(18.7, 1)
    expect(rules.slice(0, 2).map(({ y1, weight }) => [Number(y1.toFixed(1)), weight])).toEqual([[22.7, 1.4], [28.6, 0.7]])
  })

  test('follow at 7 mm, and 4.94 mm for each more line of text', () => {
    const hair = rules.filter(({ weight }) => weight === 0.35).map(({ y1 }) => y1)
    const steps = hair.slice(1).map((y, at) => Number((y - (hair[at] ?? 0)).toFixed(1)))
    expect(steps.slice(0, 4)).toEqual([7, 7, 7, 7])
    // Every seventh row has four lines: 7.0 + 3 × 4.94.
    expect(steps[5]).toBeCloseTo(21.8, 1)
  })

  test('stand on a baseline 4.75 mm under their rule', () => {
    const baseline = (leaves(first).find((one) => one.kind === 'text') as PlacedText).y
    expect(baseline - (rules[1]?.y1 ?? 0)).toBeCloseTo(4.75, 2)
  })
})

describe('a repeat', () => {
  test('is underlined from its star to its semicolon, 2.1 points under the baseline, on each of its lines', () => {
    const laidOut = layOut(gangway(2))
    const row = tagsOf(laidOut.root, 'TR').findLast((tr) => wordsOf(tr).startsWith('5RS')) as Tag
    const words = leaves(row).filter((one): one is PlacedText => one.kind === 'text' && /^\*Sc|^2 sts;/.test(one.text))
    const lines = (laidOut.pages[words[0]?.page ?? 0]?.ruling ?? []).filter((one): one is PlacedLine => one.kind === 'line' && one.use === 'repeat')
    expect(words.map(({ text }) => text.trim())).toEqual(['*Sc in next 6 sts, fpdc in next', '2 sts;'])
    for (const one of words) {
      const under = lines.find(({ y1, x1 }) => Math.abs(y1 - one.y - (2.1 * 25.4) / 72) < 0.001 && Math.abs(x1 - one.x) < 0.001)
      expect(under?.x2).toBeCloseTo(one.x + one.width, 2)
      expect(under?.weight).toBe(0.45)
    }
  })
})

test('a label too wide for the number column stands whole over the text', () => {
  const lines = [row('net', { label: 'Foundation', text: 'Ch 41.', stitches: ['41'] })]
  const cells = cellsOf({ ...float, parts: [{ number: 1, name: 'The net', line: '', counting: 'Row', sides: true, lines }] }, 'Foundation')
  const [label, words] = [leaves(cells[1] as Tag)[0], leaves(cells[3] as Tag)[0]] as PlacedText[]
  expect([label?.x, words?.x]).toEqual([43, 43])
  expect((words?.y ?? 0) - (label?.y ?? 0)).toBeCloseTo(4.94, 2)
})

describe('a range', () => {
  test('of up to twelve rows has a box for each, with its number', () => {
    const cells = cellsOf({ ...float, parts: float.parts.slice(0, 1) }, '11–15')
    expect(leaves(cells[0] as Tag)).toEqual([])
    expect(wordsOf(cells[2] as Tag)).toBe('Change to B. Sc in each st around.1112131415')
    expect(leaves(cells[2] as Tag).filter(({ kind }) => kind === 'box')).toHaveLength(5)
  })

  test('of more rows has a grid, ten cells of 5 mm to a line with a gap of 1 mm after the fifth', () => {
    const boxes = leaves(cellsOf(gangway(2), '7–120')[3] as Tag).flatMap((one) => (one.kind === 'box' ? [one] : []))
    expect(boxes).toHaveLength(114)
    const line = boxes.slice(0, 10).map(({ x }) => x)
    expect(line.slice(1).map((x, at) => Number((x - (line[at] ?? 0)).toFixed(2)))).toEqual([5, 5, 5, 5, 6, 5, 5, 5, 5])
    expect(new Set(boxes.map(({ side, weight }) => `${side} ${weight}`))).toEqual(new Set(['5 0.5']))
    expect(wordsOf(cellsOf(gangway(2), '7–120')[3] as Tag)).toMatch(/57 times\.7161726/)
  })
})
