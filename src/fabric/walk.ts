import type { Chain, Instruction } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'
import type { BorderEdge } from './border-edge.ts'
import type { HeldRun } from './held.ts'
import type { NotedNeighbour } from './join-neighbours.ts'
import type { NotedStep, ReadingPoint } from './noted.ts'
import { isSpace, isStitch, type Edge, type Place } from './place.ts'
import { TooDeep, TooLarge } from './limits.ts'
import type { Crossing } from './parts.ts'
import type { RowSetting } from './row-setting.ts'
import type { Loose } from './work-along-edge.ts'
import type { Trouble } from './worked-row.ts'

/**
 * One row on its way along the edge. It has a life (the hook's place moves), so it is a class; it is thrown away when the row is done.
 */
export class Walk {
  readonly setting: RowSetting
  edge: readonly Place[]
  readonly round: boolean
  /** The row below closed on itself. */
  readonly onRing: boolean
  foundation: readonly Place[] | undefined
  /** Index of the next place; past the edge's end once the row overruns. */
  at = 0
  /** Index of the place worked into last; -1 before the first. */
  last = -1
  made: Place[] = []
  readonly steps: NotedStep[] = []
  readonly repeats: { span: Span; times: number }[] = []
  readonly troubles: Trouble[] = []
  readonly points: ReadingPoint[] = []
  readonly assumed: string[] = []
  /** What this row says of turning chains, by stitch: it holds for later rows that say nothing. */
  readonly stated: Record<string, boolean> = {}
  readonly yarns: { yarn: string; span: Span }[] = []
  /** Letter of the yarn in hand, where the rows tell it. */
  yarn: string | undefined
  /** Groups worked in one place, by name, for counts like `12 shells`. */
  readonly groups: { name: string; size: number }[] = []
  /** Yes when the row says that it leaves places unworked. */
  leaves = false
  /** Places passed over on the way to the last ones, and not said to be. */
  missed = 0
  /** A turning chain made at this row's end that counts in the next row. */
  carry: Chain | undefined
  /** Places that one stitch takes: 2 when two layers are worked at once. */
  layers = 1
  /** The layer behind the edge. */
  behind: readonly Place[] = []
  /** The row closes what it lies on: both layers of it are worked at once. */
  closes = false
  /** Row-ends that one stitch takes: 2 along the side of a folded piece. */
  pairs = 1
  /** Stitches that were made in such pairs. */
  paired = 0
  /** Chains that join this piece to another: both their sides are worked. */
  bridge = 0
  /** The edge that was left for that of another piece. */
  own: readonly Place[] = []
  /** Joins to the motif beside it, each after so many of the row's own places. */
  /** Stitches passed on the way from stitches to a space, each time. */
  readonly toSpaces: { readonly passed: number; readonly span: Span }[] = []
  readonly neighbours: NotedNeighbour[] = []
  /** The piece whose edge is worked now, and how many copies of it were taken so far. */
  onPiece: { readonly name: string; readonly copies: number } | undefined
  /** The pieces that were gone over, each with its places and the underside of the chain behind it, and the index at which those of this one begin. */
  readonly legs: { readonly piece?: string; readonly places: readonly Place[]; readonly behind: readonly Place[] }[] = []
  legFrom = 0
  /** The part that the hook is on, and where it went over from one to another. */
  onPart: string | undefined
  readonly crossings: Crossing[] = []
  /** The row goes along the outline of a flat piece. */
  readonly outline: BorderEdge | undefined
  /** The places waited: what an older row passed over, and the chain over it. */
  readonly held: boolean
  /** Runs of stitches that this row passes over, and that wait. */
  readonly holds: HeldRun[] = []
  /** The space that was skipped last: it may wait with the stitches beside it. */
  spaceSkipped: Place | undefined
  /** Of an outline: the places that were taken, in the order of work, each with the words that took it. */
  readonly taken = new Map<Place, Span>()
  /** Those of them that were worked through both layers. */
  readonly throughBoth = new Set<Place>()
  /** Stitches along an edge whose number is left to the maker. */
  loose: Loose | undefined
  /** What the row says beside its instructions, in small letters. */
  said = ''
  /** The older row whose places are worked now. */
  onRow: number | undefined
  turned: boolean | undefined
  joined = false
  /** A tall stitch closed the last loop of the round, and leaves the hook in the middle of that loop. */
  closedByStitch = false
  ring = false
  /** The foundation chain was closed to a circle. */
  closedChain = false
  /** It was closed by a slip stitch said to go into the first chain. */
  closedInFirst = false
  readonly turnedRound: boolean
  /** Pieces whose edges the row goes along in any case, in small letters. */
  readonly ofPieces: ReadonlySet<string>
  readonly slipsBehind: number
  /** One chain of the circle was used up by its join. */
  shortened = false
  /** Chains of the foundation that this row laid. */
  laid = 0
  chain = false
  /** A turning chain that counts has taken the row's first place. */
  tookFirst = false
  /** Slip stitches at the row's start, which carry the yarn to where the row begins. */
  travelled = 0
  skipped: number[] = []
  /** Index at which a skip of stitches ended; -1 before any. */
  skippedTo = -1
  /** The row has skipped places by saying so. */
  skips = false
  /** The row has words that no arithmetic decides. */
  undecided: { readonly reason: string; readonly span: Span } | undefined
  groupCount = 0
  worked = false
  /** It has made something other than slip stitches that lead in. */
  begun = false
  private steps_ = 0
  /** For each list of instructions: what those from an index on will use. */
  readonly usesAfter = new Map<readonly Instruction[], number[]>()
  overrun = false
  /** Names of which nothing more stands on the edge, and from which index on: so that no name is sought twice. */
  readonly noneFrom = new Map<string, number>()
  /** Places added because a space was worked chain by chain; the space is still one place of what was offered. */
  opened = 0
  /** Index of the first foundation chain that was worked into. */
  firstChain = 1
  /** The last place holds stitches from the other side already and may be left. */
  lastMayWait = false
  /** Places that the row itself put before the edge (chains at its start that are worked into). */
  prefixed = 0
  /** Places that the row itself put behind the edge (chains at its end that are worked into). */
  appended = 0
  /** Of a chain with which the row below began, before its first stitch: how many it has. */
  readonly cord: number
  /** Index of the place where a flat row was joined anew. */
  begunAt = 0
  /** The row has worked into spaces: then stitches may be passed over at its end. */
  worksSpaces = false
  /** While a group is worked in one place: its index. */
  inPlace: number | undefined

