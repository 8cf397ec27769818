import { runChecks } from '../checks/run-checks.ts'
import type { PieceFacts, Waiting } from '../checks/facts.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Held } from '../fabric/held.ts'
import { lexicon } from '../fabric/lexicon.ts'
import { pieceEdges, seamEdge } from '../fabric/piece-edges.ts'
import { readRows } from '../fabric/real-rows.ts'
import type { ToldSeam } from '../fabric/sewn-rings.ts'
import { workInConventions } from '../fabric/work-in-conventions.ts'
import { countReferences } from '../measures/count-references.ts'
import { textOf, type Source } from '../text/source.ts'
import type { CheckedPattern, WorkedPiece } from './checked-pattern.ts'
import { layersSaid, layersSewn, layersWorked } from './layers-said.ts'
import type { Pattern, Piece } from './pattern.ts'
import { acceptWarnings } from './accept-warnings.ts'
import { prosePlaces } from './prose-places.ts'
import { readPattern } from './read-pattern.ts'
import { withTriedHints } from './try-hints.ts'
import { besideOneAnother, ofThePattern, withCopies } from './with-copies.ts'
import { saidConventions } from './said-conventions.ts'
import { senseFindings } from './sense/sense-findings.ts'

/**
 * Reads a pattern, works every piece in every size, checks it, and tries small changes where a count does not come out. Never throws
 * for what a designer wrote.
 */
export function checkPattern(source: Source): CheckedPattern {
  const checked = checkOnce(source)
  return { ...checked, diagnostics: withTriedHints(checked, checkOnce) }
}

/** The same without trying changes: quicker, where only what is found matters. */
export function checkOnce(source: Source): CheckedPattern {
  const { pattern, diagnostics } = readPattern(source)
  if (!pattern) return { source, pieces: [], diagnostics }
  const { pieces, facts, remarks, found } = findInCopies(pattern)
  const all = [...diagnostics, ...found, ...referencesNotFound(pattern, pieces), ...senseFindings({ pattern, pieces, facts, remarks, told: [...diagnostics, ...found] })]
  const parted = acceptWarnings(pattern, pieces, all)
  return { source, pattern, pieces, ...parted, diagnostics: inOrder(parted.diagnostics) }
}

/** Copies that are told apart may be sewn to one another: each has edges of its own then. Where each begins beside the one before they must be told apart. */
function findInCopies(pattern: Pattern): ReturnType<typeof findAll> {
  const beside = pattern.pieces.some((piece) => besideOneAnother(pattern, piece)) ? withCopies(pattern) : undefined
  if (beside) return ofOriginal(pattern, findAll(beside))
  const usual = findAll(pattern)
  const ring = usual.found.some(isOfFabric) ? withCopies(pattern) : undefined
  if (!ring) return usual
  const apart = findAll(ring)
  const strip = apart.found.some(isOfFabric) && pattern.seams.some(({ join: [one, other], copies }) => one === other && !copies) ? withCopies(pattern, 'open') : undefined
  const best = [usual, apart, ...(strip ? [findAll(strip)] : [])].reduce((least, other) => (tellsLess(other.found, least.found) ? other : least))
  return best === usual ? usual : ofOriginal(pattern, best)
}

/** Of as many findings those are nearer that find the fabric as the rows go over it. */
function tellsLess(one: readonly Diagnostic[], other: readonly Diagnostic[]): boolean {
  return one.length < other.length || one.length === other.length && one.filter(isOfFabric).length < other.filter(isOfFabric).length
}

/** Findings that may come of a fabric that is not as it is thought to be. */
const isOfFabric = ({ code }: Diagnostic): boolean => /^(?:row-overruns|place-missing|places-left-over|row-ends-passed|edge-not-next|row-not-checked)$/.test(code)

function findAll(pattern: Pattern) {
  const { source } = pattern
  const worked = workAll(pattern)
  const { pieces, facts, waiting, undecided, split, words, remarks } = worked
  const yarns = pattern.materials?.yarns.flatMap(({ letter }, index) => {
    const span = pattern.places.get(`materials.yarns.${index}.letter`)
    return letter !== undefined && span ? [{ letter, span }] : []
  })
  const defined = new Set(pattern.stitches.map(({ abbr }) => abbr))
  const termsSpan = pattern.places.get('terms')
  const prose = [...prosePlaces(pattern), ...remarks.map(({ span }) => span)]
  const found = runChecks({ source, pieces: facts, lexicon: words, yarns, defined, undecided, split, waiting, definitions: legsDefined(pattern), prose, ...(termsSpan && { termsSpan }), seams: [...pattern.seams, ...layersSaid(pattern, remarks), ...layersWorked(pattern, pieces)].map(({ ease, ...seam }) => ({ ...seam, ease: ease === true })) }, pattern.sizes)
  return { ...worked, found: ofThePattern(found, pattern) }
}

