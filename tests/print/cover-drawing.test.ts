import { describe, expect, test } from 'vitest'
import { layOut } from '../../src/print/layout.ts'
import { drawingZone } from '../../src/print/pages/cover.ts'
import { printPattern } from '../../src/print/print-pattern.ts'
import type { LaidOut, Placed, PlacedLine, PlacedText, Tag } from '../../src/print/sheet/placed.ts'
import { fromCollection, names } from './booklets/collection.ts'
import { contentStreams, openPdf, operatorNames, pagesOf, textOf } from './read-pdf.ts'
import { frameOf, leaves, onPage, overlap, tagsOf, wordsOf } from './placed-tree.ts'

const drawingOf = (laidOut: LaidOut): readonly Placed[] => leaves(tagsOf(laidOut.root, 'Figure').find(({ alt }) => alt?.includes('drawn from')) as Tag)
const isText = (one: Placed): one is PlacedText => one.kind === 'text'
const isLine = (one: Placed): one is PlacedLine => one.kind === 'line'

describe.each(names)('the drawing of %s', (name) => {
  const laidOut = layOut(fromCollection(name))
  const drawing = drawingOf(laidOut)

  test('stands on the cover, in its zone, left of the facts', () => {
    expect(drawing.length).toBeGreaterThan(30)
    const frames = drawing.map(frameOf)
    expect(Math.min(...frames.map(({ left }) => left))).toBeGreaterThanOrEqual(17.5)
    expect(Math.max(...frames.map(({ right }) => right))).toBeLessThanOrEqual(18 + drawingZone.width)
    expect(Math.max(...frames.map(({ bottom }) => bottom))).toBeLessThan(237.5)
    const facts = onPage(laidOut, 0).find((one) => isText(one) && one.text === 'Makes') as PlacedText
    expect(Math.max(...frames.map(({ right }) => right))).toBeLessThan(facts.x - 5)
  })

  test('leaves room on the cover for every fact', () => {
    const labels = onPage(laidOut, 0).filter(isText).map(({ text }) => text.trim())
    expect(fromCollection(name).facts.map(({ label }) => label).filter((label) => !labels.includes(label))).toEqual([])
  })

  test('has nothing over its measures, nor anything else of the cover', () => {
    const all = onPage(laidOut, 0)
    const words = all.filter(isText)
    const touched = words.flatMap((text) => all.filter((one) => one !== text && !(isText(one) && drawing.includes(text) === false && drawing.includes(one) === false))
      .filter((one) => overlap(frameOf(text), frameOf(one)) > 0.05).map(() => text.text))
    expect(touched).toEqual([])
  })

  test('has its scale and what its marks are under it, its measures beside it', () => {
    const paragraphs = tagsOf(laidOut.root, 'P').map((tag) => wordsOf(tag).replaceAll('\u00a0', ' ').trim())
    const { drawing: given } = fromCollection(name)
    expect(paragraphs).toContain(given?.scale)
    expect(paragraphs).toContain(given?.caption.replaceAll('\u00a0', ' '))
    expect(drawing.filter(isText).map(({ text }) => text.trim())).toEqual([...(given?.dimensions ?? []).map(({ text }) => text), ...(given?.drawing.captions ?? []).flatMap(({ lines }) => lines)].map((text) => text.replaceAll('\u00a0', ' ')))
  })

  test('is black, and its words are read by another reader', async () => {
    const bytes = await printPattern(fromCollection(name))
    const [cover = ''] = contentStreams(bytes)
    expect(operatorNames(cover).filter((operator) => /^(?:g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)$/.test(operator))).toEqual([])
    const [page] = await pagesOf(await openPdf(bytes))
    const text = page ? (await textOf(page)).replaceAll('\u00a0', ' ') : ''
    for (const { text: measure } of fromCollection(name).drawing?.dimensions ?? []) expect(text).toContain(measure.replaceAll('\u00a0', ' '))
  })

  test('is the same bytes each time', async () => {
    expect(Buffer.compare(await printPattern(fromCollection(name)), await printPattern(fromCollection(name)))).toBe(0)
  })
})

describe('a stated scale is the scale on paper', () => {
  const widthOfMeasure = (name: string) => {
    const lines = drawingOf(layOut(fromCollection(name))).filter(isLine).filter(({ use, x1, x2, dash }) => use === 'measure' && x1 === x2 && !dash)
    const bars = lines.filter(({ y1 }) => y1 === Math.max(...lines.map((line) => line.y1)))
    return Math.max(...bars.map(({ x1 }) => x1)) - Math.min(...bars.map(({ x1 }) => x1))
  }

  // 9.5 cm at full size; 25 cm at a quarter; 13.5 cm at a half; 37.5 cm around are 11.9 cm across, at a half 5.95 (56 stitches of 15 to 10 cm).
  test.each([['float', 95], ['shingle-cloth', 62.5], ['harbour-block', 67.5], ['bollard-hat', (56 * 100) / 15 / Math.PI / 2]])('%s: its width is %f mm long', (name, width) => {
    expect(widthOfMeasure(name)).toBeCloseTo(width, 1)
  })

  test('words that read upwards stand beside an upright measure', () => {
    const [label] = drawingOf(layOut(fromCollection('float'))).filter(isText)
    expect(label).toMatchObject({ text: '24 rounds', turned: true })
  })
})

describe('a cover without room', () => {
  test('leaves out the loop first, then the drawing', () => {
    const float = fromCollection('float')
    const ellipses = (title: string) => drawingOf(layOut({ ...float, title })).filter(({ kind }) => kind === 'ellipse').length
    expect(ellipses('Float')).toBe(24)
    expect(ellipses('Harbourmaster of the Northern Isles and of all their Lights and Buoys')).toBe(0)
    const crowded = layOut({ ...float, title: 'Harbourmaster of the Northern Isles and of all their Lights and Buoys '.repeat(20).trim() })
    expect(tagsOf(crowded.root, 'Figure').filter(({ alt }) => alt?.includes('drawn from'))).toEqual([])
  })
})
