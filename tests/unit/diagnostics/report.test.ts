import { expect, test } from 'vitest'
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts'
import { reportText, shortReportText } from '../../../src/diagnostics/report.ts'
import { labelOn, sourceFrom } from './made-up-source.ts'

// The outside oracle of the form: three whole reports that were drawn by hand before the program was written.

const dishcloth = sourceFrom('patterns/granary-dishcloth.md', 7, [
  '  3: ch 1, turn, sc in next 15 sts, 2 sc in next st, sc in next 18 sts. (34 sc)',
])

const totalMismatch: Diagnostic = {
  code: 'total-mismatch',
  message: 'row 3 makes 35 stitches, but its total says 34',
  primary: labelOn(dishcloth, '(34 sc)', 'says 34, makes 35'),
  secondary: [labelOn(dishcloth, '2 sc in next st', 'makes 1 more than it works over')],
  tally: [
    { text: 'sc in next 15 sts', worksOver: 15, makes: 15, soFar: 15 },
    { text: '2 sc in next st', worksOver: 1, makes: 2, soFar: 17 },
    { text: 'sc in next 18 sts', worksOver: 18, makes: 18, soFar: 35 },
  ],
  hint: { text: 'row 4 says 35 as well, so the total is the likelier slip: write (35 sc)' },
}

test('a total that is one short', () => {
  expect(reportText([totalMismatch], dishcloth)).toBe(`\
error[total-mismatch]: row 3 makes 35 stitches, but its total says 34
 --> patterns/granary-dishcloth.md:7:73
  |
7 |   3: ch 1, turn, sc in next 15 sts, 2 sc in next st, sc in next 18 sts. (34 sc)
  |                                     ---------------                     ^^^^^^^ says 34, makes 35
  |                                     makes 1 more than it works over
  |
  = tally: works over  makes  so far
                   15     15      15  sc in next 15 sts
                    1      2      17  2 sc in next st
                   18     18      35  sc in next 18 sts
  = hint: row 4 says 35 as well, so the total is the likelier slip: write (35 sc)
  = more: /help/total-mismatch
`)
})

const cowl = sourceFrom('patterns/tidewater-cowl.md', 5, [
  '  1: ch 34, sc in 2nd ch from hook, sc in next 32 ch. (33 sc)',
  '  2: ch 1, turn, sc in first st, *dc in next 3 sts, hdc2tog; rep from * across to last st, sc in last st. (26 sts)',
])

const doesNotDivide: Diagnostic = {
  code: 'repeat-does-not-divide',
  message: 'the repeat in row 2 works over 5 stitches at a time, but 31 are left for it',
  primary: labelOn(cowl, 'dc in next 3 sts, hdc2tog', 'works over 5 each time: 3 + 2'),
  secondary: [
    labelOn(cowl, '(33 sc)', 'row 1 makes 33'),
    labelOn(cowl, 'sc in first st', 'works over 1'),
    labelOn(cowl, 'to last st', 'keeps 1 back'),
  ],
  note: '33 less 1 before the repeat and 1 kept back is 31: 6 repeats work over 30, and 1 stitch is left over',
  hint: { text: '32 stitches in row 1 would fit (a multiple of 5, plus 2), and row 2 then makes the 26 it says' },
}

test('a repeat that does not divide into what is left, on a line whose labels lie too close to cut it', () => {
  expect(reportText([doesNotDivide], cowl)).toBe(`\
error[repeat-does-not-divide]: the repeat in row 2 works over 5 stitches at a time, but 31 are left for it
 --> patterns/tidewater-cowl.md:6:35
  |
5 |   1: ch 34, sc in 2nd ch from hook, sc in next 32 ch. (33 sc)
  |                                                       ------- row 1 makes 33
6 |   2: ch 1, turn, sc in first st, *dc in next 3 sts, hdc2tog; rep from * across to last st, sc in last st. (26 sts)
  |                  --------------   ^^^^^^^^^^^^^^^^^^^^^^^^^                    ---------- keeps 1 back
  |                  |                works over 5 each time: 3 + 2
  |                  works over 1
  |
  = note: 33 less 1 before the repeat and 1 kept back is 31: 6 repeats work over 30, and 1 stitch is left over
  = hint: 32 stitches in row 1 would fit (a multiple of 5, plus 2), and row 2 then makes the 26 it says
  = more: /help/repeat-does-not-divide
`)
})

const runner = sourceFrom('patterns/lattice-runner.md', 5, [
  '  7: ch 1, turn, sc in each st across. (27 sc)',
  '  8: ch 3 (counts as dc), turn, skip first st, dc in next st, [ch 2, skip next 2 sts, dc in next 3 sts] 6 times. (17 dc, 5 ch-2 sps)',
])

const overruns: Diagnostic = {
  code: 'row-overruns',
  message: 'row 8 works over 32 stitches, 5 more than row 7 makes',
  primary: labelOn(runner, 'skip next 2 sts', 'row 7 runs out here, in repeat 6 of 6'),
  secondary: [labelOn(runner, '(27 sc)', 'row 7 makes 27')],
  hint: { text: 'the overrun is exactly one repeat: with `5 times` the row works over 27 and makes the 17 dc, 5 ch-2 sps it says' },
}