/** What was found with copies as pieces of their own, of the pattern's pieces alone. */
function ofOriginal(pattern: Pattern, found: ReturnType<typeof findAll>): ReturnType<typeof findAll> {
  const own = (name: string): Piece | undefined => pattern.pieces.find((piece) => piece.name === name)
  const pieces = found.pieces.flatMap((worked) => {
    const piece = own(worked.piece.name)
    return piece ? [{ ...worked, piece }] : []
  })
  return { ...found, pieces, facts: found.facts.filter(({ name }) => own(name)) }
}

function workAll(pattern: Pattern) {
  const { source, sizes } = pattern
  const count = Math.max(1, sizes.length)
  const words = lexicon(pattern.terms, pattern.stitches, count, (pattern.materials?.yarns ?? []).flatMap(({ letter }) => (letter === undefined ? [] : [letter])), pattern.pieces.map(({ name }) => name))
  const read = pattern.pieces.map((piece) => ({ piece, ...readRows(source.text, piece.rows, words) }))
  const joinsCount = read.some(({ entries }) => entries.some((entry) => entry.read.totals.some(({ closing }) => closing)))
  const conventions = { ...saidConventions(pattern, read.flatMap(({ remarks }) => remarks).map(({ span }) => textOf(source, span))), ...(joinsCount && { joinsCount }) }
  const sewn = tellsOfSewing.test(source.text)
  const pieces: WorkedPiece[] = []
  const facts: PieceFacts[] = []
  const waiting: Waiting[] = []
  let split: ReturnType<typeof workInConventions>['split'] = []
  const undecided = new Map<string, ReturnType<typeof workInConventions>['undecided'][number]>()
  for (let size = 0; size < count; size += 1) {
    const together = workInConventions(read.map(({ piece, entries, yarnAtEnd }) => {
      const on = pattern.pieces.findIndex(({ name }) => name === piece.on)
      const grid = pattern.seams.find((seam) => seam.grid && seam.name === piece.on)
      return { name: piece.name, ...(piece.copyOf !== undefined && { called: piece.copyOf }), make: piece.make, entries, ...(yarnAtEnd && { yarnAtEnd }), sewn, ...(pattern.seams.some(({ unread, join }) => unread && join.includes(piece.name)) && { seamUnread: true }), lexicon: words, size, sizeNames: sizes, conventions, readings: new Map(), ...(on >= 0 && { on }), ...(grid?.grid && piece.on !== undefined && on < 0 && { onGrid: { ...grid.grid, pieces: indexesOf(pattern, grid.join) } }) }
    }), { tops: seamsBetween(pattern), told: edgesSewn(pattern, size) })
    if (split.length === 0) split = together.split
    waiting.push(...stillWaiting(together.held, pattern).map(({ places, span }) => ({ size, stitches: places.length, span })))
    for (const point of together.undecided) undecided.set(point.name, point)
    for (const [index, run] of together.runs.entries()) {
      const { piece, entries, remarks } = read[index]!
      const rows = together.inferred.length > 0 ? run.rows.map((row, at) => (at === 0 ? { ...row, assumed: [...row.assumed, ...together.inferred] } : row)) : run.rows
      pieces.push({
        piece, rows, edges: pieceEdges(run, words), ...(sizes[size] !== undefined && { size: sizes[size] }),
        between: remarks.map(({ span, after }) => ({ text: textOf(source, span), at: span.start, afterRow: lastRowOf(rows, entries[after - 1]?.span.start) })),
      })
      facts.push({ source, name: piece.name, size, sizes, entries, rows, lexicon: words, tooLarge: run.tooLarge, make: piece.make, edge: seamEdge(run), fabric: firstOf(pattern, piece.name), sound: run.sound, ...(piece.symmetrical && { symmetrical: piece.nameSpan }) })
    }
  }
  return { pieces, facts, waiting, undecided: [...undecided.values()], split, words, remarks: read.flatMap(({ piece, remarks }) => remarks.map(({ span }) => ({ span, piece: piece.name }))) }
}

/** Words for closing an edge: common practice, no source. */
const tellsOfSewing = /\b(?:fold|folded|(?:over)?(?:sew|sewn)|overcast|graft(?:ed)?|seam|seamed|whip[ -]?stitch|mattress stitch)\b/i

/** The piece that a piece goes on from, and that one from, down to the first. */
function firstOf({ pieces }: Pattern, name: string): string {
  let first = name
  for (let left = pieces.length; left > 0; left -= 1) first = pieces.find((piece) => piece.name === first && pieces.some((other) => other.name === piece.on))?.on ?? first
  return first
}

