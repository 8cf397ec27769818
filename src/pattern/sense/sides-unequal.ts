import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { isStitch, type Place } from '../../fabric/place.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { listOf } from '../../diagnostics/words.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A motif whose sides do not match: of four, one differs from the one across; of three, five or more, one differs from all others. Told once a piece. */
export function sidesUnequal(facts: SenseFacts): readonly Diagnostic[] {
  return facts.pieces.filter(({ size }) => size === facts.pattern.sizes[0]).flatMap(({ piece, rows }) => {
    for (const row of rows) {
      const sides = sidesOf(row)
      if (!sides || row.verdict !== 'adds-up' || !unequal(sides)) continue
      return [{
        code: 'sides-unequal',
        message: `the sides of ${piece.name} have ${listOf(sides.map(String))} stitches between their corners in ${row.word} ${row.number ?? ''}`.trim(),
        primary: { span: row.says?.span ?? row.written.label, text: `sides of ${listOf(sides.map(String))}` },
        secondary: [],
        note: 'a motif is joined side to side; sides that are to match have the same number of stitches',
      } satisfies Diagnostic]
    }
    return []
  })
}

/** Stitches between the corner spaces of a round; undefined when it has not at least three corners. */
function sidesOf({ word, fabric, uncounted }: WorkedRow): readonly number[] | undefined {
  if (word !== 'round' || uncounted) return undefined
  const { made } = fabric
  const corners = made.flatMap((place, index) => (isCorner(place) ? [index] : []))
  if (corners.length < 3 || corners.length > 8) return undefined
  return corners.map((at, index) => {
    const next = corners[index + 1]
    const between = next === undefined ? [...made.slice(at + 1), ...made.slice(0, corners[0])] : made.slice(at + 1, next)
    return between.filter((place) => isStitch(place) && !place.travel).length
  })
}

const isCorner = (place: Place): boolean => place.kind === 'space' && place.corner === true

function unequal(sides: readonly number[]): boolean {
  if (sides.length === 4) return sides[0] !== sides[2] || sides[1] !== sides[3]
  const counts = new Map<number, number>()
  for (const side of sides) counts.set(side, (counts.get(side) ?? 0) + 1)
  // A corner that was joined to another motif is no space, and leaves one side that is two.
  return counts.size === 2 && [...counts.values()].includes(1) && Math.max(...sides) < 1.5 * Math.min(...sides)
}
