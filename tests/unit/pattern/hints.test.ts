import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Hint } from '../../../src/diagnostics/diagnostic.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import type { Source } from '../../../src/text/source.ts'
import { readCases } from '../../support/read-cases.ts'

// Each case is a right pattern, counted by hand, and the same with one slip. What is offered must hold the right pattern again, word for
// word: the oracle is the text before the slip, not the search.

/** Every pattern that comes of one of the changes that are offered. */
function offered(source: Source): readonly string[] {
  return checkPattern(source).diagnostics.flatMap(({ hint, otherHints = [] }) => [...(hint ? [hint] : []), ...otherHints]).flatMap((hint) => (hint.edit ? [made(source, hint.edit)] : []))
}

function made({ text }: Source, { span, replacement }: NonNullable<Hint['edit']>): string {
  return text.slice(0, span.start) + replacement + text.slice(span.end)
}

function pattern(rows: readonly string[], head: readonly string[] = []): Source {
  return { path: 'mat.md', text: ['---', 'title: Mat', 'terms: US', ...head, 'pieces:', '  - name: Mat', '    rows: |', ...rows.map((row) => `      ${row}`), '---', ''].join('\n') }
}

const errors = (source: Source): readonly string[] => checkPattern(source).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish' && code !== 'finishing-unsaid')

describe('the pages of common errors: what is offered is the right neighbour that stands beside the error', () => {
  const pages = readdirSync('tests/patterns').filter((file) => file.endsWith('.md'))
  test.each(['01', '02', '06', '07', '10', '11', '14', '21', '32', '37', '39', '47', '50'])('page %s', (number) => {
    const page = pages.find((file) => file.startsWith(`${number}-`)) ?? ''
    const [wrong, right] = readCases(readFileSync(`tests/patterns/${page}`, 'utf8'), page).flatMap((one) => (one.kind === 'fence' ? [one.wrapped.source] : []))
    expect(offered(wrong!)).toContain(right!.text)
  })
})

const round = ['Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each st around. (12)']

