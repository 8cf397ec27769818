import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { parseArgs, styleText } from 'node:util'
import { slugOf } from '../pattern/slug.ts'
import { siteStamp, writeRecord } from './build-record.ts'
import { findPatterns } from './find-patterns.ts'
import { makeSite, type MadeSite } from './make-site.ts'
import { replaceFolder } from './replace-folder.ts'
import { summary } from './summary.ts'
import { Hindrance, threadsFor, workPatterns } from './work-patterns.ts'
import { replaceRelease } from './write-companions.ts'

/**
 * `npm run build`: checks every pattern, then makes pages and papers; what is as it was in the last build is taken over from it. Gives the
 * exit code: 1 when anything did not come out. `-- --anew` makes everything, `-- --pages-only` prints nothing.
 */
export async function buildSite(root: string): Promise<0 | 1> {
  const freshRelease = join(root, 'release.new.tmp')
  try {
    const { values: { anew = false, 'pages-only': pagesOnly = false } } = parseArgs({ options: { anew: { type: 'boolean' }, 'pages-only': { type: 'boolean' } } })
    const stamp = await siteStamp(root, pagesOnly ? 'pages only' : 'all')
    const places = { root, freshRelease, pagesOnly }
    // Where nothing of the last build fits, all is made anew.
    const made = (anew ? undefined : await makeInto(places, stamp)) ?? (await makeInto(places, undefined))
    if (!made) throw new Error('the pages name styles that are not there: this is our mistake, not your patterns\'')
    await replaceRelease(freshRelease, join(root, 'release'))
    await writeRecord(root, { stamp, publisher: made.publisher, assets: made.assets, searchedFor: made.searchedFor, patterns: made.recorded })
    process.stdout.write(`${summary(made.made, { pages: made.pages, known: made.known, seconds: performance.now() / 1000 })}\n`)
    return 0
  } catch (error) {
    await rm(freshRelease, { recursive: true, force: true })
    if (error instanceof Hindrance) return fail(`${error.message}\n\nNothing was built; dist/ is as it was.`)
    const words = error instanceof Error ? (error.stack || error.message) : String(error)
    return fail(`${words}\n\nThe build did not come out; dist/ is as it was.`)
  }
}

interface Places {
  readonly root: string
  readonly freshRelease: string
  readonly pagesOnly: boolean
}

/** Makes the site and puts it in the older one's place; undefined where pages of the last build do not fit those that were made. */
async function makeInto(places: Places, stamp: string | undefined): Promise<MadeSite | undefined> {
  const found = await findPatterns(places.root, stamp)
  if (found.paths.length === 0) throw new Hindrance('There is no pattern in patterns/: nothing to publish.')
  const shared = sharedAddress(found.paths)
  const worked = workPatterns(found.changed, { colour: styleText('red', 'x', { stream: process.stderr }) !== 'x', width: process.stderr.columns ?? 100 })
    .then((patterns) => {
      if (shared !== undefined) throw new Hindrance(shared)
      return patterns
    })
  // Few are worked here and now. Many are worked on threads, while Astro reads itself and the pages.
  if (threadsFor(found.changed.length) === 0) await worked
  await rm(places.freshRelease, { recursive: true, force: true })
  let made: MadeSite | undefined
  await replaceFolder(join(places.root, 'dist'), async (fresh) => {
    made = await makeSite(found, worked, { ...places, fresh })
    return made !== undefined
  })
  return made
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
