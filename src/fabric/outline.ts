import { partsOf, withBase, type LaidRow, type Part, type Stretch } from './laid-row.ts'
import { openInFold, type FoldedPortion } from './fold.ts'
import { isBridge, openingUnder, partsOfStretches, roundOpening, sideOfBridge, slitLeft, underChain, withEndsOf, type Opening } from './opening.ts'
import { alike, type Likeness } from './likeness.ts'
import { back, backwards, between, nearerWay, onOneRing, ringFrom, seenFromRight, stretchesOf, turnedOver, wayTo, type Mark, type Node, type Spot, type Way } from './outline-ring.ts'
import { RingOfSeams } from './ring-of-seams.ts'
import type { GoesOver } from './over-pieces.ts'
import type { Place } from './place.ts'

/**
 * The outline of a fabric: a ring of stretches. A row is worked along the outline from its first place to its last; it covers what
 * lies between and puts its own ends and stitches in its stead. It grows with each row, so it is a class.
 *
 *          → top →
 *        ┌─────────┐      a row that stops early, or begins farther in, leaves stitches of the row below: a step
 *     ┌──┘         └──┐
 *     └───────────────┘   the underside of the foundation
 */
export class Outline extends RingOfSeams {
  private last: LaidRow | undefined
  /** Rows that are not rounds, and not yet enclosed by a round. */
  flatRows = 0
  /** Of the first row: the chain under a counted turning chain. */
  base: Place | undefined
  /** The other edge of a tube: undersides of the chain that its first round was worked into. */
  bottom: readonly Place[] = []
  /** The edges of flat rows that a round on their top has closed to a tube: a heel, a slit. */
  private opening: readonly Stretch[] = []
  /** The same where a chain bridges it, with the ends of the round that closed it. */
  openingWithEnds: readonly Stretch[] = []
  /** It is what sewing left open, or an opening. */
  isRing = false
  /** Openings that lie inside it. */
  private inside: readonly Opening[] = []

  /** The same outline, to go on with apart from this one; of other places, where these are told. */
  copy({ placeFor, rowFor }: Likeness = alike): Outline {
    const copy = new Outline()
    copy.bottom = this.bottom
    copy.opening = this.opening
    copy.openingWithEnds = this.openingWithEnds
    copy.inside = this.inside
    copy.base = this.base && placeFor(this.base)
    copy.flatRows = this.flatRows
    copy.isRing = this.isRing
    copy.last = this.last && rowFor(this.last)
    for (const row of this.covered) copy.covered.add(rowFor(row))
    const along = (places: readonly Place[]): readonly Place[] => (this.way === 'next' ? places : places.toReversed())
    copy.close(this.ring().map(({ edge, row, places }) => ({ edge, row: rowFor(row), places: along(places).map(placeFor) })))
    return copy
  }

  /** A copy, the hook where it stood at a mark of this outline: the copy may run the other way round. */
  copyAt(mark: Mark | undefined): Outline {
    const copy = this.copy()
    if (mark) copy.resume({ ...mark, way: this.way === 'next' ? mark.way : back(mark.way) })
    return copy
  }

  /** Whether a tube has an opening below its first round. */
  get opened(): boolean {
    return this.flatRows === 0 && this.opening.length > 0
  }

  /** The outlines of the openings inside it. */
  get openings(): readonly Outline[] {
    return this.inside.flatMap(roundOpening).map((parts) => Outline.round(parts))
  }

  /** The piece is folded and its two sides are closed to one another in part; round what stays open a border can go. */
  closeInPart(portions: readonly FoldedPortion[]): void {
    this.inside = [...this.inside, ...openInFold(this.ring(), portions)]
  }

  /** A round on this fabric, with an outline of its own, has enclosed openings: they lie inside this one as well. */
  takeOpenings({ inside }: Outline): void {
    this.inside = [...new Set([...this.inside, ...inside])]
  }

  /** The places of parts in the order in which a row goes over them: the nearer way from one to the next, over no foundation. */
  inOrder(parts: readonly (readonly Place[])[]): readonly (readonly Place[])[] {
    const [first, second] = parts.map(([place]) => place && this.find(place))
    if (!first || !second || first.node === second.node) return parts
    const way = nearerWay(first.node, second.node, wayTo(first, this.find(parts[0]!.at(-1)!) ?? first, 'next'))
    return parts.map((places) => {
      const [from, to] = [this.find(places[0]!), this.find(places.at(-1)!)]
      return from && to && from.node === to.node && from.at > to.at === (way === 'next') ? places.toReversed() : places
    })
  }

  get empty(): boolean {
    return this.hook === undefined
  }

  /** The side on which the row was worked at whose end the hook stands. */
  get side(): LaidRow['side'] {
    return this.last?.side
  }

