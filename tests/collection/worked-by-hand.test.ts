import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { textOf } from '../../src/text/source.ts'
import { differingRows } from '../support/compare-case.ts'
import { inFull, readPage, withSlip } from './read-page.ts'

// Whole patterns of the collection, a page each. Every count was worked with pencil and paper from the words of the row; the sums
// stand beside the tables. No page was written from what the engine gives.

const folder = 'tests/collection'
const slugs = readdirSync(folder).filter((name) => name.endsWith('.md')).map((name) => name.replace(/\.md$/, ''))

test('there are pages', () => {
  expect(slugs.length).toBeGreaterThan(1)
})

describe.each(slugs)('%s', (slug) => {
  const path = `patterns/${slug}.md`
  const text = readFileSync(path, 'utf8')
  const checked = checkOnce({ path, text })
  const page = readPage(`${folder}/${slug}.md`)
  const tables = page.tables.map((table) => inFull(table, checked.pattern?.sizes ?? []))

  test('comes out, with nothing to look at', () => {
    expect(checked.diagnostics.map(({ code, message }) => `${code}: ${message}`)).toEqual([])
  })

  test('every row of every piece in every size comes to what was worked by hand', () => {
    expect(tables.length).toBeGreaterThan(0)
    expect(tables.flatMap((table) => differingRows(checked, table))).toEqual([])
  })

  test('no row is left out', () => {
    const told = tables.flatMap(({ rows }) => rows.map((line) => [line.get('piece'), line.get('size') ?? '', line.get('row')].join(', ')))
    const worked = checked.pieces.flatMap(({ piece, size, rows }) => rows.map(({ label }) => [piece.name, size ?? '', label].join(', ')))
    expect(told.toSorted()).toEqual(worked.toSorted())
  })

  test.each(page.planted.map((slip) => [[slip.piece, slip.insteadOf, '>', slip.write].join(' ').trim(), slip] as const))('planted: %s', (_, slip) => {
    const { line, found, at } = slip
    const slipped = { path, text: withSlip(text, slip) }
    const { diagnostics } = checkOnce(slipped)
    expect(diagnostics.map(({ code }) => code), `line ${line}`).toEqual([found])
    if (at !== undefined) expect(textOf(slipped, diagnostics[0]!.primary.span), `line ${line}`).toBe(at)
  })

  test('slips were planted', () => {
    expect(page.planted.length).toBeGreaterThan(3)
  })
})
