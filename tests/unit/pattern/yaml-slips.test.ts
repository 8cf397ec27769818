import { describe, expect, test } from 'vitest'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { found, rowsFound, saysOf, smallWith, sourceOf, withPieces } from './made-up-files.ts'

// What YAML does with these signs stands in the YAML 1.2.2 specification: 5.3 (indicators), 6.1 (indentation by spaces only),
// 6.6 (comments), 6.9 (tags and anchors), 7.1 (aliases), 7.3 (quoted and plain values), 7.4 (brackets), 9.1.2 (document markers).

/** Wrong lines from line 4 on, the place that is shown, and the nearest right lines. */
const slips: readonly (readonly [name: string, wrong: readonly string[], place: string, right: readonly string[]])[] = [
  ['a star begins a value', ['summary: *Sc in next st* to the end.'], '4:10-37', ['summary: "*Sc in next st* to the end."']],
  ['a star begins a value of one word', ['summary: *Sc'], '4:10-13', ['summary: "*Sc"']],
  ['an ampersand begins a value', ['summary: &Sc across'], '4:10-20', ['summary: Sc & dc across']],
  ['an exclamation mark begins a value', ['summary: !Sc across'], '4:10-20', ['summary: Sc across!']],
  ['an at sign begins a value', ['designer: @saltmarsh'], '4:11-21', ['designer: saltmarsh@']],
  ['a backtick begins a value', ['summary: `Sc` across'], '4:10-21', ['summary: Sc `across`']],
  ['a per cent sign begins a value', ['summary: %50 cotton'], '4:10-20', ['summary: 50% cotton']],
  ['a comma begins a value', ['summary: , and so on'], '4:10-21', ['summary: and so on,']],
  ['a dash and a space begin a value', ['summary: - a coaster'], '4:10-21', ['summary: -a coaster']],
  ['a question mark and a space begin a value', ['summary: ? a coaster'], '4:10-21', ['summary: ?a coaster']],
  ['a bar begins a value on its line', ['summary: | a coaster'], '4:10-21', ['summary: |', '  a coaster']],
  ['a closing bracket begins a value', ['summary: ] a coaster'], '4:10-21', ['summary: a ] coaster']],
  ['text goes on after brackets', ['summary: [sc, ch 1] in next st'], '4:10-31', ["summary: '[sc, ch 1] in next st'"]],
  ['text goes on after braces', ['summary: {sc} across'], '4:10-21', ["summary: '{sc} across'"]],
  ['a bracket is not closed', ['sizes: [Small, Large', 'level: easy'], '4:8-9', ['sizes: [Small, Large]', 'level: easy']],
  ['a bracket within braces is not closed', ['seams: [{ join: [Disc, by: sewing }]'], '4:17-18', ['seams: [{ join: [Disc], by: sewing }]']],
  ['a brace is not closed', ['gauge: { sts: 8, rows: 6, over: 10 cm', 'level: easy'], '4:8-9', ['gauge: { sts: 8, rows: 6, over: 10 cm }', 'level: easy']],
  ['a comment hides the end of braces', ['materials: { yarns: [{ colour: #fff }] }'], '4:32-33', ["materials: { yarns: [{ colour: '#fff' }] }"]],
  ['a value within braces holds a colon and a space', ['seams: [{ join: [Disc], by: sl st: loose }]'], '4:29-41', ['seams: [{ join: [Disc], by: "sl st: loose" }]']],
  ['a value within brackets begins with a star', ['sizes: [Small, *Large]'], '4:16-22', ['sizes: [Small, "*Large"]']],
  ['a value within brackets begins with a star and goes on', ['sizes: [Small, *Large *]'], '4:16-24', ['sizes: [Small, "*Large *"]']],
  ['a value holds a colon and a space', ['summary: Float: a coaster'], '4:10-26', ['summary: Float:a coaster']],
  ['a value in a list holds a colon and a space', ['stitches:', '  - abbr: bo', '    how: Step 1: 4 dc', '    name: bobble'], '6:10-22', ['stitches:', '  - abbr: bo', '    how: "Step 1: 4 dc"', '    name: bobble']],
  ['a quote is not closed', ['summary: "A coaster.', 'level: easy'], '4:10-21', ['summary: "A coaster."', 'level: easy']],
  ['a single quote is not closed', ["summary: 'A coaster.", 'level: easy'], '4:10-21', ["summary: 'A coaster.'", 'level: easy']],
  ['text goes on after a quote', ['summary: "Tide" coaster'], '4:17-24', ['summary: Tide "coaster"']],
  ['a backslash stands in double quotes', ['summary: "A \\c"'], '4:13-15', ["summary: 'A \\c'"]],
  ['a colon has no space after it', ['summary:Coaster', 'level: easy'], '4:1-16', ['summary: Coaster', 'level: easy']],
  ['a line has no colon', ['summary a coaster', 'level: easy'], '4:1-18', ['summary: a coaster', 'level: easy']],
  ['a value goes on in the first column', ['summary: A coaster', 'for the tide.', 'level: easy'], '5:1-14', ['summary: A coaster', '  for the tide.', 'level: easy']],
  ['a key stands further in than the one above', ['summary: A coaster.', '  level: easy'], '5:3-14', ['summary: A coaster.', 'level: easy']],
  ['a line is indented with a tab', ['gauge:', '\tsts: 8', '  rows: 6', '  over: 10 cm'], '5:1-2', ['gauge:', '  sts: 8', '  rows: 6', '  over: 10 cm']],
  ['many lines are indented with tabs', ['gauge:', '\tsts: 8', '\trows: 6', '\tover: 10 cm'], '5:1-2', ['gauge:', ' sts: 8', ' rows: 6', ' over: 10 cm']],
  ['a key stands twice', ['level: easy', 'summary: One.', 'level: basic'], '6:1-6', ['level: easy', 'summary: One.']],
  ['a key within a group stands twice', ['gauge: { sts: 8, rows: 6, over: 10 cm, sts: 9 }'], '4:40-43', ['gauge: { sts: 8, rows: 6, over: 10 cm }']],
  ['three dashes and words end the document', ['--- coaster', 'level: easy'], '4:1-12', ['level: easy']],
  ['three full stops end the document', ['...', 'level: easy'], '4:1-4', ['level: easy']],
  ['an anchor and an alias stand for a list', ['sizes: &all [Small]', 'level: easy'], '4:8-12', ['sizes: [Small]', 'level: easy']],
]

