import { existsSync } from 'node:fs'
import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { collectPatterns, type Collected } from './collect-patterns.ts'
import { findLeaks } from './find-leaks.ts'
import { handOver } from './hand-over.ts'
import { quietAstro } from './quiet-astro.ts'
import { replaceFolder } from './replace-folder.ts'
import { reportHindrances } from './report-patterns.ts'
import { summary } from './summary.ts'
import { terminalOptions } from './terminal-options.ts'
import { replaceRelease, takeOutSold, writeCompanions } from './write-companions.ts'
import { writeOfflineWorker } from './write-offline-worker.ts'
import { writePapers, type Paper } from './write-papers.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const freshRelease = join(root, 'release.new.tmp')
process.exitCode = await build()

/** `npm run build`: checks every pattern, then makes pages and papers. Gives the exit code: 1 when anything did not come out. */
async function build(): Promise<0 | 1> {
  const started = performance.now()
  try {
    const collected = existsSync(join(root, 'patterns')) ? await collectPatterns({ root, folder: 'patterns' }) : []
    if (collected.length === 0) return fail('There is no pattern in patterns/: nothing to publish.')
    const report = reportHindrances(collected, terminalOptions(process.stderr, process.env))
    if (report !== '') return fail(`${report}\n\nNothing was built; dist/ is as it was.`)
    const shared = sharedAddress(collected)
    if (shared) return fail(`${shared}\n\nNothing was built; dist/ is as it was.`)
    handOver(collected)
    const papers: Paper[] = []
    await rm(freshRelease, { recursive: true, force: true })
    await replaceFolder(join(root, 'dist'), async (fresh) => {
      const pages = { folder: fresh, ...(await quietAstro(root, fresh)) }
      await takeOutSold(collected, pages, freshRelease)
      await writeCompanions(collected, pages)
      await writeOfflineWorker(root, fresh, pages.base)
      // Before anything is printed, and again when all is there.
      await keepSold(collected, fresh)
      papers.push(...(await writePapers(collected.filter(({ sold }) => !sold).flatMap(toPrint), fresh)))
      await writePapers(collected.filter(({ sold }) => sold).flatMap(toPrint), freshRelease)
      await keepSold(collected, fresh)
    })
    await replaceRelease(freshRelease, join(root, 'release'))
    process.stdout.write(`${await summary({ collected, papers, root, seconds: (performance.now() - started) / 1000 })}\n`)
    return 0
  } catch (error) {
    await rm(freshRelease, { recursive: true, force: true })
    const words = error instanceof Error ? (error.stack || error.message) : String(error)
    return fail(`${words}\n\nThe build did not come out; dist/ is as it was.`)
  }
}

function toPrint({ booklet, inSize, other }: Collected) {
  return booklet ? [{ booklet, inSize, ...(other ? { other } : {}) }] : []
}

/** Ends the build where something of what is sold stands on the public site. */
async function keepSold(collected: readonly Collected[], folder: string): Promise<void> {
  const leaks = await findLeaks(collected, folder)
  if (leaks.length === 0) return
  const lines = leaks.map(({ slug, file, what }) => `  ${file}: ${what} of patterns/${slug}.md`)
  throw Object.assign(new Error(['What is sold must not stand on the public site, and it does:', ...lines].join('\n')), { stack: '' })
}

/** Two files whose names differ only in signs and capitals would be one page. */
function sharedAddress(collected: readonly Collected[]): string | undefined {
  const twins = collected.find(({ slug }, at) => collected.findIndex((one) => one.slug === slug) < at)
  const first = twins && collected.find(({ slug }) => slug === twins.slug)
  return first && `${first.source.path} and ${twins.source.path} would both be the page /patterns/${twins.slug}/: rename one of them.`
}

function fail(words: string): 1 {
  process.stderr.write(`${words}\n`)
  return 1
}
