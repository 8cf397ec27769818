import { button, element } from './element.ts'

/** The bar under the thumb. */
export interface ThumbBar {
  /** Names the row that is next, or nothing to tick. */
  readonly show: (next: string | undefined, canGoBack: boolean) => void
}

/** Puts two large buttons at the foot of a small screen. They are there while rows are in sight. */
export function thumbBar(acts: { readonly tick: () => void; readonly back: () => void }, tables: readonly Element[]): ThumbBar {
  const back = button('Back', acts.back)
  const tick = button('', acts.tick, { class: 'main' })
  const bar = element('div', { class: 'thumb-bar', role: 'group', 'aria-label': 'Row in hand', hidden: true }, back, tick)
  document.querySelector('main')?.append(bar)
  const inSight = new Set<Element>()
  const watch = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) inSight.add(target)
      else inSight.delete(target)
    }
    bar.hidden = inSight.size === 0
    document.body.classList.toggle('thumbed', !bar.hidden)
  })
  for (const table of tables) watch.observe(table)
  return {
    show(next, canGoBack) {
      tick.textContent = next === undefined ? 'All done' : `Tick ${next}`
      tick.disabled = next === undefined
      back.disabled = !canGoBack
    },
  }
}
