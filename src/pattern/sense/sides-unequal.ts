import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { isStitch, type Place } from '../../fabric/place.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { listOf } from '../../diagnostics/words.ts'
import { toPublish, type SenseFacts } from './sense-facts.ts'

/** A square or rectangle worked from its middle whose side differs from the one across from it. Told once a piece. */
export function sidesUnequal(facts: SenseFacts): readonly Diagnostic[] {
  // In a draft a motif may be anything; one that goes out is joined to its like.
  if (!toPublish(facts)) return []
  return facts.pieces.filter(({ size }) => size === facts.pattern.sizes[0]).flatMap(({ piece, rows }) => {
    const rounds = rows.map((row) => ({ row, sides: sidesOf(row) })).filter(({ row }) => row.number !== undefined)
    // A ring in the middle, and four corners in every round from the first that has any.
    const from = rounds.findIndex(({ sides }) => sides.length > 0)
    if (from === -1 || rounds[0]!.row.offers > 8 || rounds.slice(from).some(({ sides }) => sides.length !== 4)) return []
    for (const { row, sides } of rounds.slice(from)) {
      if (row.verdict !== 'adds-up' || sides[0] === sides[2] && sides[1] === sides[3]) continue
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

/** Stitches between the corner spaces of a round. */
function sidesOf({ word, fabric, uncounted }: WorkedRow): readonly number[] {
  if (word !== 'round' || uncounted) return []
  const { made } = fabric
  const corners = made.flatMap((place, index) => (isCorner(place) ? [index] : []))
  return corners.map((at, index) => {
    const next = corners[index + 1]
    const between = next === undefined ? [...made.slice(at + 1), ...made.slice(0, corners[0])] : made.slice(at + 1, next)
    return between.filter((place) => isStitch(place) && !place.travel).length
  })
}

const isCorner = (place: Place): boolean => place.kind === 'space' && place.corner === true