test('a row that works over too much, on a line that is cut while its column stays the true one', () => {
  expect(reportText([overruns], runner)).toBe(`\
error[row-overruns]: row 8 works over 32 stitches, 5 more than row 7 makes
 --> patterns/lattice-runner.md:6:70
  |
5 |   7: ch 1, turn, sc in each st across. (27 sc)
  |                                        ------- row 7 makes 27
6 |   8: … [ch 2, skip next 2 sts, dc in next 3 sts] 6 times. (17 dc, 5 ch-2 sps)
  |               ^^^^^^^^^^^^^^^ row 7 runs out here, in repeat 6 of 6
  |
  = hint: the overrun is exactly one repeat: with \`5 times\` the row works over 27 and makes the 17 dc, 5 ch-2 sps it says
  = more: /help/row-overruns
`)
})

test('the short form is one line', () => {
  expect(shortReportText([overruns], runner)).toBe(
    'patterns/lattice-runner.md:6:70: error[row-overruns]: row 8 works over 32 stitches, 5 more than row 7 makes\n',
  )
})

test('sizes are named when it does not hold for all, and more of them as a list', () => {
  const inSizes = (...sizes: string[]) => reportText([{ ...totalMismatch, sizes }], dishcloth)
  expect(inSizes('Small')).toContain('\n  = sizes: Small only\n  = more: ')
  expect(inSizes('S', 'M', 'L')).toContain('\n  = sizes: S, M and L only\n')
  expect(reportText([totalMismatch], dishcloth)).not.toContain('sizes:')
})

test('errors come before warnings, each by their place', () => {
  const at = (code: Diagnostic['code'], start: number): Diagnostic =>
    ({ code, message: `at ${start}`, primary: { span: { start, end: start + 1 }, text: '' }, secondary: [] })
  const diagnostics = [at('count-missing', 2), at('row-overruns', 9), at('yarn-not-used', 1), at('total-mismatch', 4)]
  const source = { path: 'a.md', text: 'abcdefghijkl' }
  expect(shortReportText(diagnostics, source).split('\n').map((line) => line.split(' at ')[0])).toEqual([
    'a.md:1:5: error[total-mismatch]:',
    'a.md:1:10: error[row-overruns]:',
    'a.md:1:2: warning[yarn-not-used]:',
    'a.md:1:3: warning[count-missing]:',
    '',
  ])
  expect(diagnostics[0]?.primary.span.start).toBe(2)
})

test('a blank line stands between two reports, and nothing to say is nothing', () => {
  const two = reportText([totalMismatch, { ...totalMismatch, code: 'kind-mismatch' }], dishcloth)
  expect(two.split('\n\n')).toHaveLength(2)
  expect(reportText([], dishcloth)).toBe('')
})

test('of an empty file no line is shown', () => {
  const missing: Diagnostic = { code: 'front-matter-missing', message: 'the file is empty', primary: { span: { start: 0, end: 0 }, text: 'x' }, secondary: [] }
  expect(reportText([missing], { path: 'a.md', text: '' })).toBe(
    'error[front-matter-missing]: the file is empty\n --> a.md:1:1\n  = more: /help/front-matter-missing\n',
  )
})

test('colour only adds: without its codes the text is the same', () => {
  // ECMA-48: a control sequence is ESC [ … m.
  const bare = (text: string) => text.replace(/\u001B\[[\d;]*m/g, '')
  for (const [source, diagnostic] of [
    [dishcloth, { ...totalMismatch, sizes: ['S'] }], [cowl, doesNotDivide], [runner, overruns],
  ] as const) {
    const coloured = reportText([diagnostic], source, { colour: true })
    expect(coloured).not.toBe(reportText([diagnostic], source))
    expect(bare(coloured)).toBe(reportText([diagnostic], source))
    expect(bare(shortReportText([diagnostic], source, { colour: true }))).toBe(shortReportText([diagnostic], source))
  }
})

test('a long tally shows how the row begins and how it closes', () => {
  const tally = Array.from({ length: 60 }, (_, index) => ({ text: `step ${index + 1}`, worksOver: 1, makes: 1, soFar: index + 1 }))
  const text = reportText([{ ...totalMismatch, tally }], dishcloth)
  expect(text).toContain('      14  step 14\n')
  expect(text).toContain('  … 38 more steps …\n')
  expect(text).toContain('      53  step 53\n')
  expect(text).not.toContain('step 15\n')
})

test('nothing in a pattern or its name can command a terminal', () => {
  const source = { path: 'a\u001B[2Jb.md', text: 'Row 1: sc\u001B[31m in next st\u0007. (1)' }
  const text = reportText([{
    code: 'stitch-unknown', message: '`sc\u001B[31m` is no stitch\nhere', primary: labelOn(source, 'sc', 'b\u0008d'), secondary: [],
    note: '\u009B1m', tally: [{ text: '\u001Bc', worksOver: 1, makes: 1, soFar: 1 }],
  }], source)
  expect(text).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u007F-\u009F]/)
  expect(text).toContain('1 | Row 1: sc␛[31m in next st␇. (1)')
  expect(text).toContain('`sc␛[31m` is no stitch here')
})