/** Seams of two pieces. */
function seamsBetween(pattern: Pattern): readonly (readonly [number, number])[] {
  return pattern.seams.flatMap(({ join, grid, edges = [] }) => {
    // Sides and undersides that are sewn close no ring of tops.
    if (edges[0]?.some((edge) => edge && !/^(?:top|any|all)$/.test(edge.edge))) return []
    const [one, other, ...more] = indexesOf(pattern, join)
    return grid || one === undefined || other === undefined || more.length > 0 ? [] : [[one, other] as const]
  })
}

/** Seams of two edges that are named, in one size. */
function edgesSewn(pattern: Pattern, size: number): readonly ToldSeam[] {
  const told = pattern.seams.flatMap(({ join, grid, edges }): readonly ToldSeam[] => {
    const [one, other] = edges?.[size] ?? edges?.[0] ?? []
    const [first, second] = join.map((name) => pattern.pieces.findIndex((piece) => piece.name === name))
    // Two bands without a word more meet with their last rows.
    const bands = [first, second].every((index) => pattern.pieces[index ?? -1]?.on !== undefined)
    if (grid || !edges && !bands || join.length !== 2 || first === undefined || second === undefined || first < 0 || second < 0) return []
    return eachSide({ piece: first, words: one ?? { edge: 'top' } }, { piece: second, words: other ?? { edge: 'top' } })
  })
  // Tops that are sewn from end to end are met as they are, where both stand on one piece.
  const base = ({ piece }: ToldSeam[number]): string => firstOf(pattern, pattern.pieces[piece]!.name)
  const whole = told.every((seam) => base(seam[0]) === base(seam[1]) && seam.every(({ words }) => typeof words !== 'string' && words.edge === 'top' && !words.part && words.under === undefined))
  return [...(whole ? [] : told), ...layersSewn(pattern)]
}

/** `sides of Front` to `sides of Back`: the left one of either meets the right one of the other. */
function eachSide(one: ToldSeam[number], other: ToldSeam[number]): readonly ToldSeam[] {
  const side = ({ piece, words }: ToldSeam[number], edge: 'left' | 'right'): ToldSeam[number] => ({ piece, words: typeof words === 'string' ? words : { ...words, edge } })
  const both = [one, other].every(({ words }) => typeof words !== 'string' && words.both)
  return both ? [[side(one, 'left'), side(other, 'right')], [side(one, 'right'), side(other, 'left')]] : [[one, other]]
}

function indexesOf({ pieces }: Pattern, names: readonly string[]): readonly number[] {
  return pieces.flatMap(({ name }, index) => (names.includes(name) ? [index] : []))
}

/** What a row passes over waits for a later one where it says what for, and the pattern takes such stitches up. */
function stillWaiting(held: readonly Held[], { pieces }: Pattern): readonly Held[] {
  const makes = new Map(pieces.map(({ name, make }) => [name, make] as const))
  return held.filter((run) => {
    const others = held.filter((other) => other.taken && other.by === run.by && other.piece === run.piece)
    // A piece that is made twice takes up two openings of one size.
    const made = others.some(({ takenBy, places }) => (makes.get(takenBy ?? '') ?? 1) > 1 && places.length === run.places.length)
    return !run.taken && !made && /\b(?:sleeve|thumb|hold|held|later)/.test(run.words) && (others.length > 0 || pieces.some(({ name }) => /sleeve|thumb/i.test(name)))
  })
}

/** Legs of the pattern's own stitches: `5 dc in one stitch, closed together` has 5. */
function legsDefined(pattern: Pattern): readonly { readonly words: readonly string[]; readonly legs: number }[] {
  return pattern.stitches.flatMap(({ abbr, name, how }) => {
    const said = /\b(\d{1,2})[ -](?:unfinished |half-finished )?[a-z]+/i.exec(`${name ?? ''} ${how ?? ''}`)
    return said ? [{ words: [abbr, ...(name ? [name.replace(/^\d{1,2}[ -]\S+ /, '')] : [])], legs: Number(said[1]) }] : []
  })
}

/** Index of the last real row that a written row gave; -1 before the first. */
function lastRowOf(rows: WorkedPiece['rows'], start: number | undefined): number {
  return start === undefined ? -1 : rows.findLastIndex((row) => row.written.span.start <= start)
}

/** A `:count[…]` in the prose that names no row of the pattern. */
function referencesNotFound(pattern: Pattern, pieces: readonly WorkedPiece[]): readonly Diagnostic[] {
  const from = pattern.body.position?.start.offset ?? pattern.source.text.length
  const counted = pieces.map(({ piece, rows }) => ({ name: piece.name, rows }))
  return countReferences(pattern.source.text, from, counted).flatMap(({ span, is }): readonly Diagnostic[] =>
    'counts' in is ? [] : [{ code: 'count-reference-unknown', message: is.reason, primary: { span, text: 'no count to print' }, secondary: [] }])
}

function inOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return diagnostics.toSorted((a, b) => a.primary.span.start - b.primary.span.start)
}
