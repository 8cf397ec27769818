import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import { fromTop, type SeamEdge } from '../fabric/piece-edges.ts'
import type { PatternFacts, PieceFacts, SeamFacts as Seam } from './facts.ts'
import { byNamedEdges } from './seam-named-edges.ts'
import { easedWords, type SeamWords as Words } from './seam-words.ts'

/** Two edges that are sewn stitch to stitch have the same number of stitches, unless one is eased in. Told once a seam and size. */
export function seamMismatch({ seams, pieces }: PatternFacts): readonly Diagnostic[] {
  const told = seams.filter(({ grid }) => !grid).flatMap((seam) => {
    const bySize = Map.groupBy(pieces.filter(({ name }) => seam.join.includes(name)), ({ size }) => size)
    const mismatch = seam.edges ? byNamedEdges : byPieces
    const wrong = [...bySize].flatMap(([size, edges]) => {
      const words = mismatch(seam, edges)
      return words ? [{ size, edges, words }] : []
    })
    const first = wrong[0]
    if (!first) return []
    const { size, edges, words } = first
    const names = edges[0]!.sizes
    const held = wrong.map((one) => names[one.size] ?? '')
    const diagnostic: Diagnostic = {
      code: words.code ?? 'seam-mismatch',
      message: `${words.message}${names[size] === undefined ? '' : ` in size ${names[size]}`}`,
      primary: { span: seam.span, text: words.short },
      secondary: words.edges ?? edges.flatMap(({ rows }) => rows.at(-1)?.says ?? []).map((says) => ({ span: says.span, text: 'this edge' })),
      ...(held.length < Math.max(1, names.length) && { sizes: held }),
      ...(words.note && { note: words.note }),
    }
    return [{ diagnostic, off: words.off }]
  })
  return onceForBothSides(told)
}

interface Told {
  readonly diagnostic: Diagnostic
  readonly off: Words['off']
}

/** A gusset, or a back between two fronts, that is a row short is so on both its sides: the second seam is shown beside the first. */
function onceForBothSides(told: readonly Told[]): readonly Diagnostic[] {
  const isSame = (one: Told, other: Told): boolean => one.off?.some((side) => other.off?.includes(side)) === true && String(one.diagnostic.sizes) === String(other.diagnostic.sizes)
  const sameAs = (at: number): number => told.findIndex((one) => isSame(one, told[at]!))
  return told.flatMap(({ diagnostic }, at) => {
    const first = sameAs(at)
    if (first !== -1 && first !== at) return []
    const also = told.filter((_, other) => other !== at && first === at && sameAs(other) === at)
    return [{ ...diagnostic, secondary: [...diagnostic.secondary, ...also.map((other) => ({ span: other.diagnostic.primary.span, text: 'and this seam' }))] }]
  })
}

function byPieces(seam: Seam, pieces: readonly PieceFacts[]): Words | undefined {
  // A row that does not add up makes the edge wrong too: that is the same slip.
  if (pieces.length < 2 || !pieces.every(({ sound, edge }) => sound && edge.stitches > 0)) return undefined
  if (new Set(pieces.map(({ fabric }) => fabric)).size < pieces.length && pieces.every(({ edge }) => edge.own.length > 0)) return byTops(seam, pieces)
  // Shoulders, bands and edgings meet by their tops, whatever they are worked on.
  const tops = pieces.every((piece) => isSmallPart(piece) || isEdging(piece)) && new Set(pieces.map(topOf)).size
  if (tops === 1) return undefined
  if (tops && pieces.every(isEdging)) return topsApart(pieces)
  const apart = tops ? byTops(seam, pieces) : undefined
  if (apart) return apart
  // Fronts and backs with necks of their own meet along sides and shoulders.
  if (pieces.some(({ edge }) => edge.inParts)) return bySides(seam, pieces)
  const counts = pieces.map(({ edge }) => edge.stitches)
  if (new Set(counts).size > 1 || seam.eases && pieces.every(({ edge }) => edge.round)) return byNumber(seam, pieces, counts)
  return seam.ease ? undefined : byCorners(seam, pieces) ?? byBorderCorners(pieces)
}

