import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { patternFolder } from '../components/paper-path.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { filesBelow, takeOver, type RecordedPattern } from './build-record.ts'
import { collectPattern, type Collected } from './collect-patterns.ts'
import { findLeaks, programTexts, type PublicTexts } from './find-leaks.ts'
import { handOver } from './hand-over.ts'
import type { ToPrint } from './print-paper.ts'
import { quietAstro } from './quiet-astro.ts'
import { madeOf, type Made } from './summary.ts'
import type { WorkedPattern } from './work-pattern.ts'
import type { Worked } from './work-patterns.ts'
import { takeOutSold, writeCompanions } from './write-companions.ts'
import { writeOfflineWorker } from './write-offline-worker.ts'
import { writePapers } from './write-papers.ts'
import { writePictures } from './write-pictures.ts'

/** Where a site is made. */
export interface SitePlaces {
  readonly root: string
  /** An empty folder that becomes the site. */
  readonly fresh: string
  /** A folder, not there yet, that becomes the folder of what is sold. */
  readonly freshRelease: string
  /** No papers. */
  readonly pagesOnly: boolean
}

/** What was made, for the summary and for the next build. */
export interface MadeSite {
  readonly made: readonly Made[]
  readonly recorded: readonly RecordedPattern[]
  readonly assets: readonly string[]
  readonly pages: number
}

/** Makes the site and the folder of what is sold. Gives up where pages taken over from the last build would name styles that are gone. */
export async function makeSite(patterns: Worked, { root, fresh, freshRelease, pagesOnly }: SitePlaces): Promise<MadeSite | 'other assets'> {
  const { worked, known, paths, publisher } = patterns
  const free = worked.filter(({ full }) => !full.sold)
  const sold = worked.filter(({ full }) => full.sold)
  const forSale = sold.map(({ full }) => full)
  const cardBy = new Map([...known, ...worked.map(({ file, full }) => ({ path: file.path, card: full.card }))].map(({ path, card }) => [path, card]))
  handOver({ publisher, cards: paths.flatMap((path) => cardBy.get(path) ?? []), shown: worked.map(({ listed }) => listed), forSale, pictures: !pagesOnly })
  const pages = { folder: fresh, ...(await quietAstro(root, fresh)) }
  const assets = (await readdir(join(fresh, '_astro'))).sort()
  if (known.length > 0 && patterns.assets.join('\n') !== assets.join('\n')) return 'other assets'
  await takeOver(known.flatMap(({ files }) => files), join(root, 'dist'), fresh)
  await takeOutSold(forSale, pages, freshRelease)
  await writeCompanions(free.map(({ full }) => full), pages)
  await writeOfflineWorker(root, fresh, pages.base)
  const said = [...free, ...known, ...(sold.length > 0 ? [await programTexts(root)] : [])]
  // Before anything is printed, and again when all is there.
  await keepSold(forSale, said, fresh)
  const papers = Map.groupBy(pagesOnly ? [] : await writePapers(free.flatMap(toPrint), fresh), ({ slug }) => slug)
  if (!pagesOnly) await writePictures(worked.flatMap(({ full }) => full.card ?? []), fresh)
  if (!pagesOnly) await writePapers(sold.flatMap(toPrint), freshRelease)
  if (!pagesOnly) await keepSold(forSale, said, fresh)
  const madeOfOne = (one: WorkedPattern) => madeOf(one, papers.get(one.full.slug) ?? [])
  const recorded = await Promise.all(free.map((one) => record(one, madeOfOne(one), fresh)))
  const all = new Map([...known, ...recorded.flat()].map((one) => [one.path, one]))
  const soldMade = new Map(sold.map((one) => [one.file.path, madeOfOne(one)]))
  return {
    made: paths.flatMap((path) => all.get(path)?.made ?? soldMade.get(path) ?? []), recorded: [...all.values()], assets,
    pages: (await readdir(fresh, { recursive: true })).filter((name) => /(?:index|404)\.html$/.test(name)).length,
  }
}

async function record({ file, digest, full: { card, slug }, rows, tables }: WorkedPattern, made: Made, fresh: string): Promise<readonly RecordedPattern[]> {
  return card ? [{ path: file.path, digest, card, made, files: await filesBelow(fresh, patternFolder(slug)), rows, tables }] : []
}

/** A pattern with sizes is worked again for papers of one size, so that their booklets need not be kept for all patterns until then. */
function toPrint({ file, full: { booklet, other } }: WorkedPattern): readonly ToPrint[] {
  let again: Collected | undefined
  const collected = () => (again ??= collectPattern(file))
  const inSize = (of: (collected: Collected) => Pick<ToPrint, 'inSize'> | undefined) => (size: number) => {
    const made = of(collected())
    if (!made) throw new Error(`${file.path} came out otherwise when it was worked again: this is our mistake`)
    return made.inSize(size)
  }
  return booklet ? [{ booklet, inSize: inSize((one) => one), ...(other ? { other: { terms: other.terms, booklet: other, inSize: inSize((one) => one.other) } } : {}) }] : []
}

/** Ends the build where something of what is sold stands on the public site. */
async function keepSold(sold: readonly PatternEntry[], texts: readonly PublicTexts[], folder: string): Promise<void> {
  const leaks = await findLeaks(sold, texts, folder)
  if (leaks.length === 0) return
  const lines = leaks.map(({ slug, file, what }) => `  ${file}: ${what} of patterns/${slug}.md`)
  throw Object.assign(new Error(['What is sold must not stand on the public site, and it does:', ...lines].join('\n')), { stack: '' })
}
