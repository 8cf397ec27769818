import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { folderOf, forbiddenImports, importsOf, impureLines, longFiles, shortenedImports, type Allowed } from './support/source-guards.ts'

/** Packages that read Markdown and YAML, check the front-matter's shape and find the nearest word. */
const reading = ['yaml', 'zod', 'unified', 'remark-*', 'mdast', 'mdast-util-to-string', 'unist-util-visit', 'unist', 'vfile', 'fastest-levenshtein']
const core = ['text', 'stitches', 'diagnostics', 'notation', 'fabric', 'checks', 'measures', 'pattern', 'drawing', 'booklet']
const shown = ['pages', 'layouts', 'components']

/** Who may import whom, and which packages. */
const map: Readonly<Record<string, Allowed>> = {
  text: { ours: [], packages: [] },
  stitches: { ours: [], packages: [] },
  diagnostics: { ours: ['text'], packages: ['string-width', 'fastest-levenshtein'] },
  notation: { ours: ['text', 'diagnostics'], packages: [] },
  fabric: { ours: ['text', 'stitches', 'notation'], packages: ['fastest-levenshtein'] },
  checks: { ours: ['text', 'diagnostics', 'stitches', 'fabric', 'notation (types)'], packages: ['fastest-levenshtein'] },
  measures: { ours: ['text', 'stitches', 'fabric'], packages: [] },
  pattern: { ours: ['text', 'stitches', 'diagnostics', 'notation', 'fabric', 'checks', 'measures'], packages: reading },
  drawing: { ours: ['fabric', 'stitches'], packages: [] },
  booklet: {
    ours: ['pattern', 'stitches', 'measures', 'drawing', 'text', 'fabric', 'diagnostics/words.ts'],
    packages: ['mdast', 'mdast-util-to-string', 'unist-util-visit', 'unist'],
  },
  print: { ours: ['booklet', 'drawing (types)'], packages: ['pdfkit', 'fontkit', 'node:*'] },
  build: { ours: ['anything'], packages: ['*'] },
  pages: { ours: ['booklet', 'pattern (types)', 'diagnostics/editors-list.ts', ...shown, 'styles', 'build', 'print'], packages: ['astro:*', 'astro', '@astrojs/*', 'node:*'] },
  layouts: { ours: ['booklet', 'pattern (types)', ...shown, 'client', 'styles'], packages: ['astro:*', 'astro', '@fontsource/*'] },
  components: { ours: ['booklet', 'pattern (types)', 'diagnostics/editors-list.ts', ...shown, 'styles'], packages: ['astro:*', 'astro'] },
  client: { ours: [], packages: ['workbox-*'] },
  styles: { ours: [], packages: [] },
  help: { ours: [], packages: [] },
  guide: { ours: [], packages: [] },
  'content.config.ts': { ours: ['build'], packages: ['astro:*', 'astro'] },
}

/** Files that are tables of data, so that their length says nothing. */
const tables = ['src/stitches/table.ts', 'src/diagnostics/codes.ts', 'src/diagnostics/editors-list.ts']

/** What lies at the top of the repository. Settings of tools live in package.json. */
const topLevel = [
  '.ci', '.gitignore', 'DEVELOPERS.md', 'LICENSE', 'README.md', 'astro.config.mjs', 'package-lock.json', 'package.json',
  'patterns', 'public', 'src', 'tests', 'tsconfig.json',
]

const tracked = execFileSync('git', ['ls-files'], { encoding: 'utf8' }).split('\n').filter((path) => path !== '' && existsSync(path))
const sources = tracked.filter((path) => /^(src|tests)\/.*\.(ts|astro|mjs)$/.test(path)).map((path) => ({ path, text: readFileSync(path, 'utf8') }))
const ours = sources.filter(({ path }) => path.startsWith('src/'))

describe('folders', () => {
  test('import only what the map allows', () => {
    const imports = ours.flatMap(({ path, text }) => importsOf(path, text))
    expect(imports.length, 'no import was seen at all: the search is wrong').toBeGreaterThan(0)
    expect(forbiddenImports(imports, map)).toEqual([])
  })

  test('are all in the map', () => {
    const folders = [...new Set(tracked.filter((path) => path.startsWith('src/')).map(folderOf))]
    expect(folders.length).toBeGreaterThan(0)
    expect(folders.filter((folder) => !(folder in map))).toEqual([])
  })

  test('of the core reach for no disk, clock, chance, process or console', () => {
    const pure = ours.filter(({ path }) => core.includes(folderOf(path)))
    expect(pure.length).toBeGreaterThan(0)
    expect(pure.flatMap(({ path, text }) => impureLines(path, text))).toEqual([])
  })
})

