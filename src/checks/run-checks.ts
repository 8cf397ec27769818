import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { patternChecks, pieceChecks, rowChecks } from './all-checks.ts'
import type { PatternFacts, PieceFacts } from './facts.ts'

/** Runs every check over a pattern in all its sizes. One slip, one finding: the same code at the same place is told once, with its sizes. */
export function runChecks(facts: PatternFacts, sizes: readonly string[]): readonly Diagnostic[] {
  const found = new Map<string, { readonly diagnostic: Diagnostic; readonly sizes: Set<number> }>()
  const note = (diagnostic: Diagnostic, size: number): void => {
    const { start, end } = diagnostic.primary.span
    const key = `${diagnostic.code} ${start} ${end}`
    const known = found.get(key)
    if (known) known.sizes.add(size)
    else found.set(key, { diagnostic, sizes: new Set([size]) })
  }
  for (const piece of facts.pieces) {
    for (const diagnostic of rowFindings(piece)) note(diagnostic, piece.size)
    for (const check of pieceChecks) for (const diagnostic of check(piece)) note(diagnostic, piece.size)
  }
  const across = patternChecks.flatMap((check) => check(facts))
  const told = [...found.values()].map(({ diagnostic, sizes: held }) =>
    held.size === Math.max(1, sizes.length) ? diagnostic : { ...diagnostic, sizes: [...held].sort((a, b) => a - b).map((size) => sizes[size] ?? '') })
  return [...told, ...across]
}

function rowFindings(piece: PieceFacts): readonly Diagnostic[] {
  const { source, lexicon, rows } = piece
  return rows.flatMap((row, index) => {
    const facts = { source, row, before: rows[index - 1], lexicon }
    for (const check of rowChecks) {
      const diagnostic = check(facts)
      if (diagnostic) return [diagnostic]
    }
    return []
  })
}
