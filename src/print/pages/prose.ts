import type { Block, Inline, Section } from '../../booklet/booklet.ts'
import { gaps, live, proseWidth } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line, type Span } from '../type/break-lines.ts'
import type { FontRole } from '../type/fonts.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { oneLine, placeHead } from './heads.ts'

/** How prose is set: faces for the text and for what is stressed in it, the indent of lists and the gaps between blocks in mm. */
export interface ProseSetting {
  readonly text: TypeStyle
  readonly subhead: TypeStyle
  /** Numbers of an ordered list. */
  readonly label: TypeStyle
  readonly strong: FontRole
  readonly emphasis: FontRole
  readonly width: number
  readonly listIndent: number
  readonly between: number
  /** What a text is changed to before it is set. */
  readonly said: (text: string) => string
}

const printed: ProseSetting = {
  text: styles.text, subhead: styles.subhead, label: styles.amount, strong: 'textStrong', emphasis: 'textItalic', width: proseWidth, listIndent: 6.5, between: gaps.under,
  said: (text) => text,
}

/** Sets a headed piece of prose: Notes, Finishing and the like. Lines are short enough to be read. */
export function placeSection(sheet: Sheet, section: Section): void {
  placeHead(sheet, section.heading, { follows: gaps.small + leadHeight(section.blocks, printed) })
  sheet.y += gaps.small
  placeBlocks(sheet, sheet.root, section.blocks, printed)
}

/** How much of the blocks must stand under their head: three lines, and of a list that begins them an entry and the begin of the next. */
export function leadHeight([first]: readonly Block[], setting: ProseSetting): number {
  const line = lineHeight(setting.text)
  if (first?.kind !== 'list') return 3 * line
  const [one, two] = [first.items[0] ?? [], first.items[1]]
  const lines = itemLines(one, setting.listIndent, setting) + (two === undefined ? 0 : firstLines(two, setting.listIndent, setting))
  return Math.max(3, Math.min(lines, mostTogether)) * line + gaps.tiny
}

/** Sets blocks one under the other, `indent` mm from the left margin. */
export function placeBlocks(sheet: Sheet, parent: Tag, blocks: readonly Block[], setting: ProseSetting, indent = 0): void {
  for (const [at, block] of blocks.entries()) {
    if (at > 0) sheet.y += sheet.isFresh ? 0 : setting.between
    if (block.kind === 'list') placeList(sheet, parent, block, setting, indent)
    else if (block.kind === 'subheading') placeSubheading(sheet, parent, block.inlines, setting, indent)
    else placeParagraph(sheet, sheet.tag(parent, 'P'), spansOf(block.inlines, setting.text.font, setting), { indent, style: setting.text, width: setting.width })
  }
}

function placeSubheading(sheet: Sheet, parent: Tag, inlines: readonly Inline[], setting: ProseSetting, indent: number): void {
  const height = lineHeight(setting.subhead)
  sheet.makeRoom(height + gaps.tiny + 2 * lineHeight(setting.text), gaps.small)
  placeParagraph(sheet, sheet.tag(parent, 'H3'), spansOf(inlines, setting.subhead.font, setting), { indent, style: setting.subhead, width: setting.width })
}

/** Sets a paragraph, going on to the next page if it must; no single line is left behind or carried over alone. */
export function placeParagraph(
  sheet: Sheet, tag: Tag, spans: readonly Span[],
  { indent = 0, style = styles.text, width = proseWidth }: { indent?: number; style?: TypeStyle; width?: number } = {},
): void {
  const lines = breakLines(spans, { size: style.size, width: width - indent })
  const height = lineHeight(style)
  for (const [at, line] of lines.entries()) {
    if (togetherFrom(at, lines.length) * height > sheet.room && !sheet.isFresh) sheet.newPage()
    placeLine(sheet, tag, line, style, live.left + indent)
  }
}

/** How many lines must stand together from a line on: two at the start of a paragraph and two at its end, so three stay whole. */
function togetherFrom(at: number, count: number): number {
  if (at === 0) return count <= 3 ? count : 2
  return at === 1 || at === count - 1 ? 0 : Math.min(2, count - at)
}

