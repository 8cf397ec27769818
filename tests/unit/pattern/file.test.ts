import { describe, expect, test } from 'vitest'
import { decodePattern } from '../../../src/pattern/decode-pattern.ts'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { placeOf } from '../../../src/text/source.ts'
import { found, full, rowsFound, saysOf, smallWith, sourceOf, withPieces } from './made-up-files.ts'

const row = '      Rnd 1: 6 sc in MR. (6)'

describe('front-matter', () => {
  test.each<[name: string, text: string, places: readonly string[]]>([
    ['an empty file', '', ['front-matter-missing 1:1-1']],
    ['empty lines only', '\n\n  \n', ['front-matter-missing 1:1-1']],
    ['prose only', '# Tide Coaster\n\nA coaster.\n', ['front-matter-missing 1:1-15']],
    ['prose before it', `\n A coaster.\n${smallWith()}`, ['front-matter-missing 2:2-12']],
    ['four dashes', smallWith().replace('---', '----'), ['front-matter-missing 1:1-5']],
    ['no second line of dashes', smallWith().replace(/---\n$/, ''), ['front-matter-broken 1:1-4']],
    ['no second line of dashes before the prose', `${smallWith().replace(/---\n$/, '')}\n## Notes\n\nWork: loosely\n`, ['front-matter-broken 1:1-4']],
    ['dashes alone', '---', ['front-matter-broken 1:1-4', 'key-missing 1:1-4', 'key-missing 1:1-4', 'key-missing 1:1-4']],
    ['a list', '---\n- title: A\n- terms: US\n---\n', ['front-matter-broken 2:1-3:12']],
    ['words', '---\nTide Coaster\n---\n', ['front-matter-broken 2:1-13']],
    ['a value without a key', `---\n: A\n${withPieces('pieces:', '  - name: Disc', '    rows: |', row).slice(4)}`, ['front-matter-broken 2:1-1']],
  ])('%s', (_, text, places) => {
    expect(found(text)).toEqual(places)
  })

  test('that is not closed still gives its rows', () => {
    expect(rowsFound(`${smallWith().replace(/---\n$/, '')}\n## Notes\n\nWork: loosely\n`)).toEqual({ Disc: row })
  })

  test.each<[name: string, text: string]>([
    ['empty lines before it', `\n\n${smallWith()}`],
    ['spaces after the dashes', smallWith().replaceAll('---', '---  ')],
    ['line ends of Windows', smallWith().replaceAll('\n', '\r\n')],
    ['no line end after it', smallWith().trimEnd()],
    ['a byte order mark', `\uFEFF${smallWith()}`],
    ['dashes within rows', smallWith().replace(row, `${row}\n      ---`)],
  ])('with %s is right', (_, text) => {
    expect(found(text)).toEqual([])
    expect(rowsFound(text)['Disc']).toContain(row)
  })

  test('places are those of the file, byte order mark and line ends of Windows included', () => {
    const source = sourceOf(`\uFEFF${full.join('\r\n')}`)
    const { pattern } = readPattern(source)
    expect(placeOf(source, pattern!.pieces[1]!.nameSpan.start)).toEqual({ line: 35, column: 11 })
    expect(source.text.slice(pattern!.pieces[0]!.rows.start, pattern!.pieces[0]!.rows.end)).toBe(`${full[32]}\r\n${full[33]}`)
  })
})

// UTF-8: RFC 3629. The bytes of ½ are C2 BD in UTF-8 and BD in Latin 1; U+FFFD is EF BF BD.
describe('bytes', () => {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)

  test('of UTF-8 are the text, letter by letter', () => {
    expect(decodePattern(bytes('---\ntitle: Étoile ½ 星\n'))).toEqual({ text: '---\ntitle: Étoile ½ 星\n' })
  })

  test('of a byte order mark stay, so that places do not move', () => {
    expect(decodePattern(new Uint8Array([0xef, 0xbb, 0xbf, 0x41]))).toEqual({ text: '\uFEFFA' })
  })

  test.each<[name: string, bytes: Uint8Array, reason: RegExp]>([
    ['Latin 1', new Uint8Array([...bytes('a\nb\n3'), 0xbd, ...bytes(' in\n')]), /^line 3 holds bytes that are not UTF-8/],
    ['a letter cut in two at the end', new Uint8Array([0x41, 0xc2]), /^line 1 holds bytes that are not UTF-8/],
    ['UTF-16, little end first', new Uint8Array([0xff, 0xfe, 0x41, 0x00]), /UTF-16/],
    ['UTF-16, big end first', new Uint8Array([0xfe, 0xff, 0x00, 0x41]), /UTF-16/],
  ])('of %s are refused', (_, given, reason) => {
    expect(decodePattern(given)).toEqual({ reason: expect.stringMatching(reason) })
  })

  test('of a real U+FFFD are a letter like any other', () => {
    expect(decodePattern(new Uint8Array([0xef, 0xbf, 0xbd]))).toEqual({ text: '\uFFFD' })
  })
})

describe('a text that was not UTF-8', () => {
  test('and has lost letters is told so once, and its rows are still there', () => {
    const text = smallWith('summary: 3\uFFFD in wide, 4\uFFFD in high')
    expect(found(text)).toEqual(['file-unreadable 4:11-12'])
    expect(rowsFound(text)).toEqual({ Disc: row })
  })

  test('and has zero signs is told no more than that', () => {
    expect(found('a\0b\0c\0')).toEqual(['file-unreadable 1:2-3'])
  })
})

test('what stands at the top of the file is said', () => {
  expect(saysOf('# Tide Coaster\n').message).toBe('the file begins with `# Tide Coaster`, but a pattern begins with a line of `---`')
  expect(saysOf('').message).toBe('the file is empty')
})
