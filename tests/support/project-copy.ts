import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { cp, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const project = fileURLToPath(new URL('../..', import.meta.url))
const parts = ['package.json', 'package-lock.json', 'astro.config.mjs', 'tsconfig.json', 'src', 'public', 'patterns']

/** A copy of the project with the packages of this one, to build in and to break. */
export interface ProjectCopy {
  readonly folder: string
  readonly remove: () => Promise<void>
}

/** Copies what a build needs, and adds the pattern files of more folders. */
export async function copyProject(...morePatterns: readonly string[]): Promise<ProjectCopy> {
  const folder = await mkdtemp(join(tmpdir(), 'loopledger-'))
  for (const part of parts) await cp(join(project, part), join(folder, part), { recursive: true })
  for (const more of morePatterns) await cp(join(project, more), join(folder, 'patterns'), { recursive: true })
  await symlink(join(project, 'node_modules'), join(folder, 'node_modules'))
  return { folder, remove: () => rm(folder, { recursive: true, force: true, maxRetries: 5 }) }
}

/** How a command ended and what it said. */
export interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs npm as a person would who has only the machine's own Node: the packages' programs are not on the path beforehand. */
export async function npm(folder: string, ...words: readonly string[]): Promise<Ended> {
  const child = spawn('npm', words, { cwd: folder, env: plainEnvironment(), stdio: ['ignore', 'pipe', 'pipe'] })
  let out = ''
  let err = ''
  child.stdout.on('data', (bytes: Buffer) => (out += bytes.toString()))
  child.stderr.on('data', (bytes: Buffer) => (err += bytes.toString()))
  const code = await new Promise<number | null>((resolve, reject) => child.on('error', reject).on('close', resolve))
  return { code, out, err }
}

/** The environment without what vitest and npm add to it. */
export function plainEnvironment(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(([name]) => !/^(npm_|VITEST|NODE_ENV$|TEST$|DEV$|PROD$|SSR$|MODE$|BASE_URL$|FORCE_COLOR$)/i.test(name))
  const path = (process.env.PATH ?? '').split(delimiter).filter((folder) => !folder.includes('node_modules'))
  return { ...Object.fromEntries(kept), PATH: path.join(delimiter) }
}

/** A digest of every file of a folder, by its path. */
export async function digests(folder: string): Promise<Readonly<Record<string, string>>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).sort()
  const pairs = files.map(async (file) => [file.slice(folder.length + 1), createHash('sha256').update(await readFile(file)).digest('hex')] as const)
  return Object.fromEntries(await Promise.all(pairs))
}
