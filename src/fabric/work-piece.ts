import { saysOf } from './compare-total.ts'
import { nothing, type Edge, type Place } from './place.ts'
import { bySaying, saidCount, type OtherEdge } from './after-slip.ts'
import type { BorderEdge } from './border-edge.ts'
import type { Held, HeldRun } from './held.ts'
import type { OlderRow } from './older-row.ts'
import { alongEdges, edgeFor, facesAgain, goesOnFlat, joinsAnew } from './edge-for.ts'
import { endedParts, fabricAfter, partsAtEnd } from './fabric-after.ts'
import { joinedOf } from './joined-of.ts'
import { mirroredBack, mirroredEdge } from './mirrored.ts'
import { lookBack } from './look-back.ts'
import { goesRoundHole } from './around-hole.ts'
import { Outline } from './outline.ts'
import { openingsOf } from './opening.ts'
import { joiningParts, waitingParts, type FabricPart } from './parts.ts'
import type { PieceRun, PieceToWork } from './piece-run.ts'
import { realRows, type RealRow, type WrittenEntry } from './real-rows.ts'
import { bestOnOutline, elsewhere, leavesSide, nearest, worksSewnPlaces, type OnOutline } from './other-borders.ts'
import { beginsBehind, joinedAbove, rejoinsFartherOn, withOpening } from './joined-above.ts'
import { onRowThatLeft } from './left-of-row.ts'
import { itemsOf, textFor, withoutOwnName, writtenOf } from './row-content.ts'
import { settingOf } from './row-setting.ts'
import { withRidgeStart } from './ridge-start.ts'
import { mostStitches, TooLarge } from './limits.ts'
import { closedToTube, onRound } from './closed-to-tube.ts'
import { sewnBefore } from './sewn.ts'
import { onLargerEdge, onOtherEdge, wantsMore } from './on-other-edge.ts'
import type { RowSetting } from './row-setting.ts'
import type { ReadingPoint } from './noted.ts'
import { isOfThePattern } from './other-readings.ts'
import type { RowToWork, RowTry } from './work-row.ts'
import { mainKind } from './what-was-made.ts'
import { withItsTotal } from './total-or-work.ts'
import { sideOf } from './turns.ts'
import { atRowsEnd, everyReading, unreadIn, withoutQuiet, workedAnything, type Readings } from './readable.ts'
import type { Laid } from './whole-fabric.ts'
import type { Trouble, Verdict, WorkedRow } from './worked-row.ts'

export interface State {
  readonly edge: Edge
  /** The count below is taken on trust: a row on it may not be blamed for the count. */
  readonly trust: boolean
  /** The written row at which the count came into doubt. */
  readonly doubt?: WrittenEntry | undefined
  /** The row below cannot be counted at all. */
  readonly unknown: boolean
  /** Other edges that the row below may have left: by what it says, or in another reading. */
  readonly others: readonly OtherEdge[]
  readonly before: number | undefined
  /** Number of the row below. */
  readonly number?: number
  /** Letter of the yarn in hand. */
  readonly yarn?: string | undefined
  readonly kind: string
  /** By how much the row below changed the count. */
  readonly change: number
  /** The outline of the rows so far: what a border goes along. */
  readonly outline: Outline
  /** The one that the piece was begun on. */
  readonly base?: Outline | undefined
  /** Parts of it that ended in a row of their own. */
  readonly parts: readonly FabricPart[]
  /** Rows that the piece itself has laid. */
  readonly laid: readonly Laid[]
  /** Side that the row below was worked on, told or by turning. */
  readonly side?: 'RS' | 'WS' | undefined
  /** The row below turned the work. */
  readonly turned: boolean
  /** The row below said at its end that the work is turned. */
  readonly turnsAfter: boolean
  /** Slip stitches with which the row below was joined to another piece at its end. */
  readonly joinedBelow?: number | undefined
  /** `Do not turn` was said behind the row before. */
  readonly stays: boolean
  /** A row number is missing, a row does not come out, or it went on along another piece and closes an opening: the sides are in doubt. */
  readonly gap: boolean
  /** The written row that the row below came from. */
  readonly entry?: WrittenEntry
  readonly rowsBefore: Map<number, OlderRow>
  /** What rows so far said of turning chains. */
  readonly stated: Readonly<Record<string, boolean>>
}