  constructor(edge: Edge, setting: RowSetting) {
    this.setting = setting
    this.yarn = setting.yarn
    this.onPart = setting.parts?.begins
    this.edge = edge.places
    this.round = setting.round
    this.onRing = edge.round
    this.foundation = edge.foundation
    this.chain = edge.chain
    this.closedChain = edge.chain && setting.round
    this.outline = edge.outline
    this.held = edge.held !== undefined
    this.closedInFirst = edge.closedInFirst === true
    this.turnedRound = edge.turnedRound === true
    this.slipsBehind = edge.slips ?? 0
    this.ofPieces = edge.ofPieces ?? new Set()
    const last = edge.places.at(-1)
    this.cord = last?.kind === 'space' && last.group === undefined ? (last.chains ?? 0) : 0
  }

  /** Which way to read what can be read in `words.length` ways. The first is the usual one. */
  choose(name: string, words: readonly string[], span?: Span): number {
    const known = this.points.find((point) => point.name === name)
    if (known) return known.taken
    const taken = this.setting.readings.get(name) ?? 0
    this.points.push({ name, ways: words.length, taken, words, ...(span && { span }) })
    return taken
  }

  get end(): number {
    return this.edge.length
  }

  /** Places from here to the end. */
  get left(): number {
    return Math.max(0, this.edge.length - this.at)
  }

  /** One more instruction is worked; repeats inside repeats may not go on without end. */
  effort(): void {
    this.steps_ += 1
    if (this.steps_ > 20_000 + 60 * (this.edge.length + this.made.length)) throw new TooDeep()
  }

  /** Adds a stitch to what the row makes. */
  make(place: Omit<Place, 'row'>): void {
    if (this.made.length >= this.setting.room) throw new TooLarge()
    this.made.push({ ...place, row: this.setting.rowIndex, ...(this.yarn !== undefined && { yarn: this.yarn }) })
    this.worked = true
    if (!place.travel) this.begun = true
  }

  /** Adds chains: a space, or a longer one when chains came just before. */
  makeChains(count: number, inGroup: number | undefined): void {
    if (count <= 0) return
    if (count > this.setting.room) throw new TooLarge()
    const tail = this.made.at(-1)
    if (tail?.kind === 'space' && tail.group === inGroup) this.made[this.made.length - 1] = { ...tail, chains: (tail.chains ?? 0) + count }
    else this.make({ kind: 'space', chains: count, ...(inGroup !== undefined && { group: inGroup }) })
  }

  /** Fastens what was made last to the motif beside it. */
  fasten(join: NotedNeighbour): void {
    this.neighbours.push(join)
    const last = this.made.at(-1)
    if (last) this.made[this.made.length - 1] = { ...last, joined: true }
  }

  /** Takes one place and gives its index; past the end it notes the overrun once. */
  take(index: number, span: Span): number {
    if (index >= this.edge.length && !this.overrun) {
      this.overrun = true
      this.troubles.push({ kind: 'overrun', span, wants: 0, offers: this.edge.length })
    }
    const place = this.outline || this.held ? this.edge[index] : undefined
    if (place && !this.taken.has(place)) this.taken.set(place, span)
    this.at = Math.max(this.at, index + 1)
    this.last = index
    return index
  }

  readonly place = (index: number): Place | undefined => this.edge[index]

  trouble(trouble: Trouble): void {
    if (this.troubles.length < 20) this.troubles.push(trouble)
  }

  /** How many stitches the row has made, by its conventions of the moment (chains apart). */
  stitches(): number {
    let count = 0
    for (const place of this.made) if (isStitch(place) && !place.travel) count += 1
    return count
  }

  /** A mark to come back to when a try does not come out. */
  mark(): () => void {
    const { at, last, tookFirst, leaves, overrun, worked, begun, undecided, paired } = this
    const made = this.made.length
    const tail = this.made.at(-1)
    const lengths = [this.steps.length, this.troubles.length, this.repeats.length, this.groups.length, this.yarns.length, this.skipped.length, this.holds.length, this.neighbours.length, this.toSpaces.length] as const
    return () => {
      Object.assign(this, { at, last, tookFirst, leaves, overrun, worked, begun, undecided, paired })
      this.made.length = made
      if (tail && made > 0) this.made[made - 1] = tail
      this.steps.length = lengths[0]
      this.troubles.length = lengths[1]
      this.repeats.length = lengths[2]
      this.groups.length = lengths[3]
      this.yarns.length = lengths[4]
      this.skipped.length = lengths[5]
      this.holds.length = lengths[6]
      this.neighbours.length = lengths[7]
      this.toSpaces.length = lengths[8]
    }
  }

  /** The place worked into last is a space: then the stitches up to the next space are passed over as a matter of course. */
  get onSpace(): boolean {
    const place = this.edge[this.last]
    return place !== undefined && isSpace(place)
  }
}
