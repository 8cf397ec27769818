import { describe, expect, test } from 'vitest'
import type { Booklet } from '../../src/booklet/booklet.ts'
import { layOutChecklist } from '../../src/print/checklist/lay-out-checklist.ts'
import { layOutLargePrint } from '../../src/print/large/lay-out-large-print.ts'
import { layOut } from '../../src/print/layout.ts'
import { printChecklist, printLargePrint, printPattern } from '../../src/print/print-pattern.ts'
import { isTag, type LaidOut, type Tag } from '../../src/print/sheet/placed.ts'
import { fromCollection, inSize } from './booklets/collection.ts'
import { float, row } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { bare, hostileTitles, longRange, titled } from './booklets/hostile.ts'
import { prose } from './booklets/prose.ts'
import { contentStreams, openPdf, operatorNames, operatorsOf, pagesOf, type StructureNode } from './read-pdf.ts'
import { leaves, tagsOf } from './placed-tree.ts'

const booklets: Readonly<Record<string, Booklet>> = {
  float, bare, prose, 'two sizes': gangway(2), 'five sizes': gangway(5), 'a range of 700 rows': longRange(700), emoji: titled(hostileTitles.emoji),
}

/** A document as it is laid out and as it is written. */
interface Printed {
  readonly laidOut: LaidOut
  readonly print: () => Promise<Uint8Array>
}

const printed = (laidOut: LaidOut, print: () => Promise<Uint8Array>): Printed => ({ laidOut, print })
const documents: Readonly<Record<string, Printed>> = {
  ...Object.fromEntries(Object.entries(booklets).map(([name, booklet]) => [name, printed(layOut(booklet), () => printPattern(booklet))])),
  ...Object.fromEntries(['float', 'harbour-block', 'bollard-hat'].flatMap((name) => {
    const booklet = fromCollection(name)
    return [
      [`${name} with its drawing`, printed(layOut(booklet), () => printPattern(booklet))],
      [`the checklist of ${name}`, printed(layOutChecklist(booklet), () => printChecklist(booklet))],
      [`large print of ${name}`, printed(layOutLargePrint(inSize(name, 1)), () => printLargePrint(inSize(name, 1)))],
    ]
  })),
}

