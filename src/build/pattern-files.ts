import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { patternsIn, type FileBytes } from './read-files.ts'

/** Where pattern files lie: a folder below the project's. */
export interface Shelf {
  readonly root: string
  readonly folder: string
}

/** Paths of the pattern files as messages show them, in the order of the alphabet: `patterns/float.md`. */
export async function patternPaths({ root, folder }: Shelf): Promise<readonly string[]> {
  return (await patternsIn(join(root, folder))).map((path) => `${folder}/${basename(path)}`)
}

/** Reads one pattern file. */
export async function patternBytes({ root }: Shelf, path: string): Promise<FileBytes> {
  return { path, bytes: await readFile(join(root, path)) }
}

/** Changes with every byte of a file. */
export function digestOf({ bytes }: FileBytes): string {
  return createHash('sha256').update(bytes).digest('hex')
}
