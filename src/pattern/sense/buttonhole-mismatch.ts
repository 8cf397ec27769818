import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { counted, listOf } from '../../diagnostics/words.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import { inSizeAt, labelAt, onlyIn, sizeCount, type SenseFacts } from './sense-facts.ts'

/** Rows that name their buttonholes, and another number of buttons in the list. Told once, with its sizes. */
export function buttonholeMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const notions = facts.pattern.materials?.notions ?? []
  const index = notions.findIndex(({ what, count }) => /\bbuttons?\b/i.test(what) && count !== undefined)
  const count = notions[index]?.count
  if (!count) return []
  const wrong = Array.from({ length: sizeCount(facts) }, (_, size) => size).flatMap((size) => {
    const rows = inSizeAt(facts, size).flatMap((piece) => piece.rows)
    const holes = rows.reduce((sum, row) => sum + holesIn(facts, row), 0)
    const buttons = count[size] ?? count[0] ?? 0
    return holes === 0 || holes === buttons ? [] : [{ size, holes, buttons, row: rows.find((row) => holesIn(facts, row) > 0)! }]
  })
  const first = wrong[0]
  if (!first) return []
  const name = facts.pattern.sizes[first.size]
  return [{
    code: 'buttonhole-mismatch',
    message: `the rows make ${counted(first.holes, 'buttonhole')}${name === undefined ? '' : ` in size ${name}`}, but the materials list ${first.buttons === 0 ? 'no button' : counted(first.buttons, 'button')}`,
    primary: { span: first.row.written.label, text: `${listOf(wrong.map(({ holes }) => String(holes)))} in all` },
    secondary: labelAt(facts, `materials.notions.${index}.count`, 'this many'),
    ...onlyIn(facts, wrong.map(({ size }) => size)),
  }]
}

/** Buttonholes that a row's words name, each as often as the repeats it stands in are worked. */
function holesIn({ pattern }: SenseFacts, { written, repeats }: WorkedRow): number {
  return [...textOf(pattern.source, written.text).matchAll(/\bbuttonhole\b/gi)].reduce((sum, { index }) => {
    const at = written.text.start + index
    return sum + repeats.filter(({ span }) => span.start <= at && at < span.end).reduce((times, repeat) => times * repeat.times, 1)
  }, 0)
}
