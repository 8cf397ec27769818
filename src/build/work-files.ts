import { availableParallelism } from 'node:os'
import type { WorkOrder } from './pattern-worker.ts'
import type { FileBytes } from './read-files.ts'
import { openThread } from './thread.ts'
import { workPattern, type Shown, type WorkedPattern } from './work-pattern.ts'

/** So many patterns are worth a thread: it takes about as long to read the engine as they take to be worked. */
const worthAThread = 60
/** So many are handed over at once: one message for each would keep the threads waiting for one another. */
const inAnOrder = 16

/** Works pattern files, many of them on as many cores as there are. What comes of them stands in the order of the files. */
export async function workFiles(files: readonly FileBytes[], shown: Shown, most = availableParallelism()): Promise<readonly (WorkedPattern | string)[]> {
  const threads = Math.min(most, Math.floor(files.length / worthAThread))
  if (threads < 2) return files.map((file) => workPattern(file, shown))
  const orders = Array.from({ length: Math.ceil(files.length / inAnOrder) }, (_, at): WorkOrder => ({ shown, files: files.slice(at * inAnOrder, (at + 1) * inAnOrder) }))
  const outcomes: (readonly (WorkedPattern | string)[])[] = []
  const left = orders.entries()
  await Promise.all(Array.from({ length: threads }, async () => {
    const thread = openThread<WorkOrder, readonly (WorkedPattern | string)[]>(new URL('./pattern-worker.ts', import.meta.url))
    try {
      for (const [at, order] of left) outcomes[at] = await thread.ask(order)
    } finally {
      await thread.close()
    }
  }))
  return outcomes.flat()
}