function byNumber(seam: Seam, pieces: readonly PieceFacts[], counts: readonly number[]): Words | undefined {
  if (!meetAllRound(pieces, counts)) return bySides(seam, pieces)
  const each = listOf(pieces.map(({ name, edge }) => `${name} has ${counted(edge.stitches, edge.round ? 'stitch' : 'place')}`))
  if (seam.ease) {
    const more = Math.max(...counts) - Math.min(...counts)
    // No seam takes up a third: the shorter edge meets a part of the longer one.
    if (more * 3 > Math.max(...counts)) return undefined
    return easedWords(seam, pieces[0]!.size, more, each)
  }
  return { message: `the edges to be joined do not match: ${each}`, short: counts.join(' against ') }
}

/** Closed edges are sewn all round. Flat pieces are when they are nearly alike; else only some of their edges meet. */
function meetAllRound(pieces: readonly PieceFacts[], counts: readonly number[]): boolean {
  const [most, least] = [Math.max(...counts), Math.min(...counts)]
  return pieces.every(({ edge }) => edge.round) || most - least <= Math.max(3, most / 20)
}

/** Flat pieces of another outline, as the front and the back of a jumper, meet along their sides, row to row. */
function bySides({ ease }: Seam, pieces: readonly PieceFacts[]): Words | undefined {
  const sides = pieces.map(({ edge }) => edge.sections.filter((section) => section.edge === 'row-ends').map(({ stitches }) => stitches))
  const [one, other] = sides
  if (ease || sides.length !== 2 || !one || !other || one.length === 0 || other.length === 0 || one.some((rows) => other.includes(rows))) return undefined
  const [a, b] = [Math.max(...one), Math.max(...other)]
  if (Math.abs(a - b) > 2) return undefined
  return { message: `the sides to be joined do not match: ${pieces[0]!.name} has ${counted(a, 'row')} and ${pieces[1]!.name} has ${b}`, short: `${a} rows against ${b}` }
}

const topOf = ({ edge }: PieceFacts): number => edge.own.find((section) => section.edge === 'top')?.stitches ?? 0

/** A piece whose own rows make less than half of the outline of all that it hangs on. */
function isSmallPart(piece: PieceFacts): boolean {
  const { edge } = piece
  return topOf(piece) > 0 && 2 * edge.own.reduce((sum, { stitches }) => sum + stitches, 0) < edge.stitches
}

/** A flat piece that was begun along edges of another one: only its last row is an edge of its own. */
const isEdging = (piece: PieceFacts): boolean => !piece.edge.round && piece.rows[0]?.along !== undefined && topOf(piece) > 0

function topsApart(pieces: readonly PieceFacts[]): Words {
  const tops = pieces.map(topOf)
  const each = pieces.map(({ name }, index) => `${name} has ${index === 0 ? `${counted(tops[0]!, 'stitch')} at its top` : tops[index]}`)
  return { message: `the edges to be joined do not match: ${listOf(each)}`, short: tops.join(' against ') }
}

/** Parts of one fabric, such as a front and a shoulder of the back that both go on from the body, meet by their tops, or by sides of their own. */
function byTops({ ease }: Seam, pieces: readonly PieceFacts[]): Words | undefined {
  const [one, other] = pieces
  if (ease || pieces.length !== 2 || !one || !other) return undefined
  const sides = ({ edge }: PieceFacts): readonly number[] => edge.own.filter((section) => section.edge === 'row-ends' && section.stitches > rowsApart).map(({ stitches }) => stitches)
  const [a, b] = [topOf(one), topOf(other)]
  if (a === b || Math.abs(a - b) > 2 || sides(one).some((rows) => sides(other).includes(rows))) return undefined
  return topsApart(pieces)
}

/** As many stitches, but not in the same places: a corner or a step would not lie on the other. */
function byCorners({ sides }: Seam, pieces: readonly PieceFacts[]): Words | undefined {
  const [one, other] = pieces
  if (pieces.length !== 2 || !one || !other || one.edge.sections.length === 0 || other.edge.sections.length === 0) return undefined
  // With like sides together the second piece is seen from behind: its edge runs the other way round.
  const flipped = fromTop(other.edge.sections.toReversed())
  const laid = meet(one.edge.sections, flipped)
  if (laid || meetWithOtherSteps(one.edge.sections, flipped)) return undefined
  const told = one.edge.sided && other.edge.sided && sides !== undefined
  const turned = meet(one.edge.sections, other.edge.sections)
  if (turned && !told) return undefined
  return {
    // Worked alike, and alike only as long as neither is turned over: for the designer to say whether that is meant.
    code: turned ? 'seam-corners-apart' : undefined,
    message: `the edges to be joined have ${one.edge.stitches} stitches each, but ${turned ? 'laid on one another their corners do not meet' : 'their corners do not meet'}`,
    short: `${one.edge.stitches} against ${other.edge.stitches}, in other places`,
    note: `from the top on, ${one.name} has ${inOrder(one.edge.sections)}; laid on it, ${other.name} has ${inOrder(flipped)}`,
  }
}

