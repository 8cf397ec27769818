import { button, element } from './element.ts'
import type { Progress } from './progress.ts'
import type { Part } from './rows-on-page.ts'
import { standing } from './whereabouts.ts'

const shown = new Map<Part, HTMLElement>()

/** Under the head of each piece: how much of it is done, and of a piece that is made several times which copy the boxes are for. */
export function showPartsProgress(parts: readonly Part[], progress: Progress, { size, copyOf, choose }: {
  readonly size: number
  readonly copyOf: (part: Part) => number
  readonly choose: (part: Part, copy: number) => void
}): void {
  for (const part of parts) {
    const place = shown.get(part) ?? placeIn(part)
    const focused = document.activeElement instanceof HTMLElement && place.contains(document.activeElement) ? document.activeElement.dataset.copy : undefined
    const chosen = copyOf(part)
    const copies = Array.from({ length: part.copies }, (_, at) => standing(part, at + 1, progress, size))
    const own = copies[chosen - 1]
    place.replaceChildren(...[
      part.copies > 1 && element('div', { class: 'switch', role: 'group', 'aria-label': `Boxes of ${part.name}` }, ...copies.map(({ copy, done, boxes }) =>
        button(`Copy ${copy}`, () => choose(part, copy), {
          'aria-pressed': String(copy === chosen), 'data-copy': String(copy), 'aria-label': `Copy ${copy}, ${done} of ${boxes.length} done`,
        }))),
      own && own.done > 0 && element('p', { class: 'under-head' }, `${own.here ? `${own.done} of ${own.boxes.length}` : `All ${own.boxes.length}`} ${part.word.toLowerCase()}s done${restOf(copies, chosen)}`),
    ].filter((child) => child instanceof Node))
    if (focused) place.querySelector<HTMLElement>(`[data-copy="${focused}"]`)?.focus({ preventScroll: true })
  }
}

/** `. Copies done: 2 of 6` */
function restOf(copies: readonly { readonly here?: unknown }[], chosen: number): string {
  return copies.length > 1 ? ` in copy ${chosen}; ${copies.filter(({ here }) => !here).length} of ${copies.length} copies done` : ''
}

function placeIn(part: Part): HTMLElement {
  const place = element('div', { class: 'part-progress' })
  part.element.querySelector('.part-head')?.after(place)
  shown.set(part, place)
  return place
}
