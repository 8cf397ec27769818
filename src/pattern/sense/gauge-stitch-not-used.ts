import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { wordFor } from '../../stitches/terms.ts'
import { baseOf } from './base-stitch.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A gauge in a stitch that no row has says nothing about the work. A stitch that is not in the table may be the pattern's own. */
export function gaugeStitchNotUsed(facts: SenseFacts): readonly Diagnostic[] {
  const { pattern, pieces } = facts
  const stitch = pattern.gauge?.stitch
  if (stitch === undefined || baseOf(stitch) === undefined) return []
  const rows = pieces.flatMap((piece) => piece.rows)
  if (rows.length === 0 || rows.some(({ uncounted }) => uncounted)) return []
  const used = new Set(rows.flatMap(({ kinds }) => Object.keys(kinds)).map((kind) => baseOf(kind) ?? kind))
  if (used.size === 0 || used.has(baseOf(stitch) ?? stitch)) return []
  return [{
    code: 'gauge-stitch-not-used',
    message: `the gauge is measured in ${wordFor(stitch, pattern.terms)}, but no row has that stitch`,
    primary: { span: placeOfKey(facts, 'gauge.stitch', 'gauge'), text: 'in no row' },
    secondary: [],
  }]
}
