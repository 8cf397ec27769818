import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PatternFacts } from './facts.ts'

/** Where rows name their yarns, a listed yarn that none of them names is bought for nothing. */
export function yarnNotUsed({ pieces, yarns, source }: PatternFacts): readonly Diagnostic[] {
  if (!yarns || yarns.length < 2) return []
  const used = new Set(pieces.flatMap(({ rows }) => rows).flatMap((row) => row.yarns).map(({ yarn }) => yarn))
  if (used.size === 0) return []
  // The first yarn is often in hand from the start and never named; remarks and prose may name the others.
  return yarns
    .filter(({ letter }, index) => index > 0 && !used.has(letter) && !new RegExp(String.raw`\b(?:yarn|with|in|to|of|off|and|join)\s+${letter}\b`).test(source.text))
    .map(({ letter, span }): Diagnostic => ({
      code: 'yarn-not-used',
      message: `yarn ${letter} is listed, but no row uses it`,
      primary: { span, text: `yarn ${letter}` },
      secondary: [],
    }))
}