describe.each(slips)('%s', (_, wrong, place, right) => {
  test('one finding, at its place, and the rows are still there', () => {
    expect(found(smallWith(...wrong))).toEqual([`front-matter-broken ${place}`])
    expect(rowsFound(smallWith(...wrong))).toEqual({ Disc: '      Rnd 1: 6 sc in MR. (6)' })
  })

  test('the nearest right form has none', () => {
    expect(found(smallWith(...right))).toEqual([])
  })

  test('with line ends of Windows it is the same slip in the same place', () => {
    expect(found(smallWith(...wrong).replaceAll('\n', '\r\n'))).toEqual([`front-matter-broken ${place}`])
  })
})

test('every slip is found, not only the first', () => {
  expect(found(smallWith('summary: *Sc', 'designer: @salt', 'level: easy', 'sizes: [Small'))).toEqual([
    'front-matter-broken 4:10-13', 'front-matter-broken 5:11-16', 'front-matter-broken 7:8-9',
  ])
})

test('a slip in the title keeps no row from being counted', () => {
  const text = withPieces('pieces:', '  - name: Disc', '    rows: |', '      Rnd 1: 6 sc in MR. (6)').replace('title: Tide Coaster', 'title: Tide: a coaster')
  expect(found(text)).toEqual(['front-matter-broken 2:8-23'])
  expect(rowsFound(text)).toEqual({ Disc: '      Rnd 1: 6 sc in MR. (6)' })
})

test('a slip in a piece leaves out no more than the value', () => {
  const text = withPieces('pieces:', '  - name: Disc', '    note: *flat*', '    rows: |', '      Rnd 1: 6 sc in MR. (6)', '  - name: [Rim', '    rows: |', '      Rnd 1: Sc in each st. (6)')
  expect(found(text)).toEqual(['front-matter-broken 6:11-17', 'front-matter-broken 9:11-12'])
  expect(rowsFound(text)).toEqual({ Disc: '      Rnd 1: 6 sc in MR. (6)', 'Piece 2': '      Rnd 1: Sc in each st. (6)' })
})

