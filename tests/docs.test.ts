import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { absentCommands, absentFences, absentPaths, foldersNotNamed } from './support/document-claims.ts'
import { runMarkdown } from './support/markdown-spec.ts'

const help = readdirSync('src/help').filter((file) => file.endsWith('.md')).map((file) => `src/help/${file}`).sort()
const chapters = readdirSync('src/guide').map((file) => `src/guide/${file}`).sort()
const guides = ['README.md', 'DEVELOPERS.md'].filter((file) => existsSync(file))

const helpCounts = help.map((file) => ({ file, cases: runMarkdown(file) }))
for (const file of [...guides, ...chapters]) runMarkdown(file)

describe('help pages', () => {
  test('each shows at least one pattern or row that is worked', () => {
    expect(helpCounts.length).toBeGreaterThan(0)
    expect(helpCounts.filter(({ cases }) => cases === 0)).toEqual([])
  })
})

const scripts = Object.keys((JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }).scripts)
const read = (path: string) => (existsSync(path) ? readFileSync(path, 'utf8') : undefined)
const tracked = execFileSync('git', ['ls-files'], { encoding: 'utf8' }).split('\n').filter((path) => path !== '')

describe.each(guides)('%s', (file) => {
  const text = readFileSync(file, 'utf8')

  test('every command in it is a script', () => {
    expect(absentCommands(text, scripts)).toEqual([])
  })

  test('every piece of code that names its file stands in that file, word for word', () => {
    expect(absentFences(text, read)).toEqual([])
  })

  test('every path of its tree is on disk', () => {
    expect(absentPaths(text, existsSync)).toEqual([])
  })
})

test.runIf(guides.includes('DEVELOPERS.md'))('the tree in DEVELOPERS.md names every folder of the source', () => {
  const folders = tracked.flatMap((path) => /^src\/([^/]+)\//.exec(path)?.[1] ?? [])
  expect(foldersNotNamed(readFileSync('DEVELOPERS.md', 'utf8'), [...new Set(folders)])).toEqual([])
})

describe('the guards on documents can fail', () => {
  const fence = (head: string, ...lines: readonly string[]) => ['```' + head, ...lines, '```', ''].join('\n')

  test('a command that is no script', () => {
    expect(absentCommands('Type `npm run check` and `npm run chekc`.', ['check'])).toEqual(['chekc'])
    expect(absentCommands(fence('sh', 'npm test', 'npm ci'), ['check'])).toEqual(['test'])
  })

  test('code that is not in its file, and code that names no file that is there', () => {
    const text = fence('ts', '// src/a.ts', 'const a = 1') + fence('ts', '// src/a.ts', 'const a = 2') + fence('ts', '// src/b.ts', 'b()')
    expect(absentFences(text, (path) => (path === 'src/a.ts' ? 'const a = 1\n' : undefined))).toEqual(['src/a.ts', 'src/b.ts'])
    expect(absentFences(fence('ts', 'const unnamed = 1'), () => '')).toEqual(['a ts fence names no file: const unnamed = 1'])
  })

  test('a path of the tree that is not there, and a folder that the tree lacks', () => {
    const tree = fence('text tree', 'src/', '  text/         a source and its places', '    span.ts  gone.ts   offsets', 'tests/')
    expect(absentPaths(tree, (path) => path !== 'src/text/gone.ts')).toEqual(['src/text/gone.ts'])
    expect(foldersNotNamed(tree, ['text', 'fabric'])).toEqual(['fabric'])
    expect(foldersNotNamed('no tree at all', ['text'])).toEqual(['text'])
  })
})
