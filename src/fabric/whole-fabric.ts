import { withBase, type LaidRow, type Part } from './laid-row.ts'
import { Outline } from './outline.ts'
import { roundBorders } from './border-sides.ts'
import { back, type Mark } from './outline-ring.ts'
import type { GoesOver } from './over-pieces.ts'
import type { JoinedEdge } from './outer-sides.ts'
import type { PieceRun } from './piece-run.ts'
import { isSpace, type Edge, type Place } from './place.ts'
import { readingsOfSeams } from './seam-readings.ts'
import { sewnLayers, usedBehind, type Layer } from './sewn-layers.ts'
import { sewnRings, type SewnPiece, type ToldSeam } from './sewn-rings.ts'

/** A row as its piece laid it. */
export interface Laid {
  readonly row: LaidRow
  readonly turned: boolean
}

/** Indexes of two pieces that are sewn to one another. */
export type Seam = readonly [number, number]

/** Pieces that hang on one another: their outline as one, and where each of them ended. */
interface Whole {
  readonly outline: Outline
  readonly ends: Map<number, Mark>
  /** As it was before a border went over its seams: other borders may meet the same seams. And the index of that border. */
  unbordered?: Outline
  borderedFrom?: number
  /** The fabrics that it was before a row held them together: seams may join them as well. */
  apart?: Outline[]
}

/**
 * What hangs together of a pattern's pieces. A piece goes on from the one that it names, but other pieces may have been worked on that
 * since: the second front stands beside the first one, a band goes along both the body and the front, a seam has closed a side.
 * Pieces are known by their index.
 */
export class Fabrics {
  private readonly wholes: (Whole | undefined)[] = []
  private readonly own: PieceRun[] = []
  /** Places of a piece that were worked through from another that lies on it. */
  private readonly used = new Set<Place>()

  /** Takes up the next piece, worked on that of index `on` or on nothing. A round encloses what it goes round, and begins anew. */
  add(run: PieceRun, on: number | undefined): void {
    const below = on === undefined ? undefined : this.wholes[on]
    const start = on === undefined ? undefined : below?.ends.get(on)
    this.own.push(run)
    const index = this.own.length - 1
    if (!below || !start || run.laid.some(({ row }) => row.round) || !resume(below, start)) {
      const outline = run.outline.copy()
      this.wholes.push({ outline, ends: new Map(outline.mark && [[index, outline.mark]]) })
      if (below) for (const one of [below.outline, this.own[on!]!.outline]) one.takeOpenings(outline)
      return
    }
    if (run.outline.isRing && !below.unbordered) {
      below.unbordered = below.outline.copy()
      below.borderedFrom = index
    }
    for (const { row, turned } of run.laid) {
      if (row.goesOver) this.holdTogether(below, row.goesOver)
      below.outline.lay(row, turned)
    }
    this.wholes.push(below)
    if (below.outline.mark) below.ends.set(index, below.outline.mark)
  }

  /** What a row goes over is one fabric with the piece that it was begun on. */
  private holdTogether(below: Whole, { legs }: GoesOver): void {
    below.apart ??= [below.outline.copy()]
    for (const { places } of legs) {
      const other = this.wholes.find((whole) => whole !== below && whole?.outline.has(places[0]!))
      if (!other) continue
      below.apart.push(...(other.apart ?? [other.outline.copy()]))
      const [here, there] = [below.outline.rightWay, other.outline.rightWay]
      for (const [index, mark] of other.ends) {
        below.ends.set(index, { ...mark, way: mark.way === there ? here : back(here) })
        this.wholes[index] = below
      }
    }
  }

  /** The outline of all that hangs together with a piece. */
  wholeOf(index: number): Outline {
    return this.wholes[index]!.outline
  }

  /** A row of the piece that was taken up last goes through both layers: what it used of the piece behind is free no more. */
  useUp(seams: readonly ToldSeam[]): void {
    const last = this.own.length - 1
    for (const seam of seams) {
      const layers = seam[0].piece === last && seam[1].words === 'facing' ? this.layers(seam) : undefined
      for (const place of layers ? usedBehind(layers.front, layers.joining.rows[0]?.fabric.through ?? [], layers.behind) : []) this.used.add(place)
    }
  }

