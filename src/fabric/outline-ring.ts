import { standBeside, type LaidRow, type Part, type Stretch } from './laid-row.ts'
import type { Place } from './place.ts'

/** A part in its ring, its places in the order of the ring. */
export interface Node extends Part {
  next: Node
  before: Node
}

export type Way = 'next' | 'before'

export const back = (way: Way): Way => (way === 'next' ? 'before' : 'next')

export interface Spot {
  readonly node: Node
  readonly at: number
}

/** A place of an outline at which the hook stood, and which way the work went. */
export interface Mark {
  readonly place: Place
  readonly way: Way
  readonly last: LaidRow | undefined
}

/** The way from one spot to the one worked after it. */
export function wayTo(from: Spot, second: Spot, usual: Way): Way {
  if (from.node === second.node) return from.at === second.at ? usual : from.at < second.at ? 'next' : 'before'
  for (let next = from.node.next, before = from.node.before; ; next = next.next, before = before.before) {
    if (next === second.node) return before === second.node ? usual : 'next'
    if (before === second.node) return 'before'
    if (next === from.node) return usual
  }
}

/** What lies between two stretches, in the direction of work. */
export function between(from: Node, to: Node, way: Way): readonly Part[] {
  const parts: Part[] = []
  if (from === to) return parts
  for (let node = from[way]; node !== to && node !== from; node = node[way]) parts.push({ edge: node.edge, row: node.row, places: way === 'next' ? node.places : node.places.toReversed() })
  return parts
}

/** Farther than any edge is long. */
const far = 1_000_000

/** The nearer way from one part to another, or the usual one; the underside of a foundation lies on no way between two parts. */
export function nearerWay(from: Node, to: Node, usual: Way): Way {
  const length = (way: Way): number => between(from, to, way).reduce((sum, { edge, places }) => sum + (edge === 'underside' ? far : places.length), 0)
  return length(usual) <= length(back(usual)) ? usual : back(usual)
}

/** Whether, going on from a stretch, one other is met before another; undefined where they lie on no ring with it. */
export function comesBefore(from: Node, one: Node, other: Node): boolean | undefined {
  for (let node = from.next; node !== from; node = node.next) {
    if (node === one) return ringFrom(from).includes(other) ? true : undefined
    if (node === other) return ringFrom(from).includes(one) ? false : undefined
  }
  return undefined
}

/** Whether going on from one stretch the other is met. */
export function onOneRing(from: Node, to: Node): boolean {
  const met = new Set<Node>()
  for (let node = from; !met.has(node); node = node.next) {
    if (node === to) return true
    met.add(node)
  }
  return false
}

/** The parts of the ring that a node lies in. */
export function ringFrom(first: Node): readonly Part[] {
  const parts: Part[] = []
  for (let node = first; parts.length === 0 || node !== first; node = node.next) parts.push(node)
  return parts
}

/** Joins two neighbours by the seam that a sewn top has become. */
export function seamBetween(left: Node, right: Node, { row, places }: Node): Node {
  const seam: Node = { edge: 'seam', row, places, before: left, next: right }
  left.next = seam
  right.before = seam
  return seam
}

/** A stretch the other way round. */
export const backwards = ({ edge, rows, places, seams }: Stretch): Stretch => ({ edge, rows: rows.toReversed(), places: places.toReversed(), seams: seams.map((at) => places.length - at) })

/** Nodes in their order as stretches: row-ends that follow one another are one side, and so over a seam; not those on either side of a slit. */
export function stretchesOf(nodes: readonly Node[], way: Way, covered: ReadonlySet<LaidRow>): readonly Stretch[] {
  const found: { edge: Stretch['edge']; rows: LaidRow[]; places: Place[]; seams: number[] }[] = []
  let sewn = false
  for (const { edge, row, places } of nodes) {
    if (edge === 'seam') {
      sewn = true
      continue
    }
    const before = found.at(-1)
    const along = way === 'next' ? places : places.toReversed()
    if (edge === 'row-ends' && before?.edge === 'row-ends' && (sewn || !standBeside(before.rows.at(-1)!, row))) {
      if (sewn) before.seams.push(before.places.length)
      before.rows.push(row)
      before.places.push(...along)
    } else found.push({ edge: edge === 'top' && covered.has(row) ? 'step' : edge, rows: [row], places: [...along], seams: [] })
    sewn = false
  }
  return found
}

/** The parts of a ring the other way round. */
export const turnedOver = (nodes: readonly Node[]): readonly Part[] => nodes.toReversed().map(({ edge, row, places }) => ({ edge, row, places: places.toReversed() }))

/** Whether a ring runs as rows of the right side do: told by any top on it. */
export function seenFromRight(nodes: readonly Node[]): boolean {
  const top = nodes.find(({ edge, places }) => edge === 'top' && places.length > 1)
  return !top || top.row.places.indexOf(top.places[0]!) < top.row.places.indexOf(top.places.at(-1)!) === (top.row.side !== 'WS')
}
