import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Pattern, Piece, Seam } from './pattern.ts'

/** More copies than these are motifs, which are told by a grid. */
const most = 12

/**
 * The same pattern with every copy of a piece as a piece of its own, so that each has its own edges: two side strips of a runner, four panels of a hat. The
 * first keeps the name. A seam of a piece to itself closes a ring of its copies, or with `open` leaves the last of them apart from the first. Undefined where
 * no copies are sewn, worked on or worked beside one another.
 */
export function withCopies(pattern: Pattern, open?: 'open'): Pattern | undefined {
  const several = pattern.pieces.filter((piece) => piece.make > 1 && piece.make <= most && (besideOneAnother(pattern, piece) || isUsed(pattern, piece)))
  if (several.length === 0 || pattern.seams.length === 0 && !several.some((piece) => besideOneAnother(pattern, piece))) return undefined
  const pieces = pattern.pieces.flatMap((piece) => (several.includes(piece) ? copiesOf(piece) : [piece]))
  const seams = seamsOfCopies(pattern.seams, new Map(several.map(({ name, make }) => [name, make] as const)), open === 'open')
  return { ...pattern, pieces, seams }
}

/** `in the next free sc of Band`: each copy begins where the one before it has ended. */
export const besideOneAnother = ({ source }: Pattern, { rows, on, make }: Piece): boolean => make > 1 && on !== undefined && /\bnext (?:free|unworked|unused)\b/i.test(source.text.slice(rows.start, rows.end))

/** It is sewn, or another piece is worked on it. */
const isUsed = ({ pieces, seams }: Pattern, { name }: Piece): boolean => seams.some(({ join }) => join.includes(name)) || pieces.some(({ on, onAlso }) => on === name || onAlso?.includes(name))

const nameOf = (piece: string, copy: number): string => (copy === 0 ? piece : `${piece} (${copy + 1})`)

function copiesOf(piece: Piece): readonly Piece[] {
  return Array.from({ length: piece.make }, (_, copy) => ({ ...piece, make: 1, name: nameOf(piece.name, copy), ...(copy > 0 && { copyOf: piece.name }) }))
}

/** A seam after another takes the next copy; one of a piece to itself is of each copy to the next, round to the first unless they lie open. */
function seamsOfCopies(seams: readonly Seam[], several: ReadonlyMap<string, number>, open: boolean): readonly Seam[] {
  const used = new Map<string, number>()
  const next = (name: string, told: number | undefined): string => {
    const make = several.get(name)
    if (make === undefined) return name
    if (told !== undefined) return nameOf(name, told % make)
    const copy = used.get(name) ?? 0
    used.set(name, copy + 1)
    return nameOf(name, copy % make)
  }
  return seams.flatMap((seam): readonly Seam[] => {
    const [one, other] = seam.join
    const make = one !== undefined && one === other && seam.join.length === 2 && !seam.copies ? several.get(one) : undefined
    if (make === undefined || one === undefined) return [{ ...seam, join: seam.join.map((name, index) => next(name, seam.copies?.[index])) }]
    return Array.from({ length: open ? make - 1 : make }, (_, copy) => ({ ...seam, join: [nameOf(one, copy), nameOf(one, (copy + 1) % make)] }))
  })
}

/** What is found, in the names that the pattern has, and once of all copies. */
export function ofThePattern(found: readonly Diagnostic[], { pieces }: Pattern): readonly Diagnostic[] {
  const copies = pieces.filter(({ copyOf }) => copyOf !== undefined)
  if (copies.length === 0) return found
  const named = (text: string): string => copies.reduce((words, { name, copyOf }) => words.replaceAll(name, copyOf!), text)
  const told = found.map((diagnostic) => ({ ...diagnostic, message: named(diagnostic.message), ...(diagnostic.note !== undefined && { note: named(diagnostic.note) }) }))
  return [...new Map(told.map((diagnostic) => [`${diagnostic.code} ${diagnostic.primary.span.start} ${diagnostic.message}`, diagnostic])).values()]
}
