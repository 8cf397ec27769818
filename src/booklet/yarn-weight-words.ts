import { yarnWeightLabel } from '../measures/yarn-weights.ts'

/** A yarn weight of the published table in words: `Medium (4)`. */
export function yarnWeightWords(weight: number): string {
  return yarnWeightLabel(weight)
}
