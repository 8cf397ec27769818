import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { inSizeAt, placeOfKey, sizeCount, type SenseFacts } from './sense-facts.ts'

/** A size that has a quarter more stitches takes more yarn. Told where every yarn has one amount for at least three sizes. */
export function yarnSameForAllSizes(facts: SenseFacts): readonly Diagnostic[] {
  const yarns = facts.pattern.materials?.yarns ?? []
  const sizes = sizeCount(facts)
  const told = yarns.filter(({ needs }) => needs.length > 0)
  if (sizes < 3 || told.length === 0 || told.some(({ needs }) => new Set(needs).size > 1)) return []
  const stitches = (size: number): number => inSizeAt(facts, size).reduce((sum, { piece, rows }) => sum + piece.make * rows.reduce((all, { makes }) => all + makes, 0), 0)
  const smallest = stitches(0)
  const largest = stitches(sizes - 1)
  if (smallest === 0 || largest < smallest * 1.25) return []
  const { sizes: names } = facts.pattern
  return [{
    code: 'yarn-same-for-all-sizes',
    message: `all ${sizes} sizes are given the same amount of yarn, but ${names.at(-1)} has ${largest} stitches and ${names[0]} ${smallest}`,
    primary: { span: placeOfKey(facts, ...yarns.map((_, index) => `materials.yarns.${index}.needs`)), text: 'for every size' },
    secondary: [],
  }]
}
