import stringWidth from 'string-width'

/** One character as a reader sees it, its place in the line and the columns that it takes on a screen. */
export interface Cell {
  /** 0-based UTF-16 offsets in the line, end not included. */
  readonly start: number
  readonly end: number
  readonly text: string
  readonly width: number
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })
const plainLine = /^[\u0020-\u007E]*$/

/** A line as cells. A tab is one column; what has no shape of its own is shown as a mark of one column. */
export function cellsOf(line: string): readonly Cell[] {
  if (plainLine.test(line)) return Array.from(line, (text, at) => ({ start: at, end: at + 1, text, width: 1 }))
  return Array.from(graphemes.segment(line), ({ segment, index }) => {
    // A byte order mark at the very start is no sign of the writer's.
    const text = segment === '\uFEFF' && index === 0 ? '' : visible(segment)
    return { start: index, end: index + segment.length, text, width: stringWidth(text) }
  })
}

/** A text on one line with nothing in it that a terminal would obey or swallow. */
export function shownText(text: string): string {
  const line = text.replace(/\s*[\r\n]+\s*/g, ' ')
  return plainLine.test(line) ? line : cellsOf(line).map((cell) => cell.text).join('')
}

function visible(segment: string): string {
  const code = segment.codePointAt(0) ?? 0
  if (segment === '\t') return ' '
  // Unicode's control pictures: ␀ stands at U+2400 for U+0000, ␡ at U+2421 for U+007F.
  if (code < 0x20) return String.fromCodePoint(0x2400 + code)
  if (code === 0x7f) return '\u2421'
  if (!segment.isWellFormed() || stringWidth(segment) === 0) return '\uFFFD'
  // Marks that turn the direction of writing would shift every column behind them.
  return segment.replace(/[\u202A-\u202E\u2066-\u2069]/g, '')
}

/** Columns of a run of cells. */
export function widthOf(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.width, 0)
}