function placeLine(sheet: Sheet, tag: Tag, line: Line, style: TypeStyle, x: number): void {
  const linked = line.runs.some(({ href }) => href !== undefined)
  if (!linked) sheet.text(tag, line, style, x, sheet.y + baselineIn(style))
  else {
    for (const run of line.runs) {
      const place = run.href === undefined ? tag : sheet.tag(tag, 'Link', { href: run.href })
      sheet.text(place, { runs: [run], width: run.x + run.width }, style, x, sheet.y + baselineIn(style))
    }
  }
  sheet.y += lineHeight(style)
}

function placeList(sheet: Sheet, parent: Tag, list: Extract<Block, { kind: 'list' }>, setting: ProseSetting, indent: number): void {
  const { text, listIndent } = setting
  const tag = sheet.tag(parent, 'L', { numbering: list.ordered ? 'Decimal' : 'None' })
  for (const [at, item] of list.items.entries()) {
    if (at > 0 && !sheet.isFresh) sheet.y += gaps.tiny
    const entry = sheet.tag(tag, 'LI')
    const label = oneLine(list.ordered ? `${at + 1}.` : '–', list.ordered ? setting.label : text)
    const last = at === list.items.length - 2 ? itemLines(list.items[at + 1] ?? [], indent + listIndent, setting) : 0
    const own = itemLines(item, indent + listIndent, setting)
    // The last entry is not left alone on a page of its own: the one before it goes along.
    const together = last > 0 && own + last <= mostTogether ? own + last : firstLines(item, indent + listIndent, setting)
    if (together * lineHeight(text) + (last > 0 ? gaps.tiny : 0) > sheet.room && !sheet.isFresh) sheet.newPage()
    const y = sheet.y + baselineIn(text)
    const labelTag = sheet.tag(entry, 'Lbl')
    if (list.ordered) sheet.textTo(labelTag, label, setting.label, live.left + indent + listIndent - 2, y)
    else sheet.text(labelTag, label, text, live.left + indent + 1.5, y)
    const before = sheet.y
    placeBlocks(sheet, sheet.tag(entry, 'LBody'), item, setting, indent + listIndent)
    if (sheet.y === before) sheet.y += lineHeight(text)
  }
}

/** The most lines that are kept together for the sake of a list. */
const mostTogether = 9

/** All lines of a list's entry. */
function itemLines(item: readonly Block[], indent: number, setting: ProseSetting): number {
  return item.reduce((sum, block) => sum + (block.kind === 'list'
    ? block.items.reduce((lines, inner) => lines + itemLines(inner, indent + setting.listIndent, setting), 0)
    : breakLines(spansOf(block.inlines, setting.text.font, setting), { size: setting.text.size, width: setting.width - indent }).length), 0)
}

/** How many lines a list's entry must begin with, so that its label is not left behind. */
function firstLines([first]: readonly Block[], indent: number, setting: ProseSetting): number {
  if (first === undefined || first.kind === 'list') return 2
  return togetherFrom(0, breakLines(spansOf(first.inlines, setting.text.font, setting), { size: setting.text.size, width: setting.width - indent }).length)
}

/** Inlines as spans. On paper a link cannot be followed, so its address stands behind it. */
function spansOf(inlines: readonly Inline[], font: FontRole, setting: ProseSetting): readonly Span[] {
  return inlines.flatMap(({ text: written, strong, emphasis, href }): readonly Span[] => {
    const role: FontRole = strong ? setting.strong : emphasis ? setting.emphasis : font
    const text = setting.said(written)
    if (href === undefined || !/^(https?:|mailto:)/i.test(href)) return [{ text, font: role }]
    const address = href.replace(/^(https?:\/\/|mailto:)/i, '').replace(/\/$/, '')
    return [{ text, font: role, href }, ...(text.includes(address) ? [] : [{ text: ` (${address})`, font }])]
  })
}