/** Works all rows of a piece in one size, in one set of conventions. */
export function workPiece(piece: PieceToWork): PieceRun {
  const rows = realRows(piece.entries, piece.size, piece.sizeNames, 100_000, piece.others).map((row) => withRidgeStart(withOpening(row), piece.onFabric?.name))
  const rowsBelow = piece.onFabric?.rows ?? 0
  const rowsInAll = rowsBelow + rows.length
  const worked: WorkedRow[] = []
  const open = new Map<string, ReadingPoint>()
  let state: State = { edge: piece.start ?? nothing, trust: piece.onFabric?.sound === false, unknown: piece.startUnknown === true, others: piece.otherStarts ?? [], before: undefined, kind: 'sc', change: 0, stated: {}, rowsBefore: new Map(piece.onFabric?.rowsBefore), outline: piece.onFabric?.outline.copy() ?? new Outline(), base: piece.onFabric?.outline, parts: piece.onFabric?.parts?.slice(0, -1) ?? [], laid: [], side: piece.onFabric?.side, turned: true, turnsAfter: piece.onFabric?.turnsAfter ?? false, stays: false, gap: false }
  let room = piece.room ?? mostStitches
  let slips = 0
  let border: BorderEdge | undefined
  let aroundHole: State | undefined
  const runOf = () => ({ rows: worked, open: [...open.values()], edge: state.edge, outline: state.outline, laid: state.laid, ...(state.number !== undefined && { number: state.number }), ...(piece.on !== undefined && { on: piece.on }), ...partsAtEnd(state), turnsAfter: state.turnsAfter, rowsBefore: state.rowsBefore, rowsInAll })
  try {
    for (const [index, row] of rows.entries()) {
      const flat = row.round && row.entry.headed === true && state.outline.flatRows > 0 ? { ...state, outline: state.outline.copy() } : undefined
      const step = workOne(piece, row, rowsBelow + index, state, room)
      for (const point of step.points) if (isOfThePattern(point.name)) open.set(point.name, point)
      if (step.border && row.round) border = step.border
      noteHeld(piece, step, row)
      const { side } = step.state
      worked.push({ ...step.worked, ...(side && { side }) })
      if (!step.fine) piece.wrong?.add(row.entry)
      if (!step.fine || row.copies && piece.wrong?.has(row.copies)) slips += 1
      room -= step.stitches
      // Rounds in a hole of the piece, under a heading of their own, leave its edges as they were.
      if (flat && goesRoundHole(step.took, step.worked.fabric.made, flat.outline)) aroundHole = flat
      else if (!row.round) aroundHole = undefined
      state = step.state
      if (room <= 0) throw new TooLarge()
    }
  } catch (reason) {
    if (!(reason instanceof TooLarge)) throw reason
    return { ...runOf(), slips: slips + 1, sound: false, gap: true, stitches: mostStitches, tooLarge: true }
  }
  const sound = piece.onFabric?.sound !== false && slips === 0 && inOrder(rows)
  const { gap } = state
  state = aroundHole ?? state
  return { ...runOf(), slips, sound, gap, ...(border && { border }), ...(state.side && { side: state.side }), stitches: (piece.room ?? mostStitches) - room, tooLarge: false }
}

/** Stitches that the row passed over wait from now on; those that it took up wait no longer. */
function noteHeld({ held, name }: PieceToWork, { holds, took, below }: Step, { number }: RealRow): void {
  if (took) Object.assign(took, { taken: true, takenBy: name })
  held?.push(...holds.map((run) => ({ ...run, row: below, by: number, piece: name, taken: false })))
}

