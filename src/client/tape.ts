import { element } from './element.ts'
import { copyName } from './here.ts'
import { nameOf, type Box } from './rows-on-page.ts'
import type { Whereabouts } from './whereabouts.ts'

/** More rows than this are one bar with a marker. */
const mostBars = 60

const words = element('p', { class: 'tape-words' })
const tape = element('div', { class: 'tape', 'aria-hidden': 'true' })
const sheet = element('div', { class: 'progress' }, words, tape)

/** Puts the progress above the rows: in words, and as a tape with a bar for each row. */
export function showTape(where: Whereabouts, isDone: (box: Box) => boolean): void {
  const { boxes, done, here, stitches, part } = where
  const of = here ? `${part.word} ${here.label} of ${boxes.length}` : `${part.name}: all ${boxes.length} done`
  words.replaceChildren(
    here ? element('a', { href: `#${here.row.id}`, 'data-here': true }, wordsOf(here, of, where)) : element('b', {}, of),
    element('span', {}, stitches ? `${figure(stitches.done)} of ${figure(stitches.all)} stitches` : `${done} of ${boxes.length} done`),
  )
  if (boxes.length > mostBars) {
    const marker = element('span', { class: 'marker' })
    const bar = element('span', { class: 'share' })
    bar.style.width = marker.style.left = `${(100 * done) / boxes.length}%`
    tape.replaceChildren(bar, marker)
  } else {
    tape.replaceChildren(...boxes.map((box, at) => element('span', { class: [box === here ? 'at' : isDone(box) ? 'done' : '', (at + 1) % 5 === 0 ? 'fifth' : ''].join(' ').trim() })))
  }
  tape.classList.toggle('long', boxes.length > mostBars)
  if (!sheet.isConnected) document.querySelector('.work-sheet')?.prepend(sheet)
}

/** A row that has a word for a label is told by its place. */
function wordsOf(here: Box, of: string, where: Whereabouts): string {
  const name = nameOf(here).endsWith(`${where.part.word} ${here.label}`) && /^\d+$/.test(here.label) ? of : `${nameOf(here)}, ${where.done} of ${where.boxes.length} done`
  return where.part.copies > 1 ? `${name}, ${copyName(where)}` : name
}

function figure(number: number): string {
  return number.toLocaleString('en')
}
