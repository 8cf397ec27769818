import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { brotliCompressSync } from 'node:zlib'
import { expect, test } from 'vitest'
import type { BuiltSite } from './site.test.ts'

/** What stands in `dist` after a build, and what the build says of it. */
export function whatABuildLeaves(site: () => BuiltSite): void {
  const files = () => readdirSync(site().dist, { recursive: true, encoding: 'utf8' })
  const pages = () => files().filter((name) => /(?:index|404)\.html$/.test(name))
  const read = (name: string) => readFileSync(join(site().dist, name), 'utf8')

  test('says in a few calm lines what was made, and where', () => {
    const { out, err } = site().build
    expect(err).toBe('')
    expect(out).toMatch(/^Tarpaulin Cap +4 rows +\d+ pages +\d+ kB +dist\/patterns\/tarpaulin-cap\/tarpaulin-cap-1\.1\.0\.pdf$/m)
    expect(out).toMatch(/^Keel Charm +2 rows +sold: release\/patterns\/keel-charm\/$/m)
    expect(out).toMatch(/\d+ pages and \d+ PDFs in dist\/, made in [\d.]+ s\.\n$/)
    expect(out).not.toMatch(/astro|vite/i)
  })

  test('leaves a page and a paper for every free pattern, and nothing half made beside them', () => {
    expect(files()).toContain('patterns/gangplank/index.html')
    expect(files()).toContain('patterns/gangplank/gangplank-1.0.0.pdf')
    expect(read('patterns/gangplank/gangplank-1.0.0.pdf').slice(0, 5)).toBe('%PDF-')
    expect(readdirSync(site().copy.folder).filter((name) => name.endsWith('.tmp'))).toEqual([])
  })

  test('ships one script, no inline style and nothing from another host', () => {
    expect(pages().length).toBeGreaterThan(5)
    expect(files().filter((name) => /^_astro\/.*\.m?js$/.test(name))).toHaveLength(1)
    for (const page of pages()) {
      const html = read(page)
      // What machines read of a pattern is data: a browser runs none of it.
      expect(html.replaceAll(/<script type="application\/ld\+json">.*?<\/script>/g, ''), page).not.toMatch(/<script(?![^>]*\ssrc="\/_astro\/)|<style|\sstyle=|\son[a-z]+=/i)
      const addresses = [...html.matchAll(/<(?:link|img|script|iframe|source|object|embed)\b[^>]*?(?:href|src|data)="([^"]+)"/g)].map(([, address = '']) => address)
      const own = [...html.matchAll(/<link rel="(?:canonical|alternate)"[^>]*? href="([^"]+)"/g)].map(([, address]) => address)
      expect(addresses.filter((address) => !address.startsWith('/') && !own.includes(address)), page).toEqual([])
    }
  })

  test('forbids on every page whatever the page does not need', () => {
    for (const page of pages()) {
      const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(read(page))?.[1] ?? ''
      expect(policy, page).toContain("default-src 'none'")
      expect(policy, page).toContain("script-src 'self'")
      expect(policy, page).not.toMatch(/unsafe|\*|https?:/)
    }
  })

  test('titles every page once, describes it, and says where it belongs', () => {
    const titles = pages().map((page) => /<title>([^<]+)<\/title>/.exec(read(page))?.[1])
    expect(titles).not.toContain(undefined)
    expect(new Set(titles).size).toBe(titles.length)
    for (const page of pages().filter((name) => name !== '404.html')) {
      expect(read(page), page).toMatch(/<meta name="description" content="[^"]{20,}"/)
      if (read(page).includes('<meta name="robots" content="noindex"')) continue
      expect(read(page), page).toContain(`rel="canonical" href="https://patterns.saltmarsh-yarnworks.example/${page.replace(/index\.html$/, '')}"`)
    }
  })

  // Open Graph (ogp.me): title, type, address and picture; schema.org's HowTo: supply, tool, step, yield.
  test('tells machines what a pattern is: cards for links, and the steps of a free one', () => {
    const page = read('patterns/gangplank/index.html')
    const meta = (property: string) => new RegExp(`<meta property="${property}" content="([^"]+)"`).exec(page)?.[1]
    expect(meta('og:type')).toBe('article')
    expect(meta('og:url')).toBe('https://patterns.saltmarsh-yarnworks.example/patterns/gangplank/')
    const picture = new URL(meta('og:image') ?? '').pathname.slice(1)
    // PNG (ISO 15948, 11.2.2): width and height stand at bytes 16 and 20.
    const bytes = readFileSync(join(site().dist, picture))
    expect([bytes.subarray(1, 4).toString(), bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual(['PNG', 1200, 630])
    const data = (name: string) => JSON.parse(/<script type="application\/ld\+json">(.*?)<\/script>/s.exec(read(name))?.[1] ?? '{}') as Record<string, unknown>
    const howTo = data('patterns/gangplank/index.html')
    expect(howTo).toMatchObject({ '@context': 'https://schema.org', '@type': 'HowTo', yield: 'One mat', version: '1.0.0' })
    expect(howTo.supply).toHaveLength(1)
    expect((howTo.tool as { name: string }[]).map(({ name }) => name)).toEqual(['Hook, 6 mm (US J-10)', 'Yarn needle'])
    expect((howTo.step as { itemListElement: { name?: string }[] }[])[0]?.itemListElement.map(({ name }) => name)).toEqual(['Row 1', 'Row 2', 'Row 3', 'Row 4–117', undefined])
    expect(data('patterns/keel-charm/index.html')).toMatchObject({ '@type': 'CreativeWork', isAccessibleForFree: false })
    expect(data('patterns/keel-charm/index.html')).not.toHaveProperty('step')
  })

  test('lists pages for search engines, and versions for readers of feeds', () => {
    const map = [...read('sitemap.xml').matchAll(/<loc>([^<]+)<\/loc>/g)].map(([, address = '']) => new URL(address).pathname)
    const indexed = pages().filter((page) => !read(page).includes('<meta name="robots" content="noindex"') && page !== '404.html').map((page) => `/${page.replace(/index\.html$/, '')}`)
    expect(map.toSorted()).toEqual(indexed.toSorted())
    const feed = read('versions.xml')
    expect(feed).toContain('<title>Cleat Pair 1.1.0</title>')
    expect(feed).toContain('<title>Cleat Pair 1.0.0</title>')
    expect(feed.indexOf('Cleat Pair 1.1.0')).toBeLessThan(feed.indexOf('Cleat Pair 1.0.0'))
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

  // Our own budget: a page of rows is read on a phone beside a ball of wool, often far from a mast. Brotli, as hosts send it.
  test('keeps a pattern page within 60 kB of HTML, styles and script, and the script within 12 kB, fonts aside', () => {
    const sizes = (ending: string) => files().filter((name) => name.startsWith('_astro/') && name.endsWith(ending)).map((name) => brotliCompressSync(readFileSync(join(site().dist, name))).length)
    const [styles, script] = [sizes('.css'), sizes('.js')]
    expect([styles.length, script.length]).toEqual([1, 1])
    expect(script[0]).toBeLessThan(12_000)
    for (const page of pages().filter((name) => name.startsWith('patterns/'))) {
      const bytes = brotliCompressSync(read(page)).length + (styles[0] ?? 0) + (script[0] ?? 0)
      expect(bytes, page).toBeLessThan(60_000)
    }
  })
}
