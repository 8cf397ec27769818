import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/** A finished measurement or an amount of yarn that goes up and down again with the sizes. */
export function sizeListOrder(facts: SenseFacts): readonly Diagnostic[] {
  const { sizes, finished, materials } = facts.pattern
  const lists = [
    ...finished.map(({ is }, index) => ({ values: is, path: `finished.${index}.is`, unit: 'cm' })),
    ...(materials?.yarns ?? []).map(({ needs }, index) => ({ values: needs, path: `materials.yarns.${index}.needs`, unit: 'g' })),
  ]
  return lists.flatMap(({ values, path, unit }): readonly Diagnostic[] => {
    const steps = values.slice(1).map((value, at) => Math.sign(value - values[at]!))
    if (sizes.length < 3 || values.length !== sizes.length || !(steps.includes(1) && steps.includes(-1))) return []
    const up = steps.filter((step) => step > 0).length >= steps.filter((step) => step < 0).length
    const at = steps.indexOf(up ? -1 : 1)
    return [{
      code: 'size-list-order',
      message: `${plainNumber(values[at + 1]!)} ${unit} for size ${sizes[at + 1]} stands after ${plainNumber(values[at]!)} ${unit} for size ${sizes[at]}`,
      primary: { span: placeOfKey(facts, path), text: 'not in the order of the sizes' },
      secondary: [],
    }]
  })
}
