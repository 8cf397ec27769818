import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A gauge that leaves out in which stitch, with which hook or in what state it was measured cannot be checked by the maker. */
export function gaugeIncomplete(facts: SenseFacts): readonly Diagnostic[] {
  const { gauge } = facts.pattern
  if (!gauge) return []
  const missing = [
    ...(gauge.stitch === undefined && !/\bpattern\b/i.test(gauge.after ?? '') ? ['`stitch`'] : []),
    ...(gauge.hook === undefined ? ['`hook`'] : []),
    ...(gauge.after === undefined ? ['`after`'] : []),
  ]
  if (missing.length === 0) return []
  return [{
    code: 'gauge-incomplete',
    message: `the gauge leaves out ${listOf(missing)}`,
    primary: { span: placeOfKey(facts, 'gauge'), text: `lacks ${listOf(missing)}` },
    secondary: [],
    note: 'a gauge is stitches and rows, over a distance, in a stitch, with a hook, as worked or washed',
  }]
}
