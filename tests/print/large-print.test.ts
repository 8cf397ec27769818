import { describe, expect, test } from 'vitest'
import type { Booklet, RowLine } from '../../src/booklet/booklet.ts'
import { changeInWords, inWords, repeatsInWords, stitchesInWords } from '../../src/print/large/in-words.ts'
import { layOutLargePrint } from '../../src/print/large/lay-out-large-print.ts'
import { printLargePrint } from '../../src/print/print-pattern.ts'
import type { PlacedBox, PlacedLine, PlacedText } from '../../src/print/sheet/placed.ts'
import { fromCollection, inSize } from './booklets/collection.ts'
import { float as floatByHand } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { bare, hostileTitles, longPiece, longRange, titled } from './booklets/hostile.ts'
import { prose } from './booklets/prose.ts'
import { outside, touching } from './ink.ts'
import { frameOf, leaves, onPage, tagsOf, wordsOf } from './placed-tree.ts'
import { contentStreams, openPdf, operatorNames, pagesOf, textOf } from './read-pdf.ts'

const booklets: Readonly<Record<string, Booklet>> = {
  float: fromCollection('float'), 'shingle-cloth': fromCollection('shingle-cloth'), 'harbour-block': fromCollection('harbour-block'), 'the hat for a child': inSize('bollard-hat', 2),
  'by hand': floatByHand, bare, prose, 'one size': gangway(1), '60 rows': longPiece(60), 'a range of 700 rows': longRange(700),
  ...Object.fromEntries(Object.entries(hostileTitles).map(([name, title]) => [`title: ${name}`, titled(title)])),
}

const rowLines = (booklet: Booklet) => booklet.parts.flatMap(({ lines }) => lines.filter((line): line is RowLine => line.kind === 'row'))
const spaced = (text: string) => text.replaceAll(/[\s\u00a0]+/g, ' ').trim()

describe.each(Object.entries(booklets))('large print of %s', (_, booklet) => {
  const laidOut = layOutLargePrint(booklet)
  const all = laidOut.pages.flatMap((__, page) => onPage(laidOut, page))
  const texts = all.filter((one): one is PlacedText => one.kind === 'text')

  test('has nothing over anything else, and nothing outside the live area', () => {
    expect(touching(laidOut, 0.7)).toEqual([])
    expect(outside(laidOut)).toEqual([])
  })

  test('has nothing under 18 points, nothing slanted, and one face beside that of its heads', () => {
    expect(texts.length).toBeGreaterThan(5)
    expect(texts.filter(({ size }) => size < 18)).toEqual([])
    expect(texts.filter(({ font }) => font === 'textItalic')).toEqual([])
    const missing = texts.filter(({ font, text }) => !['title', 'head', 'count', 'countStrong', 'countBold'].includes(font) && /[\w]/.test(text) && !text.startsWith(booklet.title.slice(0, 3)))
    expect(missing.filter(({ size }) => size === 24)).toEqual([])
  })

  test('keeps every row whole, with a box for each real row', () => {
    const rows = tagsOf(laidOut.root, 'TR')
    expect(rows.filter((row) => new Set(leaves(row).map(({ page }) => page)).size > 1)).toEqual([])
    const names = leaves(laidOut.root).filter((one): one is PlacedBox => one.kind === 'box').map(({ name }) => name)
    const things = booklet.materials.filter(({ kind }) => kind !== 'total').length
    expect(names).toHaveLength(rowLines(booklet).reduce((sum, { boxes }) => sum + boxes.length, 0) + things)
    expect(new Set(names).size).toBe(names.length)
  })

  test('ends its text over the footer, and numbers every page', () => {
    const low = leaves(laidOut.root).filter((one) => frameOf(one).bottom > 245)
    expect(low).toEqual([])
    for (const [page, { pagination }] of laidOut.pages.entries()) {
      const words = pagination.map((one) => (one.kind === 'text' ? one.text : '')).join('')
      expect(words).toContain('large print')
      expect(words).toContain(`Page ${page + 1} of ${laidOut.pages.length}`)
      if (booklet.version !== '') expect(spaced(words)).toContain(spaced(`Version ${booklet.version}, ${booklet.dateText}`))
    }
  })
})

