import type { Start } from '../notation/syntax.ts'
import { findNext } from './find-place.ts'
import { goToRow } from './older-row.ts'
import type { Walk } from './walk.ts'

/** `Join B in any ch-2 sp`: the row begins there. On a round the places before it wait at its end. */
export function workStart(walk: Walk, item: Start): void {
  if (item.target.walk === 'layers') return layLayers(walk, item)
  if (item.target.walk === 'ring') {
    walk.edge = [{ kind: 'ring', row: walk.setting.rowIndex }]
    walk.at = 0
    walk.ring = true
    return
  }
  if (item.target.walk === 'other-side') return turnTheEnd(walk, item)
  if (item.target.ofRow !== undefined) return goToRow(walk, item.target, item)
  const index = item.target.walk === 'last' ? walk.edge.length - 1 : findNext(walk, walk.at, item.target.thing)
  if (index < 0 || index >= walk.edge.length) return
  begin(walk, index)
}

/** A flat tube closed through both layers: two places make one. */
function layLayers(walk: Walk, item: Start): void {
  if (walk.edge.length % 2 !== 0) walk.trouble({ kind: 'does-not-divide', span: item, room: walk.edge.length, each: 2, before: 0, after: 0 })
  walk.edge = walk.edge.slice(0, Math.floor(walk.edge.length / 2))
  walk.layers = 2
}

/**
 * Along the other side of the foundation chain, back to the first chain that was worked. That chain holds stitches from above
 * already; the row may work into it again or not.
 */
function turnTheEnd(walk: Walk, item: Start): void {
  if (walk.bridge > 0) return
  if (!walk.foundation) {
    walk.trouble({ kind: 'no-such-place', span: item, what: 'the other side of a foundation chain' })
    return
  }
  const last = walk.foundation.length - 1
  const under = walk.foundation.slice(walk.firstChain, last).toReversed()
  walk.edge = [...walk.edge.slice(0, walk.at), ...under]
  walk.noneFrom.clear()
  walk.lastMayWait = true
}

/** Makes the place at `index` the row's first place. */
export function begin(walk: Walk, index: number): void {
  if (walk.round) {
    walk.edge = [...walk.edge.slice(index), ...walk.edge.slice(0, index)]
    walk.noneFrom.clear()
    walk.at = 0
    walk.last = 0
  } else {
    walk.at = index
    walk.last = index
    walk.begunAt = index
  }
}
