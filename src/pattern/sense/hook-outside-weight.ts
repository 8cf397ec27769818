import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { holds, hooksOf, yarnWeight, yarnWeightLabel, type Range } from '../../measures/yarn-weights.ts'
import { placeOfKey, plainNumber, allWords, type SenseFacts } from './sense-facts.ts'

/** How far outside the published range a hook may lie before anything is said: toys are worked tighter, shawls looser than the table. */
const slack = { below: 0.6, above: 1.5 }

/** A hook far outside what the published table pairs with the yarn's weight: a digit slipped, or a weight. Lace is worked with any hook. */
export function hookOutsideWeight(facts: SenseFacts): readonly Diagnostic[] {
  const { materials, gauge } = facts.pattern
  const weights = [...new Set((materials?.yarns ?? []).flatMap(({ weight }) => weight ?? []))].filter((weight) => weight > 0)
  const hook = gauge?.hook ?? (materials?.hooks.length === 1 ? materials.hooks[0] : undefined)
  if (weights.length === 0 || hook === undefined || severalStrands(facts)) return []
  if (weights.some((number) => rangesOf(number).some((range) => holds(widened(range), hook)))) return []
  const number = weights[0]!
  const span = placeOfKey(facts, gauge?.hook === undefined ? 'materials.hooks' : 'gauge.hook')
  return [{
    code: 'hook-outside-weight',
    message: `a hook of ${plainNumber(hook, 2)} mm is far from what yarn of weight ${yarnWeightLabel(number)} is worked with`,
    primary: { span, text: `${plainNumber(hook, 2)} mm` },
    secondary: [],
    note: `the published table pairs this weight with ${rangeText(yarnWeight(number)?.hook ?? {})} (a guideline of the Craft Yarn Council, www.YarnStandards.com); ${rangeText(rounded(widened(yarnWeight(number)?.hook ?? {})))} is let pass`,
  }]
}

function rangesOf(number: number): readonly Range[] {
  const weight = yarnWeight(number)
  return weight ? hooksOf(weight) : []
}

function widened({ from, to }: Range): Range {
  return { ...(from !== undefined && { from: from * slack.below }), ...(to !== undefined && { to: to * slack.above }) }
}

function rounded({ from, to }: Range): Range {
  return { ...(from !== undefined && { from: Number(from.toFixed(1)) }), ...(to !== undefined && { to: Number(to.toFixed(1)) }) }
}

/** A range in millimetres, as a sentence has it. */
function rangeText({ from, to }: Range): string {
  if (to === undefined) return `${from} mm and larger`
  return from === to ? `${from} mm` : `${from} to ${to} mm`
}

/** Yarn held double is as thick as a heavier one. */
function severalStrands(facts: SenseFacts): boolean {
  return /\b(?:held? (?:double|doubled|together|triple)|(?:two|2|three|3) strands|doubled?[ -]strand|yarn double|double yarn)\b/i.test(allWords(facts))
}