describe('signs in words', () => {
  test.each([
    ['(sc, inc) × 6', '(sc, inc) 6 times'], ['6 × (sc, inc)', '6 times (sc, inc)'], ['13.5 × 13.5 cm (5¼ × 5¼ in)', '13.5 by 13.5 cm (5¼ by 5¼ in)'], ['Rounds 1–10', 'Rounds 1 to 10'],
    ['16 sc = 10 cm', '16 sc equal 10 cm'], ['*Sc in next 4 sts, inc; rep from * around.', '*Sc in next 4 sts, inc; rep from * around.'], ['−2 °C', 'minus 2 °C'],
  ])('%s: %s', (text, words) => {
    expect(inWords(text)).toBe(words)
  })

  test.each([['6 ×', '6 repeats'], ['1 ×', '1 repeat'], ['6–9 ×', '6 to 9 repeats'], ['6 ×, 2 ×', '6 repeats, then 2 repeats'], ['', '']])('%s in the repeats: %s', (text, words) => {
    expect(repeatsInWords(text)).toBe(words)
  })

  test.each([['+6', '6 more'], ['−6', '6 fewer'], ['', 'no change'], ['+6 (8)', '6 (8) more']])('%s in the change: %s', (text, words) => {
    expect(changeInWords(text)).toBe(words)
  })

  test.each([['36', '36 stitches'], ['1', '1 stitch'], ['?', 'stitches not reckoned']])('%s in the count: %s', (text, words) => {
    expect(stitchesInWords(text)).toBe(words)
  })
})

