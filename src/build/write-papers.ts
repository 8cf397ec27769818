import { mkdir } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { dirname, join } from 'node:path'
import { papersOf, type Edition, type PaperPlace } from '../components/paper-path.ts'
import { bookletFor, type ToPrint } from './print-paper.ts'
import type { Printed, PrintOrder } from './print-worker.ts'
import { openThread, type Thread } from './thread.ts'

/** A printed pattern as it was written. */
export interface Paper {
  readonly slug: string
  readonly edition: Edition
  /** Below the folder that it was written to. */
  readonly path: string
  readonly bytes: number
  readonly pages: number
}

/** So many papers are worth a worker: it takes about as long to begin as they take to print. */
const worthAWorker = 6

/**
 * Prints every edition of every pattern into a folder, each below the address of its page, on as many cores as there are. Papers come
 * back in the order of the patterns, whichever was done first.
 */
export async function writePapers(patterns: readonly ToPrint[], folder: string, most = availableParallelism()): Promise<readonly Paper[]> {
  const jobs = patterns.flatMap((pattern) => papersOf(pattern.booklet).map((place) => ({ pattern, place })))
  for (const directory of new Set(jobs.map(({ place }) => dirname(join(folder, place.path))))) await mkdir(directory, { recursive: true })
  const papers: Paper[] = []
  let next = 0
  const work = async (): Promise<void> => {
    const press = openThread<PrintOrder, Printed>(new URL('./print-worker.ts', import.meta.url))
    try {
      for (let at = next++; at < jobs.length; at = next++) {
        const job = jobs[at]
        if (job) papers[at] = await printed(press, job, folder)
      }
    } finally {
      await press.close()
    }
  }
  const presses = Math.max(1, Math.min(most, Math.ceil(jobs.length / worthAWorker)))
  await Promise.all(Array.from({ length: presses }, work))
  return papers
}

async function printed(press: Thread<PrintOrder, Printed>, { pattern, place }: { readonly pattern: ToPrint; readonly place: PaperPlace }, folder: string): Promise<Paper> {
  const { edition, path } = place
  // A booklet is made when its turn comes, so that no more than a few are held at once.
  const { bytes, pages } = await press.ask({ booklet: bookletFor(pattern, place), edition, file: join(folder, path) })
  return { slug: pattern.booklet.slug, edition, path, bytes, pages }
}
