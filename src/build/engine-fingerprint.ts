import { createHash } from 'node:crypto'
import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'

/** Changes whenever the program or its libraries change, so that nothing which an older engine worked is shown as this one's. */
export async function engineFingerprint(root: string): Promise<string> {
  const names = await readdir(join(root, 'src'), { recursive: true })
  const files = ['package-lock.json', ...names.filter((name) => name.endsWith('.ts')).sort().map((name) => join('src', name))]
  const hash = createHash('sha256')
  for (const file of files) hash.update(file).update(await readFile(join(root, file)))
  return hash.digest('hex')
}