// 6, 12, 18, 24 by six increases a round; flat pieces keep their number.
describe.each<[kind: string, rows: readonly string[], right: string, slip: string, head?: readonly string[]]>([
  ['so many for so many more', [...round, 'Rnd 3: *Sc in next st, 2 sc in next st; rep from * 6 times in all. (18)', 'Rnd 4: Sc in each st around. (18)'], '6 times in all', '6 more times'],
  ['so many more for so many', [...round, 'Rnd 3: [Sc in next st, 2 sc in next st] twice more, [sc in next st, 2 sc in next st] 3 times. (18)', 'Rnd 4: Sc in each st around. (18)'], 'twice more', 'twice'],
  ['the times', [...round, 'Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (18)'], '6 times', '7 times'],
  ['a number, its digit lost', ['Row 1: Ch 31, sc in 2nd ch from hook and in each ch across. (30)', 'Row 2: Ch 1, turn, sc in next 12 sts, 2 sc in next st, sc in next 17 sts. (31)'], 'next 17 sts', 'next 7 sts'],
  ['a number that stands unsaid', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, 2 sc in next 2 sts, sc in next 8 sts. (12)'], 'in next 2 sts', 'in next st'],
  ['the total', [...round, 'Rnd 3: Sc in each st around. (12)'], '(12)\n      Rnd 3', '(13)\n      Rnd 3'],
  ['one kind in the total', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, sc in next 5 sts, dc in next 5 sts. (5 sc, 5 dc)'], '5 dc)', '4 dc)'],
  ['two kinds in the total', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, sc in next 6 sts, dc in next 4 sts. (6 sc, 4 dc)'], '(6 sc, 4 dc)', '(7 sc, 3 dc)'],
  ['the change', [...round, 'Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (18) (+6)'], '(+6)', '(+8)'],
  ['the last stitch forgotten', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, [sc in next st, dc in next st, sc in next st] 3 times, sc in last st. (10)'], ', sc in last st', ''],
  ['what a repeat keeps back', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, *sc in next 2 sts, dc in next st; rep from * to last st, sc in last st. (10)'], 'to last st,', 'to last 2 sts,'],
  ['a corner forgotten', ['Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, (3 dc, ch 2) 3 times in ring, join. (12 dc, 4 ch-2 sps)', 'Rnd 2: Ch 1, *sc in next 3 dc, (sc, ch 2, sc) in next ch-2 sp; rep from * 3 more times, join. (20 sc, 4 ch-2 sps)'], '3 more times', '2 more times'],
  ['one place for several', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, sc in next 4 sts, (sc, dc, sc) in next st, sc in next 5 sts. (12)', 'Row 3: Ch 1, turn, sc in next 4 sts, (sc, dc, sc) in next st, sc in next 7 sts. (14)'], '(sc, dc, sc) in next st, sc in next 5', 'sc, dc, sc in next st, sc in next 5'],
  ['a turning chain that counts, and its stitch worked as well', ['Row 1: Ch 12, dc in 4th ch from hook (skipped ch count as dc) and in each ch across. (10)', 'Row 2: Ch 3 (counts as dc), turn, dc in next st and in each st across. (10)', 'Row 3: Ch 3 (counts as dc), turn, dc in next st and in each st across. (10)'], 'turn, dc in next st and in each st across. (10)\n---', 'turn, dc in first st and in each st across. (10)\n---'],
  ['turning chains in the conventions', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 3, turn, dc in next 10 sts. (10)', 'Row 3: Ch 3, turn, dc in next 10 sts. (10)'], '{ dc: not counted }', '{ dc: counted }', ['conventions:', '  turning-chains: { dc: not counted }']],
  ['the foundation chain', ['Foundation: Ch 11.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, sc in each st across. (10)'], 'Ch 11', 'Ch 12'],
  ['the total of one size', ['Rnd 1: 6 (7, 8) sc in magic ring. (6 (7, 8))', 'Rnd 2: 2 sc in each st around. (12 (14, 16))'], '(12 (14, 16))', '(12 (15, 16))', ['sizes: [S, M, L]']],
  ['a number of one size', ['Row 1: Ch 11 (13, 15), sc in 2nd ch from hook and in each ch across. (10 (12, 14))', 'Row 2: Ch 1, turn, sc in next 4 (5, 6) sts, 2 sc in next st, sc in next 5 (6, 7) sts. (11 (13, 15))'], '5 (6, 7) sts', '5 (6, 8) sts', ['sizes: [S, M, L]']],
  ['a count left out', [...round, 'Rnd 3: Sc in each st around. (12)'], ' (12)\n      Rnd 3', '\n      Rnd 3'],
  ['the length of a range', [...round, 'Rnds 3-6: Sc in each st around. (12) [4 rnds]'], '[4 rnds]', '[5 rnds]'],
  ['a row numbered twice', [...round, 'Rnd 3: Sc in each st around. (12)', 'Rnd 4: Sc in each st around. (12)', 'Rnd 5: Sc in each st around. (12)'], 'Rnd 4:', 'Rnd 3:'],
  ['a row numbered one too far', [...round, 'Rnd 3: Sc in each st around. (12)', 'Rnd 4: Sc in each st around. (12)', 'Rnd 5: Sc in each st around. (12)'], 'Rnd 4:', 'Rnd 6:'],
  ['a stitch misspelt', ['Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10)', 'Row 2: Ch 1, turn, hdc in each st across. (10)'], 'hdc', 'hcd'],
])('%s', (_, rows, right, slip, head = []) => {
  const source = pattern(rows, head)
  const wrong = { ...source, text: source.text.replace(right, slip) }

  test('the pattern comes out, and with the slip it does not', () => {
    expect(errors(source)).toEqual([])
    expect(wrong.text).not.toBe(source.text)
    expect(errors(wrong)).not.toEqual([])
  })

  test('the right words are among what is offered', () => {
    expect(offered(wrong)).toContain(source.text)
  })
})

describe('a turning chain of which nothing is said', () => {
  test('both answers are offered, in the front-matter, in the form that is there', () => {
    const rows = ['Row 1: Ch 13, sc in 2nd ch from hook and in each ch across. (12)', 'Row 2: Ch 3, turn, 2 dc in first st, dc in each st across.']
    const said = (text: string) => text.split('\n').filter((line) => /conventions|turning-chains|dc:/.test(line))
    expect(offered(pattern(rows)).map(said)).toEqual(expect.arrayContaining([['conventions:', '  turning-chains: { dc: not counted }'], ['conventions:', '  turning-chains: { dc: counted }']]))
    expect(offered(pattern(rows, ['conventions:', '  chains: not counted'])).map(said)).toContainEqual(['conventions:', '  turning-chains: { dc: counted }'])
    expect(offered(pattern(rows, ['conventions: { turning-chains: { sc: counted } }'])).map(said)).toContainEqual(['conventions: { turning-chains: { dc: counted, sc: counted } }'])
  })
})

test('the witness is named: a row that works over what this one makes', () => {
  const finding = checkPattern(pattern(['Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each st around. (13)', 'Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (18)'])).diagnostics.find(({ code }) => code === 'total-mismatch')
  expect(finding?.hint?.text).toBe('round 3 works over 12 as well, so the total is the likelier slip: write `(12)`')
})

test('where nothing mends, nothing is offered', () => {
  const wrong = pattern(['Row 1: Ch 21, sc in 2nd ch from hook and in each ch across. (20)', 'Row 2: Ch 1, turn, *sc in next 6 sts, ch 3, skip next 3 sts; rep from * across. (90 sc)', 'Row 3: Ch 1, turn, sc in each of next 55 sts. (55)'])
  expect(errors(wrong).length).toBeGreaterThan(0)
  expect(offered(wrong)).toEqual([])
})
