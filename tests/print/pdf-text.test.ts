import { describe, expect, test } from 'vitest'
import type { Booklet } from '../../src/booklet/booklet.ts'
import { layOut } from '../../src/print/layout.ts'
import { printPattern } from '../../src/print/print-pattern.ts'
import { float } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { bare, hostileTitles, longPiece, titled } from './booklets/hostile.ts'
import { openPdf, pagesOf, textOf } from './read-pdf.ts'

const booklets: Readonly<Record<string, Booklet>> = { float, bare, 'one size': gangway(1), 'two sizes': gangway(2), 'three sizes': gangway(3), 'five sizes': gangway(5) }

const count = (text: string, words: string) => text.split(words).length - 1
const spaced = (text: string) => text.replace(/\s+/g, ' ')

describe.each(Object.entries(booklets))('%s, read back', (_, booklet) => {
  test('has as many pages as were laid out, each 210 by 279.4 mm', async () => {
    const pdf = await openPdf(await printPattern(booklet))
    expect(pdf.numPages).toBe(layOut(booklet).pages.length)
    for (const page of await pagesOf(pdf)) {
      // 210 mm is 595.28 pt and 279.4 mm is 11 in, 792 pt.
      expect(page.view[2]).toBeCloseTo(595.28, 2)
      expect(page.view[3]).toBeCloseTo(792, 3)
    }
  })

  test('says every row once, with its number before it and its count after it', async () => {
    const pages = await pagesOf(await openPdf(await printPattern(booklet)))
    const text = spaced((await Promise.all(pages.map(textOf))).join(' '))
    const rows = booklet.parts.flatMap(({ lines }) => lines.flatMap((line) => (line.kind === 'row' ? [line] : [])))
    const parts = text.slice(text.indexOf(`1 ${booklet.parts[0]?.name ?? ''}`))
    let from = 0
    for (const row of rows) {
      const words = spaced(row.text.map((run) => run.text).join(''))
      const at = parts.indexOf(`${row.label}${row.side === undefined ? '' : ` ${row.side}`} ${words}`.replace('  ', ' '), from)
      const close = parts.indexOf(words, from)
      expect(at === -1 ? close : at, `${row.label}: ${words}`).toBeGreaterThanOrEqual(from)
      from = (at === -1 ? close : at) + words.length
      expect(parts.slice(from, from + 1200)).toContain(row.stitches[0] ?? '')
    }
    const own = new Map(Map.groupBy(rows, (row) => spaced(row.text.map((run) => run.text).join(''))))
    for (const [words, same] of own) {
      const inside = [...own.keys()].filter((other) => other !== words && other.includes(words)).reduce((sum, other) => sum + (own.get(other)?.length ?? 0), 0)
      expect(count(parts, words), words).toBe(same.length + inside)
    }
  })
})

describe('hostile text', () => {
  const printed = async (booklet: Booklet) => {
    const pdf = await openPdf(await printPattern(booklet))
    return { pdf, text: spaced((await Promise.all((await pagesOf(pdf)).map(textOf))).join(' ')) }
  }

  test('markup stays what it is, on the page and in the title of the window', async () => {
    const { pdf, text } = await printed(titled(hostileTitles.markup))
    expect(text).toContain(hostileTitles.markup)
    const { info, metadata } = await pdf.getMetadata()
    expect((info as { Title: string }).Title).toBe(hostileTitles.markup)
    expect(metadata.get('dc:title')).toBe(hostileTitles.markup)
  })

  test('composed letters come back in one code point (Unicode Annex 15, NFC)', async () => {
    const { text } = await printed(titled(hostileTitles.combined))
    expect(text).toContain(hostileTitles.combined.normalize('NFC'))
  })

  test('Greek, Cyrillic and Polish need no stand-in', async () => {
    const { text } = await printed(titled(hostileTitles.greek))
    expect(text).toContain(hostileTitles.greek)
  })

  test('control characters leave spaces or nothing', async () => {
    const { text } = await printed(titled(hostileTitles.controls))
    expect(text).toContain('Tab andnullturned end')
    expect(text).not.toMatch(/[\u0000-\u001f\u200b\u202e\ufeff]/)
  })

  test('a word of 300 letters is whole when its pieces are put together', async () => {
    const { text } = await printed(titled(hostileTitles.longWord))
    expect(text.replaceAll(' ', '')).toContain(hostileTitles.longWord)
  })

  test('400 rows are all there', async () => {
    const { text } = await printed(longPiece(400))
    for (let row = 1; row <= 400; row++) expect(text).toMatch(new RegExp(`(?:^| )${row} (?:RS|WS) ?Ch 1, turn\\.`))
  })
})
