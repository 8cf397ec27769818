import { afterAll, beforeAll, describe } from 'vitest'
import { copyProject, npm, type Ended, type ProjectCopy } from '../support/project-copy.ts'
import { brokenPatternsStopTheBuild } from './broken-patterns.ts'
import { keeping } from './keeping-in-a-browser.ts'
import { pagesInABrowser } from './pages-in-a-browser.ts'
import { pagesSayWhatThePaperSays } from './same-words.ts'
import { whatIsSold } from './sold.ts'
import { ticking } from './ticking-in-a-browser.ts'
import { whatABuildLeaves } from './what-a-build-leaves.ts'

/** The site of the whole collection and of the patterns beside this file, built once for all that follows. */
export interface BuiltSite {
  readonly copy: ProjectCopy
  readonly dist: string
  readonly build: Ended
}

// One file, because a build takes seconds: every suite below works on the same copy of the project.
let site: BuiltSite | undefined
const built = (): BuiltSite => {
  if (!site) throw new Error('the site was not built')
  return site
}

beforeAll(async () => {
  const copy = await copyProject('tests/site/patterns')
  const build = await npm(copy.folder, 'run', '--silent', 'build')
  site = { copy, dist: `${copy.folder}/dist`, build }
  if (build.code !== 0) throw new Error(`the site cannot be built:\n${build.err}`)
})
afterAll(() => site?.copy.remove())

describe('a build', () => whatABuildLeaves(built))
describe('page and paper', () => pagesSayWhatThePaperSays(built))
describe('pages in a browser', () => pagesInABrowser(built))
describe('working a pattern', () => ticking(built))
describe('keeping a pattern', () => keeping(built))
describe('what is sold', () => whatIsSold(built))
describe('a pattern that does not come out', () => brokenPatternsStopTheBuild(built))
