import { describe, expect, test } from 'vitest'
import type { Booklet } from '../../src/booklet/booklet.ts'
import { layOut } from '../../src/print/layout.ts'
import type { LaidOut, Placed, PlacedText } from '../../src/print/sheet/placed.ts'
import { float } from './booklets/float.ts'
import { gangway } from './booklets/gangway.ts'
import { prose } from './booklets/prose.ts'
import { bare, hostileTitles, longPiece, longRange, titled } from './booklets/hostile.ts'
import { frameOf, leaves, onPage, overlap, tagsOf, wordsOf } from './placed-tree.ts'

const booklets: Readonly<Record<string, Booklet>> = {
  float, bare, prose,
  'one size': gangway(1), 'two sizes': gangway(2), 'three sizes': gangway(3), 'five sizes': gangway(5),
  '400 rows': longPiece(400), 'a range of 700 rows': longRange(700),
  ...Object.fromEntries(Object.entries(hostileTitles).map(([name, title]) => [`title: ${name}`, titled(title)])),
}

const describeOne = (one: Placed) => (one.kind === 'text' ? `"${one.text}"` : one.kind) + ` on page ${one.page + 1}`

/** Pairs of boxes on a page whose ink would touch. Lines are thin and meet on purpose; only words and pencil boxes must keep clear. */
function touching(laidOut: LaidOut): readonly string[] {
  return laidOut.pages.flatMap((_, page) => {
    const all = onPage(laidOut, page).map((one) => ({ one, frame: frameOf(one) }))
    const solid = all.filter(({ one }) => one.kind === 'text' || (one.kind === 'box' && one.side < 5))
    return solid.flatMap((a, at) => {
      const others = [...solid.slice(at + 1), ...all.filter(({ one }) => one.kind === 'line' && one.use !== 'repeat')]
      return others
        .filter((b) => overlap(a.frame, b.frame) > 0.05 && !(a.one.kind === 'box' && b.one.kind === 'line'))
        .map((b) => `${describeOne(a.one)} and ${describeOne(b.one)}`)
    })
  })
}

describe.each(Object.entries(booklets))('%s', (_, booklet) => {
  const laidOut = layOut(booklet)

  test('nothing lies over anything else', () => {
    expect(touching(laidOut)).toEqual([])
  })

  test('everything stands in the live area, 18 to 196 mm across and 14 to 265.4 mm down, but the title, which hangs 1 mm to the left', () => {
    const title = new Set<Placed>(tagsOf(laidOut.root, 'H1').flatMap(leaves))
    const all = laidOut.pages.flatMap((__, page) => onPage(laidOut, page))
    expect(all.length).toBeGreaterThan(5)
    const outside = all.filter((one) => {
      const { left, right, top, bottom } = frameOf(one)
      return left < (title.has(one) ? 16.99 : 17.99) || right > 196.01 || top < 13.74 || bottom > 265.41
    })
    expect(outside.map(describeOne)).toEqual([])
  })

  test('what is read ends 257 mm down the page at the latest', () => {
    const low = leaves(laidOut.root).filter((one) => (one.kind === 'text' ? one.y : frameOf(one).bottom) > 257)
    expect(low.map(describeOne)).toEqual([])
  })

  test('a head has something under it on its page', () => {
    const order = leaves(laidOut.root)
    const heads = [...tagsOf(laidOut.root, 'H2'), ...tagsOf(laidOut.root, 'H3')]
    expect(heads.length).toBe(laidOut.bookmarks.length - 1 + tagsOf(laidOut.root, 'H3').length)
    const stranded = heads.filter((head) => {
      const last = leaves(head).at(-1) as Placed
      const next = order[order.indexOf(last) + 1]
      return next === undefined || next.page !== last.page
    })
    expect(stranded.map(wordsOf)).toEqual([])
  })

  test('no row of a table is parted between pages', () => {
    const rows = tagsOf(laidOut.root, 'TR')
    const parted = rows.filter((row) => new Set(leaves(row).map(({ page }) => page)).size > 1)
    expect(parted.map(wordsOf)).toEqual([])
  })

  test('every row of every part stands there once, in order', () => {
    const given = booklet.parts.map(({ lines }) => lines.flatMap((line) => (line.kind === 'row' ? [line.label] : [])))
    const labels = tagsOf(laidOut.root, 'TH').filter(({ scope }) => scope === 'Row').map((head) => wordsOf(head).trim())
    const rows = labels.slice(labels.length - given.flat().length)
    // A range taller than a page goes on under its own number.
    expect(rows.filter((label, at) => label !== rows[at - 1] || given.flat()[at] === label)).toEqual(given.flat())
  })

  test('there is a box for every row, and no two boxes have one name', () => {
    const rows = booklet.parts.flatMap(({ lines }) => lines.flatMap((line) => (line.kind === 'row' ? line.boxes : [])))
    const things = booklet.materials.filter(({ kind }) => kind !== 'total')
    const names = leaves(laidOut.root).flatMap((one) => (one.kind === 'box' ? [one.name] : []))
    expect(names.length).toBe(rows.length + things.length)
    expect(new Set(names).size).toBe(names.length)
  })

  test('nothing is under 8 points', () => {
    const texts = laidOut.pages.flatMap((__, page) => onPage(laidOut, page)).filter((one): one is PlacedText => one.kind === 'text')
    expect(texts.filter(({ size }) => size < 8)).toEqual([])
  })

  test('every page has its number and how many there are', () => {
    const total = laidOut.pages.length
    for (const [page, { pagination }] of laidOut.pages.entries()) {
      const words = pagination.map((one) => (one.kind === 'text' ? one.text : '')).join('')
      expect(words).toContain(`Page ${page + 1} of ${total}`)
      expect(words).toContain(`Terms: ${booklet.terms}`)
    }
  })
})

describe('rows over pages', () => {
  test('each page has at least three rows of a part', () => {
    for (const count of [1, 2, 3, 4, 29, 30, 31, 32, 33, 34, 35, 60, 61, 62, 63, 64, 65, 400]) {
      const laidOut = layOut(longPiece(count))
      const rows = tagsOf(laidOut.root, 'TR').filter((row) => row.children.length === 7 && tagsOf(row, 'TH')[0]?.scope === 'Row')
      const pages = Map.groupBy(rows, (row) => leaves(row)[0]?.page)
      expect(rows.length).toBe(count)
      for (const own of pages.values()) expect(own.length).toBeGreaterThanOrEqual(Math.min(3, count))
    }
  })

  test('a page that a part goes on to repeats the head and the column heads', () => {
    const laidOut = layOut(longPiece(60))
    const words = laidOut.pages.map(({ pagination }) => pagination.map((one) => (one.kind === 'text' ? one.text : '')))
    const continued = words.filter((page) => page.includes('The net, continued'))
    expect(continued.length).toBeGreaterThan(0)
    for (const page of continued) expect(page).toEqual(expect.arrayContaining(['Row', 'Side', 'Work', 'Repeats', 'Change', 'Stitches', 'Pencil']))
    expect(words.filter((page) => page.some((text) => /^Part 1 continues on page \d+$/.test(text)))).toHaveLength(continued.length)
  })
})
