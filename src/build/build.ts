import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { styleText } from 'node:util'
import { collectPatterns, type Collected } from './collect-patterns.ts'
import { handOver } from './hand-over.ts'
import { quietAstro } from './quiet-astro.ts'
import { replaceFolder } from './replace-folder.ts'
import { reportHindrances } from './report-patterns.ts'
import { summary } from './summary.ts'
import { writePapers, type Paper } from './write-papers.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
process.exitCode = await build()

/** `npm run build`: checks every pattern, then makes pages and papers. Gives the exit code: 1 when anything did not come out. */
async function build(): Promise<0 | 1> {
  const started = performance.now()
  try {
    const collected = existsSync(join(root, 'patterns')) ? await collectPatterns({ root, folder: 'patterns' }) : []
    if (collected.length === 0) return fail('There is no pattern in patterns/: nothing to publish.')
    const report = reportHindrances(collected, { colour: coloured(), width: process.stderr.columns ?? 100 })
    if (report !== '') return fail(`${report}\n\nNothing was built; dist/ is as it was.`)
    const shared = sharedAddress(collected)
    if (shared) return fail(`${shared}\n\nNothing was built; dist/ is as it was.`)
    handOver(collected)
    const papers: Paper[] = []
    await replaceFolder(join(root, 'dist'), async (fresh) => {
      await quietAstro(root, fresh)
      papers.push(...(await writePapers(collected.flatMap(free), fresh)))
    })
    process.stdout.write(`${await summary({ collected, papers, root, seconds: (performance.now() - started) / 1000 })}\n`)
    return 0
  } catch (error) {
    const words = error instanceof Error ? (error.stack || error.message) : String(error)
    return fail(`${words}\n\nThe build did not come out; dist/ is as it was.`)
  }
}

/** A pattern that is sold has no paper on the public site. */
function free({ booklet, inSize, other, sold }: Collected) {
  return booklet && !sold ? [{ booklet, inSize, ...(other ? { other } : {}) }] : []
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

function coloured(): boolean {
  return styleText('red', 'x', { stream: process.stderr }) !== 'x'
}
