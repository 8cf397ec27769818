import { button, element } from './element.ts'
import { keepSettings, keptSettings } from './kept.ts'
import type { Sheet, Ticking } from './ticking.ts'

/** Keeps the choices of the options' switches, and opens the options in place on a small screen. */
export function keepOptions({ sizes }: Pick<Sheet, 'sizes'>, ticking: Ticking | undefined): void {
  const settings = keptSettings()
  const radio = (id: string) => document.querySelector<HTMLInputElement>(`#${id}`)
  const chosen = sizes.indexOf(ticking?.progress().size ?? '')
  for (const id of [settings.type === 'large' && 'type-large', settings.hand === 'left' && 'hand-left', chosen >= 0 && `size-${chosen}`, settings.onlySize && 'only-size']) {
    const input = id ? radio(id) : null
    if (input) input.checked = true
  }
  document.querySelector('.options')?.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return
    if (target.name === 'type') keepSettings({ type: target.value === 'large' ? 'large' : undefined })
    if (target.name === 'hand') keepSettings({ hand: target.value === 'left' ? 'left' : undefined })
    if (target.name === 'only-size') keepSettings({ onlySize: target.checked })
    if (target.name === 'size') {
      const name = sizes[Number(target.value)]
      ticking?.change(({ size: _size, ...progress }) => (name === undefined ? progress : { ...progress, size: name }))
    }
  })
  openInPlace()
}

/** The word `Options` in the bar opens them under the bar; without a script it leads to where they stand. */
function openInPlace(): void {
  const link = document.querySelector('.bar a[href="#options"]')
  const options = document.querySelector<HTMLElement>('.options')
  if (!link || !options) return
  const close = () => {
    options.classList.remove('in-place')
    opener.setAttribute('aria-expanded', 'false')
  }
  const opener = button('Options', () => {
    if (options.classList.toggle('in-place')) {
      opener.setAttribute('aria-expanded', 'true')
      options.focus()
    } else close()
  }, { 'aria-expanded': 'false', 'aria-controls': 'options' })
  options.append(element('p', { class: 'close' }, button('Close', () => {
    close()
    opener.focus()
  })))
  options.addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || !options.classList.contains('in-place')) return
    close()
    opener.focus()
  })
  link.replaceWith(opener)
}
