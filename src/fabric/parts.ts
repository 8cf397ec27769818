import { isEndOfRow } from '../notation/end-of-row.ts'
import { both } from '../notation/parse-part.ts'
import type { Instruction, Work } from '../notation/syntax.ts'
import { inSize, type Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import type { Outline } from './outline.ts'
import type { Place } from './place.ts'
import type { PieceToWork } from './piece-run.ts'
import type { Walk } from './walk.ts'
import type { State } from './work-piece.ts'

/** A part of a fabric that ended in a row of its own, such as a shoulder, and waits to be joined to another. */
export interface FabricPart {
  /** Words of the heading over it, or the name of a piece. */
  readonly name: string
  readonly places: readonly Place[]
  /** Number of its last row. */
  readonly number?: number | undefined
}

/** Parts that one row goes over, in its order; by key. */
export interface PartsJoined {
  readonly begins: string
  readonly places: ReadonlyMap<string, readonly Place[]>
}

/** Where a row goes from one part over to another: an opening lies below. */
export interface Crossing {
  readonly from: Place
  readonly to: Place
  /** Undersides of the chain between them, in the order of the row. */
  readonly bridge: readonly Place[]
}

export interface Joining {
  readonly items: readonly Instruction[]
  readonly joins?: PartsJoined
  /** The outline that the parts lie on. */
  readonly outline?: Outline
}

/** The parts that wait when a row begins, the one at whose end the hook stands last: those of the piece, and pieces that it hangs together with. */
export function waitingParts({ edge, entry, parts, number }: Pick<State, 'edge' | 'entry' | 'parts' | 'number'>, { onFabric, pieceEdges }: Pick<PieceToWork, 'onFabric' | 'pieceEdges'>): readonly FabricPart[] {
  const pieces = [...(onFabric?.names ?? [])].flatMap((name) => ({ name, places: pieceEdges?.get(name)?.places ?? [] }))
  const others = pieces.filter(({ places }) => places[0] !== edge.places[0])
  return [...others, ...parts, { name: entry?.heading ?? onFabric?.parts?.at(-1)?.name ?? pieces.find((piece) => !others.includes(piece))?.name ?? '', places: edge.places, number }]
}

/**
 * `Sc in each of 10 sc of second shoulder, ch 10, sc in each of 10 sc of first shoulder`: the parts that a row's words mean. The last of
 * the parts is the one at whose end the hook stands. Where no part waits the words only say where.
 */
export function joiningParts(said: readonly Instruction[], parts: readonly FabricPart[], outlineOf: () => Outline, size: number): Joining {
  const names = new Set(parts.map(({ name }) => name))
  const items = said.map((item) => (item.node === 'work' && item.target?.ofPiece !== undefined && names.has(item.target.ofPiece.toLowerCase()) ? { ...item, target: { ...item.target, ofPart: item.target.ofPiece.toLowerCase() } } : item))
  const targets = targetsOf(items)
  const named = targets.flatMap(({ ofPart }) => ofPart ?? [])
  if (named.length === 0) return { items: said }
  // `4 sts of Second side, 11 sts of Back, 4 sts of First side`: a collar over seams, and no row from part to part.
  const ofOther = targets.some(({ ofPiece }) => ofPiece !== undefined && !names.has(ofPiece.toLowerCase()))
  if (ofOther || targets.some((target) => isAlong(target, parts))) return { items: withoutParts(said) }
  const outline = outlineOf()
  const waiting = parts.filter(({ places }) => places.length > 0 && outline.has(places[0]!) && outline.has(places.at(-1)!))
  const here = waiting.length - 1
  const meant = new Map<string, number>()
  // `6 sc, ch 8, 6 sc across first shoulder`: what has no place of its own is worked where the hook stands.
  const [begun] = items.filter(({ node }) => node === 'work' || node === 'group' || node === 'repeat' || node === 'start')
  const first = begun && targetsOf([begun])[0]
  let at = first?.ofPart === undefined ? here : -1
  for (const words of named) {
    if (words === both || meant.has(words)) continue
    const found = partMeant(words, waiting, at < 0 ? undefined : at, here)
    if (found !== undefined) meant.set(words, found)
    at = found ?? at
  }
  const order = [...new Set([...(first?.ofPart === undefined || first.ofPart === both ? [here] : []), ...named.flatMap((words) => meant.get(words) ?? (words === both ? waiting.map((_, index) => index).toReversed() : []))])]
  if (waiting.length < 2 || order.length === 0 || order.length === 1 && order[0] === here) return { items: withoutParts(said) }
  const places = outline.inOrder(order.map((index) => waiting[index]!.places))
  const key = (index: number): string => `part ${index}`
  return {
    items: withKeys(items, key(order[0]!), (words) => (meant.has(words) ? key(meant.get(words)!) : undefined), order.map((index, nth) => ({ key: key(index), stitches: places[nth]!.length })), size).items,
    outline,
    joins: { begins: key(order[0]!), places: new Map(order.map((index, nth) => [key(index), places[nth]!])) },
  }
}

/** Row-ends, undersides, stitches that were left: the row goes along the edges of parts, and not over their tops. `of Row 14 of Left shoulder` is its top where that is its last row. */
function isAlong(target: Target, parts: readonly FabricPart[]): boolean {
  const { walk, thing, edge, evenly, ofRow, ofPart } = target
  return isEndOfRow(target) || thing?.kind === 'row-end' || thing?.kind === 'edge' || edge === 'underside' || evenly === true || ofRow !== undefined && !parts.some(({ name, number }) => name === ofPart && number === ofRow) || (walk === 'skipped' || walk === 'edge') && ofPart === undefined
}

/** A part by its heading, by the order in which they were worked, or because there is but one other. */
function partMeant(words: string, parts: readonly FabricPart[], before: number | undefined, here: number): number | undefined {
  const called = (is: (name: string) => boolean): readonly number[] => parts.flatMap(({ name }, index) => (name !== '' && is(name) ? [index] : []))
  const found = [called((name) => name === words), called((name) => name.includes(words) || words.includes(name))].find(({ length }) => length === 1)
  if (found) return found[0]
  if (/^(?:this|same)\b/.test(words)) return before ?? here
  const other = parts.length === 2 ? 1 - (before ?? here) : undefined
  if (/\b(?:other|opposite|remaining)\b/.test(words)) return other
  const nth = ['first', 'second', 'third', 'fourth'].findIndex((ordinal, index) => words.startsWith(ordinal) || words.startsWith(String(index + 1)))
  if (nth >= 0) return nth < parts.length ? nth : undefined
  // `left`, `right` without a heading that says so: the hook stands at the one that is named first.
  return before === undefined ? here : other
}

function targetsOf(items: readonly Instruction[]): readonly Target[] {
  return items.flatMap((item) => [...('target' in item && item.target ? [item.target] : []), ...(item.node === 'repeat' || item.node === 'group' ? targetsOf(item.items) : [])])
}

/** The words as they are read where no part is meant. */
function withoutParts(items: readonly Instruction[]): readonly Instruction[] {
  return items.flatMap((item): readonly Instruction[] => {
    if (item.node === 'start' && item.target.ofPart !== undefined && item.target.ofRow === undefined) return []
    if (item.node === 'repeat') return [{ ...item, items: withoutParts(item.items) }]
    if (item.node !== 'work' && item.node !== 'group' && item.node !== 'start' || item.target?.ofPart === undefined) return [item]
    const { ofPart: _, ...target } = item.target
    return [{ ...item, target }]
  })
}

interface PartKey {
  readonly key: string
  readonly stitches: number
}

/** Every target with the key of the part that it lies on; what follows one lies on the same. */
function withKeys(items: readonly Instruction[], begins: string, keyOf: (words: string) => string | undefined, order: readonly PartKey[], size: number): { readonly items: readonly Instruction[]; readonly last: string } {
  let last = begins
  const keyed = items.flatMap((item): readonly Instruction[] => {
    if (item.node === 'start' && item.target.ofPart !== undefined) {
      last = keyOf(item.target.ofPart) ?? last
      return []
    }
    if (item.node === 'repeat') {
      const inside = withKeys(item.items, last, keyOf, order, size)
      last = inside.last
      return [{ ...item, items: inside.items }]
    }
    if (item.node === 'work' && !item.target && last !== begins) return [onPart(item, last)]
    if (item.node !== 'work' && item.node !== 'group' || !item.target) return [item]
    const { ofPart, ...target } = item.target
    if (ofPart === both && item.node === 'work') {
      last = order.at(-1)!.key
      let left = target.count ? inSize(target.count, size) : 0
      return order.map(({ key, stitches }, index) => {
        const count = index === order.length - 1 ? left : Math.min(left, stitches)
        left -= count
        return { ...withoutJoin(item), target: { ...onTops(target), ofPart: key, ...(target.count && { count: { ...target.count, values: [count] } }) } }
      })
    }
    last = (ofPart === undefined ? undefined : keyOf(ofPart)) ?? last
    const there = { ...(ofPart === undefined ? target : onTops(target)), ofPart: last }
    return [item.node === 'work' ? inNext({ ...(ofPart === undefined ? item : withoutJoin(item)), target: there }, ofPart !== undefined) : { ...item, target: there }]
  })
  return { items: keyed, last }
}

/** `pick up first shoulder and sc 6`: one in each of so many. */
function onPart(item: Work, ofPart: string): Work {
  const { count, ...work } = item
  return count && !item.over && !/tog$|^(?:inc|dec)$/.test(item.stitch) ? { ...work, target: { walk: 'next', count, ofPart, start: item.start, end: item.end } } : item
}

/** `Sc across both sides to join`: it is the parts that are joined, and no round. */
const withoutJoin = ({ joins: _, ...work }: Work): Work => work

/** `9 sc across first shoulder`: one in each of so many. */
function inNext(item: Work, named: boolean): Work {
  if (!named || !item.count || !item.target || item.target.walk !== 'each' || item.target.thing) return item
  const { count, ...work } = item
  const { toEnd: _, ...target } = item.target
  return { ...work, target: { ...target, walk: 'next', count } }
}

/** `across the other side`: the stitches at its top, and no edge of the piece. */
function onTops({ edge: _, across: __, until: ___, ofPiece: ____, held: _____, ofRow: ______, ...target }: Omit<Target, 'ofPart'>): Omit<Target, 'ofPart'> {
  // `the 9 held sts of first shoulder`
  if (target.walk === 'skipped') return target.count ? { ...target, walk: 'next' } : { ...target, walk: 'each', toEnd: true }
  return target.walk === 'edge' ? { ...target, walk: 'each', toEnd: true } : target
}

/** The hook goes over to another part; what is left of the one before is left over. */
export function goToPart(walk: Walk, key: string, span: Span): void {
  const places = walk.setting.parts?.places.get(key)
  if (!places || walk.onPart === key) return
  if (walk.left > 0) {
    walk.missed += walk.left
    walk.trouble({ kind: 'left-over', span, count: walk.left })
  }
  const from = walk.edge[Math.min(walk.at, walk.edge.length) - 1]
  if (from) walk.crossings.push(crossing(walk, from, places[0]!))
  walk.edge = [...walk.edge.slice(0, walk.at), ...places]
  walk.onPart = key
  walk.noneFrom.clear()
  walk.usesAfter.clear()
}

/** From one place over to another, along the chain that was made last. */
export const crossing = (walk: Walk, from: Place, to: Place): Crossing => ({ from, to, bridge: underLastChain(walk) })

/** Undersides of the chain that was made last; none where a stitch was. */
export function underLastChain({ made, setting }: Walk): readonly Place[] {
  const tail = made.at(-1)
  const chains = tail?.kind === 'space' && tail.group === undefined ? (tail.chains ?? 0) : 0
  return Array.from({ length: chains }, () => ({ kind: 'ch', row: setting.rowIndex }))
}
