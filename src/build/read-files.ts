import { readdir, readFile, stat } from 'node:fs/promises'
import { join, resolve } from 'node:path'

/** A file's bytes and its path as it was given. */
export interface FileBytes {
  readonly path: string
  readonly bytes: Uint8Array
}

/** Files that were read, and what to say of those that could not be. */
export interface ReadFiles {
  readonly files: readonly FileBytes[]
  readonly unreadable: readonly string[]
}

/**
 * Reads files. A path that leads nowhere from the first of `folders` is tried from the next: npm runs a script in the
 * project's folder, while the path was typed in another.
 */
export async function readFiles(paths: readonly string[], folders: readonly string[]): Promise<ReadFiles> {
  const files: FileBytes[] = []
  const unreadable: string[] = []
  for (const path of paths) {
    try {
      files.push({ path, bytes: await bytesOf(path, folders) })
    } catch (error) {
      unreadable.push(`${path}: ${whyNot(error)}`)
    }
  }
  return { files, unreadable }
}

/** The pattern files in a folder, in the order of the alphabet; an editor's own `.#skiff.md` is none. */
export async function patternsIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true })
  return entries
    .filter((entry) => !entry.isDirectory() && entry.name.endsWith('.md') && !entry.name.startsWith('.'))
    .map(({ name }) => `${folder}/${name}`)
    .sort()
}

async function bytesOf(path: string, [folder = '', ...others]: readonly string[]): Promise<Uint8Array> {
  const file = resolve(join(folder, '.'), path)
  try {
    const kind = await stat(file)
    if (kind.isDirectory()) throw new Error('is a folder; name the files in it')
    if (!kind.isFile() && !kind.isFIFO()) throw new Error('is no file')
    return await readFile(file)
  } catch (error) {
    if (codeOf(error) === 'ENOENT' && others.length > 0) return bytesOf(path, others)
    throw error
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'may not be read',
  EISDIR: 'is a folder; name the files in it',
}

function whyNot(error: unknown): string {
  return reasons[codeOf(error)] ?? (error instanceof Error ? error.message : String(error))
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : ''
}
