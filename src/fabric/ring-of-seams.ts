import type { Part } from './laid-row.ts'
import { comesBefore, nearerWay, ringFrom, seamBetween } from './outline-ring.ts'
import type { Place } from './place.ts'
import { RingOfNodes } from './ring-of-nodes.ts'

/** A ring of stretches that can be sewn to itself: it closes to several rings. */
export class RingOfSeams extends RingOfNodes {
  /** Rings that seams have closed off from the one at which the hook stands. */
  protected sewnOff: readonly (readonly Part[])[] = []

  /** Two tops are sewn to one another. Between them the outline closes to rings of their own, such as a neck and an armhole; the hook's stays. */
  sew(one: readonly Place[], other: readonly Place[]): void {
    const [a, b] = [one, other].map(([place]) => (place ? this.find(place)?.node : undefined))
    if (!a || !b || a === b || a === this.hook || b === this.hook) return
    for (const node of [a, b]) this.forget(node)
    const [afterA, afterB, beforeA, beforeB] = [a.next, b.next, a.before, b.before]
    if (afterA !== b) this.note(seamBetween(beforeB, afterA, a))
    if (afterB !== a) this.note(seamBetween(beforeA, afterB, b))
    const own = new Set(this.ring())
    this.sewnOff = [...this.sewnOff, ...[afterA, afterB].filter((node) => node !== a && node !== b && !own.has(node)).map(ringFrom)]
  }

  /**
   * What meets when two fabrics are sewn to one another by their tops: two shoulders of a front, and of a back two as well or the two ends of
   * one straight top. Seen from the right side the first of the one meets the last of the other.
   */
  meeting(ones: readonly (readonly Place[])[], others: readonly (readonly Place[])[]): readonly (readonly [readonly Place[], readonly Place[]])[] {
    if (ones.length === 1 && others.length === 2) return this.meeting(others, ones)
    const [first, last] = this.ordered(ones)
    if (!first || !last) return ones.flatMap((one) => others.map((other) => [one, other] as const))
    const ends = others.length === 2 ? this.ordered(others) : this.endsOf(others[0]!, first.length, last.length)
    const [start, end] = ends
    if (!start || !end) return []
    const top = this.find(start[0]!)!.node
    const begins = comesBefore(this.find(first[0]!)!.node, top, this.find(last[0]!)!.node) === true
    return begins ? [[first, start], [last, end]] : [[first, end], [last, start]]
  }

  /** Two tops in the order of the ring, the nearer way from one to the other. */
  private ordered([one = [], other = []]: readonly (readonly Place[])[]): readonly (readonly Place[])[] {
    const [a, b] = [one, other].map(([place]) => (place ? this.find(place)?.node : undefined))
    if (!a || !b || a === b) return []
    return nearerWay(a, b, 'next') === 'next' ? [one, other] : [other, one]
  }

  /** The two ends of a top, with something between them. */
  private endsOf(places: readonly Place[], first: number, last: number): readonly (readonly Place[])[] {
    const top = places[0] && this.find(places[0])?.node
    const length = top?.places.length ?? 0
    if (!top || top === this.hook || first + last > length) return []
    const ends = [top.places.slice(0, first), top.places.slice(length - last)]
    this.partedAt(this.partedAt(top, first), length - first - last)
    return ends
  }
}
