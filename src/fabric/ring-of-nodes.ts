import type { LaidRow, Part } from './laid-row.ts'
import { back, seenFromRight, wayTo, type Node, type Spot, type Way } from './outline-ring.ts'
import type { Place } from './place.ts'

/** The stretches of an outline as a ring of nodes, found by their places; the hook stands at one of them. */
export class RingOfNodes {
  protected hook: Node | undefined
  protected way: Way = 'next'
  /** Stretches by the row whose number their places carry. */
  protected readonly byRow = new Map<number, Set<Node>>()
  /** Rows that another row lies on. */
  protected readonly covered = new Set<LaidRow>()

  /** Stretches from the hook on, in the direction of work. */
  protected ring(): readonly Node[] {
    if (!this.hook) return []
    const nodes: Node[] = []
    let node = this.hook
    do {
      nodes.push(node)
      node = node[this.way]
    } while (node !== this.hook)
    return nodes
  }

  /** Makes a ring of stretches; the hook stands before the first. */
  protected close(stretches: readonly Part[]): void {
    const nodes = stretches.filter(({ places }) => places.length > 0).map((stretch) => ({ ...stretch }) as Node)
    for (const [index, node] of nodes.entries()) {
      node.next = nodes[(index + 1) % nodes.length]!
      node.before = nodes.at(index - 1)!
      this.note(node)
    }
    this.hook = nodes[0]
  }

  protected note(node: Node): void {
    for (const row of new Set([node.places[0]!.row, node.places.at(-1)!.row])) {
      const nodes = this.byRow.get(row) ?? new Set()
      this.byRow.set(row, nodes.add(node))
    }
  }

  protected forget(node: Node): void {
    for (const row of new Set([node.places[0]!.row, node.places.at(-1)!.row])) this.byRow.get(row)?.delete(node)
  }

  protected find(place: Place): Spot | undefined {
    for (const node of this.byRow.get(place.row) ?? []) {
      const at = node.places[0] === place ? 0 : node.places.at(-1) === place ? node.places.length - 1 : node.places.indexOf(place)
      if (at >= 0) return { node, at }
    }
    return undefined
  }

  /** Puts a stretch in the place of another. */
  protected exchange(node: Node, other: Node): void {
    this.forget(node)
    this.note(other)
    other.next = node.next === node ? other : node.next
    other.before = node.before === node ? other : node.before
    other.before.next = other
    other.next.before = other
    if (this.hook === node) this.hook = other
  }

  /** Parts a stretch behind so many of its places, and gives what lies behind; the stretch itself where nothing would lie on one side. */
  protected partedAt(node: Node, count: number): Node {
    if (count <= 0 || count >= node.places.length) return node
    const ahead: Node = { ...node, places: node.places.slice(0, count) }
    const behind: Node = { ...node, places: node.places.slice(count), before: ahead }
    ahead.next = behind
    ahead.before = node.before === node ? behind : node.before
    behind.next = node.next === node ? ahead : node.next
    ahead.before.next = ahead
    behind.next.before = behind
    this.forget(node)
    this.note(ahead)
    this.note(behind)
    if (this.hook === node) this.hook = ahead
    return behind
  }

  /** Two rings become one: from one place the way goes on to another, and behind what lies beyond that back over a bridge. */
  protected splice(from: Place, to: Place, way: Way, bridge: Part | undefined): void {
    const [start, end] = [this.endingAt(from, way), this.endingAt(to, back(way))]
    if (!start || !end || start[way] === end) return
    const [behindStart, beforeEnd] = [start[way], end[back(way)]]
    const link = (one: Node, other: Node): void => {
      one[way] = other
      other[back(way)] = one
    }
    link(start, end)
    const over = bridge && ({ ...bridge } as Node)
    if (!over) return link(beforeEnd, behindStart)
    this.note(over)
    link(beforeEnd, over)
    link(over, behindStart)
  }

  /** The stretch that ends at a place on the way, parted from what lies beyond. */
  private endingAt(place: Place, way: Way): Node | undefined {
    const spot = this.find(place)
    if (!spot) return undefined
    const count = way === 'next' ? spot.at + 1 : spot.at
    if (count === 0 || count === spot.node.places.length) return spot.node
    const behind = this.partedAt(spot.node, count)
    return way === 'next' ? behind.before : behind
  }

  /** Takes out all from one spot to another and gives the neighbours on either side, in the direction of the way. */
  protected cut(from: Spot, to: Spot, way: Way): readonly [Node | undefined, Node | undefined] {
    const inside = new Set<Node>()
    for (let node = from.node; ; node = node[way]) {
      inside.add(node)
      if (node === to.node) break
    }
    const whole = inside.has(from.node[back(way)]) && inside.has(to.node[way])
    const rest = (spot: Spot, first: boolean): Node | undefined => {
      const before = first === (way === 'next')
      const places = before ? spot.node.places.slice(0, spot.at) : spot.node.places.slice(spot.at + 1)
      return places.length === 0 ? undefined : ({ ...spot.node, places })
    }
    const [start, end] = [rest(from, true), rest(to, false)]
    const [outerStart, outerEnd] = whole ? [undefined, undefined] : [from.node[back(way)], to.node[way]]
    for (const node of inside) {
      this.forget(node)
      if (node.edge === 'top') this.covered.add(node.row)
    }
    const link = (node: Node | undefined, outer: Node | undefined, side: Way): void => {
      if (!node) return
      this.note(node)
      if (!outer) return
      node[side] = outer
      outer[back(side)] = node
    }
    link(start, outerStart, back(way))
    link(end, outerEnd, way)
    // With nothing else on the outline, what is left at either end are neighbours of one another.
    if (whole && start && end) {
      start[back(way)] = end
      end[way] = start
    } else if (whole) {
      const only = start ?? end
      return [only, only]
    }
    return [start ?? outerStart ?? end, end ?? outerEnd ?? start]
  }

  /** The way round in which a row of the right side goes. */
  get rightWay(): Way {
    return seenFromRight(this.ring()) ? this.way : back(this.way)
  }

  /** Whether places follow one another as a row of the right side goes; undefined where one place alone does not tell. */
  runsRight(places: readonly Place[]): boolean | undefined {
    const way = this.wayOf(places)
    return way && way === this.rightWay
  }

  /** Which way places follow one another; undefined where one place alone does not tell. */
  protected wayOf(places: readonly Place[]): Way | undefined {
    const [from, second] = [places[0], places[1]].map((place) => place && this.find(place))
    return from && second ? wayTo(from, second, this.way) : undefined
  }
}