  /** The outline of all that hangs together with a piece, from where that ended, without and with its seams. None where it is the piece's own. */
  seenFrom(on: number, seams: readonly Seam[]): { readonly whole: readonly Outline[]; readonly sewn: readonly Outline[] } {
    const all = this.wholes[on]
    const end = all?.ends.get(on)
    const across = all ? this.acrossSeams(all, seams) : []
    if (!all || !end || !this.branches(on, all) && across.length === 0 || !resume(all, end)) return { whole: [], sewn: [] }
    const whole = all.outline.copy()
    const own: Seam[] = seams.filter(([one, other]) => all.ends.has(one) && all.ends.has(other))
    if (own.length === 0 && across.length === 0) return { whole: [whole], sewn: [] }
    const sewn = whole.copy()
    for (const { other, seams: between } of across) {
      sewn.beside(other.outline)
      own.push(...between)
    }
    for (const [one, other] of this.meetings(own, sewn)) sewn.sew(one, other)
    return { whole: [whole], sewn: [sewn.copy(), ...sewn.behindSeams] }
  }

  /** Fabrics that are sewn to one in two places and more, as a front to a back at both shoulders: what lies between the seams is a ring. */
  private acrossSeams(all: Whole, seams: readonly Seam[]): readonly { readonly other: Whole; readonly seams: readonly Seam[] }[] {
    const at = (index: number): Whole | undefined => this.wholes[index]
    const others = new Set(seams.flatMap(([one, other]) => (at(one) === all ? (at(other) ?? []) : at(other) === all ? (at(one) ?? []) : [])))
    return [...others].flatMap((other) => {
      const between = other === all ? [] : seams.filter(([one, two]) => at(one) === all && at(two) === other || at(one) === other && at(two) === all)
      return between.length > 1 || between.some((seam) => seam.some((index) => this.topsOf(index).length > 1)) ? [{ other, seams: between }] : []
    })
  }

  /** The tops of a piece: two where it ends in two shoulders. */
  private topsOf(index: number): readonly (readonly Place[])[] {
    const own = new Set(this.own[index]!.laid.map(({ row }) => row))
    const tops = this.wholes[index]!.outline.tops.filter(({ row }) => own.has(row))
    return tops.length === 2 ? tops.map(({ places }) => places) : [this.own[index]!.edge.places]
  }

  /** What is sewn to what: two pieces, or one that two others are sewn to. */
  private meetings(seams: readonly Seam[], outline: Outline): readonly (readonly [readonly Place[], readonly Place[]])[] {
    const [shared] = [...new Set(seams.flat())].filter((index) => seams.length === 2 && seams.every((seam) => seam.includes(index)))
    if (shared !== undefined) return outline.meeting(seams.flatMap((seam) => seam.filter((index) => index !== shared).flatMap((index) => this.topsOf(index).slice(0, 1))), this.topsOf(shared))
    return seams.flatMap(([one, other]) => outline.meeting(this.topsOf(one), this.topsOf(other)))
  }

  /** What is left open round a piece and those that it is sewn to, edge by edge, as the pattern tells it. */
  sewnAsTold(on: number, seams: readonly ToldSeam[]): readonly Outline[] {
    const reached = this.reachedFrom(on, seams)
    const wholes = [...new Set(reached.flatMap((index) => this.wholes[index] ?? []))]
    const pieces = this.own.map((run): SewnPiece => ({ rows: run.laid.map(({ row }) => row), under: (heading) => rowsUnder(run, heading) }))
    const here = seams.filter((seam) => seam.every(({ piece }) => reached.includes(piece)))
    const end = this.wholes[on]?.ends.get(on)
    const stages = [wholes.map(({ outline }) => outline), ...(wholes.some(({ unbordered }) => unbordered) ? [wholes.map(({ outline, unbordered }) => unbordered ?? outline)] : []), ...(wholes.some(({ apart }) => apart) ? [wholes.flatMap(({ outline, apart }) => apart ?? [outline])] : [])]
    const betweenLayers = this.betweenLayers(pieces, here)
    // A border over seams has an outline of its own, at whose end the hook stands.
    const bordered = reached.toReversed().flatMap((index) => this.own[index] ?? []).filter(({ outline }) => outline.isRing && !outline.empty).map(({ outline }) => outline.copy())
    return [...betweenLayers, ...bordered, ...stages.flatMap((outlines) => {
      const seen = outlines.map((outline) => outline.copyAt(end).seenFromRight)
      const marks = seen.flatMap(({ mark }) => mark ?? [])
      const parts = seen.map((one) => one.parts)
      const ways = parts.some((some) => some.some(({ row }) => row.base)) ? [parts, parts.map((some) => some.map(onBase))] : [parts]
      return ways.flatMap((way) => readingsOfSeams(here).flatMap(({ seams: told, how }) => sewnRings(way, pieces, told, how))).map((ring) => {
        const outline = Outline.round(ring)
        // A border that joins no yarn goes on from where the hook stands.
        marks.some((mark) => mark.place === end?.place && outline.resume(mark))
        return outline
      })
    }), ...this.withBorders(reached, pieces, here)]
  }

