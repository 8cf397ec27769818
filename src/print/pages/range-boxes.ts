import { gaps, mmPerPoint, pencilBox, tallyCell } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { styles } from '../type/styles.ts'
import { oneLine } from './heads.ts'

/** Boxes of a range of rows that stand on one line under its text. Heights and places in mm, from the start of the work column. */
export interface BoxLine {
  readonly height: number
  readonly items: readonly BoxItem[]
}

interface BoxItem {
  /** Set to the left of the box, ending at its `x` less a gap; or, without a box, starting at `x`. */
  readonly label?: Line
  readonly x: number
  readonly box?: { readonly row: string; readonly side: number; readonly weight: number; readonly inset: number }
}

const labelGap = 1.1
const between = 3.2
const mostBoxes = 12
const cellsInLine = 10

/** The boxes of a range: one with its number for each row, or a tally grid when there are more than twelve. */
export function rangeBoxes(rows: readonly string[], width: number): readonly BoxLine[] {
  if (rows.length < 2) return []
  return rows.length > mostBoxes ? tally(rows) : boxes(rows, width)
}

function boxes(rows: readonly string[], width: number): readonly BoxLine[] {
  const lines: BoxItem[][] = []
  let x = 0
  for (const row of rows) {
    const label = oneLine(row, styles.boxLabel)
    const pitch = label.width + labelGap + pencilBox.side
    if (lines.length === 0 || x + pitch > width) {
      lines.push([])
      x = 0
    }
    lines.at(-1)?.push({ label, x: x + label.width + labelGap, box: { row, ...pencilBox } })
    x += pitch + between
  }
  return lines.map((items) => ({ items, height: pencilBox.side + gaps.tiny + 0.2 }))
}

/** Ten cells to a line with a gap after the fifth; the line's first number stands on its left, its last on its right. */
function tally(rows: readonly string[]): readonly BoxLine[] {
  const labels = rows.map((row) => oneLine(row, styles.boxLabel))
  const start = Math.max(6.2, ...labels.map(({ width }) => width)) + 1.5
  const lines: BoxLine[] = []
  for (let from = 0; from < rows.length; from += cellsInLine) {
    const own = rows.slice(from, from + cellsInLine)
    const edge = (at: number) => start + at * tallyCell.side + (at >= 5 ? gaps.tiny : 0)
    const items: BoxItem[] = own.map((row, at) => ({
      x: edge(at), box: { row, ...tallyCell }, ...(at === 0 ? { label: labels[from] as Line } : {}),
    }))
    const last = labels[from + own.length - 1]
    if (last && own.length > 1) items.push({ x: edge(own.length - 1) + tallyCell.side + gaps.small, label: last })
    lines.push({ items, height: tallyCell.side })
  }
  return lines
}

/** Sets one line of boxes. `nameOf` gives the name of a row's box. */
export function placeBoxLine(sheet: Sheet, cell: Tag, line: BoxLine, { x, y, nameOf }: { x: number; y: number; nameOf: (row: string) => string }): void {
  const paragraph = sheet.tag(cell, 'P')
  const side = line.items[0]?.box?.side ?? pencilBox.side
  // Figures stand in the middle of the box beside them.
  const baseline = y + side / 2 + (0.66 * styles.boxLabel.size * mmPerPoint) / 2
  for (const item of line.items) {
    if (item.box) {
      if (item.label) sheet.textTo(paragraph, item.label, styles.boxLabel, x + item.x - (item.box.side === tallyCell.side ? 1.5 : labelGap), baseline)
      sheet.box(paragraph, x + item.x, y, item.box, nameOf(item.box.row))
    } else if (item.label) sheet.text(paragraph, item.label, styles.boxLabel, x + item.x, baseline)
  }
}
