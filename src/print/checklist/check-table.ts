import { placeColumnHeads, columnHeadsHeight, type ColumnHead } from '../pages/column-heads.ts'
import { oneLine, textLines } from '../pages/heads.ts'
import { paginateRows } from '../pages/paginate-rows.ts'
import { gaps, live, liveWidth, pencilBox, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import type { CheckLine, CheckRow, CheckStep } from './check-rows.ts'
import { boxLeft, type ChecklistColumns } from './checklist-columns.ts'

/** Rows, or steps of finishing, with a box for each copy. */
export interface CheckTable {
  /** Over the table; empty for none. */
  readonly heading: string
  /** What boxes are named after: the part, or the section of the steps. */
  readonly name: string
  /** `Row` or `Round`; empty for steps. */
  readonly counting: string
  readonly columns: ChecklistColumns
  readonly lines: readonly CheckLine[]
}

/** From line to line, in mm. */
const pitch = 6.1
/** After every fifth row a middle rule and this much air. */
const fifth = { every: 5, air: 1 }
const baseline = pitch / 2 + 1.25
const headingHeight = lineHeight(styles.item) + 1

interface SetLine {
  readonly kind: 'row' | 'instruction'
  readonly line: CheckLine
  readonly words: readonly Line[]
  /** White under it, after every fifth row; no part of the row where it ends a page. */
  readonly air: number
  readonly height: number
}

/** Sets a table of a checklist; a part that a page holds is not parted. */
export function placeCheckTable(sheet: Sheet, table: CheckTable): void {
  let count = 0
  const lines = table.lines.map((line, at): SetLine => {
    if (line.kind === 'row') count += 1
    const words = line.kind === 'row' ? rowWords(line, table) : stepWords(line, table)
    const air = line.kind === 'row' && count % fifth.every === 0 && at < table.lines.length - 1 ? fifth.air : 0
    const kind = line.kind === 'step' && table.counting !== '' ? 'instruction' : 'row'
    return { kind, line, words, air, height: pitch + (words.length - 1) * lineHeight(styles.text) + air }
  })
  const heads = columnHeadsHeight(1)
  const above = (table.heading === '' ? 0 : headingHeight) + heads
  const whole = live.textBottom - live.top - above
  const all = above + lines.reduce((sum, { height }) => sum + height, 0)
  const gap = sheet.isFresh ? 0 : gaps.medium
  if (all > sheet.room - gap && all <= live.textBottom - live.top) sheet.newPage()
  const here = sheet.isFresh ? 0 : gap
  const pages = paginateRows(lines, { first: sheet.room - here - above, whole, note: 0 })
  let body: Tag | undefined
  for (const [at, { from, to, onNewPage }] of pages.entries()) {
    if (onNewPage && !sheet.isFresh) sheet.newPage()
    else if (at === 0) sheet.y += here
    if (at === 0) placeHeading(sheet, table)
    else placeContinued(sheet, table)
    body = placePage(sheet, table, { lines: lines.slice(from, to), body })
  }
}

function placeHeading(sheet: Sheet, { heading, name }: CheckTable): void {
  sheet.bookmark(heading === '' ? name : heading)
  if (heading === '') return
  const tag = sheet.tag(sheet.root, 'H2')
  const [line] = textLines(heading, styles.item, liveWidth)
  if (line) sheet.text(tag, line, styles.item, live.left, sheet.y + baselineIn(styles.item))
  sheet.y += headingHeight
}

/** A sheet that has gone astray says whose rows it has. It repeats what has been said, so it is not part of what is read out. */
function placeContinued(sheet: Sheet, { heading }: CheckTable): void {
  if (heading === '') return
  const [line] = textLines(`${heading}, continued`, styles.item, liveWidth)
  if (line) sheet.text('pagination', line, styles.item, live.left, sheet.y + baselineIn(styles.item))
  sheet.y += headingHeight
}

function placePage(sheet: Sheet, table: CheckTable, { lines, body: known }: { lines: readonly SetLine[]; body: Tag | undefined }): Tag {
  const element = known ? undefined : sheet.tag(sheet.root, 'Table')
  placeColumnHeads(sheet, element ? sheet.tag(element, 'THead') : 'pagination', headsOf(table))
  const body = known ?? sheet.tag(element as Tag, 'TBody')
  for (const [at, line] of lines.entries()) {
    placeLine(sheet, body, line, table)
    const isLast = at === lines.length - 1
    sheet.y += line.height - (isLast ? line.air : 0)
    if (!isLast) placeRule(sheet, line)
  }
  sheet.rule(sheet.y, weights.heavy)
  return body
}

/** Under a row a hair rule; under every fifth a middle one, over its air. */
function placeRule(sheet: Sheet, { air }: SetLine): void {
  sheet.rule(sheet.y - air, air > 0 ? weights.middle : weights.hair)
}

function headsOf({ counting, name, columns }: CheckTable): readonly ColumnHead[] {
  const head = (text: string) => (text === '' ? [] : [oneLine(text, styles.columnHead)])
  const isSteps = counting === ''
  const [title] = textLines(isSteps ? name : 'Work', styles.columnHead, columns.work.end - columns.work.start)
  return [
    { lines: head(counting), to: columns.number },
    ...(columns.side === undefined ? [] : [{ lines: head('Side'), at: columns.side }]),
    { lines: title ? [title] : [], at: columns.work.start },
    { lines: isSteps ? [] : head('Change'), to: columns.change },
    { lines: isSteps ? [] : head('Stitches'), to: columns.stitches },
    ...columns.copies.map((right, at) => ({ lines: head(String(at + 1)), to: right - 1.5 })),
  ]
}

/** More lines than these are no line of a checklist: the row itself is the place to read them. */
const mostLines = 6

/** The work in one line; else what row it is worked as, the work in a few lines, or where it is to be read. Never smaller, never cut. */
function rowWords({ first, work, instead, isCopy, model }: CheckRow, { columns, name }: CheckTable): readonly Line[] {
  const set = (text: string) => breakLines(
    [...(first === '' ? [] : [{ text: `${first} `, font: styles.item.font }]), { text, font: styles.text.font, ...(isCopy && text === instead ? { href: `#${anchorOf(name, model ?? '')}` } : {}) }], { size: styles.text.size, width: columns.work.end - columns.work.start },
  )
  const own = set(work)
  return own.length === 1 || own.length <= mostLines && !isCopy ? own : set(instead).slice(0, 1)
}

function stepWords({ text }: CheckStep, { columns }: CheckTable): readonly Line[] {
  return textLines(text, styles.text, columns.stitches - (columns.side ?? columns.work.start))
}

/** Where a row of a part stands in the list. */
const anchorOf = (name: string, label: string) => `${name} ${label}`

function placeLine(sheet: Sheet, body: Tag, { line, words }: SetLine, { columns, name, counting }: CheckTable): void {
  if (line.kind === 'row') sheet.anchor(anchorOf(name, line.label))
  const row = sheet.tag(body, 'TR')
  const y = sheet.y + baseline
  const head = sheet.tag(row, line.label === '' ? 'TD' : 'TH', line.label === '' ? {} : { scope: 'Row' })
  if (line.label !== '') sheet.textTo(head, oneLine(line.label, styles.rowNumber), styles.rowNumber, columns.number, y)
  if (line.kind === 'row') placeRow(sheet, row, { line, words, y, columns })
  else {
    const cell = sheet.tag(row, 'TD', { colSpan: columns.side === undefined ? 3 : 4 })
    for (const [at, text] of words.entries()) sheet.text(cell, text, styles.text, columns.side ?? columns.work.start, y + at * lineHeight(styles.text))
  }
  const what = line.kind === 'row' ? `${counting} ${line.label}` : line.label === '' ? textStart(line.text) : `step ${line.label}`
  for (const [at, right] of columns.copies.entries()) {
    sheet.box(sheet.tag(row, 'TD'), boxLeft(right), sheet.y + (pitch - pencilBox.side) / 2, pencilBox, `${name}, ${what}, copy ${at + 1}`)
  }
}

/** The first words of an instruction: enough to know it by. */
const textStart = (text: string) => text.split(/\s+/).slice(0, 6).join(' ')

function placeRow(sheet: Sheet, row: Tag, { line, words, y, columns }: { line: CheckRow; words: readonly Line[]; y: number; columns: ChecklistColumns }): void {
  if (columns.side !== undefined) {
    const cell = sheet.tag(row, 'TD')
    if (line.side !== '') sheet.text(cell, oneLine(line.side, styles.side), styles.side, columns.side, y)
  }
  const work = sheet.tag(row, 'TD')
  for (const [at, text] of words.entries()) sheet.text(work, text, styles.text, columns.work.start, y + at * lineHeight(styles.text))
  const change = sheet.tag(row, 'TD')
  if (line.change !== '') sheet.textTo(change, oneLine(line.change, styles.figure), styles.figure, columns.change, y)
  sheet.textTo(sheet.tag(row, 'TD'), oneLine(line.stitches, styles.rowNumber), styles.rowNumber, columns.stitches, y)
}
