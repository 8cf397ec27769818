import { describe, expect, test } from 'vitest'
import type { Booklet, RowLine } from '../../src/booklet/booklet.ts'
import { layOutChecklist } from '../../src/print/checklist/lay-out-checklist.ts'
import { printChecklist } from '../../src/print/print-pattern.ts'
import type { PlacedBox, PlacedText, Tag } from '../../src/print/sheet/placed.ts'
import { fromCollection } from './booklets/collection.ts'
import { float as floatByHand } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { bare, hostileTitles, longPiece, longRange, titled } from './booklets/hostile.ts'
import { outside, touching } from './ink.ts'
import { leaves, onPage, tagsOf, wordsOf } from './placed-tree.ts'
import { contentStreams, openPdf, operatorNames, pagesOf, textOf } from './read-pdf.ts'

const booklets: Readonly<Record<string, Booklet>> = {
  float: fromCollection('float'), 'shingle-cloth': fromCollection('shingle-cloth'), 'harbour-block': fromCollection('harbour-block'), 'bollard-hat': fromCollection('bollard-hat'),
  'deckhand-top': fromCollection('deckhand-top'), 'skiff-cushion': fromCollection('skiff-cushion'),
  'by hand': floatByHand, bare, 'two sizes': gangway(2), 'five sizes': gangway(5), '400 rows': longPiece(400), 'a range of 700 rows': longRange(700),
  ...Object.fromEntries(Object.entries(hostileTitles).map(([name, title]) => [`title: ${name}`, titled(title)])),
}

const rowLines = ({ lines }: Booklet['parts'][number]) => lines.filter((line): line is RowLine => line.kind === 'row')
const realRows = (booklet: Booklet) => booklet.parts.flatMap((part) => rowLines(part).flatMap(({ boxes }) => boxes))
const boxesOf = (booklet: Booklet) => leaves(layOutChecklist(booklet).root).filter((one): one is PlacedBox => one.kind === 'box')