describe('what stands on the pages', () => {
  test.each([['deckhand-top', 0], ['deckhand-top', 4], ['skiff-cushion', 0], ['bollard-hat', 3], ['float', 0], ['drift-net-runner', 0]] as const)('of %s, size %i: the footer has the whole title, and the last page more than two lines', (name, size) => {
    const booklet = inSize(name, size)
    const laidOut = layOutLargePrint(booklet)
    for (const { pagination } of laidOut.pages) expect(spaced(pagination.map((one) => (one.kind === 'text' ? one.text : '')).join(''))).toContain(booklet.title)
    expect(new Set(onPage(laidOut, laidOut.pages.length - 1).filter((one): one is PlacedText => one.kind === 'text').map(({ y }) => y)).size).toBeGreaterThan(3)
  })

  test('sources stand with the materials that they are the sources of', () => {
    const laidOut = layOutLargePrint(inSize('skiff-cushion', 0))
    const order = leaves(laidOut.root).filter((one): one is PlacedText => one.kind === 'text').map(({ text }) => text.trim())
    expect(order.indexOf('Sources.')).toBeGreaterThan(order.indexOf('Safety.'))
    expect(order.indexOf('Sources.')).toBeLessThan(order.lastIndexOf('Gauge'))
  })

  test.each([['deckhand-top', 0], ['deckhand-top', 4], ['skiff-cushion', 1], ['bollard-hat', 2], ['float', 0], ['shingle-cloth', 0]] as const)('of %s, size %i: the gauge window stands on the page of the words that say what to do with it', (name, size) => {
    const placed = leaves(layOutLargePrint(inSize(name, size)).root).filter((one): one is PlacedText => one.kind === 'text')
    const label = placed.findIndex(({ text }) => /^5 cm,/.test(spaced(text)))
    expect(label).toBeGreaterThan(0)
    expect(placed[label]?.page).toBe(placed[label - 1]?.page)
  })

  test('one size has no numbers of another', () => {
    for (const size of [0, 1]) expect(leaves(layOutLargePrint(inSize('skiff-cushion', size)).root).filter((one) => one.kind === 'text' && /\(1 to 15\)|1 to 11 \(/.test(spaced(one.text)))).toEqual([])
  })
})

describe('a row of large print', () => {
  const laidOut = layOutLargePrint(fromCollection('float'))
  const sixth = tagsOf(laidOut.root, 'TR').find((row) => tagsOf(row, 'TH').some((head) => wordsOf(head) === '6'))
  const boxes = leaves(sixth as NonNullable<typeof sixth>)

  test('has its number, its words, and one line with what was reckoned', () => {
    expect(spaced(wordsOf(sixth as NonNullable<typeof sixth>))).toBe('6*Sc in next 4 sts, inc; rep from * around.6 repeats. 6 more.36 stitches')
    expect(boxes.filter((one): one is PlacedText => one.kind === 'text').map(({ size }) => size)).toEqual([30, 24, 24, 24, 24])
  })

  test('has a box of 9 mm under its number, its words 33 mm in, its count at the right margin', () => {
    const box = boxes.find((one) => one.kind === 'box')
    const { left, right } = frameOf(box as PlacedBox)
    expect([left, right].map((edge) => Number(edge.toFixed(2)))).toEqual([18, 27])
    const words = boxes.filter((one): one is PlacedText => one.kind === 'text').slice(1)
    expect(words[0]?.x).toBeCloseTo(18 + 33, 6)
    expect(Math.max(...words.map((one) => frameOf(one).right))).toBeCloseTo(196, 6)
  })

  test('has its repeat underlined, 1.1 points thick and 4.6 under the words', () => {
    const line = laidOut.pages.flatMap(({ ruling }) => ruling).find((one): one is PlacedLine => one.kind === 'line' && one.use === 'repeat')
    expect(line?.weight).toBe(1.1)
    const above = leaves(laidOut.root).filter((one): one is PlacedText => one.kind === 'text' && one.page === line?.page && one.x === line?.x1).map(({ y }) => (line?.y1 ?? 0) - y)
    expect(above.map((gap) => Number(((gap * 72) / 25.4).toFixed(2)))).toContain(4.6)
  })

  test('that has a side says it in words', () => {
    const words = tagsOf(laidOut.root, 'TR').map((row) => spaced(wordsOf(row)))
    expect(words.filter((text) => /Right side\. Sc in 2nd ch|Wrong side\. Ch 1, turn/.test(text))).toHaveLength(3)
  })
})

describe('the file of large print', () => {
  test('says every row of the booklet in its order, is black, and the same each time', async () => {
    for (const booklet of [fromCollection('float'), fromCollection('harbour-block'), inSize('bollard-hat', 4)]) {
      const bytes = await printLargePrint(booklet)
      expect(contentStreams(bytes).flatMap(operatorNames).filter((name) => /^(?:g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)$/.test(name))).toEqual([])
      const text = spaced((await Promise.all((await pagesOf(await openPdf(bytes))).map(textOf))).join(' '))
      let from = 0
      for (const row of rowLines(booklet)) {
        const words = spaced(inWords(row.text.map((run) => run.text).join('')))
        const at = text.indexOf(words, from)
        expect(at, `${row.label}: ${words}`).toBeGreaterThanOrEqual(from)
        from = at + words.length
        expect(text.slice(from, from + 120)).toContain(stitchesInWords(row.stitches[0] ?? ''))
      }
      expect(Buffer.compare(await printLargePrint(booklet), bytes)).toBe(0)
    }
  })

  test('names its size, and bookmarks every section', async () => {
    const pdf = await openPdf(await printLargePrint(inSize('bollard-hat', 3)))
    expect((await pdf.getMetadata()).info).toMatchObject({ Title: 'Bollard Hat, large print, size Adult' })
    expect((await pdf.getOutline()).map(({ title }) => title)).toEqual(['Bollard Hat', 'Materials', 'Gauge', 'Abbreviations', 'About this pattern', 'Notes', '1 Crown', '2 Sides', '3 Brim', 'Finishing'])
  })
})
