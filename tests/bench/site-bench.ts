import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

// A site of many small patterns against a bare Astro site of as many trivial pages, pages alone, and an edit of one pattern against a cold
// build: `node tests/bench/site-bench.ts 1000`. Ratios of processor time count; a machine that does other things as well stretches the rest.
const many = Number(process.argv[2] ?? 1000)
const project = fileURLToPath(new URL('../..', import.meta.url))
let childSoFar = 0
const folder = mkdtempSync(join(tmpdir(), 'loopledger-bench-'))

interface Taken {
  readonly wall: number
  readonly cpu: number
}

try {
  const bare = bareSite(join(folder, 'bare'))
  const ours = ourSite(join(folder, 'ours'))
  const trivial = run(bare, [join(project, 'node_modules/astro/bin/astro.mjs'), 'build', '--silent'])
  const cold = run(ours, ['src/build/build.ts', '--pages-only'])
  const file = join(ours, 'patterns/mat-7.md')
  writeFileSync(file, readFileSync(file, 'utf8').replace('Two small mats', 'Two very small mats'))
  const edit = run(ours, ['src/build/build.ts', '--pages-only'])
  say('bare Astro', trivial)
  say('cold build', cold)
  say('one edit', edit)
  const ratio = (a: Taken, b: Taken) => `${(a.wall / b.wall).toFixed(2)} by the clock, ${(a.cpu / b.cpu).toFixed(2)} by processor time`
  process.stdout.write(`cold : bare  ${ratio(cold, trivial)} (2 is the aim)\nedit : cold  ${ratio(edit, cold)} (0.3 is the aim)\n`)
} finally {
  rmSync(folder, { recursive: true, force: true })
}

function run(cwd: string, words: readonly string[]): Taken {
  const started = performance.now()
  const { status, stderr } = spawnSync(process.execPath, words, { cwd, stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' } })
  if (status !== 0) throw new Error(`${words.join(' ')} in ${cwd}:\n${stderr.toString()}`)
  return { wall: (performance.now() - started) / 1000, cpu: childTime() }
}

/** Processor seconds of the child that ended last, as the system counts them for ended children. */
function childTime(): number {
  // Fields 16 and 17, in hundredths of a second (proc(5), cutime and cstime).
  const [user = 0, system = 0] = readFileSync('/proc/self/stat', 'utf8').replace(/^.*\) /, '').split(' ').slice(13, 15).map((ticks) => Number(ticks) / 100)
  const total = user + system
  const own = total - childSoFar
  childSoFar = total
  return own
}

function say(what: string, { wall, cpu }: Taken): void {
  process.stdout.write(`${what.padEnd(12)} ${wall.toFixed(1).padStart(6)} s, ${cpu.toFixed(1).padStart(6)} s of processor\n`)
}

function bareSite(root: string): string {
  mkdirSync(join(root, 'src/pages/posts'), { recursive: true })
  mkdirSync(join(root, 'src/posts'))
  symlinkSync(join(project, 'node_modules'), join(root, 'node_modules'))
  writeFileSync(join(root, 'package.json'), '{"type":"module"}')
  writeFileSync(join(root, 'src/content.config.ts'), "import { defineCollection } from 'astro:content'\nimport { glob } from 'astro/loaders'\nexport const collections = { posts: defineCollection({ loader: glob({ pattern: '*.md', base: 'src/posts' }) }) }\n")
  writeFileSync(join(root, 'src/pages/posts/[slug].astro'), "---\nimport { getCollection } from 'astro:content'\nexport async function getStaticPaths() {\n  return (await getCollection('posts')).map((post) => ({ params: { slug: post.id }, props: { post } }))\n}\nconst { post } = Astro.props\n---\n<html lang=\"en\"><head><title>{post.data.title}</title></head><body><h1>{post.data.title}</h1></body></html>\n")
  for (let at = 1; at <= many; at += 1) writeFileSync(join(root, `src/posts/post-${at}.md`), `---\ntitle: Post ${at}\n---\nWords of post ${at}.\n`)
  return root
}

function ourSite(root: string): string {
  mkdirSync(join(root, 'patterns'), { recursive: true })
  for (const part of ['package.json', 'package-lock.json', 'astro.config.mjs', 'tsconfig.json', 'src', 'public']) cpSync(join(project, part), join(root, part), { recursive: true })
  symlinkSync(join(project, 'node_modules'), join(root, 'node_modules'))
  const mat = readFileSync(join(project, 'tests/site/patterns/cleat-pair.md'), 'utf8')
  for (let at = 1; at <= many; at += 1) writeFileSync(join(root, `patterns/mat-${at}.md`), mat.replace('title: Cleat Pair', `title: Mat ${at}`).replace('number: 404', `number: ${at}`))
  return root
}
