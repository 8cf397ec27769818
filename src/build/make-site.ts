import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { patternFolder } from '../components/paper-path.ts'
import { filesBelow, takeOver, type RecordedPattern } from './build-record.ts'
import type { Collected } from './collect-patterns.ts'
import { findLeaks, programTexts, publicTexts, type PublicTexts } from './find-leaks.ts'
import { handOver } from './hand-over.ts'
import { quietAstro } from './quiet-astro.ts'
import { madeOf, type Made } from './summary.ts'
import { cardOfCollected } from './to-entry.ts'
import { takeOutSold, writeCompanions } from './write-companions.ts'
import { writeOfflineWorker } from './write-offline-worker.ts'
import { writePictures } from './write-pictures.ts'
import { writePapers, type Paper } from './write-papers.ts'
import type { Worked } from './work-patterns.ts'

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
  const { worked, known, paths } = patterns
  handOver(worked, known, !pagesOnly)
  const pages = { folder: fresh, ...(await quietAstro(root, fresh)) }
  const assets = (await readdir(join(fresh, '_astro'))).sort()
  if (known.length > 0 && patterns.assets.join('\n') !== assets.join('\n')) return 'other assets'
  await takeOver(known.flatMap(({ files }) => files), join(root, 'dist'), fresh)
  await takeOutSold(worked, pages, freshRelease)
  await writeCompanions(worked, pages)
  await writeOfflineWorker(root, fresh, pages.base)
  const free = worked.filter(({ sold }) => !sold)
  const sold = worked.filter(({ sold }) => sold)
  const texts = new Map(free.map((one) => [one.source.path, publicTexts(one)]))
  const said = [...texts.values(), ...known, ...(sold.length > 0 ? [await programTexts(root)] : [])]
  // Before anything is printed, and again when all is there.
  await keepSold(sold, said, fresh)
  const papers: Paper[] = pagesOnly ? [] : [...(await writePapers(free.flatMap(toPrint), fresh))]
  if (!pagesOnly) await writePictures(worked.flatMap((one) => cardOfCollected(one) ?? []), fresh)
  if (!pagesOnly) await writePapers(sold.flatMap(toPrint), freshRelease)
  await keepSold(sold, said, fresh)
  const recorded = await Promise.all(free.map((one) => record(one, papers, texts.get(one.source.path) ?? { rows: [], tables: [] }, fresh)))
  const all = new Map([...known, ...recorded.flat()].map((one) => [one.path, one]))
  const soldMade = new Map(sold.map((one) => [one.source.path, madeOf(one, papers)]))
  return {
    made: paths.flatMap((path) => all.get(path)?.made ?? soldMade.get(path) ?? []), recorded: [...all.values()], assets,
    pages: (await readdir(fresh, { recursive: true })).filter((name) => /(?:index|404)\.html$/.test(name)).length,
  }
}

async function record(one: Collected, papers: readonly Paper[], texts: PublicTexts, fresh: string): Promise<readonly RecordedPattern[]> {
  const card = cardOfCollected(one)
  if (!card) return []
  return [{ path: one.source.path, digest: one.digest, card, made: madeOf(one, papers), files: await filesBelow(fresh, patternFolder(one.slug)), ...texts }]
}

function toPrint({ booklet, inSize, other }: Collected) {
  return booklet ? [{ booklet, inSize, ...(other ? { other } : {}) }] : []
}

/** Ends the build where something of what is sold stands on the public site. */
async function keepSold(sold: readonly Collected[], texts: readonly PublicTexts[], folder: string): Promise<void> {
  const leaks = await findLeaks(sold, texts, folder)
  if (leaks.length === 0) return
  const lines = leaks.map(({ slug, file, what }) => `  ${file}: ${what} of patterns/${slug}.md`)
  throw Object.assign(new Error(['What is sold must not stand on the public site, and it does:', ...lines].join('\n')), { stack: '' })
}
