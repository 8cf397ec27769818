import { describe, expect, test } from 'vitest'
import { found, rowsFound, saysOf, withPieces } from './made-up-files.ts'

// Block styles and their indicators: YAML 1.2.2, 8.1. Only the literal style `|` keeps lines as they are written.

const rows = ['      Rnd 1: 6 sc in MR. (6)', '      Rnd 2: [inc] 6 times. (12)']

/** One piece whose `rows` begin in line 6, and one after it that must not suffer. */
function disc(...lines: readonly string[]): string {
  return withPieces('pieces:', '  - name: Disc', ...lines, '  - name: Rim', '    rows: |', '      Rnd 1: Sc in each st. (12)')
}

const rim = { Rim: '      Rnd 1: Sc in each st. (12)' }

describe('a | block', () => {
  test.each([['|'], ['|-'], ['|+'], ['|2'], ['|2-'], ['|-2'], ['| # the disc'], ['|   ']])('begun by `%s`', (header) => {
    const text = disc(`    rows: ${header}`, ...rows)
    expect(found(text)).toEqual([])
    expect(rowsFound(text)).toEqual({ Disc: rows.join('\n'), ...rim })
  })

  test('leaves empty lines around its rows out, and those between them in', () => {
    const text = disc('    rows: |', '', '    ', rows[0]!, '', rows[1]!, '   ', '')
    expect(found(text)).toEqual([])
    expect(rowsFound(text)).toEqual({ Disc: `${rows[0]}\n\n${rows[1]}`, ...rim })
  })

  test('keeps every sign that rows have, and lines that go further in', () => {
    const signs = ['      Rnd 1: *Sc: 2, [dc] "x" #3 {a} & | > %; rep from * around. (6)', '        a line that goes on', '      # Note']
    const text = disc('    rows: |', ...signs)
    expect(found(text)).toEqual([])
    expect(rowsFound(text)['Disc']).toBe(signs.join('\n'))
  })

  test('may be the last thing in the file', () => {
    const text = ['---', 'title: A', 'terms: US', 'pieces:', '  - name: Disc', '    rows: |', ...rows, '---'].join('\n')
    expect(rowsFound(text)).toEqual({ Disc: rows.join('\n') })
  })

  test('keeps its line ends of Windows', () => {
    const text = disc('    rows: |', ...rows).replaceAll('\n', '\r\n')
    expect(found(text)).toEqual([])
    expect(rowsFound(text)['Disc']).toBe(rows.join('\r\n'))
  })
})

describe('rows that are not in a | block', () => {
  test.each<[name: string, lines: readonly string[], place: string, read: string | undefined]>([
    ['in a > block', ['    rows: >', ...rows], '6:11-12', rows.join('\n')],
    ['in double quotes', ['    rows: "Rnd 1: 6 sc in MR. (6)"'], '6:11-35', undefined],
    ['in single quotes', ["    rows: 'Rnd 1: 6 sc in MR. (6)'"], '6:11-35', undefined],
    ['beside the key', ['    rows: 6 sc in MR'], '6:11-21', undefined],
    ['beside the key, with a label', ['    rows: Rnd 1: 6 sc in MR. (6)'], '6:11-33', undefined],
    ['beside the bar', ['    rows: | Rnd 1: 6 sc in MR. (6)', rows[1]!], '6:11-35', undefined],
    ['beginning with a star', ['    rows: *sc, dc; rep from * around'], '6:11-37', undefined],
    ['beginning with a bracket', ['    rows: [sc, dc] 6 times'], '6:11-27', undefined],
    ['in a list', ['    rows:', '      - Rnd 1 6 sc in MR. (6)'], '6:5-9', undefined],
    ['in a list within brackets', ['    rows: [Rnd 1]'], '6:5-9', undefined],
    ['below the key without a bar', ['    rows:', ...rows], '6:5-9', rows.join('\n')],
    ['below the key without a bar or colons', ['    rows:', '      1st rnd. 6 sc', '      2nd rnd. 12 sc'], '6:5-9', '      1st rnd. 6 sc\n      2nd rnd. 12 sc'],
    ['below the key without a bar, with a bracket that goes on', ['    rows:', rows[0]!, '      Rnd 2: [sc, inc] 3 times', '      Rnd 3: *Sc', '      Rnd 4: Note: turn'], '6:5-9', `${rows[0]}\n      Rnd 2: [sc, inc] 3 times\n      Rnd 3: *Sc\n      Rnd 4: Note: turn`],
    ['outside: as far in as the key', ['    rows: |', rows[0]!, '    Rnd 2: Inc around. (12)', '    Rnd 3: Sc around. (12)'], '8:5-10', `${rows[0]}\n    Rnd 2: Inc around. (12)\n    Rnd 3: Sc around. (12)`],
    ['outside: none of them further in than the key', ['    rows: |', '    Rnd 1: 6 sc in MR. (6)', '    Rnd 2: Inc around. (12)'], '7:5-10', '    Rnd 1: 6 sc in MR. (6)\n    Rnd 2: Inc around. (12)'],
    ['outside: less far in than the first row', ['    rows: |', `  ${rows[0]}`, rows[1]!, '      Rnd 3: Sc around. (12)'], '8:7-33', `  ${rows[0]}\n${rows[1]}\n      Rnd 3: Sc around. (12)`],
  ])('%s', (_, lines, place, read) => {
    expect(found(disc(...lines))).toEqual([`rows-not-in-block ${place}`])
    expect(rowsFound(disc(...lines))).toEqual(read === undefined ? rim : { Disc: read, ...rim })
  })

  test('are told what to write', () => {
    expect(saysOf(disc('    rows:', ...rows))).toEqual({
      message: '`rows` does not begin a `|` block',
      note: 'rows stand in a block: `rows: |`, and each row on a line of its own below it, indented further than `rows`',
    })
  })

  test('a gauge has rows too, and they are a number', () => {
    const text = withPieces('gauge:', '  sts: 8', '  rows: *6', '  over: 10 cm', 'pieces:', '  - name: Disc', '    rows: |', ...rows)
    expect(found(text)).toEqual(['front-matter-broken 6:9-11'])
  })
})

describe('no rows at all', () => {
  test.each<[name: string, lines: readonly string[], places: readonly string[]]>([
    ['an empty block', ['    rows: |'], ['value-wrong 6:11-12']],
    ['a block of empty lines', ['    rows: |', '', '      '], ['value-wrong 6:11-12']],
    ['a key with nothing behind it', ['    rows:'], ['value-wrong 6:5-9']],
    ['no key', ['    make: 2'], ['key-missing 5:5-9']],
  ])('%s', (_, lines, places) => {
    expect(found(disc(...lines))).toEqual(places)
    expect(rowsFound(disc(...lines))).toEqual(rim)
  })
})

test('a piece that goes on from one whose rows cannot be read is left out too, and nothing is said of it', () => {
  const text = withPieces('pieces:', '  - name: Disc', '    rows: "Rnd 1"', '  - name: Rim', '    on: Disc', '    rows: |', rows[0]!, '  - name: Cord', '    rows: |', rows[0]!, 'seams:', '  - join: [Disc, Cord]')
  expect(found(text)).toEqual(['rows-not-in-block 6:11-18'])
  expect(rowsFound(text)).toEqual({ Cord: rows[0] })
})
