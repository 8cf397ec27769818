import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { brotliCompressSync } from 'node:zlib'
import { expect, test } from 'vitest'
import type { BuiltSite } from './site.test.ts'

/** What stands in `dist` after a build, and what the build says of it. */
export function whatABuildLeaves(site: () => BuiltSite): void {
  const files = () => readdirSync(site().dist, { recursive: true, encoding: 'utf8' })
  const pages = () => files().filter((name) => name.endsWith('.html'))
  const read = (name: string) => readFileSync(join(site().dist, name), 'utf8')

  test('says in a few calm lines what was made, and where', () => {
    const { out, err } = site().build
    expect(err).toBe('')
    expect(out).toMatch(/^Tarpaulin Cap +4 rows +\d+ pages +\d+ kB +dist\/patterns\/tarpaulin-cap\/tarpaulin-cap-1\.1\.0\.pdf$/m)
    expect(out).toMatch(/^Keel Charm +2 rows +no paper: it is sold$/m)
    expect(out).toMatch(/\d+ pages and \d+ PDFs in dist\/, made in [\d.]+ s\.\n$/)
    expect(out).not.toMatch(/astro|vite/i)
  })

  test('leaves a page and a paper for every free pattern, and nothing half made beside them', () => {
    expect(files()).toContain('patterns/gangplank/index.html')
    expect(files()).toContain('patterns/gangplank/gangplank-1.0.0.pdf')
    expect(read('patterns/gangplank/gangplank-1.0.0.pdf').slice(0, 5)).toBe('%PDF-')
    expect(readdirSync(site().copy.folder).filter((name) => name.endsWith('.tmp'))).toEqual([])
  })

  test('keeps every row of a pattern that is sold off the site', () => {
    const everything = files().filter((name) => /\.(?:html|json|css|svg)$/.test(name)).map(read).join('\n')
    expect(everything).toContain('Keel Charm')
    expect(everything).not.toMatch(/sc2tog, sc in next\s7/i)
    expect(read('patterns/keel-charm/index.html')).not.toMatch(/Ch\s12/)
    expect(everything).not.toContain('The secret is in the second row')
    expect(files().filter((name) => name.includes('keel-charm') && name.endsWith('.pdf'))).toEqual([])
  })

  test('ships no script, no inline style and nothing from another host', () => {
    expect(pages().length).toBeGreaterThan(5)
    expect(files().filter((name) => /\.m?js$/.test(name))).toEqual([])
    for (const page of pages()) {
      const html = read(page)
      expect(html, page).not.toMatch(/<script|<style|\sstyle=|\son[a-z]+=/i)
      const addresses = [...html.matchAll(/<(?:link|img|iframe|source|object|embed)\b[^>]*?(?:href|src|data)="([^"]+)"/g)].map(([, address = '']) => address)
      const canonical = /rel="canonical" href="([^"]+)"/.exec(html)?.[1]
      expect(addresses.filter((address) => !address.startsWith('/') && address !== canonical), page).toEqual([])
    }
  })

  test('forbids on every page whatever the page does not need', () => {
    for (const page of pages()) {
      const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(read(page))?.[1] ?? ''
      expect(policy, page).toContain("default-src 'none'")
      expect(policy, page).not.toMatch(/unsafe|script-src|\*|https?:/)
    }
  })

  test('titles every page once, describes it, and says where it belongs', () => {
    const titles = pages().map((page) => /<title>([^<]+)<\/title>/.exec(read(page))?.[1])
    expect(titles).not.toContain(undefined)
    expect(new Set(titles).size).toBe(titles.length)
    for (const page of pages().filter((name) => name !== '404.html')) {
      expect(read(page), page).toMatch(/<meta name="description" content="[^"]{20,}"/)
      expect(read(page), page).toContain(`rel="canonical" href="https://patterns.saltmarsh-yarnworks.example/${page.replace(/index\.html$/, '')}"`)
    }
  })

  test('speaks the English of the terms that a pattern is written in', () => {
    expect(read('patterns/gangplank/index.html')).toContain('<html lang="en-US"')
    expect(read('patterns/tarpaulin-cap/index.html')).toContain('<html lang="en-GB"')
  })

  test('links to pages and papers that are there', () => {
    const known = new Set(files().map((name) => `/${name}`.replace(/index\.html$/, '')))
    const links = pages().flatMap((page) => [...read(page).matchAll(/<a\b[^>]*?href="(\/[^"#]*)/g)].map(([, address = '']) => address))
    expect(links.length).toBeGreaterThan(10)
    expect([...new Set(links)].filter((link) => !known.has(link))).toEqual([])
  })

  // Our own budget: a page of rows is read on a phone beside a ball of wool, often far from a mast.
  test('keeps a pattern page within 20 kB of HTML and styles, fonts aside', () => {
    const styles = files().filter((name) => name.endsWith('.css')).map((name) => brotliCompressSync(readFileSync(join(site().dist, name))).length)
    expect(styles).toHaveLength(1)
    for (const page of pages().filter((name) => name.startsWith('patterns/'))) {
      const bytes = brotliCompressSync(read(page)).length + (styles[0] ?? 0)
      expect(bytes, page).toBeLessThan(20_000)
    }
  })
}
