import { parentPort } from 'node:worker_threads'
import type { FileBytes } from './read-files.ts'
import { workPattern, type Shown } from './work-pattern.ts'

/** Patterns to be worked, and how reports on them are to be shown. */
export interface WorkOrder {
  readonly files: readonly FileBytes[]
  readonly shown: Shown
}

// What goes wrong here ends the thread, and the build hears of it there.
parentPort?.on('message', ({ files, shown }: WorkOrder) => {
  parentPort?.postMessage(files.map((file) => workPattern(file, shown)))
})
