import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import { inSizeAt, type SenseFacts } from './sense-facts.ts'

/** A right piece copied from the left one, its shaping still at the same edge. Told where every row has the same words and one of them is lopsided. */
export function sidesShapedAlike(facts: SenseFacts): readonly Diagnostic[] {
  const pieces = inSizeAt(facts)
  return pieces.flatMap(({ piece, rows }, index): readonly Diagnostic[] => {
    const other = pieces.slice(0, index).find((before) => isOtherSide(piece.name, before.piece.name))
    if (!other || !sameWords(facts, rows, other.rows)) return []
    const lopsided = rows.find((row) => row.number !== undefined && shapedOnOneSide(row))
    if (!lopsided) return []
    return [{
      code: 'sides-shaped-alike',
      message: `${piece.name} is shaped at the same edge as ${other.piece.name}, row for row`,
      primary: { span: piece.nameSpan, text: `its rows are those of ${other.piece.name}` },
      secondary: [{ span: lopsided.written.label, text: 'shaped at one edge' }],
      note: 'a left and a right piece are mirrored: what stands at the beginning of the rows of one stands at their end in the other',
    }]
  })
}

function isOtherSide(a: string, b: string): boolean {
  const swapped = a.replace(/\b(left|right)\b/i, (side) => (side.toLowerCase() === 'left' ? 'right' : 'left'))
  return swapped.toLowerCase() !== a.toLowerCase() && swapped.toLowerCase() === b.toLowerCase()
}

function sameWords({ pattern }: SenseFacts, rows: readonly WorkedRow[], others: readonly WorkedRow[]): boolean {
  const words = (list: readonly WorkedRow[]): string => list.map(({ written, side }) => `${textOf(pattern.source, written.span).replace(/\s+/g, ' ')} ${side ?? ''}`).join('\n')
  return rows.length > 0 && words(rows) === words(others)
}

/** What the row made, read from its other end, is not the same: it was shaped at one edge. */
function shapedOnOneSide({ fabric, offers, makes }: WorkedRow): boolean {
  const kinds = fabric.made.map(({ kind }) => kind)
  return offers !== makes && kinds.some((kind, index) => kind !== kinds[kinds.length - 1 - index])
}
