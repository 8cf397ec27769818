import type { Booklet, MaterialLine } from '../../booklet/booklet.ts'
import { gaps, live, liveWidth, mmPerPoint, weights } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { placeWindow, windowSide } from '../pages/gauge.ts'
import { lineHeight } from '../type/styles.ts'
import { inWords } from './in-words.ts'
import { large, largeBox, largeGaps, largeRules } from './large-styles.ts'
import { largeLines, linesOf, placeLargeHead, placeLines } from './large-text.ts'

const body = lineHeight(large.body)
const indent = 14

/** Sets the materials as a list with a box to tick for each thing, what to mind and where its names come from after it. */
export function placeLargeMaterials(sheet: Sheet, { materials, buying = [], cautions, credits }: Pick<Booklet, 'materials' | 'buying' | 'cautions' | 'credits'>): void {
  if (materials.length === 0 && cautions.length === 0 && credits.length === 0) return
  placeLargeHead(sheet, 'Materials', 3 * body)
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  for (const [at, line] of materials.entries()) {
    const item = linesOf(inWords(line.item), liveWidth - indent, large.strong)
    const words = materialWords(line).flatMap((text) => linesOf(text, liveWidth - indent))
    const height = (item.length + words.length) * body + 4
    const isFirst = at === 0
    if (height > sheet.room && !sheet.isFresh) sheet.newPage()
    else if (!isFirst) sheet.rule(sheet.y, largeRules.between)
    sheet.y += isFirst ? 0 : 2
    const entry = sheet.tag(list, 'LI')
    if (line.kind !== 'total') sheet.box(sheet.tag(entry, 'Lbl'), live.left, sheet.y + (body - largeBox.side) / 2, largeBox, `Materials, ${line.item}`)
    const text = sheet.tag(entry, 'LBody')
    placeLines(sheet, text, item, { style: large.strong, x: live.left + indent })
    placeLines(sheet, text, words, { x: live.left + indent })
    sheet.y += 2
  }
  for (const [head, notes] of [['Buying. ', buying], ['Safety. ', cautions], ['Sources. ', credits.length === 0 ? [] : [credits.join(' ')]]] as const) {
    for (const [at, note] of notes.entries()) {
      sheet.makeRoom(2 * body, largeGaps.between)
      const lead = at === 0 ? [{ text: head, font: large.strong.font }] : []
      placeLines(sheet, sheet.tag(sheet.root, 'P'), largeLines([...lead, { text: inWords(note), font: large.body.font }], liveWidth))
    }
  }
}

/** What a line of the table says, each cell a line of its own: what it is, what it is for, how much of it. */
function materialWords({ kind, make, for: use, amount, weight, ounces = '' }: MaterialLine): readonly string[] {
  const much = [...amount, weight, ounces].filter((text) => text !== '').map(inWords).join(', ')
  // `Or the size that gives the gauge` is no purpose, and the sum of all yarns has none.
  const purpose = kind === 'total' || /^or\b/i.test(use) ? inWords(use) : `For: ${inWords(use)}`
  return [...(make === undefined ? [] : [inWords(make)]), ...(use === '' ? [] : [purpose]), ...(much === '' ? [] : [`${/^\d+$/.test(much) ? 'Number' : 'Amount'}: ${much}`])]
}

/** Sets the gauge in words, and the window of 5 cm under them. */
export function placeLargeGauge(sheet: Sheet, { gauge, terms }: Pick<Booklet, 'gauge' | 'terms'>): void {
  if (!gauge) return
  const paragraphs = gauge.paragraphs.map((paragraph) => linesOf(inWords(paragraph), liveWidth))
  // The last words say what to do with the window: they are on its page.
  const withWindow = gauge.window === undefined ? 0 : (paragraphs.at(-1)?.length ?? 0) * body + largeGaps.between + windowSide + 1
  placeLargeHead(sheet, terms === 'UK' ? 'Tension' : 'Gauge', paragraphs.length === 1 ? Math.max(3 * body, withWindow) : 3 * body)
  for (const [at, lines] of paragraphs.entries()) {
    sheet.makeRoom(at === paragraphs.length - 1 ? withWindow : 0, at === 0 ? 0 : largeGaps.between)
    placeLines(sheet, sheet.tag(sheet.root, 'P'), lines)
  }
  if (!gauge.window) return
  sheet.makeRoom(windowSide + 1, largeGaps.between)
  placeWindow(sheet, gauge.window, { top: sheet.y, right: live.left + windowSide + (weights.window * mmPerPoint) / 2, style: large.small })
  sheet.y += windowSide + gaps.tiny
}

/** Sets each abbreviation with its meaning under it, and what it is in the other terms where that differs. */
export function placeLargeAbbreviations(sheet: Sheet, { abbreviations, terms }: Pick<Booklet, 'abbreviations' | 'terms'>): void {
  if (abbreviations.length === 0) return
  placeLargeHead(sheet, 'Abbreviations', 6 * body)
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  const order = { stitch: 0, word: 1, sign: 2 }
  for (const { us, uk, meaning } of abbreviations.toSorted((a, b) => order[a.kind] - order[b.kind])) {
    const [own, other] = terms === 'US' ? [us, `In UK terms: ${uk}.`] : [uk, `In US terms: ${us}.`]
    const words = linesOf(`${inWords(meaning)}.${us === uk ? '' : ` ${other}`}`, liveWidth - indent)
    if ((1 + words.length) * body > sheet.room && !sheet.isFresh) sheet.newPage()
    const entry = sheet.tag(list, 'LI')
    placeLines(sheet, sheet.tag(entry, 'Lbl'), linesOf(own, liveWidth, large.strong), { style: large.strong })
    placeLines(sheet, sheet.tag(entry, 'LBody'), words, { x: live.left + indent })
    sheet.y += 1.5
  }
}

/** Sets how each special stitch is worked. */
export function placeLargeSpecialStitches(sheet: Sheet, { specialStitches }: Pick<Booklet, 'specialStitches'>): void {
  if (specialStitches.length === 0) return
  placeLargeHead(sheet, 'Special stitches', 3 * body)
  for (const { abbr, name, how } of specialStitches) {
    if (3 * body > sheet.room && !sheet.isFresh) sheet.newPage()
    const paragraph = sheet.tag(sheet.root, 'P')
    placeLines(sheet, paragraph, linesOf(`${abbr}: ${name}.`, liveWidth, large.strong), { style: large.strong })
    placeLines(sheet, paragraph, linesOf(inWords(how), liveWidth))
    sheet.y += largeGaps.under
  }
}