/** A row that is missing leaves its sides and counts in doubt. */
function inOrder(rows: readonly RealRow[]): boolean {
  const numbered = rows.filter(({ number }) => number !== undefined)
  // A border's rounds are counted from 1 again behind the rows, a flap's rows on a round, and the rows of a part under a heading.
  return numbered.every(({ number, anew, round, entry }, index) => index === 0 || anew === true || number === numbered[index - 1]!.number! + 1 || number === 1 && (round !== numbered[index - 1]!.round || entry.headed === true))
}

const tooDeep = 'its repeats stand too deep in one another'

interface Step {
  readonly border?: BorderEdge | undefined
  readonly holds: readonly HeldRun[]
  readonly took?: Held | undefined
  /** Number of the row below. */
  readonly below: number | undefined
  readonly worked: WorkedRow
  readonly state: State
  readonly points: readonly ReadingPoint[]
  readonly fine: boolean
  readonly stitches: number
  readonly turned: boolean
}

function workOne(piece: PieceToWork, row: RealRow, index: number, state: State, room: number): Step {
  const { items, joins, outline: beside } = joiningParts(withoutOwnName(onRowThatLeft(itemsOf(row, state, piece.size), row, state), piece.name), state.edge.round ? [] : waitingParts(state, piece), () => withAllBeside(piece, state), piece.size)
  if (beside) state = { ...state, outline: beside }
  if (facesAgain(row, state)) state = { ...state, turned: false, edge: { ...state.edge, places: state.edge.places.toReversed() } }
  const fabric = { ...state, held: piece.held ?? [], piece: piece.name, size: piece.size }
  const mirrored = row.mirrored === true && !row.round && !state.edge.chain && state.edge.places.length > 0
  const setting = { ...settingOf(piece, row, index, state, room), ...(joins && { parts: joins }), ...(mirrored && { mirrored }) }
  const usualEdge = joins ? { ...state.edge, places: joins.places.get(joins.begins)! } : edgeFor(row, fabric)
  const edge = mirrored ? mirroredEdge(usualEdge) : usualEdge
  const asItLies = (tried: RowTry): RowTry => (mirrored ? mirroredBack(tried) : tried)
  const inAnyReading = (it: RowToWork): Readings => bestOnOutline(everyReading(it, setting), it, setting, state.outline)
  const told = withItsTotal({ text: textFor(row), items, edge, before: state.before, joined: joinedAbove(row.entry) }, row.copies !== undefined, inAnyReading)
  const toWork = atRowsEnd(told, setting)
  if (row.missing !== undefined) return cannot(row, state, setting, toWork, `it refers to ${row.missing === 'itself' ? 'itself' : `row ${row.missing}`}`)
  if (state.unknown && state.edge.places.length === 0 && (index > 0 || piece.startUnknown)) return cannot(row, state, setting, toWork, 'the row below could not be counted')
  const unread = unreadIn(toWork.items)
  const unreadable = (): Step => cannot(row, state, setting, toWork, 'a part of it is not understood', undefined, unread)
  if (!unread.every((trouble) => trouble.kind === 'unreadable' && trouble.quiet)) return unreadable()
  const read = (tried: RowTry): RowTry | undefined => (unread.length > 0 ? withoutQuiet(unread, tried) : tried)
  const edgeOn = (outline: Outline): Edge => edgeFor(row, { ...fabric, held: [], outline })
  const stepOn = ({ tried, toWork: work, outline }: OnOutline): Step => {
    const there = read(tried)
    return there ? step(row, there, work, setting, { ...state, outline }, state.trust) : unreadable()
  }
  const { whole = [] } = piece.onFabric ?? {}
  const sewn = goesOnFlat(row, state.number ?? piece.onFabric?.below) ? (): readonly Outline[] => [] : (piece.onFabric?.sewn ?? ((): readonly Outline[] => []))
  // A round has no sides: words that name some mean those of what hangs on it.
  if (piece.onFabric && whole[0] && state.edge.round && state.entry === undefined && alongEdges(items)) return workOne({ ...piece, onFabric: { ...piece.onFabric, whole: [] } }, row, index, { ...state, outline: whole[0] }, room)
  const first = state.entry === undefined && !joins
  const together = edge.held || !first ? undefined : elsewhere(whole, toWork, setting, edgeOn)
  if (together && !leavesSide(together.tried)) return stepOn(together)
  const { usual, others } = inAnyReading(toWork)
  if (!usual) return cannot(row, state, setting, toWork, tooDeep, undefined, [{ kind: 'unreadable', span: row.entry.text, reason: tooDeep, broken: true }])
  const inDoubt = state.gap || piece.onFabric?.doubt === true && state.entry === undefined
  const best = usual.comesOut ? usual : (others[0] ?? usual)
  if (together && (!best.comesOut || leavesSide(best))) return stepOn(together)
  const onSeam = best.comesOut && first && (worksSewnPlaces(best, sewn) || edge.outline !== undefined && best.lies.legs !== undefined)
  const apart = best.comesOut && !onSeam || !first && (joins || row.entry.headed !== true) ? undefined : elsewhere(sewn(), toWork, setting, (outline) => edgeFor(row, { ...fabric, held: [], outline, sewn: true }))
  if (apart) return stepOn(apart)
  const openings = best.comesOut && !leavesSide(best) || joins ? [] : openingsOf(whole[0] ?? state.outline)
  const inside = elsewhere(openings, toWork, setting, edgeOn) ?? (best.comesOut || inDoubt || sewnBefore(piece.entries, row.entry) || closedToTube(toWork, setting, state.edge) ? undefined : nearest([...openings, ...(edge.held || !first ? [] : [...whole, ...sewn()])], toWork, setting, best, edgeOn))
  if (inside) return stepOn(inside)
  // `24 chains along the opening, 6 row-ends of the flap`, `in each hdc and in each underarm ch around`: it does not go along what waits.
  if (edge.held && !best.comesOut) {
    const along = workOne({ ...piece, held: [] }, row, index, state, room)
    if (along.fine || edgeOn(state.outline).outline && alongEdges(items) && best.troubles.some(({ kind }) => kind === 'overrun')) return along
  }
  const chosen = read(best)
  if (!chosen) return withWhatIsLeft(unreadable(), () => step(row, asItLies(best), toWork, setting, state, state.trust || inDoubt).worked)
  if (chosen.undecided !== undefined || chosen.troubles.some((trouble) => trouble.kind === 'unreadable' || trouble.kind === 'unknown-stitch')) {
    return cannot(row, state, setting, toWork, chosen.undecided?.reason ?? 'a part of it is not understood', chosen)
  }
  // The rows of one range are no witnesses of one another: they say the same by being written once.
  const there = chosen.comesOut || state.entry === row.entry ? undefined : onOtherEdge(toWork, setting, state.others)
  if (there) return step(row, asItLies(there), toWork, setting, state, false)
  const tube = chosen.comesOut && !onRound(toWork.edge) ? undefined : closedToTube(toWork, setting, state.edge)
  if (tube) return step(row, tube, { ...toWork, edge: state.edge }, setting, state, state.trust)
  const joined = chosen.comesOut || state.entry ? undefined : piece.joinedStarts?.(wantsMore(chosen))
  const round = joined && onLargerEdge(toWork, setting, chosen, joined.edges)
  if (round) return step(row, round, toWork, setting, state, !joined.sound)
  if (!chosen.comesOut && edge.outline && sewnBefore(piece.entries, row.entry)) return cannot(row, state, setting, toWork, 'it goes along pieces that words sew together, and how they lie then is not known')
  return step(row, asItLies(chosen), toWork, setting, state, joined?.sound === false || state.trust && state.doubt !== row.entry || (edge.outline !== undefined || beginsBehind(items) || rejoinsFartherOn(items)) && inDoubt)
}

