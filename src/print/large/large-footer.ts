import type { Booklet } from '../../booklet/booklet.ts'
import { live, mmPerPoint } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line, type Span } from '../type/break-lines.ts'
import { baselineIn } from '../type/styles.ts'
import { large, largePage, largeRules } from './large-styles.ts'

const { small, smallStrong } = large

/** Sets the footer of every page: title, edition and size, page n of N, and under them version and date. Done last, when the pages are counted. */
export function placeLargeFooters(sheet: Sheet, { title, version, dateText, size }: Booklet): void {
  const y = largePage.footerRule + 2 + baselineIn(small)
  const after = (sizeName: string | undefined) => ['', 'large print', ...(sizeName === undefined ? [] : [sizeName])].join(', ')
  const edition = [...(version === '' ? [] : [`Version ${version}`]), ...(dateText === '' ? [] : [dateText])].join(', ')
  const words = [after(size && `size ${size}`), after(size)]
  for (const [index, { ruling, pagination }] of sheet.pages.entries()) {
    const line = (spans: readonly Span[], x: (width: number) => number, below = 0) => {
      const set = oneOf(spans)
      for (const run of set.runs) {
        pagination.push({
          kind: 'text', page: index, x: x(set.width) + run.x, y: y + below, width: run.width, text: run.text, font: run.font, size: small.size, ...(run.missing ? { missing: true as const } : {}),
        })
      }
    }
    ruling.push({ kind: 'line', page: index, x1: live.left, y1: largePage.footerRule, x2: live.right, y2: largePage.footerRule, weight: largeRules.between, use: 'rule' })
    const number = [{ text: 'Page ', font: small.font }, { text: String(index + 1), font: smallStrong.font }, { text: ` of ${sheet.pages.length}`, font: small.font }]
    line(number, (width) => live.right - width)
    line(shortened(title, words, live.right - live.left - oneOf(number).width - 6), () => live.left)
    if (edition !== '') line([{ text: edition, font: small.font }], () => live.left, small.leading * mmPerPoint)
  }
}

function oneOf(spans: readonly Span[]): Line {
  return breakLines(spans, { size: small.size, width: Number.POSITIVE_INFINITY })[0] ?? { runs: [], width: 0 }
}

/** The title with the first of the wordings that fits behind it; the title cut with an ellipsis where none does. */
function shortened(title: string, wordings: readonly string[], room: number): readonly Span[] {
  const fitting = wordings.find((words) => oneOf([{ text: title, font: smallStrong.font }, { text: words, font: small.font }]).width <= room)
  const spans = (text: string): readonly Span[] => [{ text, font: smallStrong.font }, { text: fitting ?? wordings.at(-1) ?? '', font: small.font }]
  if (fitting !== undefined) return spans(title)
  const characters = Array.from(title)
  let length = Math.min(characters.length, Math.ceil(room / (small.size * 0.2 * mmPerPoint)))
  while (length > 1 && oneOf(spans(`${characters.slice(0, length).join('').trimEnd()}…`)).width > room) length -= 1
  return spans(`${characters.slice(0, length).join('').trimEnd()}…`)
}
