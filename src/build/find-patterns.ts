import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { readRecord, type BuildRecord, type RecordedPattern } from './build-record.ts'
import { digestOf, patternBytes, patternPaths } from './pattern-files.ts'
import type { FileBytes } from './read-files.ts'

/** The patterns of a build: those to be worked, and those that are as they were in the last one. */
export interface FoundPatterns {
  /** Of every pattern, in the order of the alphabet. */
  readonly paths: readonly string[]
  readonly changed: readonly FileBytes[]
  readonly known: readonly RecordedPattern[]
  /** What the pages of known patterns say and refer to, and what they were searched for. */
  readonly last?: Pick<BuildRecord, 'publisher' | 'assets' | 'searchedFor'>
}

/**
 * Finds the patterns of `patterns/`. With the stamp of this build, those that have not changed since a build with the same stamp are known.
 * What is sold is worked every time: nothing of it is kept beside the site.
 */
export async function findPatterns(root: string, stamp: string | undefined): Promise<FoundPatterns> {
  const shelf = { root, folder: 'patterns' }
  const paths = existsSync(join(root, shelf.folder)) ? await patternPaths(shelf) : []
  const record = stamp === undefined ? undefined : await readRecord(root, stamp)
  const recorded = new Map(record?.patterns.map((one) => [one.path, one]))
  const changed: FileBytes[] = []
  const known: RecordedPattern[] = []
  for (const path of paths) {
    const file = await patternBytes(shelf, path)
    const older = recorded.get(path)
    if (older?.digest === digestOf(file) && older.files.every((one) => existsSync(join(root, 'dist', one)))) known.push(older)
    else changed.push(file)
  }
  return { paths, changed, known, ...(record && known.length > 0 ? { last: record } : {}) }
}
