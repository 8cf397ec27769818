import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { yarnWeightLabel } from '../../measures/yarn-weights.ts'
import { placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/**
 * Metres in 100 g by weight category, as a yarn shop's conversion chart prints them by trade name. Trade names are soft, and fibres
 * differ in weight: the figures only show that a digit slipped.
 */
const metresIn100g: Readonly<Record<number, readonly [number, number]>> = {
  1: [420, 580], 2: [260, 480], 3: [210, 250], 4: [130, 200], 5: [90, 120], 6: [40, 80],
}

/** Half the lower end and twice the upper one are let pass. */
const slack = 2

/** A ball whose length and weight do not go with the yarn's weight category: 1150 m for 115. */
export function ballOutsideWeight(facts: SenseFacts): readonly Diagnostic[] {
  return (facts.pattern.materials?.yarns ?? []).flatMap(({ weight, ball }, index): readonly Diagnostic[] => {
    const usual = weight === undefined ? undefined : metresIn100g[weight]
    if (!usual || !ball) return []
    const metres = (ball.metres * 100) / ball.grams
    if (metres >= usual[0] / slack && metres <= usual[1] * slack) return []
    return [{
      code: 'ball-outside-weight',
      message: `a ball of ${plainNumber(ball.metres)} m in ${plainNumber(ball.grams)} g is far from yarn of weight ${yarnWeightLabel(weight ?? 0)}`,
      primary: { span: placeOfKey(facts, `materials.yarns.${index}.ball`), text: `${plainNumber(metres, 0)} m in 100 g` },
      secondary: [],
      note: `shops sell yarn of this weight with about ${usual[0]} to ${usual[1]} m in 100 g (a yarn shop's chart, by trade name); nothing is said between half and double of that`,
    }]
  })
}
