import { element } from './element.ts'
import { keptSettings } from './kept.ts'

/** On the first page: goes on with the pattern that was worked last, and says how many patterns the filters leave. */
export function openShelf(): void {
  const { last } = keptSettings()
  const shelf = document.querySelector('.shelf')
  if (last?.title && last.where && last.address?.startsWith('/')) {
    shelf?.append(element('p', { class: 'go-on' }, `You have ${last.title} open at ${last.where}. `, element('a', { href: `${last.address}#here` }, `Go on with ${last.title}`)))
  }
  const filters = document.querySelector('.filters')
  const lines = [...document.querySelectorAll<HTMLElement>('.timetable tbody tr')]
  if (!filters) return
  const left = element('p', { class: 'left', role: 'status' })
  filters.append(left)
  filters.addEventListener('change', () => {
    const many = lines.filter((line) => getComputedStyle(line).display !== 'none').length
    left.textContent = many === lines.length ? `All ${many} patterns` : many === 0 ? 'No pattern is all of that' : many === 1 ? '1 pattern' : `${many} patterns`
  })
}
