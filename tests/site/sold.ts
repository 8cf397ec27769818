import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from 'vitest'
import { collectPattern } from '../../src/build/collect-patterns.ts'
import { findLeaks, programTexts, publicTexts, tellingOf } from '../../src/build/find-leaks.ts'
import { fullEntry } from '../../src/build/to-entry.ts'
import { digests, npm } from '../support/project-copy.ts'
import type { BuiltSite } from './site.test.ts'

/** A pattern that is sold: nothing of its rows on the public site, everything of it in the folder of what is sold. */
export function whatIsSold(site: () => BuiltSite): void {
  const under = (folder: string) => readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))
  // Only letters and digits count, so that no sign, tag or kind of space hides a row.
  const bare = (text: string) => text.replaceAll(/<[^>]*>/g, '').toLowerCase().replaceAll(/[^a-z0-9]/g, '')
  const rows = ['With A, ch 12', 'Sc in 2nd ch from hook and in each ch across. (11)', 'Ch 1, turn, sc2tog, sc in next 7 sts, sc2tog'].map(bare)

  test('stands with none of its rows, notes or papers in any byte of the public site', () => {
    const files = under(site().dist)
    expect(files.some((file) => file.endsWith('keel-charm/index.html'))).toBe(true)
    const found = files.flatMap((file) => {
      const text = bare(readFileSync(file).toString('latin1'))
      return [rows[0], rows[2], bare('The secret is in the second row')].filter((row) => row !== undefined && text.includes(row)).map((row) => `${file}: ${row}`)
    })
    expect(found).toEqual([])
    expect(files.filter((file) => /keel-charm/.test(file)).map((file) => file.slice(site().dist.length))).toEqual(['/patterns/keel-charm/index.html'])
  })

  test('lies whole in the folder of what is sold, beside the site: one file to keep, every paper, the ledger', () => {
    const folder = join(site().copy.folder, 'release/patterns/keel-charm')
    const names = readdirSync(folder)
    for (const name of ['keel-charm-1.0.0.html', 'keel-charm-1.0.0.pdf', 'keel-charm-1.0.0-checklist.pdf', 'keel-charm-1.0.0-large-print.pdf', 'ledger.html']) expect(names).toContain(name)
    const page = readFileSync(join(folder, 'keel-charm-1.0.0.html'), 'utf8')
    for (const row of rows.slice(1)) expect(bare(page)).toContain(row.replace(/11$/, ''))
    const links = [...page.matchAll(/ href="([^"#:]+\.(?:pdf|html))"/g)].map(([, link = '']) => link)
    expect(links.length).toBeGreaterThan(3)
    expect(links.filter((link) => !names.includes(link))).toEqual([])
    expect(page).not.toMatch(/(?:src|href)="\//)
  })

  // The guard of the build itself: what it must find, planted in a copy of a few pages.
  test('is found by the build wherever it is planted: a row, a table of counts, a packed file, a paper', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'loopledger-leaks-'))
    try {
      cpSync(join(site().dist, 'patterns/tarpaulin-cap/index.html'), join(folder, 'page.html'))
      const file = (name: string) => ({ path: `patterns/${name}.md`, bytes: readFileSync(join(site().copy.folder, `patterns/${name}.md`)) })
      const sold = file('bollard-hat')
      const sale = [fullEntry(collectPattern({ path: 'patterns/kept-back.md', bytes: Buffer.from(sold.bytes.toString('utf8').replace('access: free', 'access: sold').replace('title: Bollard Hat', 'title: Kept Back Hat')) }), [])]
      const known = [publicTexts(fullEntry(collectPattern(file('tarpaulin-cap')), []))]
      expect(sale[0]?.sold).toBe(true)
      expect(await findLeaks(tellingOf(sale, known), folder)).toEqual([])
      const plants: readonly (readonly [string, string | Uint8Array])[] = [
        ['row.html', '<p>Ch&nbsp;2, *hdc in next 5&nbsp;sts, <b>2&nbsp;hdc in next st</b>; rep from * around, join with sl&nbsp;st in first hdc.</p>'],
        ['rows.json', JSON.stringify({ text: 'Ch 2, *FPdc around next st, BPdc around next st; rep from * around, join with sl st in first FPdc.' })],
        ['packed.bin', gzipSync('Ch 2, *hdc in next 5 sts, 2 hdc in next st; rep from * around, join with sl st in first hdc.')],
        ['kept-back-1.0.0.pdf', '%PDF-1.7'],
        ['other-name.pdf', '%PDF-1.7 <dc:title><rdf:Alt><rdf:li xml:lang="x-default">Kept Back Hat</rdf:li></rdf:Alt></dc:title>'],
        // The stitches of the crown in its smallest size, in their order.
        ['kept-back.html', `<table>${[8, 16, 24, 32, 40, 48, 56].map((count) => `<tr><td>${count}</td></tr>`).join('')}</table>`],
      ]
      for (const [name, bytes] of plants) {
        mkdirSync(folder, { recursive: true })
        writeFileSync(join(folder, name), bytes)
        expect((await findLeaks(tellingOf(sale, known), folder)).map(({ file, slug }) => `${slug} in ${file}`), name).toContain(`kept-back in ${name}`)
        rmSync(join(folder, name))
      }
    } finally {
      rmSync(folder, { recursive: true })
    }
  })

  test('is not suspected of what the help pages say: a row that everybody writes', async () => {
    const file = join(site().copy.folder, 'patterns/keel-charm.md')
    const alone = fullEntry(collectPattern({ path: 'patterns/keel-charm.md', bytes: readFileSync(file) }), [])
    const inHelp = await findLeaks(tellingOf([alone], []), join(site().dist, 'help'))
    const known = [await programTexts(site().copy.folder)]
    expect(known[0]?.rows).toContain(bare('Sc in 2nd ch from hook and in each ch across'))
    expect(inHelp.map(({ what }) => what).filter((what) => !/2ndchfromhookandineachchacross/.test(what))).toEqual([])
    expect(await findLeaks(tellingOf([alone], known), join(site().dist, 'help'))).toEqual([])
  })

  test('ends the build when a page of ours lets it out; the older site and the older folder stay as they were', async () => {
    const { folder } = site().copy
    const before = [await digests(site().dist), await digests(join(folder, 'release'))]
    const page = join(folder, 'src/pages/slip.astro')
    writeFileSync(page, "---\nimport { readFileSync } from 'node:fs'\nconst text = readFileSync('patterns/keel-charm.md', 'utf8')\n---\n<title>Slip</title><pre>{text}</pre>\n")
    const failed = await npm(folder, 'run', '--silent', 'build')
    rmSync(page)
    expect(failed.code).toBe(1)
    expect(failed.err).toContain('What is sold must not stand on the public site')
    expect(failed.err).toContain('slip/index.html')
    expect([await digests(site().dist), await digests(join(folder, 'release'))]).toEqual(before)
  }, 120_000)
}
