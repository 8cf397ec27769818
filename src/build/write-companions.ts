import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import type { Booklet } from '../booklet/booklet.ts'
import { companionPath, patternFolder, termsFolder } from '../components/paper-path.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { oneFilePages, type BuiltPages, type OneFile } from './one-file-page.ts'
import { severalAtOnce } from './several-at-once.ts'

/** Writes beside the page of every free pattern one file that holds all of it, to be kept and opened from a disk. */
export async function writeCompanions(patterns: readonly PatternEntry[], pages: BuiltPages): Promise<void> {
  const oneFile = await oneFilePages(pages)
  const free = patterns.flatMap(({ booklet, sold }) => (booklet && !sold ? termsOf(booklet).map((terms) => ({ booklet, terms })) : []))
  await severalAtOnce(free, async ({ booklet, terms }) => {
    const html = await readFile(join(pages.folder, termsFolder(booklet.slug, terms, booklet.terms), 'index.html'), 'utf8')
    // Handed on it lies alone: what is not in it is on the site.
    const itself = new Map([termsFolder(booklet.slug, terms, booklet.terms), companionPath(booklet, terms)].map((path) => [`${pages.base}${path}`, '#content'] as const))
    await writeFile(join(pages.folder, companionPath(booklet, terms)), oneFile(html, itself))
  })
}

/**
 * Takes the pages of what is sold out of the site and puts them, each as one file, into a folder of their own: one for each pattern, where
 * its papers lie as well. Nothing of them is left in the site's folder.
 */
export async function takeOutSold(patterns: readonly PatternEntry[], pages: BuiltPages, release: string): Promise<void> {
  const oneFile = await oneFilePages(pages)
  const made = join(pages.folder, 'release')
  for (const { booklet, sold } of patterns) {
    if (!booklet || !sold) continue
    const folder = join(release, patternFolder(booklet.slug))
    await mkdir(folder, { recursive: true })
    for (const terms of termsOf(booklet)) {
      const place = termsFolder(booklet.slug, terms, booklet.terms).replace(/^patterns\//, '')
      await writeFile(join(release, companionPath(booklet, terms)), await soldPage(join(made, place, 'index.html'), booklet, pages, oneFile))
    }
    await writeFile(join(folder, 'ledger.html'), await soldPage(join(made, booklet.slug, 'ledger', 'index.html'), booklet, pages, oneFile))
  }
  await rm(made, { recursive: true, force: true })
}

/** A page of what is sold: its papers, its other terms and its ledger lie beside it. */
async function soldPage(file: string, booklet: Booklet, pages: BuiltPages, oneFile: OneFile): Promise<Uint8Array> {
  const html = await readFile(file, 'utf8')
  const own = `${pages.base}${patternFolder(booklet.slug)}`
  const papers = [...html.matchAll(/ href="([^"#]+\.pdf)"/g)].map(([, address = '']) => address).filter((address) => address.startsWith(own))
  const beside = new Map([...papers.map((address) => [address, address.slice(own.length)] as const), [`${own}ledger/`, 'ledger.html']])
  return oneFile(html, inOtherTerms(booklet, pages, beside))
}

/** The pattern's pages in its terms, as files beside one another. */
function inOtherTerms(booklet: Booklet, { base }: BuiltPages, beside: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const files = termsOf(booklet).flatMap((terms) => {
    const file = companionPath(booklet, terms)
    return [termsFolder(booklet.slug, terms, booklet.terms), file].map((path) => [`${base}${path}`, file.replace(/^.*\//, '')] as const)
  })
  return new Map([...beside, ...files])
}

const termsOf = ({ terms, alsoIn }: Booklet) => [terms, ...(alsoIn === undefined ? [] : [alsoIn])]

/** Puts a freshly made folder of what is sold in the older one's place; with nothing to sell there is no such folder. */
export async function replaceRelease(fresh: string, release: string): Promise<void> {
  await rm(release, { recursive: true, force: true })
  if (existsSync(fresh)) await rename(fresh, release)
}