/** As many stitches and corners, but not as many between them. */
function byBorderCorners(pieces: readonly PieceFacts[]): Words | undefined {
  const [one, other] = pieces
  if (pieces.length !== 2 || !one || !other) return undefined
  if (!one.edge.round || !other.edge.round) return undefined
  const [a, b] = [one.edge.sides.map(({ stitches }) => stitches), other.edge.sides.map(({ stitches }) => stitches)]
  if (a.length < 2 || a.length !== b.length || sameRound(a, b) || sameRound(a, b.toReversed())) return undefined
  return {
    message: `the edges to be joined have ${one.edge.stitches} stitches each, but their corners do not meet`,
    short: `${a.join(', ')} against ${b.join(', ')} between corners`,
    note: `from corner to corner ${one.name} has ${listOf(a.map(String))} stitches, ${other.name} has ${listOf(b.map(String))}`,
  }
}

/** Whether two rounds of numbers are the same, wherever they begin. */
function sameRound(one: readonly number[], other: readonly number[]): boolean {
  return one.some((_, start) => one.every((count, index) => count === other[(index + start) % other.length]))
}

/** Along a side of row-ends one edge may have so many stitches more: the two sides of a turned piece are a row apart (common practice, no source). */
const rowsApart = 2

/** Whether two edges turn at the same stitches, from the top on. */
function meet(one: SeamEdge['sections'], other: SeamEdge['sections']): boolean {
  return turnAlike(one, other) || turnAlike(withoutShortSides(one), withoutShortSides(other))
}

function turnAlike(ours: SeamEdge['sections'], theirs: SeamEdge['sections']): boolean {
  return ours.length === theirs.length && ours.every(({ edge, stitches, overCorner }, index) => {
    const there = theirs[index]!
    const apart = edge === 'row-ends' ? rowsApart : overCorner || there.overCorner ? 1 : 0
    return edge === there.edge && Math.abs(stitches - there.stitches) <= apart
  })
}

/** Two low steps on a high one: the seam is pinned at the corners where both sides are as long, and the steps pull. As many steps are meant to meet. */
function meetWithOtherSteps(one: SeamEdge['sections'], other: SeamEdge['sections']): boolean {
  const [ours, theirs] = [fromCornerToCorner(one), fromCornerToCorner(other)]
  const steps = (sections: SeamEdge['sections']): number => sections.filter(({ edge }) => edge === 'step').length
  return steps(one) !== steps(other) && ours.length === theirs.length && ours.every(({ edge, stitches }, index) => edge === theirs[index]!.edge && stitches === theirs[index]!.stitches)
}

/** A side with its steps as one. */
function fromCornerToCorner(sections: SeamEdge['sections']): SeamEdge['sections'] {
  const sides: { edge: SeamEdge['sections'][number]['edge']; stitches: number }[] = []
  for (const { edge, stitches } of sections) {
    const side = edge === 'step' ? 'row-ends' : edge
    const last = sides.at(-1)
    if (side === 'row-ends' && last?.edge === side) last.stitches += stitches
    else sides.push({ edge: side, stitches })
  }
  return sides
}

/** Row-ends that a border may as well pass make no turn of their own. */
function withoutShortSides(sections: SeamEdge['sections']): SeamEdge['sections'] {
  return sections.filter(({ edge, stitches }) => edge !== 'row-ends' || stitches > rowsApart)
}

function inOrder(sections: SeamEdge['sections']): string {
  return sections.map(({ edge, stitches }) => `${stitches} ${edge === 'top' ? 'at the top' : edge === 'underside' ? 'below' : edge === 'step' ? 'on a step' : 'up a side'}`).join(', ')
}
