import type { Booklet, InstructionLine, Part } from '../../booklet/booklet.ts'
import { gaps, live, liveWidth, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import { headToRule, type Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { headBaseline, headLines, oneLine } from './heads.ts'
import { anchorOf, listedWords, partLineSpans } from './linked-words.ts'
import { cellCount, partColumns, type PartColumns } from './part-columns.ts'
import { partHeadsHeight, placePartHeads } from './part-heads.ts'
import { paginateRows } from './paginate-rows.ts'
import { partRow, placeRowBlock, rowBlock, type RowBlock, type RowLinks } from './row-block.ts'

interface InstructionBlock {
  readonly kind: 'instruction'
  readonly lines: readonly Line[]
  readonly above: number
  readonly height: number
}

type PartBlock = RowBlock | InstructionBlock

const aroundInstruction = { above: gaps.under, below: gaps.under }
/** Room for the note that says where a part goes on. */
const goesOnHeight = 1.2 + lineHeight(styles.note)
const afterNumber = 2.9
const besideHead = 4.4

/** Sets a part of the pattern: its head, and a table with a line for every row. */
export function placePart(sheet: Sheet, part: Part, booklet: Pick<Booklet, 'sizes' | 'abbreviations' | 'terms' | 'parts'>): void {
  const { sizes } = booklet
  const links: RowLinks = { words: listedWords(booklet), linked: new Set() }
  const columns = partColumns(part, sizes.length)
  const head = partHead(part, booklet.parts)
  const heads = partHeadsHeight(columns, part, sizes)
  const pageRoom = live.textBottom - live.top
  const continued = headToRule + heads
  const whole = pageRoom - Math.max(head.height + heads, continued)
  const blocks = part.lines.flatMap((line, at): readonly PartBlock[] =>
    line.kind === 'instruction' ? [instructionBlock(line, part.lines[at - 1]?.kind === 'instruction', at === part.lines.length - 1)] : partRow(rowBlock(line, columns, links), whole - goesOnHeight))
  const gap = sheet.isFresh ? 0 : gaps.part
  const pages = paginateRows(blocks, { first: sheet.room - gap - head.height - heads, whole, note: goesOnHeight })
  const context = { part, columns, sizes, blocks }
  let body: Tag | undefined
  for (const [at, page] of pages.entries()) {
    if (page.onNewPage && !sheet.isFresh) sheet.newPage()
    else if (at === 0) sheet.y += gap
    if (at === 0) placeHead(sheet, part, head)
    else placeContinuedHead(sheet, part)
    body = placeRange(sheet, context, page, body)
    if (at < pages.length - 1) placeGoesOn(sheet, part, blocks.slice(0, page.to))
  }
  if (pages.length === 0) {
    if (head.height > sheet.room && !sheet.isFresh) sheet.newPage()
    placeHead(sheet, part, head)
  }
}

/** The last words of a part need no air under them: what comes next brings its own. */
function instructionBlock(line: InstructionLine, followsWords: boolean, isLast: boolean): InstructionBlock {
  const spans = line.text.map((run) => ({ text: run.text, repeat: run.repeat, font: styles.text.font }))
  const lines = breakLines(spans, { size: styles.text.size, width: liveWidth })
  const above = followsWords ? 0 : aroundInstruction.above
  const below = isLast ? 0 : aroundInstruction.below
  return { kind: 'instruction', lines, above, height: above + lines.length * lineHeight(styles.text) + below }
}

interface PartHead {
  readonly number: Line | undefined
  /** Where the name stands after the number, and the part line after the name, in mm from the margin. */
  readonly indent: number
  readonly start: number
  readonly name: readonly Line[]
  readonly line: readonly Line[]
  /** Whether the part line stands on the last baseline of the head. */
  readonly beside: boolean
  readonly height: number
}

function partHead(part: Part, parts: readonly Part[]): PartHead {
  const [number] = headLines(`${part.number} `)
  const indent = (number?.width ?? 0) + afterNumber
  const name = headLines(part.name, liveWidth - indent)
  const start = indent + (name.at(-1)?.width ?? 0) + besideHead
  const spans = partLineSpans(part, parts, styles.partLine.font)
  const whole = breakLines(spans, { size: styles.partLine.size, width: Number.POSITIVE_INFINITY })[0] ?? oneLine('', styles.partLine)
  const beside = whole.width <= liveWidth - start
  const line = part.line === '' ? [] : beside ? [whole] : breakLines(spans, { size: styles.partLine.size, width: liveWidth })
  const under = beside ? 0 : line.length * lineHeight(styles.partLine) + 0.6
  return { number, indent, name, line, beside, start, height: (name.length - 1) * lineHeight(styles.head) + headToRule + under }
}

function placeHead(sheet: Sheet, part: Part, head: PartHead): void {
  sheet.bookmark(`${part.number} ${part.name}`)
  sheet.anchor(anchorOf.part(part.number))
  const tag = sheet.tag(sheet.root, 'H2')
  let y = sheet.y + headBaseline
  if (head.number) sheet.text(tag, head.number, styles.head, live.left, y)
  for (const [at, line] of head.name.entries()) {
    if (at > 0) y += lineHeight(styles.head)
    sheet.text(tag, line, styles.head, live.left + head.indent, y)
  }
  if (head.line.length > 0) {
    const paragraph = sheet.tag(sheet.root, 'P')
    if (head.beside) sheet.text(paragraph, head.line[0] as Line, styles.partLine, live.left + head.start, y)
    else {
      const top = y - headBaseline + lineHeight(styles.head)
      for (const [at, line] of head.line.entries()) {
        sheet.text(paragraph, line, styles.partLine, live.left, top + at * lineHeight(styles.partLine) + baselineIn(styles.partLine))
      }
    }
  }
  sheet.y += head.height
}

/** The head of a page on which a part goes on. It repeats what has been said, so it is not part of what is read out. */
function placeContinuedHead(sheet: Sheet, part: Part): void {
  const [line] = headLines(`${part.name}, continued`, Number.POSITIVE_INFINITY)
  const fitting = line && line.width <= liveWidth ? line : headLines(`Part ${part.number}, continued`)[0]
  if (fitting) sheet.text('pagination', fitting, styles.head, live.left, sheet.y + headBaseline)
  sheet.y += headToRule
}

function placeGoesOn(sheet: Sheet, part: Part, done: readonly PartBlock[]): void {
  const last = done.findLast((block) => block.kind === 'row')
  const share = last?.kind === 'row' ? Math.round(last.row.progress * 100) : 0
  const progress = share > 0 && share < 100 ? `; ${share}% of its stitches are done` : ''
  const note = oneLine(`Part ${part.number} continues on page ${sheet.page + 2}${progress}`, styles.note)
  sheet.text('pagination', note, styles.note, live.left, sheet.y + 1.2 + baselineIn(styles.note))
}

interface Context {
  readonly part: Part
  readonly columns: PartColumns
  readonly sizes: Booklet['sizes']
  readonly blocks: readonly PartBlock[]
}

/** Sets the blocks of one page. Gives the body of the table, which goes on on the next page. */
function placeRange(sheet: Sheet, context: Context, { from, to }: { from: number; to: number }, known: Tag | undefined): Tag | undefined {
  const { part, columns, sizes, blocks } = context
  let body = known
  /** Top of the stretch of table that is open, for the Pencil rule. */
  let open: number | undefined
  let ruled = true
  const close = () => {
    if (open === undefined) return
    sheet.rule(sheet.y, weights.heavy)
    if (columns.pencil) sheet.line({ x1: columns.pencil.rule, y1: open, x2: columns.pencil.rule, y2: sheet.y }, weights.hair)
    open = undefined
  }
  let headed = false
  for (let at = from; at < to; at++) {
    const block = blocks[at] as PartBlock
    if (block.kind === 'instruction') {
      close()
      placeInstruction(sheet, block, at + 1 < blocks.length ? body : undefined, columns)
      continue
    }
    if (open === undefined) {
      open = sheet.y
      if (!headed) {
        const table = body ? undefined : sheet.tag(sheet.root, 'Table')
        placePartHeads(sheet, table ? sheet.tag(table, 'THead') : 'pagination', { columns, part, sizes })
        if (table) body = sheet.tag(table, 'TBody')
      } else sheet.rule(sheet.y, weights.heavy)
      headed = true
      ruled = true
    }
    if (!ruled) sheet.rule(sheet.y, weights.hair)
    ruled = false
    placeRowBlock(sheet, body as Tag, block, { columns, part })
  }
  close()
  return body
}

/** Something to do between rows: words at the left margin, outside the columns. */
function placeInstruction(sheet: Sheet, block: InstructionBlock, body: Tag | undefined, columns: PartColumns): void {
  const cell = body ? sheet.tag(sheet.tag(body, 'TR'), 'TD', { colSpan: cellCount(columns) }) : sheet.root
  const paragraph = sheet.tag(cell, 'P')
  const top = sheet.y + block.above + baselineIn(styles.text)
  for (const [at, line] of block.lines.entries()) sheet.text(paragraph, line, styles.text, live.left, top + at * lineHeight(styles.text))
  sheet.y += block.height
}
