import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { collectPattern } from '../../../src/build/collect-patterns.ts'
import { findLeaks, tellingOf } from '../../../src/build/find-leaks.ts'
import { fullEntry } from '../../../src/build/to-entry.ts'

// Whether a guard finds what is planted needs no source: every file below says itself what is in it.

const hat = fullEntry(collectPattern({ path: 'patterns/kept-back.md', bytes: Buffer.from(readFileSync('patterns/bollard-hat.md', 'utf8').replace('title: Bollard Hat', 'title: Kept Back Hat')) }), [])
const row = 'Ch 2, *hdc in next 5 sts, 2 hdc in next st; rep from * around, join with sl st in first hdc.'
const style = `<style>${'.row{color:red}'.repeat(1000)}</style>`
let folder: string

beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'loopledger-leaks-')) })
afterEach(() => rmSync(folder, { recursive: true }))

const plant = (name: string, html: string) => writeFileSync(join(folder, name), html)
const found = async (searched?: ReadonlySet<string>) => (await findLeaks(tellingOf([hat], []), folder, searched)).map(({ file }) => file).toSorted()

test('a row beside a style that another page had is found', async () => {
  plant('a.html', `${style}<p>Nothing.</p>`)
  plant('b.html', `${style}<p>${row}</p>`)
  plant('c.html', `<p>${row}</p>${style}`)
  expect(await found()).toEqual(['b.html', 'c.html'])
})

test('a row in a script that many pages have is found in one of them', async () => {
  const script = `<script>${'let a=1;'.repeat(2000)}const text="${row}"</script>`
  plant('a.html', `${style}${script}`)
  plant('b.html', `${style}${script}`)
  expect(await found()).toHaveLength(1)
})

test('files that have been searched are left out, and no others', async () => {
  plant('a.html', `<p>${row}</p>`)
  plant('b.html', `<p>${row}</p>`)
  expect(await found(new Set(['a.html']))).toEqual(['b.html'])
})

test('what is looked for changes with what is public', () => {
  const [alone] = tellingOf([hat], [])
  const bare = row.toLowerCase().replaceAll(/[^a-z0-9]/g, '')
  expect(alone?.rows).toContain(bare)
  expect(tellingOf([hat], [{ rows: [bare], tables: [] }])[0]?.rows).not.toContain(bare)
})