  /** Where the hook stands, to come back to. */
  get mark(): Mark | undefined {
    return this.hook && { place: this.hook.places[0]!, way: this.way, last: this.last }
  }

  /** Puts the hook back to where it stood; false where something else lies there by now. */
  resume({ place, way, last }: Mark): boolean {
    const spot = this.find(place) ?? (last?.places.at(-1) && this.find(last.places.at(-1)!))
    if (!spot) return false
    this.hook = spot.node
    this.way = way
    this.last = last
    return true
  }

  has(place: Place): boolean {
    return this.find(place) !== undefined
  }

  /** The ring as it is seen from the right side, and where the hook stands on it. */
  get seenFromRight(): { readonly parts: readonly Part[]; readonly mark: Mark | undefined } {
    const nodes = (this.hook ? ringFrom(this.hook) : []) as readonly Node[]
    if (seenFromRight(nodes)) return { parts: nodes, mark: this.mark }
    return { parts: turnedOver(nodes), mark: this.mark && { ...this.mark, way: back(this.mark.way) } }
  }

  /** Rows that no other lies on, each with what it holds out. */
  get tops(): readonly Part[] {
    return this.ring().filter(({ edge, row }) => edge === 'top' && !this.covered.has(row))
  }

  /** Another fabric lies beside this one; both are seen from the same side. */
  beside(other: Outline): void {
    const { hook, way } = this
    const others = other.copy().ring()
    this.close((this.rightWay === 'next') === seenFromRight(others) ? others : turnedOver(others))
    this.hook = hook
    this.way = way
    for (const row of other.covered) this.covered.add(row)
  }

  /** A row is going to lie over several fabrics, and holds them together: they become one ring, on which its places follow one another. */
  private holdTogether({ legs, beside }: GoesOver, row: LaidRow): void {
    for (const other of beside) {
      if (other.ring().some(({ places }) => places.length > 0 && this.has(places[0]!))) continue
      this.beside(other)
      this.flatRows += other.flatRows
      this.takeOpenings(other)
    }
    for (const [index, { places, bridge }] of legs.entries()) {
      const from = legs[index - 1]?.places.at(-1)
      if (!from) continue
      const way = this.wayOf(legs[index - 1]!.places) ?? this.wayOf(places) ?? (row.side === 'WS' ? back(this.rightWay) : this.rightWay)
      this.splice(from, places[0]!, way, bridge.length > 0 ? { edge: 'underside', row, places: way === 'next' ? bridge.toReversed() : bridge } : undefined)
    }
  }

  /** The same where makers also work into the sides of the row beside the chains that lead over from one fabric to another (common practice, no source); none without such chains. */
  get withBridgeEnds(): readonly Outline[] {
    const copy = this.copy()
    const parts = copy.ring().flatMap((part) => (isBridge(part) ? [sideOfBridge(part), part, sideOfBridge(part)] : [part]))
    if (parts.length === copy.ring().length) return []
    copy.byRow.clear()
    copy.close(parts)
    return [copy]
  }

  /** The rings that seams have closed off from the one at which the hook stands: a neck beside the shoulders. */
  get behindSeams(): readonly Outline[] {
    return this.sewnOff.map((parts) => Outline.round(parts))
  }

  /** An outline that is this ring, begun before its first part. */
  static round(parts: readonly Part[]): Outline {
    const outline = new Outline()
    outline.close(parts)
    outline.flatRows = parts.length
    outline.isRing = true
    return outline
  }

  /** Puts a row on. */
  lay(row: LaidRow, turned: boolean): void {
    if (row.round) return this.layRound(row)
    if (row.goesOver) this.holdTogether(row.goesOver, row)
    if (this.opened && row.over) {
      if (this.opening.some(({ places }) => places.includes(row.over!.first))) this.goRoundOpening()
      else this.leaveOpening()
    }
    if (!row.closes) this.flatRows += 1
    if (!this.hook) {
      this.base = row.base
      this.close([...partsOf(row), { edge: 'underside', row, places: row.foundation.toReversed() }])
      this.way = 'next'
      // The hook stands at the end of the row: at its second row-end.
      this.hook = this.ring().filter(({ edge }) => edge === 'row-ends').at(-1)
    } else this.cover(row, turned)
    this.last = row
  }

  /** Along the outline from the last stitch worked, in the direction of work; after a turn the other way round. */
  walk(turned: boolean): readonly Stretch[] {
    if (this.opened) return turned ? this.opening.toReversed().map(backwards) : this.opening
    const found = stretchesOf(this.ring(), this.way, this.covered)
    return turned ? found.toReversed().map(backwards) : found
  }

