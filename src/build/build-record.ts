import { createHash } from 'node:crypto'
import { existsSync } from 'node:fs'
import { copyFile, link, mkdir, readdir, readFile, rename, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import type { Card } from '../components/card.ts'
import type { PublicTexts } from './find-leaks.ts'
import type { Made } from './summary.ts'

/** What a build leaves for the next one, so that a pattern which is as it was needs no work. */
export interface BuildRecord {
  /** Changes with everything but the patterns that pages are made of. */
  readonly stamp: string
  /** Whose name stood on every page. */
  readonly publisher: string
  /** Names of styles, script and fonts, which pages refer to. */
  readonly assets: readonly string[]
  /** A digest of what was looked for of the patterns that are sold, and not found. */
  readonly searchedFor: string
  readonly patterns: readonly RecordedPattern[]
}

/** A free pattern as the last build published it. */
export interface RecordedPattern extends PublicTexts {
  readonly path: string
  /** Of the file's bytes. */
  readonly digest: string
  readonly card: Card
  readonly made: Made
  /** Its pages and papers, below the site's folder. */
  readonly files: readonly string[]
}

const place = (root: string) => join(root, '.astro', 'last-build.json')

/** The last build's record, if it was made with the same stamp and the site that it made is there. */
export async function readRecord(root: string, stamp: string): Promise<BuildRecord | undefined> {
  try {
    const record = JSON.parse(await readFile(place(root), 'utf8')) as BuildRecord
    return record.stamp === stamp && existsSync(join(root, 'dist', 'index.html')) ? record : undefined
  } catch {
    return undefined
  }
}

/** Keeps the record of a build that came out. */
export async function writeRecord(root: string, record: BuildRecord): Promise<void> {
  const file = place(root)
  await mkdir(dirname(file), { recursive: true })
  await writeFile(`${file}.tmp`, JSON.stringify(record))
  await rename(`${file}.tmp`, file)
}

/** A digest of the program, its settings and what the environment says: a page that was made with another one is not taken over. */
export async function siteStamp(root: string, ...more: readonly string[]): Promise<string> {
  const hash = createHash('sha256').update(JSON.stringify([process.env.SITE ?? '', process.env.BASE ?? '', ...more]))
  for (const folder of ['src', 'public']) {
    const entries = await readdir(join(root, folder), { recursive: true, withFileTypes: true })
    const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name)).sort()
    for (const file of files) hash.update(file.slice(root.length)).update(await readFile(file))
  }
  for (const file of ['package-lock.json', 'astro.config.mjs']) hash.update(await readFile(join(root, file)))
  return hash.digest('hex')
}

/** Puts files of the older site into the fresh one. They are one file under two names until the older name goes. */
export async function takeOver(files: readonly string[], older: string, fresh: string): Promise<void> {
  for (const folder of new Set(files.map((file) => dirname(join(fresh, file))))) await mkdir(folder, { recursive: true })
  await Promise.all(files.map(async (file) => {
    const [from, to] = [join(older, file), join(fresh, file)]
    // A disk that knows no second names has the file copied.
    await link(from, to).catch(() => copyFile(from, to))
  }))
}

/** Every file below a folder of the site, as paths below the site's. */
export async function filesBelow(site: string, folder: string): Promise<readonly string[]> {
  const entries = await readdir(join(site, folder), { recursive: true, withFileTypes: true })
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1)).sort()
}
