import { button, element } from './element.ts'
import type { Row } from './rows-on-page.ts'

/** More repeats than this are counted with less and more instead of a button each. */
const mostButtons = 12

/** How often each repeat of a row is worked, in the chosen size; undefined where the rows of a range differ. Empty for a row without repeats. */
export function timesOf({ element: line, work, boxes }: Row, size: number): readonly (number | undefined)[] {
  if (!work.querySelector('.repeat')) return []
  const cell = line.querySelector('.repeats')
  if (!cell?.textContent) return []
  // Sizes that leave the row out have no figure in the list.
  const at = (boxes[0]?.stitches ?? []).slice(0, Math.max(0, size)).filter((count) => count !== null).length
  return cell.textContent.split(/,\s(?=[^()]*(?:\(|$))/).map((text) => {
    const figures = text.match(/\d+(?:–\d+)?/g) ?? []
    return Number(figures[figures.length > 1 ? at : 0]?.replace(/^\d+–\d+$/, 'NaN') ?? NaN)
  }).map((times) => (Number.isNaN(times) ? undefined : times))
}

/** A counter of the repeats done within a row. */
export function repeatCounter(times: number | undefined, done: number, set: (done: number) => void): HTMLElement {
  const words = element('p', { class: 'repeats-done' }, `Repeats done: ${done}${times === undefined ? '' : ` of ${times}`}`)
  if (times !== undefined && times <= mostButtons) {
    const buttons = Array.from({ length: times }, (_, at) => {
      const one = at + 1
      // The last one that is done takes itself back.
      return button(String(one), () => set(done === one ? one - 1 : one), { 'aria-pressed': String(one <= done), 'aria-label': `Repeat ${one} done` })
    })
    return element('div', { class: 'repeat-counter', role: 'group', 'aria-label': 'Repeats of this row' }, words, element('div', { class: 'repeat-buttons' }, ...buttons))
  }
  const less = button('−', () => set(Math.max(0, done - 1)), { 'aria-label': 'One repeat fewer' })
  const more = button('+', () => set(times === undefined ? done + 1 : Math.min(times, done + 1)), { 'aria-label': 'One repeat more' })
  return element('div', { class: 'repeat-counter', role: 'group', 'aria-label': 'Repeats of this row' }, words,
    element('div', { class: 'repeat-steps' }, less, element('b', {}, String(done)), more))
}