  /** What rows through both layers leave open of the pieces that they hold together, and what is left when such pairs are sewn, to themselves or to one another. */
  private betweenLayers(pieces: readonly SewnPiece[], here: readonly ToldSeam[]): readonly Outline[] {
    const pairs = here.flatMap((seam) => {
      const layers = this.layers(seam)
      const held = layers ? sewnLayers(layers.front, layers.joining.laid.map(({ row }) => row), layers.behind) : []
      return held.length > 0 ? [held] : []
    })
    const told = here.filter((seam) => seam.every(({ words }) => typeof words !== 'string'))
    const sewn = (outlines: readonly Outline[]): readonly Outline[] => sewnRings(outlines.map((outline) => outline.seenFromRight.parts), pieces, told).map((ring) => Outline.round(ring))
    // What the layers leave open may be sewn in part: a spout between a ridge and a side seam.
    const each = pairs.flatMap((held) => [...held, ...held.flatMap((outline) => sewn([outline]))])
    // Two bags of a saddle: each is closed by a ridge, and their backs are sewn to one another.
    const together = pairs.length > 1 ? [0, 1].flatMap((way) => sewn(pairs.flatMap((held) => held[way] ?? []))) : []
    return [...each, ...together]
  }

  /** What seams leave open, with all borders that have gone along it since; and where such borders are sewn to one another, what that leaves. */
  private withBorders(reached: readonly number[], pieces: readonly SewnPiece[], seams: readonly ToldSeam[]): readonly Outline[] {
    const isBorder = (index: number): boolean => index >= (this.wholes[index]?.borderedFrom ?? Number.POSITIVE_INFINITY)
    const borders = reached.filter(isBorder).toSorted((a, b) => a - b)
    if (borders.length === 0) return []
    const wholes = [...new Set(reached.flatMap((index) => this.wholes[index] ?? []))]
    const ofBorders = seams.filter((seam) => seam.some(({ piece }) => isBorder(piece)))
    const sewn = sewnRings(wholes.map(({ outline, unbordered = outline }) => unbordered.seenFromRight.parts), pieces, seams.filter((seam) => !ofBorders.includes(seam)))
    const rings = sewn.map((parts) => Outline.round(parts))
    for (const { row, turned } of borders.flatMap((index) => this.own[index]!.laid)) {
      const { over } = row
      if (over && !row.round) rings.find((ring) => ring.has(over.first) && ring.has(over.last))?.lay(row, turned)
    }
    return [...rings, ...sewnRings(rings.map((ring) => ring.seenFromRight.parts), pieces, ofBorders).map((parts) => Outline.round(parts))]
  }

  /** What is left open of borders that go round pieces and are sewn side to side, from each of their corners on. */
  sewnBorders(on: number | undefined, seams: readonly ToldSeam[]): readonly JoinedEdge[] {
    if (on === undefined || !this.own[on]?.laid.at(-1)?.row.round) return []
    const reached = this.reachedFrom(on, seams)
    const here = seams.filter((seam) => seam.every(({ piece, words }) => reached.includes(piece) && typeof words !== 'string'))
    const outlines = [...new Set(reached.flatMap((index) => this.wholes[index] ?? []))].map(({ outline }) => outline.seenFromRight.parts)
    const pieces = this.own.map((run): SewnPiece => ({ rows: run.laid.map(({ row }) => row), under: () => [] }))
    return [true, false].flatMap((centres) => sewnRings(outlines, pieces, here, { centres })).flatMap(roundBorders)
  }

  /** Of a seam that is a row through both layers: the piece whose row it is, the piece in front that this goes on from, and the one behind. */
  private layers([ridge, { piece, words }]: ToldSeam): { readonly joining: PieceRun; readonly front: Layer; readonly behind: Layer } | undefined {
    const joining = words === 'copy' || words === 'facing' ? this.own[ridge.piece] : undefined
    const [front, behind] = [joining?.on, piece].map((index) => (index === undefined ? undefined : this.own[index]))
    if (!joining || !front || !behind) return undefined
    const layer = ({ outline, laid }: PieceRun): Layer => ({ outline, rows: laid.map(({ row }) => row) })
    const inFront = layer(front)
    return { joining, front: inFront, behind: words === 'copy' ? inFront : layer(behind) }
  }

