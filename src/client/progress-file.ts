import { button, element } from './element.ts'
import { tell } from './offers.ts'
import { readProgress, type Progress } from './progress.ts'
import type { Sheet, Ticking } from './ticking.ts'

/** Progress can be saved to a file and read back, on this device or another one. Nothing is sent anywhere. */
export function offerProgressFile(sheet: Sheet, ticking: Ticking, place: Element): void {
  const file = element('input', { type: 'file', accept: '.json,application/json', hidden: true, tabindex: '-1', 'aria-label': 'A file with progress' })
  file.addEventListener('change', () => {
    const [chosen] = file.files ?? []
    file.value = ''
    if (chosen) void chosen.text().then((text) => take(text, sheet, ticking))
  })
  place.append(element('fieldset', { class: 'progress-file' },
    element('legend', {}, 'Progress'),
    button('Save to a file', () => save(ticking.progress())),
    button('Read from a file', () => file.click()),
    button('Begin again', () => beginAgain(sheet, ticking)),
    file))
}

function save(progress: Progress): void {
  const address = URL.createObjectURL(new Blob([`${JSON.stringify(progress, null, 2)}\n`], { type: 'application/json' }))
  element('a', { href: address, download: `${progress.slug}-progress.json` }).click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

function take(text: string, sheet: Sheet, ticking: Ticking): void {
  const read = readProgress(text)
  if (!read) return tell('That file has no progress in it; nothing was changed.')
  if (read.slug !== sheet.fresh.slug) return tell(`That file has the progress of ${read.title}; nothing was changed.`)
  replace(read, ticking, `Read from the file: ${counted(read)}.`)
}

function beginAgain(sheet: Sheet, ticking: Ticking): void {
  const { size } = ticking.progress()
  replace({ ...sheet.fresh, ...(size === undefined ? {} : { size }) }, ticking, 'All boxes are empty again.')
}

/** Takes other progress in place of this one, and offers this one back. */
function replace(other: Progress, ticking: Ticking, words: string): void {
  const older = ticking.progress()
  ticking.change(() => other)
  const chosen = other.size
  for (const input of document.querySelectorAll<HTMLInputElement>('.options input[name=size]')) {
    if (chosen === undefined ? input.value === 'all' : input.dataset.name === chosen) input.checked = true
  }
  tell(words, ...(Object.keys(older.ticks).length > 0 ? [{ words: `Take back the earlier ${counted(older)}`, act: () => ticking.change(() => older) }] : []))
}

function counted({ ticks }: Progress): string {
  const many = Object.keys(ticks).length
  return many === 1 ? '1 tick' : `${many} ticks`
}