/** The outline of all that hangs together with the piece, its own rows laid on it. */
function withAllBeside({ onFabric }: PieceToWork, { outline, laid }: State): Outline {
  const whole = onFabric?.whole[0]
  if (!whole || laid.length === 0) return whole ?? outline
  const all = whole.copy()
  for (const { row, turned } of laid) all.lay(row, turned)
  return all
}

function step(row: RealRow, tried: RowTry, toWork: RowToWork, setting: RowSetting, state: State, trust: boolean): Step {
  const says = tried.comparison.says
  // A row on a count that is taken on trust may not be blamed for running over or short.
  const blamed = (trust || tried.onDoubt) && !tried.comesOut
  const troubles = blamed ? [] : tried.troubles
  const verdict: Verdict = tried.comesOut ? 'adds-up' : blamed ? 'cannot-tell' : 'does-not'
  const assumed = trust && tried.comesOut ? tried.assumed : blamed ? [...tried.assumed, 'the count of the row below is in doubt'] : tried.assumed
  const worked: WorkedRow = {
    label: row.label, word: row.round ? 'round' : 'row', ...(row.number !== undefined && { number: row.number }), ...(row.anew && { anew: true }), written: writtenOf(row, setting.size),
    offers: tried.offers, worksOver: tried.worksOver, leaves: tried.leaves, makes: tried.makes, kinds: tried.made.kinds, spaces: tried.made.spaces,
    ...(says && { says }), verdict, ...(blamed && { reason: 'the count of the row below is in doubt' }), assumed, tally: tried.steps, repeats: tried.repeats, troubles,
    agreement: { total: tried.comparison.totalAgrees || blamed, kinds: tried.comparison.kindsAgree || blamed, change: tried.comparison.changeAgrees || blamed, ...(tried.comparison.kindSlip && { kindSlip: tried.comparison.kindSlip }) },
    yarns: tried.yarns, fabric: tried.row, ...(tried.lies.steps && { steps: tried.lies.steps }), ...(tried.along && { along: tried.along }), ...(tried.onRow !== undefined && { onRow: tried.onRow }), ...(tried.loose && tried.comesOut && { loose: tried.loose }), ...(!row.round && joinedOf(toWork.items, setting.size)),
  }
  remember(state, row, tried)
  const border = tried.border ?? toWork.edge.outline
  const side = sideOf(row, state, tried.row.turned, border)
  const fabric = fabricAfter(row, tried, state, { ...(side && { side }), piece: setting.piece }, setting)
  const apart = tried.onPiece !== undefined && tried.onPiece.toLowerCase() !== setting.standsOn && !fabric.laid.at(-1)?.row.goesOver
  const after: State = {
    side,
    gap: state.gap || !tried.comesOut || !row.round && apart || row.number !== undefined && row.number !== 1 && state.number !== undefined && !row.anew && row.number !== state.number + 1,
    rowsBefore: state.rowsBefore, parts: endedParts(row, tried, state), ...fabric,
    joinedBelow: worked.joined?.count, base: state.base, edge: tried.next, entry: row.entry, ...(row.number !== undefined && { number: row.number }), yarn: tried.yarn, stated: Object.keys(tried.stated).length > 0 ? { ...state.stated, ...tried.stated } : state.stated, unknown: false, trust: onTrust(tried, state), doubt: state.trust ? state.doubt : row.entry, before: tried.makes, change: tried.makes - (toWork.before ?? tried.makes), kind: mainKind(tried.made, setting),
    others: tried.comesOut ? lookBack(toWork, setting, tried) : bySaying(tried, says),
  }
  return { border, holds: tried.holds, took: toWork.edge.held, below: state.number, worked, state: after, points: tried.points, fine: tried.comesOut, stitches: tried.row.made.length, turned: tried.row.turned }
}

