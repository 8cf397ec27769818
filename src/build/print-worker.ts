import { writeFile } from 'node:fs/promises'
import { parentPort } from 'node:worker_threads'
import type { Booklet } from '../booklet/booklet.ts'
import type { Edition } from '../components/paper-path.ts'
import { printEdition } from './print-paper.ts'

/** A paper to print, and the file to write it to. */
export interface PrintOrder {
  readonly booklet: Booklet
  readonly edition: Edition
  readonly file: string
}

/** What came of it. */
export interface Printed {
  readonly bytes: number
  readonly pages: number
}

parentPort?.on('message', (order: PrintOrder) => {
  // What goes wrong here ends the thread, and the build hears of it there.
  void print(order).then((printed) => parentPort?.postMessage(printed))
})

async function print({ booklet, edition, file }: PrintOrder): Promise<Printed> {
  const pdf = await printEdition(booklet, edition)
  await writeFile(file, pdf)
  return { bytes: pdf.length, pages: pagesOf(pdf) }
}

/** The head of a PDF's pages says how many there are (ISO 32000-1, 7.7.3.2); it is written uncompressed. */
function pagesOf(pdf: Uint8Array): number {
  return Number(/\/Type \/Pages\n\/Count (\d+)/.exec(Buffer.from(pdf).toString('latin1'))?.[1])
}
