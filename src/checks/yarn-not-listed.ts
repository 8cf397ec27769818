import { listOf } from '../diagnostics/words.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PatternFacts } from './facts.ts'

/** Every yarn letter that a row names must stand in the materials. Told once a letter, where it is first used. */
export function yarnNotListed({ pieces, yarns }: PatternFacts): readonly Diagnostic[] {
  if (!yarns || yarns.length === 0) return []
  const listed = new Set(yarns.map(({ letter }) => letter))
  const found = new Map<string, Diagnostic>()
  for (const { yarn, span } of pieces.flatMap(({ rows }) => rows).flatMap((row) => row.yarns)) {
    if (listed.has(yarn) || found.has(yarn) || yarn === 'MC' && listed.has('A')) continue
    found.set(yarn, {
      code: 'yarn-not-listed',
      message: `yarn ${yarn} is used, but the materials list ${listOf([...listed])}`,
      primary: { span: { start: span.start, end: span.end }, text: `yarn ${yarn}` },
      secondary: [],
    })
  }
  return [...found.values()]
}