describe('files', () => {
  test('have 300 lines at most, tables of data aside', () => {
    expect(longFiles(sources, 300, tables)).toEqual([])
  })

  test('name the file in a relative import in full', () => {
    expect(shortenedImports(sources.flatMap(({ path, text }) => importsOf(path, text)))).toEqual([])
  })

  test('at the top are the agreed ones', () => {
    const top = [...new Set(tracked.map((path) => path.split('/')[0] ?? ''))]
    expect(top).toContain('package.json')
    expect(top.filter((name) => !topLevel.includes(name))).toEqual([])
  })
})

describe('the guards can fail', () => {
  const imported = (path: string, text: string) => forbiddenImports(importsOf(path, text), map)

  test('an import against the direction of the road', () => {
    expect(imported('src/fabric/made-up.ts', "import { a } from '../checks/a.ts'")).toEqual(['src/fabric/made-up.ts imports ../checks/a.ts'])
    expect(imported('src/fabric/made-up.ts', "export * from '../booklet/a.ts'")).toHaveLength(1)
    expect(imported('src/text/made-up.ts', "const a = await import('../fabric/a.ts')")).toHaveLength(1)
    expect(imported('src/fabric/made-up.ts', "import { a } from '../text/a.ts'\nimport { b } from './b.ts'")).toEqual([])
  })

  test('a working import where only types are allowed', () => {
    expect(imported('src/checks/made-up.ts', "import { parse } from '../notation/a.ts'")).toHaveLength(1)
    expect(imported('src/checks/made-up.ts', "import { type Row, parse } from '../notation/a.ts'")).toHaveLength(1)
    expect(imported('src/checks/made-up.ts', "import type { Row } from '../notation/a.ts'")).toEqual([])
    expect(imported('src/checks/made-up.ts', "import { type Row } from '../notation/a.ts'")).toEqual([])
  })

  test('a package or a module of Node that the folder has no business with', () => {
    expect(imported('src/fabric/made-up.ts', "import { readFileSync } from 'node:fs'")).toHaveLength(1)
    expect(imported('src/booklet/made-up.ts', "import PDFDocument from 'pdfkit'")).toHaveLength(1)
    expect(imported('src/booklet/made-up.ts', "import { a } from '../diagnostics/report.ts'")).toHaveLength(1)
    expect(imported('src/booklet/made-up.ts', "import { plural } from '../diagnostics/words.ts'")).toEqual([])
  })

  test('imports of an Astro file, in its head and in its scripts', () => {
    const page = "---\nimport { a } from '../fabric/a.ts'\n---\n<p>import x from 'y'</p>\n<script>\nimport { b } from '../checks/b.ts'\n</script>\n"
    expect(imported('src/components/Made.astro', page)).toHaveLength(2)
  })

  test('a folder that the map lacks', () => {
    expect(imported('src/made-up/a.ts', "import { a } from '../text/a.ts'")).toHaveLength(1)
  })

  test('a clock, a process, a console or a disk in the core, but not in a comment', () => {
    const lines = ['const a = Date.now()', 'const b = new Date()', 'process.exit(1)', "console.log('x')", "import 'node:fs'", 'Math.random()']
    for (const line of lines) expect(impureLines('src/fabric/made-up.ts', line)).toHaveLength(1)
    expect(impureLines('src/fabric/made-up.ts', '// no console.log here\nconst day = new Date(iso)')).toEqual([])
  })

  test('a file of 301 lines, and a shortened import', () => {
    const text = Array.from({ length: 301 }, () => 'a()').join('\n')
    expect(longFiles([{ path: 'a.ts', text }], 300, [])).toEqual(['a.ts has 301 lines'])
    expect(longFiles([{ path: 'a.ts', text }], 300, ['a.ts'])).toEqual([])
    expect(shortenedImports(importsOf('src/a.ts', "import { b } from './b'"))).toHaveLength(1)
  })
})