/** Keeps what a row made, and what it left of the row below, for rows that come back to them. */
function remember({ rowsBefore: rows, number }: State, row: RealRow, tried: RowTry): void {
  if (row.number === undefined) return
  const on = tried.onRow ?? (row.number === 1 ? number : row.number - 1)
  const below = on === undefined ? undefined : rows.get(on)
  // A shoulder that is joined farther in leaves what lies before it: the other shoulder, and the neck.
  const left = tried.row.left.length === 0 && joinsAnew(row.items) ? tried.row.before : tried.row.left
  if (on !== undefined && below) rows.set(on, { ...below, left, above: tried.row.made, doubt: below.doubt || !tried.comesOut })
  rows.set(row.number, { made: tried.row.made, left: [], round: row.round, doubt: !tried.comesOut })
}

/** A count stays in doubt until a row that states its total comes out on it. */
function onTrust(tried: RowTry, state: State): boolean {
  if (!tried.comesOut) return !(tried.troubles.length === 0 && tried.comparison.totalAgrees) || tried.comparison.kindSlip?.sort === 'space'
  return state.trust && saidCount(tried.comparison.says) === undefined
}

/** Words that may say where cannot be read: what the rest of the row comes to is told with them. */
function withWhatIsLeft(there: Step, rest: () => WorkedRow): Step {
  return saidCount(there.worked.says) === undefined ? there : { ...there, worked: { ...there.worked, withoutUnread: rest() } }
}

