import { createHash } from 'node:crypto'
import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { patternFolder } from '../components/paper-path.ts'
import { publisherOf } from '../components/shelf-line.ts'
import { filesBelow, takeOver, type RecordedPattern } from './build-record.ts'
import { findLeaks, programTexts, tellingOf } from './find-leaks.ts'
import type { FoundPatterns } from './find-patterns.ts'
import { handOver, type HandedOver } from './hand-over.ts'
import { quietAstro } from './quiet-astro.ts'
import { madeOf, type Made } from './summary.ts'
import type { WorkedPattern } from './work-pattern.ts'
import { takeOutSold, writeCompanions } from './write-companions.ts'
import { writeOfflineWorker } from './write-offline-worker.ts'

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
  /** Addresses of the patterns that were taken over from the last build. */
  readonly known: ReadonlySet<string>
  readonly recorded: readonly RecordedPattern[]
  readonly publisher: string
  readonly assets: readonly string[]
  /** A digest of what was looked for of the patterns that are sold. */
  readonly searchedFor: string
  readonly pages: number
}

/**
 * Makes the site and the folder of what is sold. Pages are rendered when the patterns have been worked. Gives up where pages taken over
 * from the last build would name another publisher, or styles that are gone.
 */
export async function makeSite(found: FoundPatterns, working: Promise<readonly WorkedPattern[]>, { root, fresh, freshRelease, pagesOnly }: SitePlaces): Promise<MadeSite | undefined> {
  const { known, paths, last } = found
  const handed = working.then((worked) => toHandOver(found, worked, !pagesOnly))
  handOver(handed)
  // Where patterns do not come out, that is what is to be told, and not how the pages fare without them.
  const pages = { folder: fresh, ...(await quietAstro(root, fresh).catch(async (error: unknown) => { await working; throw error })) }
  const [worked, { publisher, forSale }] = [await working, await handed]
  const assets = (await readdir(join(fresh, '_astro'))).sort()
  if (last && (last.publisher !== publisher || last.assets.join('\n') !== assets.join('\n'))) return undefined
  const free = worked.filter(({ full }) => !full.sold)
  const sold = worked.filter(({ full }) => full.sold)
  await takeOver(known.flatMap(({ files }) => files), join(root, 'dist'), fresh)
  await takeOutSold(forSale, pages, freshRelease)
  await writeCompanions(free.map(({ full }) => full), pages)
  await writeOfflineWorker(root, fresh, pages.base)
  const said = [...free, ...known, ...(sold.length > 0 ? [await programTexts(root)] : [])]
  const telling = tellingOf(forSale, said)
  const searchedFor = createHash('sha256').update(JSON.stringify(telling)).digest('hex')
  // What is taken over was searched when it was made, for what betrays the same patterns.
  const searched = new Set(last?.searchedFor === searchedFor ? known.flatMap(({ files }) => files) : [])
  // Before anything is printed, and again when all is there.
  await keepSold(telling, fresh, searched)
  const papers = pagesOnly ? [] : await (await import('./make-papers.ts')).makePapers({ free, sold }, fresh, freshRelease)
  if (!pagesOnly) await keepSold(telling, fresh, searched)
  const papersOf = Map.groupBy(papers, ({ slug }) => slug)
  const madeOfOne = (one: WorkedPattern) => madeOf(one, papersOf.get(one.full.slug) ?? [])
  const recorded = await Promise.all(free.map((one) => record(one, madeOfOne(one), fresh)))
  const all = new Map([...known, ...recorded.flat()].map((one) => [one.path, one]))
  const soldMade = new Map(sold.map((one) => [one.file.path, madeOfOne(one)]))
  return {
    made: paths.flatMap((path) => all.get(path)?.made ?? soldMade.get(path) ?? []), known: new Set(known.map(({ card }) => card.slug)), recorded: [...all.values()], publisher, assets, searchedFor,
    pages: (await readdir(fresh, { recursive: true })).filter((name) => /(?:index|404)\.html$/.test(name)).length,
  }
}

function toHandOver({ paths, known }: FoundPatterns, worked: readonly WorkedPattern[], pictures: boolean): HandedOver {
  const byPath = new Map([...known, ...worked.map(({ file, full }) => ({ path: file.path, card: full.card }))].map(({ path, card }) => [path, card]))
  const cards = paths.flatMap((path) => byPath.get(path) ?? [])
  return { publisher: publisherOf(cards), cards, shown: worked.map(({ listed }) => listed), forSale: worked.flatMap(({ full }) => (full.sold ? [full] : [])), pictures }
}

async function record({ file, digest, full: { card, slug }, rows, tables }: WorkedPattern, made: Made, fresh: string): Promise<readonly RecordedPattern[]> {
  return card ? [{ path: file.path, digest, card, made, files: await filesBelow(fresh, patternFolder(slug)), rows, tables }] : []
}

/** Ends the build where something of what is sold stands on the public site. */
async function keepSold(telling: ReturnType<typeof tellingOf>, folder: string, searched: ReadonlySet<string>): Promise<void> {
  const leaks = await findLeaks(telling, folder, searched)
  if (leaks.length === 0) return
  const lines = leaks.map(({ slug, file, what }) => `  ${file}: ${what} of patterns/${slug}.md`)
  throw Object.assign(new Error(['What is sold must not stand on the public site, and it does:', ...lines].join('\n')), { stack: '' })
}