/** Operators that put ink on paper (ISO 32000-1, tables 60, 87, 109). */
const painting = new Set(['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'sh', 'Do', 'Tj', 'TJ', "'", '"'])
/** Operators that set a colour (table 74). Without any, everything is black on the paper's own colour (8.4.1). */
const colours = new Set(['CS', 'cs', 'SC', 'SCN', 'sc', 'scn', 'G', 'g', 'RG', 'rg', 'K', 'k', 'sh', 'gs', 'ri', 'Do', 'BI'])

describe.each(Object.entries(documents))('%s', (_, { print }) => {
  test('is black on white: no operator sets a colour or shows a picture', async () => {
    const streams = contentStreams(await print())
    expect(streams.length).toBeGreaterThan(0)
    expect(streams.flatMap(operatorNames).filter((name) => colours.has(name))).toEqual([])
  })

  test('all ink is either in the structure tree or an artifact, and never both (ISO 14289-1, 7.1)', async () => {
    const untagged: string[] = []
    let painted = 0
    for (const content of contentStreams(await print())) {
      const open: string[] = []
      for (const [token] of content.matchAll(/\/\w+ <<[^]*?>> BDC|\bEMC\b|\bBT\b|\bET\b|[A-Za-z'"*]+(?=\s|$)/g)) {
        if (token.endsWith('BDC')) open.push(token)
        else if (token === 'EMC') open.pop()
        else if (painting.has(token)) {
          painted++
          const owners = open.filter((one) => one.includes('/MCID') || one.startsWith('/Artifact'))
          if (owners.length !== 1) untagged.push(token)
        }
      }
      expect(open).toEqual([])
    }
    expect(painted).toBeGreaterThan(10)
    expect(untagged).toEqual([])
  })

  test('marked content and text objects lie one inside the other (ISO 32000-1, 14.6.1)', async () => {
    for (const content of contentStreams(await print())) {
      const open: string[] = []
      for (const name of operatorNames(content)) {
        if (name === 'BDC' || name === 'BT') open.push(name)
        if (name === 'EMC') expect(open.pop()).toBe('BDC')
        if (name === 'ET') expect(open.pop()).toBe('BT')
        if (name === 're' || name === 'm') expect(open).not.toContain('BT')
      }
      expect(open).toEqual([])
    }
  })

  test('nothing is set in a glyph that stands for a missing one (ISO 14289-1, 7.21.8)', async () => {
    // Glyph 0 is .notdef; glyphs are written as four hexadecimal digits.
    const strings = contentStreams(await print()).flatMap((content) => [...content.matchAll(/<((?:[0-9a-f]{4})+)>/g)].map(([, hex]) => hex ?? ''))
    expect(strings.length).toBeGreaterThan(10)
    expect(strings.filter((hex) => /^(?:.{4})*0000/.test(hex))).toEqual([])
  })

  test('every piece of a page belongs to an element that can be found from it', async () => {
    const pages = await pagesOf(await openPdf(await print()))
    for (const page of pages) {
      const marked = (await operatorsOf(page)).filter(({ name, given }) => name === 'beginMarkedContentProps' && typeof given[1] === 'number').length
      const found: string[] = []
      const walk = (node: StructureNode) => {
        if (node.type === 'content') found.push(node.id ?? '')
        node.children?.forEach(walk)
      }
      walk((await page.getStructTree()) as StructureNode)
      expect(new Set(found).size).toBe(marked)
      expect(found.length).toBe(marked)
    }
  })
})

describe('tables', () => {
  test.each(Object.entries(documents))('of %s have as many cells in each row, spans counted (ISO 14289-1, 7.5)', (_, { laidOut }) => {
    const tables = tagsOf(laidOut.root, 'Table')
    for (const table of tables) {
      const widths: number[] = []
      const rows = tagsOf(table, 'TR')
      for (const [at, tr] of rows.entries()) {
        for (const cell of tr.children.filter(isTag)) {
          for (let down = 0; down < (cell.rowSpan ?? 1); down++) widths[at + down] = (widths[at + down] ?? 0) + (cell.colSpan ?? 1)
          expect(cell.type === 'TD' || cell.scope !== undefined).toBe(true)
        }
      }
      expect(widths).toHaveLength(rows.length)
      expect(new Set(widths).size).toBe(1)
    }
  })

})

// Where something is to be written by hand there is nothing to hear: an empty cell in every row would be heard each time.
test('the Pencil column is on the paper and not in the table', () => {
  const laidOut = layOut(float)
  expect(laidOut.pages.filter(({ pagination }) => pagination.some((one) => one.kind === 'text' && one.text === 'Pencil'))).not.toHaveLength(0)
  expect(tagsOf(laidOut.root, 'TH').flatMap(leaves).map((one) => (one.kind === 'text' ? one.text.trim() : ''))).not.toContain('Pencil')
})

describe('characters that no font has', () => {
  test('say what they are: U+1F6DF is D83D DEDF in UTF-16 (Unicode 3.9, D91)', async () => {
    const [cover = ''] = contentStreams(await printPattern(titled('Buoy 🛟')))
    expect(cover).toMatch(/\/Span <<\/MCID \d+ \/ActualText <FEFFD83DDEDF>>> BDC/)
    expect(tagsOf(layOut(titled('Buoy 🛟')).root, 'Span').map(({ actual }) => actual)).toContain('🛟')
  })
})

describe('heads', () => {
  test('begin at the first level and skip none on the way down (ISO 14289-1, 7.4.2)', () => {
    for (const { laidOut } of Object.values(documents)) {
      const heads: string[] = []
      const walk = (tag: Tag) => {
        if (/^H\d$/.test(tag.type)) heads.push(tag.type)
        tag.children.filter(isTag).forEach(walk)
      }
      walk(laidOut.root)
      expect(heads[0]).toBe('H1')
      expect(heads.filter((head) => head === 'H1')).toHaveLength(1)
      for (const [at, head] of heads.entries()) if (at > 0) expect(Number(head[1])).toBeLessThanOrEqual(Number(heads[at - 1]?.[1]) + 1)
    }
  })
})

describe('the structure tree', () => {
  const small: Booklet = {
    ...bare, title: 'Knot', publisher: 'Saltmarsh Yarnworks', terms: 'US',
    materials: [{ kind: 'tool', item: 'Yarn needle', for: 'Ends', amount: ['1'], weight: '' }],
    parts: [{
      number: 1, name: 'The knot', line: 'Make 1.', counting: 'Round', sides: false,
      lines: [
        row('knot', { label: '1', text: 'Ch 4.', stitches: ['4'] }),
        row('knot', { label: '2–3', boxes: ['2', '3'], text: 'Sc around.', change: '+2', stitches: ['6'] }),
        { kind: 'instruction', text: [{ text: 'Fasten off.', repeat: false }] },
      ],
    }],
  }

  const asText = (node: StructureNode, depth = 0): readonly string[] => {
    if (node.type === 'content' || node.type === 'annotation') return []
    return [`${'  '.repeat(depth)}${node.role}`, ...(node.children ?? []).flatMap((child) => asText(child, depth + 1))]
  }

  test('of a small pattern reads like the pattern', async () => {
    const [, second] = await pagesOf(await openPdf(await printPattern(small)))
    const tree = (await second?.getStructTree()) as StructureNode
    expect(asText(tree).join('\n')).toBe(`Root
  Document
    H2
    Table
      THead
        TR
          TD
          TH
          TH
          TH
          TH
      TBody
        TR
          TD
            Form
          TH
          TD
          TD
          TD
    H2
    P
    Table
      THead
        TR
          TD
          TH
          TH
          TH
          TH
          TH
      TBody
        TR
          TD
            Form
          TH
          TD
          TD
          TD
          TD
        TR
          TD
          TH
          TD
            P
            P
              Form
              Form
          TD
          TD
          TD
    P`)
  })
})
