import { button, element } from './element.ts'
import type { Progress } from './progress.ts'
import { repeatCounter, timesOf } from './repeats.ts'
import { keyFor, nameOf, type Box } from './rows-on-page.ts'
import type { Whereabouts } from './whereabouts.ts'

/** What can be done in the row that is next. */
export interface HereActs {
  readonly tick: () => void
  readonly back: () => void
  readonly repeat: (key: string, done: number) => void
  readonly note: (row: string, text: string) => void
}

const head = element('p', { class: 'here-head' })
const more = element('div', { class: 'here-more' })

/** Opens out the row that is next: it stands in large type, with all that is needed to work it. */
export function showHere(where: Whereabouts | undefined, { progress, size, acts }: { readonly progress: Progress; readonly size: number; readonly acts: HereActs }): void {
  const here = where?.here
  for (const line of document.querySelectorAll('tr.here')) if (line !== here?.row.element) line.classList.remove('here')
  if (!where || !here) {
    head.remove()
    more.remove()
    return
  }
  const { row } = here
  const key = keyFor(here, where.copy)
  const focused = document.activeElement instanceof HTMLElement && more.contains(document.activeElement) ? document.activeElement.dataset.act : undefined
  row.element.classList.add('here')
  head.replaceChildren(element('span', {}, `You are here: ${nameOf(here)}${where.part.copies > 1 ? `, ${copyName(where)}` : ''}`), yarnOf(row.element))
  more.replaceChildren(...[
    stitchesLine(where, here, size),
    ...timesOf(row, size).map((times, at) => repeatCounter(times, progress.repeats[`${key}:${at}`] ?? 0, (done) => acts.repeat(`${key}:${at}`, done))),
    element('div', { class: 'here-acts' },
      button(`Tick ${nameOf(here)}`, acts.tick, { class: 'main', 'data-act': 'tick', 'aria-keyshortcuts': 'Space' }),
      button('Back', acts.back, { 'data-act': 'back', 'aria-keyshortcuts': 'Backspace' }),
      element('p', { class: 'keys' }, 'or press Space to tick, Backspace to go back')),
    pencil(row.id, progress.notes[row.id] ?? '', acts.note),
  ].filter((child) => child !== undefined))
  if (head.parentElement !== row.work) row.work.prepend(head)
  if (more.parentElement !== row.work) row.work.append(more)
  if (focused) more.querySelector<HTMLElement>(`[data-act=${focused}]`)?.focus({ preventScroll: true })
}

/** `Copy 2 of 6` */
export function copyName({ copy, part }: Whereabouts): string {
  return `copy ${copy} of ${part.copies}`
}

function yarnOf({ dataset }: HTMLElement): HTMLElement | string {
  return dataset.yarn ? element('span', { class: 'yarn' }, `Yarn ${dataset.yarn}`) : ''
}

/** `Stitches  6 more than Round 6` and the count. */
function stitchesLine({ boxes }: Whereabouts, here: Box, size: number): HTMLElement | undefined {
  const at = boxes.indexOf(here)
  const own = here.stitches[Math.max(0, size)]
  if (typeof own !== 'number') return undefined
  const before = boxes[at - 1]
  const theirs = before?.stitches[Math.max(0, size)]
  const than = before && typeof theirs === 'number' ? ` ${difference(own - theirs)} ${nameOf(before)}` : ''
  return element('p', { class: 'here-stitches' }, element('span', {}, 'Stitches', element('span', { class: 'than' }, than)), element('b', {}, shown(here, own, size)))
}

function difference(change: number): string {
  return change === 0 ? 'as many as in' : `${Math.abs(change)} ${change > 0 ? 'more' : 'fewer'} than`
}

/** All sizes are told while none is chosen. */
function shown({ stitches }: Box, own: number, size: number): string {
  const all = stitches.map((count) => (typeof count === 'number' ? String(count) : '–'))
  return size >= 0 || all.length < 2 ? String(own) : `${all[0]} (${all.slice(1).join(', ')})`
}

function pencil(row: string, text: string, write: HereActs['note']): HTMLElement {
  const area = element('textarea', { rows: '1', name: 'pencil', 'data-act': 'pencil' })
  area.value = text
  area.addEventListener('change', () => write(row, area.value.trim()))
  return element('label', { class: 'pencil' }, element('span', {}, 'Pencil'), area)
}
