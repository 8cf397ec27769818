import type { SeamEdge, Section } from './piece-edges.ts'

/** An edge of a piece as a person names it, with the right side up. `added`: the underside of chains that were added at an end of a row; `stepped`: from the first step of a stair to the end of the top; `any`: named, but by a word that tells no side of it; `all`: all round. */
export type NamedEdge = 'top' | 'bottom' | 'left' | 'right' | 'side' | 'added' | 'stepped' | 'any' | 'all'

/** An edge as a seam tells it. */
export interface EdgeWords {
  readonly edge: NamedEdge
  /** How many places are told: of all of it, or of the part. */
  readonly count?: number
  /** Only a part of it is sewn. */
  readonly part?: boolean
  /** Where the part lies, as the rows were worked. */
  readonly at?: 'first' | 'last' | 'next'
  /** Of a side: the first and the last of the rows whose ends are meant. */
  readonly rows?: readonly [number, number]
  /** Of a side: only as far as its first step, as below an armhole. */
  readonly below?: true
  /** The left side and the right side. */
  readonly both?: true
  /** Of the stitches of one row: its number. */
  readonly row?: number
  /** Of added chains: the end of the row at which they lie, and that they were a separate chain. */
  readonly hand?: 'left' | 'right'
  readonly separate?: boolean
  /** Of a part of the piece: the words of the heading over it, in small letters. */
  readonly under?: string
  /** `except the center 8 sts`: so many of it stay open. */
  readonly without?: number
}

/** How many places a named edge may have, and what they are. Several where the name may mean one stretch or more. */
export interface EdgePlaces {
  readonly counts: readonly number[]
  readonly are: 'stitch' | 'row-end'
  /** Of one side with steps: of how many stretches it is, and how many places it has from end to end, without its steps and with them. */
  readonly stepped?: { readonly stretches: number; readonly counts: readonly number[] }
}

/** The places of an edge by its name; without one those that the last row or round made. None where the piece does not tell. */
export function placesOfEdge(edge: SeamEdge, { edge: named, row, below }: Partial<EdgeWords> = {}): EdgePlaces {
  if (edge.round && named === 'added') return { counts: [], are: 'stitch' }
  if (named === 'bottom' && edge.foot.chains > 0) return { counts: [edge.foot.chains], are: 'stitch' }
  if ((named === 'left' || named === 'right' || named === 'side') && edge.foot.rows > 0) return { counts: [edge.foot.rows], are: 'row-end' }
  // The top of a border is one of its sides, or its last round.
  if (edge.round) return { counts: [...(named !== undefined && named !== 'all' ? edge.sides.map(({ stitches }) => stitches) : []), ...(named === undefined || named === 'all' || named === 'top' || edge.sides.length === 0 ? [edge.stitches] : [])], are: 'stitch' }
  // A part that goes on from another piece has edges of its own; those of the whole are in their order.
  const sections = sum(edge.own) === sum(edge.sections) ? edge.sections : edge.own
  const of = (kind: Section['edge']): readonly Section[] => sections.filter((section) => section.edge === kind)
  // What a row left at its ends waits beside the rows on it: `the first 12 sts of Row 10`.
  const waiting = sections.filter((section) => section.edge === 'step' && section.number === row)
  if (row !== undefined && waiting.length > 0 && named === 'top') return { counts: choices([waiting]), are: 'stitch' }
  if (named === undefined || named === 'top') return { counts: choices([of('top')]), are: 'stitch' }
  if (named === 'bottom') {
    const counts = choices([of('underside')])
    return { counts: edge.based ? [...new Set(counts.flatMap((count) => [count, count + 1]))] : counts, are: 'stitch' }
  }
  if (named === 'added') return { counts: choices([of('underside')]), are: 'stitch' }
  if (named === 'stepped') return { counts: stairs(sections).map(sum), are: 'stitch' }
  if (named === 'any' || named === 'all') return { counts: choices([sections]), are: 'stitch' }
  const [left, right] = sidesOf(sections)
  const sides = !edge.sided || edge.inParts || named === 'side' ? [left, right] : [named === 'left' ? left : right]
  if (below) return { counts: [...new Set(sides.flatMap((side) => belowSteps(side, side === left)))], are: 'row-end' }
  const counts = choices(sides.flatMap((side) => [side, withoutSteps(side)]))
  const [side, ...others] = sides
  return { counts, are: 'row-end', ...(side!.length > 1 && others.length === 0 && { stepped: { stretches: side!.length, counts: [sum(withoutSteps(side!)), sum(side!)] } }) }
}

const withoutSteps = (side: readonly Section[]): readonly Section[] => side.filter(({ edge }) => edge === 'row-ends')

/** Row-ends of a side from the underside up to its first step. The left side comes before the underside, the right one behind it. */
const belowSteps = (side: readonly Section[], isLeft: boolean): readonly number[] => [isLeft ? side.at(-1) : side[0]].flatMap((section) => (section?.edge === 'row-ends' ? [section.stitches] : []))

const sum = (sections: readonly Section[]): number => sections.reduce((all, { stitches }) => all + stitches, 0)

/** The stairs of a piece, with the top that they lead to: from the first step on one side of the top, or up to the last on the other. Sections begin with the top. */
function stairs(sections: readonly Section[]): readonly (readonly Section[])[] {
  const under = sections.findIndex(({ edge }) => edge === 'underside')
  if (under < 0 || sections[0]?.edge !== 'top') return []
  const [down, up] = [sections.slice(0, under), [...sections.slice(under + 1), sections[0]]]
  const last = down.findLastIndex(({ edge }) => edge === 'step')
  const first = up.findIndex(({ edge }) => edge === 'step')
  return [...(last < 0 ? [] : [down.slice(0, last + 1)]), ...(first < 0 ? [] : [up.slice(first)])]
}

/** One stretch alone, or all of them. */
function choices(groups: readonly (readonly Section[])[]): readonly number[] {
  const counts = groups.flatMap((group) => [...group.map(({ stitches }) => stitches), sum(group)])
  return [...new Set(counts)].filter((count) => count > 0)
}

/** Sections go counterclockwise from the top: the left side lies before the underside, the right one behind it. Each ends where a top is: what lies between two tops is a neck. */
function sidesOf(sections: readonly Section[]): readonly [readonly Section[], readonly Section[]] {
  // Chains that were added to a later row have an underside as well.
  const first = Math.min(...sections.flatMap(({ edge, number }) => (edge === 'underside' ? [number ?? 0] : [])))
  const bottom = sections.findIndex(({ edge, number }) => edge === 'underside' && (number ?? 0) === first)
  const from = sections.findLastIndex(({ edge }, index) => edge === 'top' && index < bottom)
  const to = sections.findIndex(({ edge }, index) => edge === 'top' && index > bottom)
  const side = (begin: number, end?: number): readonly Section[] => sections.slice(begin, end).filter(({ edge }) => edge === 'row-ends' || edge === 'step')
  return bottom < 0 ? [side(0), side(0)] : [side(Math.max(from, 0), bottom), side(bottom, to < 0 ? undefined : to)]
}
