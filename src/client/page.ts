import { openSlip } from './offers.ts'
import { keepForOffline } from './offline.ts'
import { keepOptions } from './options.ts'
import { offerProgressFile } from './progress-file.ts'
import { noProgress } from './progress.ts'
import { partsOnPage } from './rows-on-page.ts'
import { offerScreenAwake } from './screen-awake.ts'
import { openShelf } from './shelf.ts'
import { startTicking, type Sheet } from './ticking.ts'

const pattern = document.querySelector<HTMLElement>('.pattern[data-slug]')
if (pattern) openPattern(pattern)
if (document.querySelector('.shelf')) openShelf()
keepForOffline()

function openPattern({ dataset }: HTMLElement): void {
  const { slug = '', title = '', version = '', sizes = '' } = dataset
  const parts = partsOnPage().filter(({ boxes }) => boxes.length > 0)
  const sheet: Sheet = {
    parts, version, title, saved, sizes: sizes === '' ? [] : sizes.split('|'), fresh: noProgress(slug, title, version),
  }
  openSlip()
  const ticking = parts.length > 0 ? startTicking(sheet) : undefined
  keepOptions(sheet, ticking)
  const place = document.querySelector('.options .more')
  if (place && ticking) {
    offerScreenAwake(place)
    offerProgressFile(sheet, ticking, place)
  }
  document.documentElement.classList.add('ticking')
  if (location.hash === '#here') document.querySelector('tr.here')?.scrollIntoView({ block: 'center' })
  // The page in the other terms opens where this one is left.
  for (const link of document.querySelectorAll<HTMLAnchorElement>('.terms a:not([aria-current])')) {
    link.addEventListener('click', () => { link.hash = document.querySelector('.rows :checked') ? 'here' : '' })
  }
}

/** Says in the bar whether ticks are kept. */
function saved(kept: boolean): void {
  const words = document.querySelector<HTMLElement>('.bar .saved')
  if (!words) return
  const device = matchMedia('(pointer: fine)').matches ? 'computer' : innerWidth < 768 ? 'phone' : 'tablet'
  words.hidden = false
  words.textContent = kept ? `Saved on this ${device}` : 'Not saved here: save to a file'
}