/** A row that cannot be counted: the next one stands on what it says, when it says something. */
function cannot(row: RealRow, state: State, setting: RowSetting, toWork: RowToWork, reason: string, tried?: RowTry, unread: readonly Trouble[] = []): Step {
  const says = saysOf(row.entry.read.totals, setting.size)
  const count = saidCount(says)
  const kind = Object.keys(says?.kinds ?? {})[0] ?? state.kind
  const known = count !== undefined && count < 100_000
  // Needlework on the finished fabric leaves its edge as it was.
  const needlework = !known && !workedAnything(toWork.items) && state.edge.places.length > 0 && row.missing === undefined
  const places: readonly Place[] = needlework ? state.edge.places : known ? Array.from({ length: count }, () => ({ kind, row: setting.rowIndex })) : []
  const worked: WorkedRow = {
    label: row.label, word: row.round ? 'round' : 'row', ...(row.number !== undefined && { number: row.number }), written: writtenOf(row, setting.size),
    offers: state.edge.places.length, worksOver: 0, leaves: 0, makes: known ? count : 0, kinds: {}, spaces: {}, ...(says && { says }), verdict: 'cannot-tell', reason,
    assumed: known ? [`it is taken to make the ${count} stitches it says`] : [], tally: [], repeats: [], uncounted: true,
    troubles: [...unread, ...(tried?.troubles ?? []).filter((trouble) => trouble.kind === 'unreadable' || trouble.kind === 'unknown-stitch')],
    agreement: { total: true, kinds: true, change: true }, yarns: tried?.yarns ?? [], fabric: { made: places, left: [], turned: !setting.round },
    ...(row.missing !== undefined && { missing: row.missing }), ...(tried?.undecided && { undecided: tried.undecided.span }),
  }
  return {
    holds: [], below: undefined, worked, points: [], fine: false, stitches: 0, turned: tried?.row.turned ?? !row.round,
    state: { edge: { places, round: row.round, chain: false }, trust: known || needlework && unread.length > 0, unknown: !known && !needlework, others: [], before: known ? count : needlework ? state.before : undefined, change: 0, kind, stated: state.stated, entry: row.entry, rowsBefore: state.rowsBefore, outline: new Outline(), parts: [], laid: state.laid, side: sideOf(row, state, tried?.row.turned ?? !row.round), turned: true, turnsAfter: false, stays: false, gap: true },
  }
}
