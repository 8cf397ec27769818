import type { Booklet } from '../booklet/booklet.ts'
import { layOutChecklist } from './checklist/lay-out-checklist.ts'
import { draw } from './draw.ts'
import { layOutLargePrint } from './large/lay-out-large-print.ts'
import { layOut } from './layout.ts'
import type { CoverDrawing } from './pages/cover.ts'
import type { Description } from './pdf/metadata.ts'

/** Prints a pattern as a PDF: one file that prints unscaled on A4 and Letter, that can be ticked on a screen and read aloud. */
export async function printPattern(booklet: Booklet, drawing?: CoverDrawing): Promise<Uint8Array> {
  return draw(layOut(booklet, drawing), describing(booklet, sizeOf(booklet)))
}

/** Prints the checklist of a pattern: a line for each real row, a box for each copy. */
export async function printChecklist(booklet: Booklet): Promise<Uint8Array> {
  return draw(layOutChecklist(booklet), describing(booklet, ['checklist', ...sizeOf(booklet)]))
}

/** Prints a pattern in large print. Of a pattern with sizes the booklet has one. */
export async function printLargePrint(booklet: Booklet): Promise<Uint8Array> {
  return draw(layOutLargePrint(booklet), describing(booklet, ['large print', ...sizeOf(booklet)]))
}

/** What a file says of itself. An edition is named in the title, so that two open windows are told apart. */
function describing(booklet: Booklet, words: readonly string[]): Description {
  const edition = words.length === 0 ? undefined : words.join(', ')
  return {
    title: edition === undefined ? booklet.title : `${booklet.title}, ${edition}`,
    author: booklet.publisher,
    subject: booklet.summary ?? `Crochet pattern, version ${booklet.version}`,
    keywords: ['crochet pattern', ...(edition === undefined ? [] : [edition]), `${booklet.terms} terms`, ...booklet.parts.map(({ name }) => name)].join(', '),
    date: booklet.date,
    language: booklet.terms === 'UK' ? 'en-GB' : 'en-US',
  }
}

/** The one size that a printing is of, when the pattern has several. */
const sizeOf = ({ size }: Booklet): readonly string[] => (size === undefined ? [] : [`size ${size}`])
