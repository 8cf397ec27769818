import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { publisherOf } from '../components/shelf-line.ts'
import { readRecord, type RecordedPattern } from './build-record.ts'
import { digestOf, patternBytes, patternPaths } from './pattern-files.ts'
import type { FileBytes } from './read-files.ts'
import { workFiles } from './work-files.ts'
import type { Shown, WorkedPattern } from './work-pattern.ts'

/** All patterns of a build: those that were worked, and those that are as they were in the last one. */
export interface Worked {
  /** Of every pattern, in the order of the alphabet. */
  readonly paths: readonly string[]
  readonly worked: readonly WorkedPattern[]
  /** The reports on patterns that cannot be published. */
  readonly reports: readonly string[]
  readonly known: readonly RecordedPattern[]
  readonly publisher: string
  /** Names of styles, script and fonts that the pages of known patterns refer to. */
  readonly assets: readonly string[]
}

/**
 * Works the patterns of `patterns/`. With the stamp of this build, those that have not changed since a build with the same stamp are only
 * looked up. What is sold is worked every time: nothing of it is kept beside the site.
 */
export async function workPatterns(root: string, stamp: string | undefined, shown: Shown): Promise<Worked> {
  const shelf = { root, folder: 'patterns' }
  const paths = existsSync(join(root, shelf.folder)) ? await patternPaths(shelf) : []
  const record = stamp === undefined ? undefined : await readRecord(root, stamp)
  const recorded = new Map(record?.patterns.map((one) => [one.path, one]))
  const fresh: FileBytes[] = []
  const known: RecordedPattern[] = []
  for (const path of paths) {
    const file = await patternBytes(shelf, path)
    const older = recorded.get(path)
    if (older?.digest === digestOf(file) && older.files.every((one) => existsSync(join(root, 'dist', one)))) known.push(older)
    else fresh.push(file)
  }
  const outcomes = await workFiles(fresh, shown)
  const worked = outcomes.filter((outcome) => typeof outcome !== 'string')
  const reports = outcomes.filter((outcome) => typeof outcome === 'string')
  const publisher = publisherOf([...known.map(({ card }) => card), ...worked.flatMap(({ full }) => full.card ?? [])])
  // The name stands at the head of every page.
  return record && record.publisher !== publisher && known.length > 0 ? workPatterns(root, undefined, shown) : { paths, worked, reports, known, publisher, assets: record?.assets ?? [] }
}
