import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { widthOf } from '../../measures/size.ts'
import { cmFromInches } from '../../measures/units.ts'
import { holds, yarnWeight, yarnWeightLabel } from '../../measures/yarn-weights.ts'
import { allWords, placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/** Stitches that lie about as wide as a single crochet, in which the table is given. */
const likeSc = new Set(['sc', 'hdc', 'dc'])
const slack = { below: 0.6, above: 1.5 }

/** Stitches over 4 in far outside what the published table gives for the yarn's weight. Lace is measured otherwise and left alone. */
export function gaugeOutsideWeight(facts: SenseFacts): readonly Diagnostic[] {
  const { gauge, materials } = facts.pattern
  const weights = [...new Set((materials?.yarns ?? []).flatMap(({ weight }) => weight ?? []))]
  if (!gauge || !likeSc.has(gauge.stitch ?? '') || weights.length === 0 || weights.includes(0)) return []
  if (/\b(?:strands|held? (?:double|doubled|together))\b/i.test(allWords(facts))) return []
  const over4in = cmFromInches(4) / widthOf(1, gauge)
  const fits = weights.some((number) => {
    const weight = yarnWeight(number)
    return weight && [weight.gauge, ...weight.alternatives.flatMap((edition) => edition.gauge ?? [])]
      .some(({ from = 0, to = Infinity }) => holds({ from: from * slack.below, to: to * slack.above }, over4in))
  })
  if (fits) return []
  const number = weights[0]!
  const { from, to } = yarnWeight(number)?.gauge ?? {}
  return [{
    code: 'gauge-outside-weight',
    message: `${plainNumber(over4in)} stitches over 4 in are far from what yarn of weight ${yarnWeightLabel(number)} gives`,
    primary: { span: placeOfKey(facts, 'gauge.sts', 'gauge'), text: `${plainNumber(gauge.sts, 2)} over ${plainNumber(gauge.over)} cm` },
    secondary: [],
    note: `the published table gives ${from === undefined ? `${to} and fewer` : `${from} to ${to}`} sc over 4 in for this weight (a guideline of the Craft Yarn Council, www.YarnStandards.com); ${plainNumber((from ?? 0) * slack.below)} to ${plainNumber((to ?? 0) * slack.above)} are let pass`,
  }]
}
