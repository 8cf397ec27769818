import { button, element } from './element.ts'
import type { Box, Row } from './rows-on-page.ts'

/** More boxes than this are folded away: a hundred of them would stand between a row and the next. */
export const mostBoxes = 12

const lines = new Map<Row, { readonly words: Text; readonly folded: HTMLButtonElement }>()

/** Under a long range of rows: which of them is next, how many are done, and a button that shows their boxes. */
export function showRange(row: Row, isDone: (box: Box) => boolean): void {
  const { words } = lines.get(row) ?? open(row)
  const done = row.boxes.filter(isDone).length
  const next = row.boxes.find((box) => !isDone(box))
  words.data = `${next ? `Next is ${row.part.word} ${next.label}. ` : ''}${done} of ${row.boxes.length} ${row.part.word.toLowerCase()}s done. `
}

function open(row: Row) {
  const tally = row.work.querySelector('.tally')
  const words = document.createTextNode('')
  const folded = button(`Show all ${row.boxes.length} boxes`, () => {
    const isOpen = tally?.classList.toggle('open') === true
    folded.textContent = isOpen ? 'Fold the boxes away' : `Show all ${row.boxes.length} boxes`
    folded.setAttribute('aria-expanded', String(isOpen))
  }, { 'aria-expanded': 'false' })
  tally?.before(element('p', { class: 'tally-next' }, words, folded))
  const line = { words, folded }
  lines.set(row, line)
  return line
}