  /** Indexes of the pieces that hang together with one, by rows or by seams. */
  reachedFrom(on: number, seams: readonly ToldSeam[]): readonly number[] {
    const reached = new Set(this.hangingWith(on))
    for (const more of [...seams, ...seams]) {
      const pieces = more.map(({ piece }) => piece)
      if (pieces.every((piece) => this.wholes[piece]) && pieces.some((piece) => reached.has(piece))) for (const piece of pieces.flatMap((index) => this.hangingWith(index))) reached.add(piece)
    }
    return [...reached]
  }

  /** Indexes of the pieces that are sewn to those that a piece hangs together with, and of what hangs on them. */
  sewnTo(on: number, seams: readonly Seam[]): readonly number[] {
    const all = this.wholes[on]
    return all ? this.acrossSeams(all, seams).flatMap(({ other }) => [...other.ends.keys()]) : []
  }

  /** Indexes of the pieces that a piece hangs together with, its own among them. */
  hangingWith(on: number): readonly number[] {
    return [...(this.wholes[on]?.ends.keys() ?? [])]
  }

  /** What a piece's last row holds out beside the other pieces worked on it, in runs, those that come last first; those of a round end at its join, and one goes on over it. */
  beside(on: number): readonly Edge[] {
    const { edge, outline } = this.own[on]!
    const whole = this.wholes[on]
    if (!whole) return []
    const taken = (place: Place): boolean => this.used.has(place) || outline.has(place) && !whole.outline.has(place)
    if (!edge.places.some(taken)) return []
    const runs: Place[][] = [[]]
    for (const place of edge.places) {
      if (taken(place)) runs.push([])
      else runs.at(-1)!.push(place)
    }
    const [first, last] = [runs[0]!, runs.at(-1)!]
    // What lies before and behind the join of a round is one run for a row that goes on over it.
    const over = edge.round && runs.length > 1 && first.length > 0 && last.length > 0 ? [[...last, ...first]] : []
    const free = [...runs.filter(({ length }) => length > 0).toReversed(), ...over]
    // A space that the other row went into has room for more: both may meet in a corner space.
    const withSpaces = free.map((places) => betweenSpaces(edge, places)).filter((places, index) => places.length > free[index]!.length)
    return [...free, ...withSpaces].map((places) => ({ ...edge, places }))
  }

  /** Whether more hangs together than the pieces that this one goes on from, one after another. */
  private branches(on: number, { ends }: Whole): boolean {
    return ends.size > this.below(on)
  }

  private below(on: number): number {
    let pieces = 0
    for (let at: number | undefined = on; at !== undefined && this.wholes[at] === this.wholes[on]; at = this.own[at]!.on) pieces += 1
    return pieces
  }
}

/** An underside with the chain under a counted turning chain. */
const onBase = (part: Part): Part => (part.edge === 'underside' ? { ...part, places: withBase(part.places, part.row) } : part)

/** The rows under a heading of a piece, as they lie on the fabric. */
function rowsUnder({ rows, laid }: PieceRun, heading: string): readonly LaidRow[] {
  const places = new Set(rows.filter(({ written }) => written.heading === heading).flatMap(({ fabric }) => fabric.made))
  return laid.flatMap(({ row }) => (row.places.some((place) => places.has(place)) ? [row] : []))
}

/** A run with the spaces on either side of it. */
function betweenSpaces({ places, round }: Edge, run: readonly Place[]): readonly Place[] {
  const at = (index: number): Place | undefined => places[round ? (index + places.length) % places.length : index]
  const [before, behind] = [at(places.indexOf(run[0]!) - 1), at(places.indexOf(run.at(-1)!) + 1)]
  return [...(before && isSpace(before) ? [before] : []), ...run, ...(behind && isSpace(behind) ? [behind] : [])]
}

/** Back to where a piece ended. Where bands have covered that, to where one of the others ended: the row tells where it is joined. */
function resume({ outline, ends }: Whole, end: Mark): boolean {
  return [end, ...[...ends.values()].toReversed()].some((mark) => outline.resume(mark))
}
