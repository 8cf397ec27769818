import { readFileSync } from 'node:fs'
import { create } from 'fontkit'
import { describe, expect, test } from 'vitest'
import { layOut } from '../../src/print/layout.ts'
import { drawingZone, type CoverDrawing } from '../../src/print/pages/cover.ts'
import { printPattern } from '../../src/print/print-pattern.ts'
import type { PlacedText, Tag } from '../../src/print/sheet/placed.ts'
import { float } from './booklets/float.ts'
import { prose } from './booklets/prose.ts'
import { leaves, onPage, tagsOf, wordsOf } from './placed-tree.ts'
import { openPdf, pagesOf } from './read-pdf.ts'

describe('prose', () => {
  const { root } = layOut(prose)

  test('is no wider than 120 mm, so that its lines can be read', () => {
    const paragraphs = tagsOf(root, 'P').filter((tag) => wordsOf(tag).startsWith('Tie the ends'))
    expect(paragraphs.length).toBeGreaterThanOrEqual(15)
    for (const one of paragraphs.flatMap(leaves)) if (one.kind === 'text') expect(one.x + one.width).toBeLessThanOrEqual(138.01)
  })

  test('leaves no line of a paragraph alone at the foot or the head of a page', () => {
    for (const paragraph of tagsOf(root, 'P').filter((tag) => wordsOf(tag).startsWith('Tie the ends'))) {
      const lines = Map.groupBy(leaves(paragraph).flatMap((one) => (one.kind === 'text' ? [one] : [])), ({ page }) => page)
      for (const own of lines.values()) expect(own.length).toBeGreaterThanOrEqual(2)
    }
  })

  test('keeps a list in a list, and its labels apart from its words', () => {
    const [outer] = tagsOf(root, 'L').filter((list) => wordsOf(list).includes('Tie the ends'))
    expect(outer?.numbering).toBe('Decimal')
    const [inner] = tagsOf(outer as NonNullable<typeof outer>, 'LBody').flatMap((body) => tagsOf(body, 'L'))
    expect(inner?.numbering).toBe('None')
    expect(tagsOf(inner as NonNullable<typeof inner>, 'Lbl').map(wordsOf)).toEqual(['–', '–'])
  })

  test('gives the address of a link on paper, and the link itself on a screen; only links that lead out', async () => {
    const text = wordsOf(tagsOf(root, 'P').find((tag) => wordsOf(tag).startsWith('Ask the')) as NonNullable<ReturnType<typeof tagsOf>[0]>)
    expect(text).toBe('Ask the harbour office (saltmarsh.example/office?a=1&b=2) or write to ropes@saltmarsh.example. See also the help page.')
    const pages = await pagesOf(await openPdf(await printPattern(prose)))
    const links = (await Promise.all(pages.map((page) => page.getAnnotations()))).flat().filter(({ subtype, dest }) => subtype === 'Link' && !dest)
    expect(new Set(links.map(({ url }) => url))).toEqual(new Set(['https://saltmarsh.example/office?a=1&b=2', 'mailto:ropes@saltmarsh.example']))
    expect(links.every(({ contentsObj }) => contentsObj.str !== '')).toBe(true)
  })
})

describe('the title', () => {
  test.each(['Shingle', 'Gangway by Jetty', 'Spring'])('%s keeps its descenders off the words under it', (title) => {
    const { root } = layOut({ ...float, title, summary: 'Hoist it high' })
    const last = leaves(tagsOf(root, 'H1')[0] as Tag).at(-1) as PlacedText
    const subtitle = leaves(tagsOf(root, 'P').find((tag) => wordsOf(tag) === 'Hoist it high') as Tag)[0] as PlacedText
    const font = create(readFileSync(new URL('../../node_modules/@expo-google-fonts/besley/500Medium/Besley_500Medium.ttf', import.meta.url)))
    const bottom = last.y - (font.layout(last.text).bbox.minY / font.unitsPerEm) * last.size * (25.4 / 72)
    // The tallest letters of Source Serif 4 Italic reach 0.75 em over their baseline, measured in the file.
    expect(subtitle.y - 0.75 * subtitle.size * (25.4 / 72) - bottom).toBeGreaterThan(0.8)
  })

  test.each([['Float', 74, 1], ['Bollard Hat', 74, 1], ['Gangway Runner', 50, 1], ['Harbourmaster of the Northern Isles', 50, 2]])('%s is set in %i points on %i line(s)', (title, size, lines) => {
    const words = leaves(tagsOf(layOut({ ...float, title }).root, 'H1')[0] as Tag) as PlacedText[]
    expect(words.map((one) => one.size)).toEqual(Array.from({ length: lines }, () => size))
  })
})

