import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { Instruction } from '../../notation/syntax.ts'
import { allWords, placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A stitch that is defined and that no row and no note uses: left over from an earlier version, or spelt otherwise in the rows. */
export function specialStitchNotUsed(facts: SenseFacts): readonly Diagnostic[] {
  const used = new Set(facts.facts.flatMap(({ entries }) => entries.flatMap(({ read }) => stitchesIn(read.items))))
  const words = allWords(facts)
  return facts.pattern.stitches.flatMap(({ abbr, name }, index): readonly Diagnostic[] => {
    if (used.has(abbr) || [abbr, ...(name ? [name] : [])].some((word) => new RegExp(String.raw`(?<![\p{L}\d])${word.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}s?(?![\p{L}])`, 'iu').test(words))) return []
    return [{
      code: 'special-stitch-not-used',
      message: `\`${abbr}\` is defined, but no row uses it`,
      primary: { span: placeOfKey(facts, `stitches.${index}.abbr`, `stitches.${index}`), text: 'in no row' },
      secondary: [],
    }]
  })
}

function stitchesIn(items: readonly Instruction[]): readonly string[] {
  return items.flatMap((item) => (item.node === 'work' ? [item.stitch] : item.node === 'repeat' || item.node === 'group' ? stitchesIn(item.items) : []))
}
