import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs, styleText } from 'node:util'
import { slugOf } from '../pattern/slug.ts'
import { siteStamp, writeRecord } from './build-record.ts'
import { makeSite } from './make-site.ts'
import { replaceFolder } from './replace-folder.ts'
import { summary } from './summary.ts'
import { replaceRelease } from './write-companions.ts'
import { workPatterns, type Worked } from './work-patterns.ts'

const shown = { colour: styleText('red', 'x', { stream: process.stderr }) !== 'x', width: process.stderr.columns ?? 100 }
const root = fileURLToPath(new URL('../..', import.meta.url))
const freshRelease = join(root, 'release.new.tmp')
process.exitCode = await build()

/**
 * `npm run build`: checks every pattern, then makes pages and papers; what is as it was in the last build is taken over from it. Gives the
 * exit code: 1 when anything did not come out. `-- --anew` makes everything, `-- --pages-only` prints nothing.
 */
async function build(): Promise<0 | 1> {
  const started = performance.now()
  try {
    const { values: { anew = false, 'pages-only': pagesOnly = false } } = parseArgs({ options: { anew: { type: 'boolean' }, 'pages-only': { type: 'boolean' } } })
    const stamp = await siteStamp(root, pagesOnly ? 'pages only' : 'all')
    let patterns = await workPatterns(root, anew ? undefined : stamp, shown)
    const hindrance = whatHinders(patterns)
    if (hindrance !== undefined) return fail(hindrance)
    await rm(freshRelease, { recursive: true, force: true })
    let made = await makeInto(patterns, pagesOnly)
    if (made === 'other assets') {
      // Nothing of the last build fits: styles or script are no longer those that its pages name.
      patterns = await workPatterns(root, undefined, shown)
      made = await makeInto(patterns, pagesOnly)
    }
    if (made === 'other assets') throw new Error('the pages name styles that are not there: this is our mistake, not your patterns\'')
    await replaceRelease(freshRelease, join(root, 'release'))
    await writeRecord(root, { stamp, publisher: patterns.publisher, assets: made.assets, patterns: made.recorded })
    process.stdout.write(`${summary(made.made, { pages: made.pages, known: new Set(patterns.known.map(({ card }) => card.slug)), seconds: (performance.now() - started) / 1000 })}\n`)
    return 0
  } catch (error) {
    await rm(freshRelease, { recursive: true, force: true })
    const words = error instanceof Error ? (error.stack || error.message) : String(error)
    return fail(`${words}\n\nThe build did not come out; dist/ is as it was.`)
  }
}

async function makeInto(patterns: Worked, pagesOnly: boolean) {
  let made: Awaited<ReturnType<typeof makeSite>> = 'other assets'
  await replaceFolder(join(root, 'dist'), async (fresh) => {
    made = await makeSite(patterns, { root, fresh, freshRelease, pagesOnly })
    return made !== 'other assets'
  })
  return made as Awaited<ReturnType<typeof makeSite>>
}

/** What keeps the whole collection from being published, in words; undefined when nothing does. */
function whatHinders({ reports, paths }: Worked): string | undefined {
  if (paths.length === 0) return 'There is no pattern in patterns/: nothing to publish.'
  const words = reports.length === 0 ? sharedAddress(paths) : reports.join('\n\n')
  return words && `${words}\n\nNothing was built; dist/ is as it was.`
}

/** Two files whose names differ only in signs and capitals would be one page. */
function sharedAddress(paths: readonly string[]): string | undefined {
  const slugs = paths.map(slugOf)
  const twin = slugs.findIndex((slug, at) => slugs.indexOf(slug) < at)
  return twin < 0 ? undefined : `${paths[slugs.indexOf(slugs[twin] ?? '')]} and ${paths[twin]} would both be the page /patterns/${slugs[twin]}/: rename one of them.`
}

function fail(words: string): 1 {
  process.stderr.write(`${words}\n`)
  return 1
}
