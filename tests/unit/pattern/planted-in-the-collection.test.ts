import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// One slip planted in a pattern of the demo collection, which checks clean: the slip is told once, by its own code, and nothing else is.
// What each slip makes wrong was reckoned by hand from the pattern's own figures.

const planted: readonly (readonly [file: string, from: string, to: string, code: string])[] = [
  ['float', 'is: [9.5 cm]', 'is: [12 cm]', 'finished-size-mismatch'],
  ['float', 'sts: 16, rows: 16', 'sts: 61, rows: 16', 'gauge-outside-weight'],
  ['float', 'hooks: [4 mm]', 'hooks: [3.5 mm]', 'hook-not-listed'],
  ['float', 'Fold the becket end to end', 'With a 3.5 mm hook, work round the becket and fold it end to end', 'hook-not-listed'],
  ['float', 'hooks: [4 mm]', 'hooks: [4 mm, 6 mm]', 'hook-not-used'],
  ['float', '    - { what: fibrefill, amount: [40 g], for: ball }\n', '', 'notion-not-listed'],
  ['float', '    - { what: stitch marker, count: 1, for: first stitch of the round }\n', '', 'notion-not-listed'],
  ['float', 'Rounds 1-10 and 16-24', 'Rounds 1-10 and 16-23', 'yarn-rows-mismatch'],
  ['float', 'needs: [16 g]', 'needs: [1600 g]', 'yarn-amount-implausible'],
  ['float', 'metres: 200 }, colour: Rust', 'metres: 2000 }, colour: Rust', 'ball-outside-weight'],
  ['float', 'made-for: home', 'made-for: toy', ''],
  ['float', 'version: 1.0.0\ndate', 'version: 1.0.1\ndate', 'version-not-in-changes'],
  ['float', 'date: 2026-10-05\naccess', 'date: 2026-10-06\naccess', 'version-not-in-changes'],
  ['float', 'over the ring of Round 1', 'over the ring of Round 25', 'prose-reference-unknown'],
  ['float', 'Halfway, the ball has', 'Round 8 of the ball has 46 stitches. Halfway, the ball has', 'prose-count-mismatch'],
  ['float', 'Sew both short edges', 'Sew both beckets by their short edges', 'make-mismatch'],
  ['float', 'Bury all ends inside the ball.', 'Bury all ends inside the the ball.', 'word-doubled'],
  ['float', 'Row 1 (RS)', 'Row 1 (WS)', ''],
  ['harbour-block', 'A blanket of 6 by 8 blocks takes 48', 'A blanket of 6 by 8 blocks takes 42', 'sum-wrong'],
  ['harbour-block', 'over: 10 cm, hook: 5 mm, after: washed and dried flat', 'over: 10 cm, hook: 5 mm', 'gauge-incomplete'],
  ['harbour-block', 'stitch: tr, sts', 'stitch: dtr, sts', 'gauge-stitch-not-used'],
  ['harbour-block', 'The ss at the start of Rounds 2, 4 and 6', 'The ss at the start of Rounds 2, 4 and 8', 'prose-reference-unknown'],
  ['harbour-block', '480 g of A and 240 g of B', '480 g of A and 240 g of C', 'prose-name-unknown'],
  ['harbour-block', 'Rnd 6: Ss in next tr', 'Round 6: Ss in next tr', 'written-two-ways'],
  ['shingle-cloth', 'is: [25.5 cm]', 'is: [35.5 cm]', 'finished-size-mismatch'],
  ['shingle-cloth', 'a multiple of 2, and 1 more', 'a multiple of 4, and 1 more', 'multiple-mismatch'],
  ['shingle-cloth', 'Row 2 (WS)', 'Row 2 (RS)', 'side-mismatch'],
  ['shingle-cloth', 'fibre: 100% cotton, ball: { grams: 50, metres: 90 }, colour: Wet slate', 'ball: { grams: 50, metres: 90 }, colour: Wet slate', 'yarn-details-missing'],
  ['shingle-cloth', 'adds about 0.75 cm', 'adds about 0.75 cm (1 in)', 'conversion-wrong'],
  ['bollard-hat', 'level: intermediate', 'level: basic', 'level-below-techniques'],
  ['bollard-hat', 'needs: [31 g, 39 g, 48 g, 58 g, 65 g]', 'needs: [65 g]', 'yarn-same-for-all-sizes'],
  ['bollard-hat', 'needs: [31 g, 39 g, 48 g, 58 g, 65 g]', 'needs: [31 g, 39 g, 84 g, 58 g, 65 g]', 'size-list-order'],
  ['bollard-hat', '53.5 cm, 58.5 cm]', '53.5 cm, 85.5 cm]', 'finished-size-mismatch'],
  ['bollard-hat', 'made-for: garment', 'made-for: garment\nstitches: [{ abbr: peb, name: pebble, how: five in one }]', 'special-stitch-not-used'],
  ['bollard-hat', 'Wash the hat', 'Wash your blanket', 'template-leftover'],
  ['bollard-hat', 'The amounts of yarn have one tenth to spare.', 'The hat takes 1 (1, 1, 1, 2) balls.', 'balls-mismatch'],
  ['bollard-hat', 'Wash the hat', 'Wash the hat with its cords and tie it under the chin, then wash it', 'cord-on-childrens-wear'],
]

