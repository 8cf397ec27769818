import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { beforeAll, expect, test } from 'vitest'
import type { Booklet, RowLine } from '../../src/booklet/booklet.ts'
import { makeBooklet } from '../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../src/pattern/check-pattern.ts'
import { pdfText, unspaced } from '../support/pdf-text.ts'
import { servedInABrowser } from '../support/served-in-a-browser.ts'
import type { BuiltSite } from './site.test.ts'

/** Web and print say the same: every row line, every figure and every material of the booklet, in its order. */
export function pagesSayWhatThePaperSays(site: () => BuiltSite): void {
  const served = servedInABrowser(() => site().dist)
  let booklets: readonly Booklet[]
  beforeAll(() => {
    const folder = join(site().copy.folder, 'patterns')
    const checked = readdirSync(folder).filter((name) => name.endsWith('.md')).map((name) =>
      checkPattern({ path: `patterns/${name}`, text: readFileSync(join(folder, name), 'utf8') }))
    booklets = checked.filter(({ pattern }) => pattern?.access === 'free').map(makeBooklet)
    expect(booklets.length).toBeGreaterThan(1)
  })

  test('every row of every page is the row of its booklet', async () => {
    const page = await served.browser.newPage()
    for (const booklet of booklets) {
      await page.goto(`${served.origin}/patterns/${booklet.slug}/`)
      const expected = booklet.parts.flatMap(({ lines, sides, counting }) => lines.flatMap((line) => (line.kind === 'row' ? [shownRow(line, sides, counting)] : [])))
      expect(expected.length, booklet.slug).toBeGreaterThan(0)
      expect(await rowsOf(page), booklet.slug).toEqual(expected)
    }
    await page.close()
  })

  test('every material, fact and abbreviation of every page is the one of its booklet', async () => {
    const page = await served.browser.newPage()
    for (const booklet of booklets) {
      await page.goto(`${served.origin}/patterns/${booklet.slug}/`)
      const cells = (selector: string, inner: string) => page.locator(selector).evaluateAll((rows, within) =>
        rows.map((row) => [...row.querySelectorAll(within)].map((cell) => cell.textContent)), inner)
      expect(await cells('.materials tbody tr', '.what, .use, .amount > span, .weight > span:first-child')).toEqual(booklet.materials.map(
        ({ item, make = '', for: use, amount, weight }) => [`${item}${make}`, use, ...amount, ...(booklet.materials.some((line) => line.weight !== '') ? [weight] : [])]))
      expect(await cells('.glance dl > div', 'dt, dd')).toEqual(booklet.facts.map(({ label, value }) => [label, value]))
      expect(await cells('.abbreviations tbody tr', 'td')).toEqual(booklet.abbreviations.map(({ us, uk, meaning }) => [us, uk, meaning]))
    }
    await page.close()
  })

  test('every row, figure and material of every paper is the one of its booklet, in its order', async () => {
    for (const booklet of booklets) {
      const { text } = await pdfText(readFileSync(join(site().dist, `patterns/${booklet.slug}/${booklet.slug}-${booklet.version}.pdf`)))
      const materials = booklet.materials.flatMap(({ item, make = '', for: use, amount, weight }) => [item, make, use, ...amount, weight])
      const rows = booklet.parts.flatMap(({ name, lines, sides }) => [name, ...lines.flatMap((line) => (line.kind === 'row' ? printedRow(line, sides) : [line.text.map((run) => run.text).join('')]))])
      expect(missing(text, materials), booklet.slug).toEqual([])
      expect(missing(text, rows), booklet.slug).toEqual([])
    }
  })
}

/** A count that is the same in every size is said once. */
const stitchesInOneLine = ({ stitches }: RowLine) => (new Set(stitches).size === 1 ? stitches.slice(0, 1) : stitches)

/** A row as its cells say it. */
function shownRow(line: RowLine, sides: boolean, counting: string) {
  const [first = '', ...others] = stitchesInOneLine(line)
  return {
    label: line.label,
    side: sides ? (line.side ?? '') : null,
    text: line.text.map(({ text }) => text).join(''),
    underlined: line.text.filter(({ repeat }) => repeat).map(({ text }) => text),
    made: line.spaces,
    notes: [line.checkpoint, line.corrected].filter((note) => note !== undefined),
    repeats: line.repeats,
    change: line.change,
    stitches: `${first}${others.length > 0 ? ` (${others.join(', ')})` : ''}`,
    boxes: line.boxes.map((box) => (line.boxes.length > 1 || /^\d/.test(line.label) ? `${counting} ${box}` : `${line.label}: ${counting} ${box}`)),
  }
}

function rowsOf(page: Page) {
  return page.locator('table.rows tbody tr:not(.between)').evaluateAll((rows) => rows.map((row) => {
    const text = (selector: string) => row.querySelector(selector)?.textContent ?? null
    return {
      label: text('.number'),
      side: text('.side'),
      text: text('.work > .text'),
      underlined: [...row.querySelectorAll('.repeat')].map((run) => run.textContent),
      made: text('.made:not(.note)') ?? '',
      notes: [...row.querySelectorAll('.note')].map((note) => note.textContent),
      repeats: text('.repeats'),
      change: text('.change'),
      stitches: (text('.count') ?? text('.below') ?? '').replace('Stitches ', ''),
      boxes: [...row.querySelectorAll('input[type=checkbox]')].map((box) => box.getAttribute('aria-label')),
    }
  }))
}

/** The same row in the order of the paper: the boxes of a range stand under its text. */
function printedRow(line: RowLine, sides: boolean): readonly string[] {
  const text = line.text.map((run) => run.text).join('')
  const side = sides && line.boxes.length === 1 ? (line.side ?? '') : ''
  const boxes = line.boxes.length > 1 && line.boxes.length <= 12 ? line.boxes : []
  // Counts of four sizes and more stand under the text, before the boxes and the figures of the columns.
  return line.stitches.length < 4
    ? [`${line.label}${side}${text}`, ...boxes, line.repeats, line.change, ...line.stitches, line.spaces]
    : [`${line.label}${side}${text}`, ...stitchesInOneLine(line), line.spaces, ...boxes, line.repeats, line.change]
}

/** Those of some words that do not stand in a text one after the other. */
function missing(text: string, words: readonly string[]): readonly string[] {
  const absent: string[] = []
  let from = 0
  for (const word of words.map(unspaced)) {
    const at = text.indexOf(word, from)
    if (at < 0) absent.push(word)
    else from = at + word.length
  }
  return absent
}