describe('a drawing on the cover', () => {
  const drawing = (width: number): CoverDrawing => ({
    width, height: 100, alt: 'The float, drawn from its rounds.', scale: 'Drawn full size', caption: 'Each mark is one stitch, each line one round.',
    boxes: [
      { kind: 'line', page: 0, x1: 0, y1: 0, x2: width, y2: 100, weight: 0.5, use: 'drawing' },
      { kind: 'ellipse', page: 0, x: width / 2, y: 50, rx: 1.7, ry: 0.72, turn: 30, weight: 0.5 },
      { kind: 'text', page: 0, x: 10, y: 99, width: 12, text: '24 rounds', font: 'count', size: 8.5 },
    ],
  })

  test('stands in its zone as one figure with words for it, under the chain and left of the facts', () => {
    const laidOut = layOut(float, drawing(drawingZone.width))
    const [figure] = tagsOf(laidOut.root, 'Figure')
    expect(figure?.alt).toBe('The float, drawn from its rounds.')
    const boxes = leaves(figure as NonNullable<typeof figure>)
    expect(boxes).toHaveLength(3)
    expect(boxes[0]).toMatchObject({ x1: 18, x2: 18 + drawingZone.width })
    const facts = onPage(laidOut, 0).filter((one) => one.kind === 'text' && one.text === 'Makes')
    expect(facts[0]).toMatchObject({ x: 196 - 54 })
  })

  test('that is narrow leaves wide facts', () => {
    const facts = onPage(layOut(float, drawing(60)), 0).filter((one) => one.kind === 'text' && one.text === 'Makes')
    expect(facts[0]).toMatchObject({ x: 196 - 74 })
  })

  test('says its scale in words', async () => {
    expect(tagsOf(layOut(float, drawing(60)).root, 'P').map(wordsOf)).toEqual(expect.arrayContaining(['Drawn full size', 'Each mark is one stitch, each line one round.']))
    expect((await openPdf(await printPattern(float, drawing(60)))).numPages).toBe(layOut(float).pages.length)
  })
})

describe('a list', () => {
  const item = (text: string) => [{ kind: 'paragraph' as const, inlines: [{ text, strong: false, emphasis: false }] }]
  /** A booklet whose last section is a list of so many short steps, after so many lines of other prose. */
  const withSteps = (steps: number, before: number) => layOut({
    ...prose, parts: [], after: [
      { heading: 'Words', blocks: Array.from({ length: before }, () => item('A line.')[0]!) },
      { heading: 'Assembly', blocks: [{ kind: 'list', ordered: true, items: Array.from({ length: steps }, (_, at) => item(`Step ${at + 1}.`)) }] },
    ],
  })

  // Common practice in setting lists, no source: neither the first entry nor the last stands alone on a page.
  test.each(Array.from({ length: 60 }, (_, at) => at + 5))('leaves no entry alone on a page, with %i lines before it', (before) => {
    const entries = tagsOf(withSteps(6, before).root, 'LI').map((entry) => ({ words: wordsOf(entry), page: leaves(entry)[0]?.page })).filter(({ words }) => /Step \d/.test(words))
    const pages = Map.groupBy(entries, ({ page }) => page)
    expect(entries).toHaveLength(6)
    expect([...pages.values()].map((own) => own.length)).not.toContain(1)
  })
})
