import { availableParallelism } from 'node:os'
import type { WorkOrder } from './pattern-worker.ts'
import type { FileBytes } from './read-files.ts'
import { openThread } from './thread.ts'
import type { Shown, WorkedPattern } from './work-pattern.ts'

/** So many patterns are worth a thread: it takes about as long to read the engine, and to compile it anew, as they take to be worked. */
const worthAThread = 100
/** So many are handed over at once: one message for each would keep the threads waiting for one another. */
const inAnOrder = 16

type Outcome = WorkedPattern | string

/** On how many threads so many patterns are worked; 0 where they are worked here, and this thread is not free in the meantime. */
export function threadsFor(patterns: number): number {
  const threads = Math.min(availableParallelism(), Math.floor(patterns / worthAThread))
  return threads < 2 ? 0 : threads
}

/** Works pattern files, many of them on threads. Patterns stand in the order of the files; reports on those that cannot be published end it. */
export async function workPatterns(files: readonly FileBytes[], shown: Shown, threads = threadsFor(files.length)): Promise<readonly WorkedPattern[]> {
  const outcomes = threads > 0 ? await outcomesOfThreads(files, shown, threads) : await outcomesHere(files, shown)
  const reports = outcomes.filter((outcome) => typeof outcome === 'string')
  if (reports.length > 0) throw new Hindrance(reports.join('\n\n'))
  return outcomes.filter((outcome) => typeof outcome !== 'string')
}

/** What keeps the whole collection from being published, in words for the terminal. */
export class Hindrance extends Error {}

async function outcomesHere(files: readonly FileBytes[], shown: Shown): Promise<readonly Outcome[]> {
  // Where threads work, this one need not read the engine.
  const { workPattern } = await import('./work-pattern.ts')
  return files.map((file) => workPattern(file, shown))
}

async function outcomesOfThreads(files: readonly FileBytes[], shown: Shown, threads: number): Promise<readonly Outcome[]> {
  const orders = Array.from({ length: Math.ceil(files.length / inAnOrder) }, (_, at): WorkOrder => ({ shown, files: files.slice(at * inAnOrder, (at + 1) * inAnOrder) }))
  const outcomes: (readonly Outcome[])[] = []
  const left = orders.entries()
  await Promise.all(Array.from({ length: threads }, async () => {
    const thread = openThread<WorkOrder, readonly Outcome[]>(new URL('./pattern-worker.ts', import.meta.url))
    try {
      for (const [at, order] of left) outcomes[at] = await thread.ask(order)
    } finally {
      await thread.close()
    }
  }))
  return outcomes.flat()
}
