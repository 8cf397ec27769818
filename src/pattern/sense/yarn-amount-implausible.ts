import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { widthOf } from '../../measures/size.ts'
import { heightOf } from './base-stitch.ts'
import { inSizeAt, onlyIn, placeOfKey, plainNumber, sizeCount, type SenseFacts } from './sense-facts.ts'

/**
 * Yarn in a stitch, in widths of a stitch, by the chains that it stands high: measured by one estimator's swatches in worsted yarn
 * (10.6, 15.7 and 20.4 in of yarn for each inch of a row of sc, hdc and dc); taller stitches go on in the same steps. Chains and slip
 * stitches take about 5 a width.
 */
const widthsOfYarn: readonly number[] = [5, 10.6, 15.7, 20.4, 27, 33, 39]

/** Told only where the amount is less than a third or more than three times the estimate: that is a digit, not a loose hand. */
const slack = 3

/** Yarn that the stitches cannot take, or cannot do with: 580 g for a hat. */
export function yarnAmountImplausible(facts: SenseFacts): readonly Diagnostic[] {
  const { gauge, materials } = facts.pattern
  const yarns = materials?.yarns ?? []
  if (!gauge || yarns.length === 0 || yarns.some(({ ball, needs }) => !ball || needs.length === 0)) return []
  const wrong = Array.from({ length: sizeCount(facts) }, (_, size) => size).flatMap((size) => {
    const pieces = inSizeAt(facts, size)
    if (pieces.some(({ rows }) => rows.length === 0 || rows.some(({ uncounted }) => uncounted))) return []
    const metres = yarns.reduce((sum, { ball, needs }) => sum + ((needs[size] ?? needs[0] ?? 0) * ball!.metres) / ball!.grams, 0)
    const widths = pieces.reduce((sum, { piece, rows }) => sum + piece.make * rows.reduce((all, { kinds }) =>
      all + Object.entries(kinds).reduce((row, [kind, count]) => row + count * (widthsOfYarn[heightOf(kind)] ?? 39), 0), 0), 0)
    // Small things are given by the ball that is bought for them.
    const spare = yarns.reduce((sum, { ball }) => sum + ball!.metres, 0)
    const estimate = (widths * widthOf(1, gauge)) / 100
    return estimate < 5 || metres >= estimate / slack && metres - spare <= estimate * slack ? [] : [{ size, metres, estimate }]
  })
  const first = wrong[0]
  if (!first) return []
  const size = facts.pattern.sizes[first.size]
  return [{
    code: 'yarn-amount-implausible',
    message: `the materials give ${plainNumber(first.metres, 0)} m of yarn${size === undefined ? '' : ` for size ${size}`}, but the stitches take about ${plainNumber(first.estimate, 0)} m at the gauge`,
    primary: { span: placeOfKey(facts, 'materials.yarns.0.needs', 'materials.yarns'), text: `${plainNumber(first.metres, 0)} m ${yarns.length > 1 ? 'in all yarns' : 'in all'}` },
    secondary: [],
    note: 'reckoned from the gauge and a published table of measured swatches; a third to three times the estimate, and a ball of each yarn besides, are let pass',
    ...onlyIn(facts, wrong.map(({ size: held }) => held)),
  }]
}
