import type { SpecialStitchText } from '../../booklet/booklet.ts'
import { gaps, live, liveWidth, weights } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { oneLine, placeHead } from './heads.ts'

const padding = { above: 1, below: 1.05 }

/** Sets how each special stitch of the pattern is worked: its abbreviation, its name, and the way. */
export function placeSpecialStitches(sheet: Sheet, stitches: readonly SpecialStitchText[]): void {
  if (stitches.length === 0) return
  const { text, wordStrong } = styles
  const labelWidth = Math.min(40, Math.max(28, ...stitches.map(({ abbr }) => oneLine(abbr, wordStrong).width + 3)))
  const rows = stitches.map(({ abbr, name, how }) => {
    const label = breakLines([{ text: abbr, font: wordStrong.font }], { size: wordStrong.size, width: labelWidth - 2 })
    const body = breakLines([{ text: `${name}. `, font: 'textStrong' }, { text: how, font: 'text' }], {
      size: text.size, width: Math.min(liveWidth - labelWidth, 128),
    })
    return { label, body, height: padding.above + Math.max(label.length, body.length) * lineHeight(text) + padding.below }
  })
  placeHead(sheet, 'Special stitches', { follows: gaps.under + Math.min(rows[0]?.height ?? 0, 60) })
  sheet.y += gaps.under
  sheet.rule(sheet.y, weights.heavy)
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  for (const [at, row] of rows.entries()) {
    if (row.height > sheet.room && !sheet.isFresh) {
      sheet.rule(sheet.y, weights.heavy)
      sheet.newPage()
      sheet.rule(sheet.y, weights.heavy)
    } else if (at > 0) sheet.rule(sheet.y, weights.hair)
    const entry = sheet.tag(list, 'LI')
    const baseline = sheet.y + padding.above + baselineIn(text)
    const label = sheet.tag(entry, 'Lbl')
    for (const [index, line] of row.label.entries()) sheet.text(label, line, wordStrong, live.left, baseline + index * lineHeight(text))
    const body = sheet.tag(entry, 'LBody')
    for (const [index, line] of row.body.entries()) sheet.text(body, line, text, live.left + labelWidth, baseline + index * lineHeight(text))
    sheet.y += row.height
  }
  sheet.rule(sheet.y, weights.heavy)
}