test('aliases that would grow a thousandfold are refused, not followed', () => {
  const levels = Array.from({ length: 12 }, (_, level) => `k${level}: &k${level} [${level === 0 ? 'x' : Array(10).fill(`*k${level - 1}`).join(', ')}]`)
  const places = found(smallWith(...levels))
  expect(places.filter((place) => place.startsWith('front-matter-broken')).length).toBe(12)
  expect(rowsFound(smallWith(...levels))).toEqual({ Disc: '      Rnd 1: 6 sc in MR. (6)' })
})

test.each([['['], ['{'], ['- '], ['? '], ['a: '], ['&a '], ['*a '], ['"x\n'], ['x\n'], ['...\n'], ['!a ']])('%j, twenty thousand times, is told within seconds', (sign) => {
  const places = found(smallWith(`summary: ${sign.repeat(20_000)}`))
  expect(places.length).toBeGreaterThan(0)
})

// YAML 1.2.2, 7.3.3: between braces a comma ends a plain value, and words without a colon are a key without a value (7.4.2).
describe('a comma within a text between braces', () => {
  const stitches = (group: string): unknown => readPattern(sourceOf(smallWith('stitches:', `  - ${group}`))).pattern?.stitches[0]?.how

  test('the words behind it are read as text', () => {
    expect(found(smallWith('stitches:', '  - { abbr: bo, how: 4 dc in one st, closed together, ch 1 }'))).toEqual([])
    expect(stitches('{ abbr: bo, how: 4 dc in one st, closed together, ch 1 }')).toBe('4 dc in one st, closed together, ch 1')
  })

  test('the same words twice, and keys behind them', () => {
    expect(stitches('{ how: skip 2, dc, ch 1, dc, ch 1, abbr: x2, works-over: 2 }')).toBe('skip 2, dc, ch 1, dc, ch 1')
  })

  test('over lines', () => {
    expect(stitches('{ abbr: bo, how: 4 dc,\n      closed together }')).toBe('4 dc, closed together')
  })

  test.each([
    ['a key with a value is none of the text', '{ abbr: bo, how: 4 dc, closed: yes }', 'key-unknown 5:28-34'],
    ['nor a key with a colon and no value', '{ abbr: bo, how: 4 dc, closed: }', 'key-unknown 5:28-34'],
    ['nor a key misspelt', '{ abbr: bo, how: 4 dc, heigt }', 'key-unknown 5:28-33'],
    ['nor words behind quotes', '{ abbr: bo, how: "4 dc", closed }', 'key-unknown 5:30-36'],
    ['nor words behind no text', '{ closed, abbr: bo }', 'key-unknown 5:7-13'],
    ['nor a key whose colon has no space', '{ abbr: bo, how: 4 dc, closed:yes }', 'key-unknown 5:28-38'],
  ])('%s', (_, group, place) => {
    expect(found(smallWith('stitches:', `  - ${group}`))).toEqual([place])
  })
})

describe('what is said', () => {
  test('the value that needs quotes is shown in them', () => {
    expect(saysOf(smallWith('summary: *Sc in next st* to "end"'))).toEqual({
      message: '`summary` begins with `*`, which has a meaning of its own in YAML',
      note: "a value that begins with `*` needs quotes: `summary: '*Sc in next st* to \"end\"'`",
    })
    // The form that the note shows is right.
    expect(found(smallWith("summary: '*Sc in next st* to \"end\"'"))).toEqual([])
  })

  test('a colon', () => {
    expect(saysOf(smallWith('summary: Float: a coaster'))).toEqual({
      message: '`summary` holds a colon and a space, which begin a new key in YAML',
      note: 'a value that holds a colon and a space needs quotes: `summary: "Float: a coaster"`',
    })
  })

  test('tabs', () => {
    expect(saysOf(smallWith('gauge:', '\tsts: 8', '\trows: 6', '\tover: 10 cm'))).toEqual({
      message: '3 lines of the front-matter are indented with tabs',
      note: 'in YAML, lines are indented with spaces',
    })
  })
})
