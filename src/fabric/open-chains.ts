import type { Thing } from '../notation/target.ts'
import { findNext, hasSpaces } from './find-place.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'

/** Whether the chains of the spaces ahead are worked one by one: named so, or taken so when `each st` meets spaces. */
export function eachChain(walk: Walk, thing: Thing | undefined): boolean {
  if (!hasSpaces(walk.edge)) return false
  if (thing?.kind === 'chain') return true
  const plain = thing === undefined || thing.kind === 'stitch' && thing.stitch === undefined && thing.where === undefined
  return plain && walk.choose('chains-as-places', ['chain spaces are passed over', 'each chain is worked as a stitch']) === 1
}

/** `Ch 61, join (60)`: some add one chain that the join uses up. Then it is no place. */
export function withoutClosingChain(walk: Walk): void {
  if (!walk.chain || !walk.closedInFirst || walk.at > 1 || walk.edge.length < 4 || walk.shortened) return
  if (walk.choose('closing-chain', ['every chain of the circle is a place', 'one chain is used up by the join']) === 0) return
  walk.shortened = true
  walk.edge = walk.edge.slice(0, -1)
}

/** `in next 3 ch` where a space lies: its chains become places of their own. */
export function openChains(walk: Walk): void {
  const index = findNext(walk, walk.at, { kind: 'chain' })
  if (index > walk.at) return
  const space = walk.edge[index]
  if (space?.kind !== 'space') return
  const chains: Place[] = Array.from({ length: space.chains ?? 1 }, () => ({ kind: 'ch', row: space.row }))
  walk.edge = [...walk.edge.slice(0, index), ...chains, ...walk.edge.slice(index + 1)]
  walk.opened += chains.length - 1
  walk.noneFrom.clear()
}

/** Every space ahead becomes its chains. */
export function openAll(walk: Walk): void {
  const opened: Place[] = []
  for (let index = 0; index < walk.edge.length; index += 1) {
    const place = walk.edge[index]!
    if (index < walk.at || place.kind !== 'space') opened.push(place)
    else for (let chain = 0; chain < (place.chains ?? 1); chain += 1) opened.push({ kind: 'ch', row: place.row })
  }
  walk.opened += opened.length - walk.edge.length
  walk.edge = opened
  walk.noneFrom.clear()
}

/** `between next 2 groups` where no chain lies between them: the gaps become places. */
export function betweenGroups(walk: Walk): void {
  if (walk.edge.some(({ kind }) => kind === 'gap')) return
  const places = walk.edge.flatMap((place, index): readonly Place[] => {
    const beyond = (by: number): Place | undefined => walk.edge[index + by] ?? (walk.round ? walk.edge[index + by - walk.edge.length] : undefined)
    // A round that begins with `ch 3, (2 dc, ch 2, 3 dc) in same sp`: the chain stands in the first group.
    const next = beyond(1)?.turning && beyond(2)?.group !== undefined ? beyond(2) : beyond(1)
    const gap = next && place.group !== undefined && next.group !== undefined && place.group !== next.group && place.kind !== 'space' && next.kind !== 'space'
    return gap ? [place, { kind: 'gap', row: place.row }] : [place]
  })
  walk.opened += places.length - walk.edge.length
  walk.edge = places
  walk.noneFrom.clear()
}
