import { existsSync } from 'node:fs'
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { basename } from 'node:path'

/**
 * Makes a folder anew and puts it in the older one's place only when all of it came out. `make` fills an empty folder beside it;
 * when it throws or says false, the older folder is as it was.
 */
export async function replaceFolder(folder: string, make: (fresh: string) => Promise<boolean | void>): Promise<void> {
  const fresh = `${folder}.new.tmp`
  const older = `${folder}.old.tmp`
  const release = await lock(`${folder}.lock.tmp`)
  try {
    // A build that was killed between the two renames left the older folder aside.
    if (existsSync(older)) await (existsSync(folder) ? rm(older, { recursive: true }) : rename(older, folder))
    await rm(fresh, { recursive: true, force: true })
    await mkdir(fresh, { recursive: true })
    if ((await make(fresh)) === false) return
    if (existsSync(folder)) await rename(folder, older)
    await rename(fresh, folder)
    await rm(older, { recursive: true, force: true })
  } finally {
    await rm(fresh, { recursive: true, force: true })
    await release()
  }
}

/** Two builds at once would write into each other's pages. A lock left by a build that is no longer running does not count. */
async function lock(file: string): Promise<() => Promise<void>> {
  const release = () => rm(file, { force: true })
  try {
    await writeFile(file, String(process.pid), { flag: 'wx' })
    return release
  } catch (error) {
    if (!isRunning(Number(await readFile(file, 'utf8').catch(() => '')))) {
      await release()
      return lock(file)
    }
    throw new Error(`another build is at work here; if none is, delete ${basename(file)}`, { cause: error })
  }
}

function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false
  try {
    process.kill(pid, 0)
    return true
  } catch {
    return false
  }
}
