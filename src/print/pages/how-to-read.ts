import type { Booklet, Part, RowLine } from '../../booklet/booklet.ts'
import { gaps, live, pencilBox, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { oneLine, placeHead, textLines } from './heads.ts'
import { countsInOneLine } from './row-block.ts'

interface Column {
  readonly lines: readonly Line[]
  readonly style: TypeStyle
  readonly caption: string
  readonly captionWidth: number
  readonly edge: { readonly at: number } | { readonly to: number }
}

const { caption } = styles

/** Sets one real row of the pattern with a word on each of its parts. */
export function placeHowToRead(sheet: Sheet, key: RowLine, part: Pick<Part, 'counting' | 'sides'> | undefined): void {
  const { side, ...plain } = key
  const row: RowLine = part?.sides === true && side !== undefined ? { ...plain, side } : plain
  const columns = columnsOf(row, part?.counting ?? 'Row')
  const captions = columns.map((column) => textLines(column.caption, caption, column.captionWidth))
  const rowHeight = Math.max(pencilBox.side, ...columns.map(({ lines, style }) => lines.length * lineHeight(style)))
  const captionsHeight = Math.max(...captions.map((lines) => lines.length)) * lineHeight(caption)
  placeHead(sheet, 'How to read a row', { follows: gaps.under + 2.2 + rowHeight + 1.2 + captionsHeight })
  sheet.y += gaps.under
  sheet.rule(sheet.y, weights.heavy)
  const top = sheet.y + 2.2
  const baseline = top + baselineIn(styles.text)
  const captionBaseline = top + rowHeight + 1.2 + baselineIn(caption)
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  const first = sheet.tag(list, 'LI')
  placeSquare(sheet, top)
  put(sheet, sheet.tag(first, 'LBody'), textLines('tick when done', caption, row.side === undefined ? 20 : 14), caption, { at: live.left }, captionBaseline)
  for (const [at, column] of columns.entries()) {
    const entry = sheet.tag(list, 'LI')
    const explained = column.caption !== ''
    put(sheet, sheet.tag(entry, explained ? 'Lbl' : 'LBody'), column.lines, column.style, column.edge, baseline)
    if (explained) put(sheet, sheet.tag(entry, 'LBody'), captions[at] ?? [], caption, column.edge, captionBaseline)
  }
  sheet.y = top + rowHeight + 1.2 + Math.max(captionsHeight, 2 * lineHeight(caption))
}

/** A pencil box to look at, not to tick. */
function placeSquare(sheet: Sheet, top: number): void {
  const { side, weight, inset } = pencilBox
  const [left, right] = [live.left, live.left + side]
  for (const y of [top + inset, top + side - inset]) sheet.rule(y, weight, left, right)
  for (const x of [left + inset, right - inset]) sheet.line({ x1: x, y1: top, x2: x, y2: top + side }, weight)
}

function put(sheet: Sheet, tag: Tag, lines: readonly Line[], style: TypeStyle, edge: Column['edge'], baseline: number): void {
  for (const [at, line] of lines.entries()) {
    const y = baseline + at * lineHeight(style)
    if ('to' in edge) sheet.textTo(tag, line, style, edge.to, y)
    else sheet.text(tag, line, style, edge.at, y)
  }
}

function columnsOf(row: RowLine, counting: Part['counting']): readonly Column[] {
  const word = counting.toLowerCase()
  const hasSide = row.side !== undefined
  const start = hasSide ? 46 : 40
  const repeated = row.text.some(({ repeat }) => repeat)
  const counts = countsInOneLine({ stitches: row.stitches, spaces: '' })
  // Figures for many sizes are wide: from right to left, each column moves out of the way of the next.
  const wide = (text: string, style: TypeStyle) => oneLine(text, style).width
  const countsLeft = live.right - wide(counts, styles.rowNumber)
  const changeRight = Math.min(170, countsLeft - gaps.medium)
  const changeWidth = Math.max(22, wide(row.change, styles.figure))
  const repeatsRight = Math.min(144, changeRight - (row.change === '' ? 0 : changeWidth + gaps.under))
  const width = Math.min(126, repeatsRight - wide(row.repeats, styles.figure) - gaps.medium) - start
  const work = breakLines(row.text.map((run) => ({ ...run, font: styles.text.font })), { size: styles.text.size, width, hang: 4 })
  const column = (text: string, style: TypeStyle, words: string, captionWidth: number, edge: Column['edge']): readonly Column[] =>
    text === '' ? [] : [{ lines: [oneLine(text, style)], style, caption: words, captionWidth, edge }]
  return [
    ...column(row.label, styles.rowNumber, '', 0, { to: 37 }),
    ...column(row.side ?? '', styles.side, 'side', 7, { at: 38.5 }),
    { lines: work, style: styles.text, caption: repeated ? 'the underlined part is the repeat' : 'what to work', captionWidth: width, edge: { at: start } },
    ...column(row.repeats, styles.figure, repeatsInWords(row.repeats), 24, { to: repeatsRight }),
    ...column(row.change, styles.figure, changeInWords(row.change, word), changeWidth, { to: changeRight }),
    ...column(counts, styles.rowNumber, `${counts} stitches to count`, 24, { to: live.right }),
  ]
}

/** `6 (8) ×` -> `work it 6 (8) times`. */
function repeatsInWords(repeats: string): string {
  const times = repeats.replace(/\s*×\s*$/, '').trim()
  return times === '1' ? 'work it once' : `work it ${times} times`
}

/** `+6` -> `6 more than the round before`. */
function changeInWords(change: string, word: string): string {
  const amount = change.slice(1)
  if (/[+−]/.test(amount)) return `more (+) or fewer (−) than the ${word} before`
  return `${amount} ${change.startsWith('−') ? 'fewer' : 'more'} than the ${word} before`
}

/** The part that the key row is taken from. */
export function partOfKey({ key, parts }: Pick<Booklet, 'key' | 'parts'>): Part | undefined {
  return parts.find(({ lines }) => lines.some((line) => line.kind === 'row' && line.id === key?.id)) ?? parts[0]
}
