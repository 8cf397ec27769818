import type { Booklet } from '../../booklet/booklet.ts'
import { live, mmPerPoint, weights } from '../sheet/measures.ts'
import type { Placed } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line, type Span } from '../type/break-lines.ts'
import { baselineIn, styles } from '../type/styles.ts'

const { note, noteStrong } = styles
const emSpace = note.size * mmPerPoint
const gap = 4

/** Sets the footer of every page: title, edition and publisher, version and terms, page n of N. Done last, when the pages are counted. */
export function placeFooters(sheet: Sheet, booklet: Booklet, edition?: string): void {
  const baseline = live.footerRule + 1.6 + baselineIn(note)
  const version = [booklet.version === '' ? '' : `Version ${booklet.version}`, booklet.dateText].filter((text) => text !== '').join(', ')
  const centre = [oneOf([{ text: version, font: note.font }]), oneOf([{ text: `Terms: ${booklet.terms}`, font: note.font }])] as const
  const space = version === '' ? 0 : emSpace
  const centreWidth = centre[0].width + space + centre[1].width
  const centreStart = (live.left + live.right - centreWidth) / 2
  // The edition is what tells two printings of one pattern apart: the publisher stands after it, or not at all.
  const told = [edition ?? '', booklet.size === undefined ? '' : `${edition === undefined ? 'Size' : 'size'} ${booklet.size}`].filter((text) => text !== '').join(', ')
  const publisher = oneOf([{ text: told === '' ? booklet.publisher : told, font: note.font }])
  const own = shortened(booklet.title, centreStart - gap - live.left - emSpace / 2 - publisher.width)
  for (const [index, furniture] of sheet.pages.entries()) {
    furniture.ruling.push({
      kind: 'line', page: index, x1: live.left, y1: live.footerRule, x2: live.right, y2: live.footerRule, weight: weights.hair, use: 'rule',
    })
    const put = (line: Line, x: number) => furniture.pagination.push(...placed(line, x, baseline, index))
    put(own, live.left)
    // A long publisher's name would run into the version; the title is what tells loose pages apart.
    if (live.left + own.width + emSpace / 2 + publisher.width + gap <= centreStart) put(publisher, live.left + own.width + emSpace / 2)
    put(centre[0], centreStart)
    put(centre[1], centreStart + centre[0].width + space)
    const number = oneOf([
      { text: 'Page ', font: note.font },
      { text: String(index + 1), font: noteStrong.font },
      { text: ` of ${sheet.pages.length}`, font: note.font },
    ])
    put(number, live.right - number.width)
  }
}

function oneOf(spans: readonly Span[]): Line {
  return breakLines(spans, { size: note.size, width: Number.POSITIVE_INFINITY })[0] ?? { runs: [], width: 0 }
}

/** The title, or as much of it as fits, with an ellipsis. A title needs some room even beside a long publisher. */
function shortened(title: string, width: number): Line {
  const room = Math.max(width, 30)
  const whole = oneOf([{ text: title, font: noteStrong.font }])
  if (whole.width <= room) return whole
  const characters = Array.from(title)
  let low = 0
  let high = characters.length
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (cut(characters, middle).width <= room) low = middle
    else high = middle - 1
  }
  return cut(characters, low)
}

function cut(characters: readonly string[], length: number): Line {
  return oneOf([{ text: `${characters.slice(0, length).join('').trimEnd()}…`, font: noteStrong.font }])
}

function placed(line: Line, x: number, y: number, page: number): readonly Placed[] {
  return line.runs.map((run) => ({
    kind: 'text', page, x: x + run.x, y, width: run.width, text: run.text, font: run.font, size: note.size,
    ...(run.missing ? { missing: true as const } : {}),
  }))
}
