import type { Booklet } from '../booklet/booklet.ts'
import { draw } from './draw.ts'
import { layOut } from './layout.ts'
import type { CoverDrawing } from './pages/cover.ts'

/** Prints a pattern as a PDF: one file that prints unscaled on A4 and Letter, that can be ticked on a screen and read aloud. */
export async function printPattern(booklet: Booklet, drawing?: CoverDrawing): Promise<Uint8Array> {
  return draw(layOut(booklet, drawing), {
    title: booklet.title,
    author: booklet.publisher,
    subject: booklet.summary ?? `Crochet pattern, version ${booklet.version}`,
    keywords: ['crochet pattern', `${booklet.terms} terms`, ...booklet.parts.map(({ name }) => name)].join(', '),
    date: booklet.date,
    language: booklet.terms === 'UK' ? 'en-GB' : 'en-US',
  })
}