test.each(planted)('%s: %s -> %s', (file, from, to, code) => {
  const right = readFileSync(`patterns/${file}.md`, 'utf8')
  expect(right).toContain(from)
  const codes = (text: string): readonly string[] => checkPattern({ path: `${file}.md`, text }).diagnostics.map((one) => one.code)
  expect(codes(right)).toEqual([])
  expect(codes(right.replace(from, () => to))).toEqual(code === '' ? [] : [code])
})

/** Codes whose right form follows from the finding itself: these come with a change that can be made at once. */
const mendable = ['hook-not-listed', 'prose-count-mismatch', 'sum-wrong', 'side-mismatch', 'conversion-wrong', 'word-doubled']

test.each(planted.filter(([, from, , code]) => mendable.includes(code) && !from.startsWith('hooks')))('%s: %s -> %s is mended by its hint', (file, from, to) => {
  const text = readFileSync(`patterns/${file}.md`, 'utf8').replace(from, () => to)
  const found = (of: string): readonly Diagnostic[] => checkPattern({ path: `${file}.md`, text: of }).diagnostics
  const edit = found(text)[0]?.hint?.edit
  expect(edit).toBeDefined()
  expect(found(`${text.slice(0, edit!.span.start)}${edit!.replacement}${text.slice(edit!.span.end)}`)).toEqual([])
})

// Any number outside the rows with a digit too many, or seven more: it is told once or not at all, and never twice.
test.each(['float', 'harbour-block', 'shingle-cloth', 'bollard-hat'])('%s: one number changed outside the rows is one finding at most', (file) => {
  const text = readFileSync(`patterns/${file}.md`, 'utf8')
  const rows = { from: text.indexOf('pieces:'), to: text.indexOf('finished:') }
  const numbers = [...text.matchAll(/(?<![\d.-])\d{1,4}(?![\d.])/g)].filter(({ index }) => index < rows.from || index > rows.to)
  expect(numbers.length).toBeGreaterThan(20)
  const twice = numbers.filter((_, at) => at % 2 === 0).flatMap(({ 0: number, index }, at) => {
    const slip = at % 2 === 0 ? Number(number) * 10 : Number(number) + 7
    const { diagnostics } = checkPattern({ path: `${file}.md`, text: `${text.slice(0, index)}${slip}${text.slice(index + number.length)}` })
    return diagnostics.length > 1 ? [`${text.slice(Math.max(0, index - 20), index)}${slip}: ${diagnostics.map(({ code }) => code).join(' ')}`] : []
  })
  expect(twice).toEqual([])
}, 60_000)
