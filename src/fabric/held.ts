import { isEndOfRow } from '../notation/end-of-row.ts'
import type { Instruction } from '../notation/syntax.ts'
import { inSize, type Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { isSpace, type Edge, type Place } from './place.ts'

/** Stitches that a row passed over with a chain or for later: a sleeve, a thumb. They wait until a row takes them up. */
export interface HeldRun {
  /** In the order of the row that passed them. */
  readonly places: readonly Place[]
  /** Undersides of the chain made over them. */
  readonly bridge: readonly Place[]
  /** What the row says of them, in small letters: `( left sleeve )`. */
  readonly words: string
  readonly span: Span
}

/** A run as the pattern keeps it. */
export interface Held extends HeldRun {
  /** Numbers of the row that made them and of the row that passed them over. */
  readonly row: number | undefined
  readonly by: number | undefined
  taken: boolean
  /** Name of the piece that took them up. */
  takenBy?: string
  /** Name of the piece whose row passed them over. */
  readonly piece: string
}

interface Named {
  readonly target: Target
  readonly working: boolean
}

/** The edge of a row that takes up stitches that wait, and the chain over them when the row speaks of it. */
export function heldEdge(items: readonly Instruction[], round: boolean, held: readonly Held[], piece: string, size: number): Edge | undefined {
  const named = namesOf(items)
  const ofHeld = named.filter(({ target }) => target.held !== undefined || target.walk === 'skipped')
  if (ofHeld.length === 0) return alongBridge(named, round, held)
  const run = choose(held, ofHeld.map(({ target }) => target), piece)
  if (!run) return undefined
  const working = named.filter((name) => name.working)
  const places = working.some(({ target }) => target.thing?.kind === 'space') ? run.places : withoutEndSpaces(run.places)
  const onChain = ({ target }: Named): boolean => target.thing?.kind === 'chain' || target.walk === 'edge' && !isEndOfRow(target)
  const chains = working.filter(onChain)
  if (chains.length === 0) return { places, round, chain: false, held: run }
  const first = chains[0]!.target.count
  // The chain may be worked half before and half after the stitches.
  const begins = named.find(({ target }) => target.walk !== 'same')
  const before = begins && !onChain(begins) ? 0 : chains.length === 1 || !first ? run.bridge.length : Math.min(run.bridge.length, inSize(first, size))
  const cut = run.bridge.length - before
  return { places: [...run.bridge.slice(cut), ...places, ...run.bridge.slice(0, cut)], round, chain: false, held: run }
}

/** `join yarn in the underside of first ch of Row 11, sc in the underside of each of the 10 ch`: along the chain over stitches that were skipped, and no farther. */
function alongBridge(named: readonly Named[], round: boolean, held: readonly Held[]): Edge | undefined {
  const isUnder = ({ target }: Named): boolean => target.edge === 'underside' && target.thing?.kind === 'chain'
  const row = named.find((name) => isUnder(name) && name.target.ofRow !== undefined)?.target.ofRow
  const run = named.every(isUnder) ? held.find(({ by, bridge }) => by === row && bridge.length > 0) : undefined
  return run && { places: run.bridge, round, chain: false }
}

/** Corner spaces that were skipped with a sleeve are worked where the row names them. */
function withoutEndSpaces(places: readonly Place[]): readonly Place[] {
  return places.slice(isSpace(places[0]!) ? 1 : 0, isSpace(places.at(-1)!) ? -1 : undefined)
}

/** Targets in the order of the row; none once the row itself has skipped: then what was skipped is its own. */
function namesOf(items: readonly Instruction[]): readonly Named[] {
  const found: Named[] = []
  for (const item of items) {
    if (item.node === 'skip') return []
    if (item.node === 'work' || item.node === 'group') {
      if (item.target) found.push({ target: item.target, working: true })
    } else if (item.node === 'start') found.push({ target: item.target, working: false })
    else if (item.node === 'repeat') found.push(...namesOf(item.items))
  }
  return found
}

function sidesIn(words: string): readonly string[] {
  return ['left', 'right', 'first', 'second', 'thumb'].filter((side) => new RegExp(String.raw`\b${side}\b`, 'i').test(words))
}

/** The run that is meant: by its row, by its side or by what it is for; else the first that still waits. */
function choose(held: readonly Held[], targets: readonly Target[], piece: string): Held | undefined {
  const rows = targets.flatMap(({ ofRow }) => (ofRow === undefined ? [] : [ofRow]))
  const ofRow = held.filter(({ row, by }) => rows.some((number) => number === row || number === by))
  const among = ofRow.length > 0 ? ofRow : held
  // What the row itself says of the side goes before what the piece is called.
  const own = sidesIn(targets.map(({ held: words }) => words ?? '').join(' '))
  const sides = own.length > 0 ? own : sidesIn(piece)
  const bySide = among.filter(({ words }) => sides.some((side) => words.includes(side)))
  const fitting = bySide.length > 0 ? bySide : among
  return fitting.find(({ taken }) => !taken) ?? fitting[0]
}
