import { watch, type FSWatcher } from 'node:fs'
import { basename, dirname, resolve } from 'node:path'

// An editor saves in several steps (a new file, a renaming, a change of times): what comes within so many milliseconds is one save.
const oneSave = 80

/**
 * Calls back after each save in the folders of these files, with the names that were touched. Folders are watched, because an editor that
 * saves by renaming puts another file in the place of the one that was there. Gives what ends the watching.
 */
export function watchFiles(paths: readonly string[], saved: (names: ReadonlySet<string>) => void): () => void {
  const touched = new Set<string>()
  let timer: NodeJS.Timeout | undefined
  const folders = new Set(paths.map((path) => dirname(resolve(path))))
  const watchers: readonly FSWatcher[] = [...folders].map((folder) => watch(folder, (_, name) => {
    if (name === null || name.startsWith('.')) return
    touched.add(resolve(folder, basename(name)))
    clearTimeout(timer)
    timer = setTimeout(() => {
      const names = new Set(touched)
      touched.clear()
      saved(names)
    }, oneSave)
  }))
  return () => {
    clearTimeout(timer)
    for (const watcher of watchers) watcher.close()
  }
}
