import type { Booklet } from '../../booklet/booklet.ts'
import { headFont } from '../pages/heads.ts'
import { live, liveWidth } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines } from '../type/break-lines.ts'
import { baselineIn, lineHeight } from '../type/styles.ts'
import { inWords } from './in-words.ts'
import { large, largeGaps, largeRules } from './large-styles.ts'
import { linesOf, placeLines } from './large-text.ts'

/** Sizes for the title, largest first, with how many lines each may take. The last takes what it must. */
const steps = [{ size: 62, leading: 62, lines: 1 }, { size: 50, leading: 50, lines: 2 }, { size: 40, leading: 42, lines: 3 }, { size: 30, leading: 34, lines: 100 }] as const

/** Sets the cover of large print: the title, what it is, and the facts one under the other. */
export function placeLargeCover(sheet: Sheet, booklet: Booklet): void {
  const { title, publisher, number, summary, terms, size, version, dateText } = booklet
  sheet.rule(live.top + 0.4, largeRules.opening)
  sheet.y += 3
  const top = [publisher, number === undefined ? '' : `Pattern ${number}`].filter((text) => text !== '').join('. ')
  if (top !== '') placeLines(sheet, sheet.tag(sheet.root, 'P'), linesOf(top, liveWidth, large.small), { style: large.small })
  sheet.y += largeGaps.between
  sheet.bookmark(title)
  placeTitle(sheet, title)
  if (summary !== undefined) placeLines(sheet, sheet.tag(sheet.root, 'P'), linesOf(inWords(summary), liveWidth))
  sheet.y += largeGaps.between
  const edition = [
    'Large print.', ...(size === undefined ? [] : [`Size ${size}.`]), `Written in ${terms} terms.`,
    ...(version === '' ? [] : [`Version ${[version, dateText].filter((text) => text !== '').join(', ')}.`]),
  ].join(' ')
  placeLines(sheet, sheet.tag(sheet.root, 'P'), linesOf(edition, liveWidth, large.strong), { style: large.strong })
  placeFacts(sheet, booklet.facts)
}

function placeTitle(sheet: Sheet, title: string): void {
  const font = headFont(title, 'title')
  const fitting = steps.map((step) => ({ ...step, set: breakLines([{ text: title, font }], { size: step.size, width: liveWidth }) }))
  const longest = (size: number) => Math.max(...title.split(/\s+/).map((word) => breakLines([{ text: word, font }], { size, width: Number.POSITIVE_INFINITY })[0]?.width ?? 0))
  const step = fitting.find(({ size, lines, set }) => set.length <= lines && longest(size) <= liveWidth) ?? fitting.at(-1)
  if (!step) return
  const style = { font, size: step.size, leading: step.leading }
  placeLines(sheet, sheet.tag(sheet.root, 'H1'), step.set, { style })
  sheet.y += largeGaps.under
}

/** Each fact has its name over it, and a rule before it. */
function placeFacts(sheet: Sheet, facts: Booklet['facts']): void {
  if (facts.length === 0) return
  sheet.y += largeGaps.between
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  for (const { label, value } of facts) {
    const lines = linesOf(inWords(value), liveWidth)
    const height = 2 + (1 + lines.length) * lineHeight(large.body) + 2
    if (height > sheet.room && !sheet.isFresh) sheet.newPage()
    sheet.rule(sheet.y, largeRules.between)
    sheet.y += 2
    const entry = sheet.tag(list, 'LI')
    const [name] = linesOf(label, liveWidth, large.strong)
    if (name) sheet.text(sheet.tag(entry, 'Lbl'), name, large.strong, live.left, sheet.y + baselineIn(large.strong))
    sheet.y += lineHeight(large.strong)
    placeLines(sheet, sheet.tag(entry, 'LBody'), lines)
    sheet.y += 2
  }
}
