import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { inSizeAt, sizeCount, type SenseFacts } from './sense-facts.ts'

/**
 * Sizes that end a flat piece on different sides, where another piece goes on from it: in some sizes its first row is worked on the
 * wrong side. Told once a piece.
 */
export function sizesEndApart(facts: SenseFacts): readonly Diagnostic[] {
  const { pattern } = facts
  if (pattern.sizes.length < 2) return []
  return pattern.pieces.flatMap(({ name }, index): readonly Diagnostic[] => {
    const after = pattern.pieces.find((piece) => piece.on === name && !joinedAnew(facts, piece.name))
    const ends = Array.from({ length: sizeCount(facts) }, (_, size) => inSizeAt(facts, size)[index]?.rows ?? [])
    if (!after || ends.some((rows) => rows.length === 0 || rows.some(({ word, verdict }) => word !== 'row' || verdict === 'cannot-tell'))) return []
    const counts = ends.map((rows) => rows.filter(({ number }) => number !== undefined).length)
    const odd = counts.flatMap((count, size) => (count % 2 === 1 ? [size] : []))
    if (odd.length === 0 || odd.length === counts.length) return []
    const named = (sizes: readonly number[]): string => `${sizes.length === 1 ? 'size' : 'sizes'} ${listOf(sizes.map((size) => pattern.sizes[size] ?? ''))}`
    const even = counts.flatMap((count, size) => (count % 2 === 0 ? [size] : []))
    const last = ends[0]!.at(-1)!
    return [{
      code: 'sizes-end-apart',
      message: `${named(even)} ${even.length === 1 ? 'ends' : 'end'} ${name} after an even number of rows and ${named(odd)} after an odd one, so ${after.name} begins on different sides`,
      primary: { span: last.written.label, text: `${listOf(counts.map(String))} rows` },
      secondary: [{ span: after.nameSpan, text: 'goes on from there' }],
    }]
  })
}

/** `With RS facing, rejoin yarn to first foundation ch`: the maker turns the piece as she is told. */
function joinedAnew({ facts }: SenseFacts, name: string): boolean {
  const [first] = facts.find((piece) => piece.name === name)?.entries ?? []
  return first?.read.items.some(({ node }) => node === 'start') === true
}