  /** A placket on the sides of a slit: the outline is from now on the one round the slit, along the foundation on which the rows stood. */
  private goRoundOpening(): void {
    this.close(partsOfStretches(this.opening))
    this.way = 'next'
    this.flatRows = this.ring().length
    this.opening = []
    this.isRing = true
  }

  /** Rows that go on from the last round lie elsewhere: the slit below is an opening inside from now on. */
  private leaveOpening(): void {
    this.inside = [...this.inside, ...slitLeft(this.opening)]
    this.opening = []
    this.openingWithEnds = []
  }

  private layRound(row: LaidRow): void {
    if (!this.hook) this.bottom = row.foundation
    if (row.crossings) this.enclose(row, this.reach(row, false)?.way ?? this.way)
    if (row.tube) {
      const [sides, chain] = [this.walk(false).filter(({ edge }) => edge !== 'top'), underChain(row)]
      this.opening = [...sides, ...chain]
      this.openingWithEnds = chain.length > 0 ? [...withEndsOf(row, sides), ...chain] : []
    }
    this.base = undefined
    this.byRow.clear()
    this.covered.clear()
    this.flatRows = 0
    this.close([{ edge: 'top', row, places: row.places }])
    this.way = 'next'
    this.last = row
  }

  /** Where a row goes over from one part to another it closes an opening. */
  private enclose(row: LaidRow, way: Way): void {
    for (const crossing of row.crossings ?? []) {
      const [start, end] = [this.find(crossing.from), this.find(crossing.to)]
      const below = start && end ? between(start.node, end.node, way) : []
      if (below.length > 0) this.inside = [...this.inside, openingUnder(crossing, below, row)]
    }
  }

  /** Replaces what a flat row was worked along by the row. */
  private cover(row: LaidRow, turned: boolean): void {
    const reach = this.reach(row, turned)
    if (!reach) return
    const { from, to, way } = reach
    this.enclose(row, way)
    const outside = this.cut(from, to, way)
    const parts = way === 'next' ? partsOf(row) : partsOf(row).toReversed().map((part) => ({ ...part, places: part.places.toReversed() }))
    const nodes = parts.filter(({ places }) => places.length > 0).map((part) => ({ ...part }) as Node)
    const [left, right] = way === 'next' ? outside : [outside[1], outside[0]]
    for (const [index, node] of nodes.entries()) {
      node.before = nodes[index - 1] ?? left ?? nodes.at(-1)!
      node.next = nodes[index + 1] ?? right ?? nodes[0]!
      this.note(node)
    }
    if (left) left.next = nodes[0]!
    if (right) right.before = nodes.at(-1)!
    this.way = way
    const rowEnds = nodes.filter(({ edge }) => edge === 'row-ends')
    this.hook = (way === 'next' ? rowEnds.at(-1) : rowEnds[0]) ?? nodes[0]
  }

  /** Where a row begins and ends on the outline, and which way it runs. */
  private reach(row: LaidRow, turned: boolean): { readonly from: Spot; readonly to: Spot; readonly way: Way } | undefined {
    const usual = turned ? back(this.way) : this.way
    const over = row.over ?? this.topOfLast(usual)
    if (!over) return undefined
    for (const place of [over.first, over.last]) this.takeIn(place)
    // A slip stitch that counts, or a chain that was worked one by one, is no place of the outline: the row reaches to the end there.
    const all = this.topOfLast(usual)
    const from = this.find(over.first) ?? (all && this.find(all.first))
    const to = this.find(over.last) ?? (all && this.find(all.last))
    const second = this.find(over.first) && this.find(over.second)
    // A row that does not come out may begin on one fabric and end on another that nothing holds to it.
    if (!from || !to || !onOneRing(from.node, to.node)) return undefined
    return { from, to, way: second ? wayTo(from, second, usual) : usual }
  }

  /** The chain under a counted turning chain is a place of the underside once a row lies on it. */
  private takeIn(place: Place): void {
    const node = place.kind === 'ch' && !this.find(place) ? this.ring().find(({ edge, row, places }) => edge === 'underside' && row.base === place && withBase(places, row).length > places.length) : undefined
    if (node) this.exchange(node, { ...node, places: withBase(node.places, node.row) })
  }

  /** All that the last row holds out. */
  private topOfLast(way: Way): LaidRow['over'] | undefined {
    const node = this.ring().findLast(({ edge, row }) => (edge === 'top' || edge === 'seam') && row === this.last)
    if (!node) return undefined
    const places = way === 'next' ? node.places : node.places.toReversed()
    return { first: places[0]!, second: places[1] ?? places[0]!, beforeLast: places.at(-2) ?? places[0]!, last: places.at(-1)! }
  }
}