describe.each(Object.entries(booklets))('the checklist of %s', (_, booklet) => {
  const laidOut = layOutChecklist(booklet)

  test('has nothing over anything else, and nothing outside the live area', () => {
    expect(touching(laidOut, 0)).toEqual([])
    expect(outside(laidOut)).toEqual([])
    expect(laidOut.pages.flatMap((__, page) => onPage(laidOut, page)).length).toBeGreaterThan(5)
  })

  test('has every real row once, in order, on a line of its own', () => {
    const labels = tagsOf(laidOut.root, 'TH').filter(({ scope }) => scope === 'Row').map(wordsOf).filter((label) => /^\d|^[A-Z]/.test(label)).map((label) => label.replaceAll('\u00a0', ' '))
    expect(labels).toEqual(realRows(booklet).map((label) => label.replace(/\u00a0[^(].*$/, '').replaceAll('\u00a0', ' ')))
    for (const row of tagsOf(laidOut.root, 'TR')) expect(new Set(leaves(row).map(({ page }) => page)).size).toBeLessThanOrEqual(1)
  })

  test('has no two boxes of one name, and nothing under 8 points', () => {
    const names = boxesOf(booklet).map(({ name }) => name)
    expect(new Set(names).size).toBe(names.length)
    const small = laidOut.pages.flatMap((__, page) => onPage(laidOut, page)).filter((one) => one.kind === 'text' && one.size < 8)
    expect(small).toEqual([])
  })

  test('says on every page what it is', () => {
    for (const [page, { pagination }] of laidOut.pages.entries()) {
      const words = pagination.map((one) => (one.kind === 'text' ? one.text : '')).join('')
      expect(words).toContain('Checklist')
      expect(words).toContain(`Page ${page + 1} of ${laidOut.pages.length}`)
      expect(words).toContain(`Terms: ${booklet.terms}`)
    }
  })
})

// Text ends by 257 mm; the footer's rule at 259.9 mm is the only line under that.
test.each(Object.entries(booklets))('the checklist of %s ends its tables over the footer', (_, booklet) => {
  const laidOut = layOutChecklist(booklet)
  const lines = laidOut.pages.flatMap(({ ruling }) => ruling).filter((one) => one.kind === 'line')
  expect(lines.filter(({ y2 }) => y2 > 257.01 && Math.abs(y2 - 259.9) > 0.01)).toEqual([])
})

describe('a part that goes on', () => {
  test('names itself on each page: sheets get apart', () => {
    const laidOut = layOutChecklist(fromCollection('deckhand-top'))
    const said = laidOut.pages.map(({ pagination }) => pagination.map((one) => (one.kind === 'text' ? one.text : '')).join(' '))
    // Four parts begin under heads of their own; every page without one says whose rows it has.
    const begun = new Set(tagsOf(laidOut.root, 'H2').map((head) => leaves(head)[0]?.page))
    const others = said.filter((__, page) => !begun.has(page))
    expect(said.filter((words) => /\d \w+ sleeve, continued/.test(words.replace(/\s+/g, ' '))).length).toBeGreaterThanOrEqual(others.length)
    for (const words of others) expect(words.replace(/\s+/g, ' ')).toMatch(/\d .+, continued/)
  })

  test('has nothing between its last row and the rule that closes it', () => {
    const laidOut = layOutChecklist(longRange(700))
    for (const [page, { ruling }] of laidOut.pages.entries()) {
      const closing = Math.max(...ruling.flatMap((one) => (one.kind === 'line' && one.weight === 1.4 && one.y1 < 259 ? [one.y1] : [])))
      const last = Math.max(...leaves(laidOut.root).flatMap((one) => (one.kind === 'box' && one.page === page ? [one.y + one.side] : [])))
      // A line is 6.1 mm and the box in it 4.6 mm: 0.75 mm are left on either side, and half a line's weight.
      expect(closing - last).toBeLessThan(1)
    }
  })
})

test('a row too long for the list is read in the pattern, and says so', () => {
  const words = tagsOf(layOutChecklist(fromCollection('skiff-cushion')).root, 'TD').map(wordsOf)
  expect(words).toContain('see Round 1 of the pattern')
  expect(words.filter((text) => /^see /.test(text) && !text.endsWith('of the pattern'))).toEqual([])
})

describe('boxes', () => {
  // One copy to make and one to spare. The float: 24 rounds, 4 rows, 3 things between and after them, 4 steps of assembly.
  test('of the float: (28 rows + 3 + 4 steps) × 2 copies', () => {
    expect(boxesOf(fromCollection('float'))).toHaveLength((28 + 3 + 4) * 2)
  })

  test('stand in a column for each copy: four at the most, with right edges at 148, 164, 180 and 196 mm', () => {
    const sleeves: Booklet = { ...longPiece(6), after: [], parts: longPiece(6).parts.map((part) => ({ ...part, make: 48 })) }
    const boxes = boxesOf(sleeves)
    expect(boxes).toHaveLength(6 * 4)
    const edges = [...new Set(boxes.map(({ x, side, weight }) => Number((x + side + (weight * 25.4) / 72 / 2).toFixed(2))))]
    expect(edges).toEqual([148, 164, 180, 196])
    expect(boxesOf({ ...sleeves, parts: sleeves.parts.map((part) => ({ ...part, make: 2 })) })).toHaveLength(6 * 3)
  })

  test('can be ticked, each with the name of its row and copy', async () => {
    const pages = await pagesOf(await openPdf(await printChecklist(fromCollection('float'))))
    const boxes = (await Promise.all(pages.map((page) => page.getAnnotations()))).flat()
    expect(boxes.every(({ checkBox, fieldValue }) => checkBox && fieldValue === 'Off')).toBe(true)
    expect(boxes.map(({ alternativeText }) => alternativeText)).toEqual(expect.arrayContaining(['The ball, Round 12, copy 1', 'The becket, Row 4, copy 2', 'Assembly, step a, copy 1']))
  })
})

describe('lines', () => {
  const rowsOf = (booklet: Booklet) => tagsOf(layOutChecklist(booklet).root, 'TR').filter((row) => tagsOf(row, 'TH').some(({ scope }) => scope === 'Row'))
  const cells = (row: Tag) => row.children.flatMap((child) => ('children' in child ? [wordsOf(child).replaceAll('\u00a0', ' ').trim()] : []))

  test('say number, work, change and count', () => {
    expect(rowsOf(fromCollection('float')).slice(0, 3).map((row) => cells(row).slice(0, 4))).toEqual([
      ['1', 'A. 6 sc in ring', '', '6'], ['2', 'inc × 6', '+6', '12'], ['3', '(1 sc, inc) × 6', '+6', '18'],
    ])
    expect(cells(rowsOf(fromCollection('float'))[10] as Tag).slice(0, 4)).toEqual(['11', 'To B. 48 sc', '', '48'])
  })

  test('that no short form holds have their own words, on as many lines as they need; what is too long points to its row', () => {
    const block = fromCollection('harbour-block')
    const written = rowLines(block.parts[0]!).map(({ text }) => text.map((run) => run.text).join('').replaceAll('\u00a0', ' '))
    const shown = rowsOf(block).slice(0, 2).map((row) => cells(row)[1])
    expect(shown).toEqual([`A. ${written[0]}`, written[1]])
    const long = { ...block, parts: block.parts.map((part) => ({ ...part, lines: rowLines(part).map((line) => ({ ...line, text: [{ text: `${'dc in next st, '.repeat(60)}turn.`, repeat: false }] })) })) }
    expect(rowsOf(long).slice(0, 2).map((row) => cells(row)[1])).toEqual(['A. see Round 1 of the pattern', 'see Round 2 of the pattern'])
  })

  // The seventh has three lines: twice 14 points, 9.88 mm, more.
  test('are 6.1 mm apart, 7.1 mm after every fifth, and two lines more after one of three lines', () => {
    const baselines = rowsOf({ ...longPiece(12), after: [] }).map((row) => (leaves(row)[0] as PlacedText).y)
    const steps = baselines.slice(1).map((y, at) => Number((y - (baselines[at] ?? 0)).toFixed(2)))
    expect(steps).toEqual([6.1, 6.1, 6.1, 6.1, 7.1, 6.1, 15.98, 6.1, 6.1, 7.1, 6.1])
  })
})

describe('the file of a checklist', () => {
  test('says each row of the booklet, is black, tagged, and the same each time', async () => {
    const booklet = fromCollection('bollard-hat')
    const bytes = await printChecklist(booklet)
    expect(contentStreams(bytes).flatMap(operatorNames).filter((name) => /^(?:g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)$/.test(name))).toEqual([])
    const pdf = await openPdf(bytes)
    expect((await pdf.getMetadata()).info).toMatchObject({ Title: 'Bollard Hat, checklist' })
    expect(Object.fromEntries((await pdf.getMarkInfo()) as never)).toMatchObject({ Marked: true })
    const text = (await Promise.all((await pagesOf(pdf)).map(textOf))).join(' ').replaceAll(/[\s\u00a0]+/g, ' ')
    for (const { label, short } of booklet.parts.flatMap((part) => rowLines(part).flatMap(({ real }) => real ?? []))) {
      expect(text).toMatch(new RegExp(`\\b${label} (?:RS )?(?:[A-Z][\\w ]+\\. )?${(short ?? 'no short form').replaceAll('\u00a0', ' ').replace(/[()×.]/g, '\\$&')}`))
    }
    expect((await pdf.getOutline()).map(({ title }) => title)).toEqual(['Bollard Hat', '1 Crown', '2 Sides', '3 Brim', 'Finishing'])
    expect(Buffer.compare(await printChecklist(booklet), bytes)).toBe(0)
  })
})
