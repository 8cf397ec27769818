import type { RowLabel } from '../notation/labels.ts'
import { pieceWords } from '../notation/piece-words.ts'
import { parseJoinNote, type Opening } from '../notation/parse-join-note.ts'
import type { ReadRow } from '../notation/parse-row.ts'
import type { RowReference } from '../notation/row-reference.ts'
import { readRow } from '../notation/rows-read.ts'
import { chainAtFarEnd, separateAtEnd } from '../notation/separate-chain.ts'
import { splitRows } from '../notation/split-rows.ts'
import type { Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import type { Lexicon } from './lexicon.ts'
import { tellsItsBeginning } from './joined-above.ts'
import { isEven } from './mirrored.ts'
import { partStarts } from './part-starts.ts'
import { endsWith, planRows, rowsInTurn, type PlannedRow } from './plan-rows.ts'
import { withBracketTimes } from './bracket-times.ts'
import { sideFacing } from './side-facing.ts'
import { shiftedRows } from './shifted-rows.ts'
import { headingOf, headingsIn, partOf } from './row-headings.ts'
import { turnedOn } from './turns.ts'
import { beginsNext, isLead, skipsToJoin, worksNothing } from './lines-before.ts'
import { ofPart, underHeading } from './under-heading.ts'
import { yarnAtEnd, type YarnAtEnd } from './yarn-at-end.ts'

/** A row as it is written, read once for all sizes. */
export interface WrittenEntry {
  readonly label?: RowLabel
  readonly read: ReadRow
  readonly span: Span
  readonly text: Span
  /** A heading or another remark stands directly before it. */
  readonly headed?: boolean
  /** Words of the heading over its part of the piece. */
  readonly heading?: string
  /** The part that the label of this row, or of one above, names: `First half, Row 11`. */
  readonly ofPart?: string
  /** A remark over it tells where the yarn is joined, and the row itself does not. */
  readonly opening?: readonly Instruction[]
}

/** A remark between rows: printed, not counted. */
export interface Remark {
  readonly span: Span
  /** How many written rows stand before it. */
  readonly after: number
  /** Of `Second side: With RS facing, skip 6 sts, join yarn in next st.` the words that head the rows behind it. */
  readonly heading?: Span
}

/** Reads a piece's block of rows. */
export function readRows(text: string, block: Span, lexicon: Lexicon): { readonly entries: readonly WrittenEntry[]; readonly remarks: readonly Remark[]; readonly yarnAtEnd?: YarnAtEnd } {
  const entries: WrittenEntry[] = []
  const remarks: Remark[] = []
  const parts = splitRows(text, block, lexicon.sizes)
  const headings = headingsIn(text, parts)
  const dialect = pieceWords(text.slice(block.start, block.end), lexicon)
  const words = { ...dialect, parts: headings, ...(dialect.key !== undefined && { key: JSON.stringify([dialect.key, headings]) }) }
  // How the work is held for the row that comes next.
  let held: readonly Instruction[] = []
  const reads = parts.map((part) => (part.kind === 'row' ? readRow(text, part.text.start, part.text.end, words, part.label?.counted) : undefined))
  for (const [at, part] of parts.entries()) {
    const read = reads[at]
    const lead = part.kind === 'row' && read && isLead(part, read, parts[at + 1]) ? part.label : undefined
    if (lead) {
      remarks.push({ span: part.span, after: entries.length, heading: { start: lead.start, end: lead.end } })
      held = [...held, ...read!.items]
    } else if (part.kind === 'row' && read && !part.label && (skipsToJoin(read, parts[at + 1]) || beginsNext(read, reads[at + 1]))) {
      const above = remarks.at(-1)
      // The heading over it is that of the row under it.
      remarks.push({ span: part.span, after: entries.length, ...(above?.after === entries.length && { heading: above.heading ?? above.span }) })
      held = [...held, ...read.items]
    } else if (part.kind === 'between' || !read || !part.label && worksNothing(read)) {
      remarks.push({ span: part.span, after: entries.length })
      held = [...held, ...(read?.items ?? []).filter(({ node }) => node === 'aside')]
    } else {
      const { own, next } = separateAtEnd(read.items)
      const entry: WrittenEntry = { ...headingOf(text, remarks, entries.length), ...partOf(part.label, entries.at(-1), remarks.some(({ after }) => after === entries.length)), ...(part.label && { label: part.label }), read: held.length + next.length > 0 ? { ...read, items: chainAtFarEnd([...held, ...own]) } : read, span: part.span, text: part.text }
      held = next
      const above = remarks.filter(({ after }) => after === entries.length)
      entries.push(opened(entry, above.map(({ span }) => parseJoinNote(text, span.start, span.end, words)).findLast((opening) => opening !== undefined)))
    }
  }
  const yarn = remarks.filter(({ after }) => after === entries.length).map(({ span }) => yarnAtEnd(text.slice(span.start, span.end))).findLast((told) => told !== undefined)
  return { entries, remarks, ...(yarn && { yarnAtEnd: yarn }) }
}

/** `Note: With RS facing, skip next 11 sts and join yarn in the next st.`: the row begins there, unless it tells its own beginning. */
function opened(entry: WrittenEntry, opening: Opening | undefined): WrittenEntry {
  if (!opening || tellsItsBeginning(entry.read.items)) return entry
  return { ...entry, opening: opening.items, read: { ...entry.read, sizeLists: [...entry.read.sizeLists, ...opening.sizeLists] } }
}

/** One row that is really worked: a range gives as many as it has rows. */
export interface RealRow {
  readonly entry: WrittenEntry
  readonly label: string
  readonly number?: number
  readonly round: boolean
  readonly side?: 'RS' | 'WS'
  /** Its number begins again, for another part of the piece. */
  readonly anew?: boolean
  /** What is worked, after following references. */
  readonly items: readonly Instruction[]
  readonly loop?: 'back' | 'front' | 'third' | undefined
  /** The last row of what is written: the total of a range that changes its count holds for this one. */
  readonly last: boolean
  /** `work even`: one stitch in each, of the kind below. */
  readonly even: boolean
  /** Told by a rule: so many stitches more or fewer; `as-set` goes on as the row before did. */
  readonly change?: number | 'as-set'
  /** A copy with its shaping reversed: what lay on its left lies on its right. */
  readonly mirrored?: boolean
  /** The row that it copies, where it is not there; `itself` where it copies itself. */
  readonly missing?: string
  readonly index: number
  /** The written row that it copies. */
  readonly copies?: WrittenEntry
  /** What a remark over it tells of its beginning; a copy of the row in another piece begins in the same way. */
  readonly opening?: readonly Instruction[]
  /** Of the rows on the way there, the nearest with a total. */
  readonly totalled?: WrittenEntry
}

/** Rows of the other pieces, by the piece's name: for `as for Front`. */
export type OtherPieces = (name: string) => readonly RealRow[] | undefined

/** `Do not turn after Row 5` of Rows 2-5 is said of the last of them, and so is what is sewn when they are done. */
const isSaidOf = (item: Instruction, { number, last }: PlannedRow): boolean => (item.node !== 'aside' || !item.closed || last) && (item.node !== 'turn' || item.afterRow === undefined || (item.afterRow === 'last' ? last : item.afterRow === number))

/** Expands the written rows of a piece in one size to the rows that are really worked. */
export function realRows(entries: readonly WrittenEntry[], size: number, sizeNames: readonly string[], most: number, others: OtherPieces = () => undefined): readonly RealRow[] {
  const rows: RealRow[] = []
  const known = new Map<number, RealRow>()
  const starts = partStarts(entries, size)
  let round = isSpiral(entries)
  for (const planned of planRows(entries, size, sizeNames, (name) => others(name) ?? [])) {
    if (rows.length >= most) return rows
    const { entry, number } = planned
    if (rows.length === 0) rows.push(...foundationOf(entry, others))
    const source = withOwnTurn(sourceOf(planned, known, rows, others, size), entry.read)
    round = isRound(entry, source, round || closesRing(entry, entries[entries.indexOf(entry) + 1]))
    const side = planned.index === 0 ? sideFacing(entry) : undefined
    const row: RealRow = {
      entry, ...source, items: turnedOn(source.items.filter((item) => isSaidOf(item, planned)), planned.last), round, last: planned.last, index: planned.index,
      label: number === undefined ? (source.label ?? entry.label?.name ?? startName(entry, rows)) : `${prefixOf(entry.label, round)} ${number}`,
      ...(number !== undefined && { number }), ...(planned.index === 0 && starts.has(entry) && { anew: true }), ...(side && { side }),
      ...(entry.opening && planned.index === 0 && !source.mirrored && { opening: entry.opening }),
    }
    rows.push(row)
    if (number !== undefined) known.set(number, row)
  }
  return rows
}

/** A piece that begins `Rows 1-6: As for Front` begins with Front's foundation. */
function foundationOf(entry: WrittenEntry, others: OtherPieces): readonly RealRow[] {
  const { reference } = entry.read
  if (reference?.kind !== 'piece' || (entry.label?.numbers[0] ?? reference.blocks?.[0]?.rows[0]) !== 1) return []
  const theirs = others(reference.name) ?? []
  return theirs.slice(0, Math.max(0, theirs.findIndex(({ number }) => number !== undefined)))
}

function prefixOf(label: RowLabel | undefined, round: boolean): string {
  if (label && label.word !== 'unsaid') return label.prefix
  return round ? 'Rnd' : 'Row'
}

function startName(entry: WrittenEntry, rows: readonly RealRow[]): string {
  if (rows.length === 0) return entry.read.items.some((item) => item.node === 'work') ? 'Base' : 'Foundation'
  return 'Next'
}

/** A row is a round when it says so or goes around, when it works into a ring, or when it goes on from rounds without saying that it is a row. */
function isRound(entry: WrittenEntry, source: Source, before: boolean): boolean {
  const word = entry.label?.word
  if (word === 'round') return true
  if (word === 'row') return entry.read.items.some((item) => item.node === 'join') && before
  return before || source.round === true || entry.read.round === true || inRounds(entry.read.items) || /^base (?:round|rnd)/i.test(entry.label?.name ?? '')
}

/** `Row 9: … join with sl st in first sc to close the ring`, with rounds behind it: that row is the first of them. */
function closesRing({ read, label }: WrittenEntry, next: WrittenEntry | undefined): boolean {
  return label?.word === 'row' && label.numbers.length === 1 && label.numbers[0] !== 1 && next?.label?.word === 'round' && next.headed !== true && read.items.findLast(({ node }) => node !== 'aside')?.node === 'join'
}

/** `R1. … R2. …` of which one goes around and none turns: all of them are rounds. */
function isSpiral(entries: readonly WrittenEntry[]): boolean {
  const numbered = entries.filter(({ label }) => (label?.numbers.length ?? 0) > 0)
  return numbered.length > 1 && numbered.length === entries.length && numbered.every(({ label, read }) => label?.word === 'unsaid' && !read.items.some((item) => item.node === 'turn' && item.turns || item.node === 'work' && item.target?.walk === 'from-hook'))
    && numbered.some(({ read }) => read.round === true)
}

function inRounds(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group') && item.target?.walk === 'ring' || item.node === 'start' && item.target.walk === 'ring' || item.node === 'join'
    || item.node === 'repeat' && inRounds(item.items))
}

type Source = Pick<RealRow, 'items' | 'opening' | 'loop' | 'even' | 'change' | 'missing' | 'mirrored' | 'copies' | 'totalled' | 'side'> & { readonly round?: boolean; readonly label?: string }

/** What a planned row works: its own words, or those of the row that it points at. */
function sourceOf({ entry, index, number }: PlannedRow, known: ReadonlyMap<number, RealRow>, rows: readonly RealRow[], others: OtherPieces, size: number): Source {
  const { read } = entry
  const { reference } = read
  // `Rows 4-21: … until piece measures 30 cm`: the label says how many rows that are.
  const numbered = (entry.label?.numbers.length ?? 0) > 1
  const items = numbered ? read.items.filter((item) => item.node !== 'unreadable' || item.byLength !== true) : read.items
  const own: Source = { items, loop: read.loop, even: false }
  switch (reference?.kind) {
    case undefined: return own
    case 'even': return { items: read.items, even: true }
    case 'schedule': return { items: [], even: false, change: reference.changes.length === 0 ? 'as-set' : (reference.changes[index] ?? (reference.until === undefined ? 0 : reference.changes[0]!)) }
    case 'last': {
      const count = inSize(reference.count, size)
      const first = rows[rows.length - count]
      return furtherOn(copied(first, 'a row before'), number, first?.number, first?.number)
    }
    case 'piece': {
      const [theirs, part] = [others(reference.name), ofPart(rows, reference.name, entry)]
      return ofPiece(reference, { index, number, first: entry.label?.numbers[0] }, theirs ? underHeading(theirs, entry) : part.length > 0 ? part : undefined, size)
    }
    case 'copy': return copyOf(reference, entry, index, number, known, own, size)
  }
}

/** `Rep Row 2, but do not turn`: a row that points at another says that it is not turned. */
function withOwnTurn(source: Source, { reference, items }: ReadRow): Source {
  const turns = reference && !items.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat') ? items.filter((item) => item.node === 'turn' && !item.turns) : []
  return turns.length > 0 ? { ...source, items: [...source.items, ...turns] } : source
}

function copied(row: RealRow | undefined, missing: string): Source {
  if (!row) return { items: [], even: false, missing }
  const totalled = row.entry.read.totals.length > 0 ? row.entry : row.totalled
  return { items: row.items, loop: row.loop, even: row.even, copies: row.copies ?? row.entry, ...(totalled && { totalled }), ...(row.side && { side: row.side }), ...(row.change !== undefined && { change: row.change }) }
}

function ofPiece(reference: Extract<RowReference, { kind: 'piece' }>, { index, number, first }: { readonly index: number; readonly number: number | undefined; readonly first: number | undefined }, rows: readonly RealRow[] | undefined, size: number): Source {
  // `to the end of the armhole row`, where no row has a label of that name: how far that is, a reader must see.
  if (typeof reference.to === 'string' && rows && endsWith(reference.to, rows) < 0) return { items: [{ node: 'unreadable', why: 'word', reason: 'a row by a name that none has', start: reference.start, end: reference.end }], even: false }
  const sequence = reference.blocks && rowsInTurn(reference.blocks, size)
  const named = sequence?.[index % sequence.length]
  const row = named !== undefined ? rows?.find((other) => other.number === named) : number === undefined ? rows?.[index] : (inTurn(rows, first, index, number) ?? (rows?.[index]?.number === number ? rows[index] : undefined) ?? rows?.find((other) => other.number === number) ?? (rows?.some((other) => other.number !== undefined) ? undefined : rows?.[index]))
  const source = copied(row, `of ${reference.name}`)
  // As far as the first row that is shaped both pieces are alike, and their turning chains lie at the same ends.
  const mirrored = reference.reversing && rows?.slice(0, row ? rows.indexOf(row) + 1 : undefined).some(({ items }) => !isEven(items))
  return { ...source, ...(row?.opening && !reference.reversing && { opening: row.opening }), ...(row && { round: row.round, ...(row.number === undefined && { label: row.label }) }), ...(mirrored && { mirrored }) }
}

/** Of rows whose numbers come more than once, as those of two shoulders do, the one in its turn. */
function inTurn(rows: readonly RealRow[] | undefined, first: number | undefined, index: number, number: number): RealRow | undefined {
  const numbered = rows?.filter((row) => row.number !== undefined) ?? []
  const from = numbered.findIndex((row) => row.number === first)
  const row = from < 0 ? undefined : numbered[from + index]
  return row?.number === number ? row : undefined
}

function copyOf(reference: Extract<RowReference, { kind: 'copy' }>, entry: WrittenEntry, index: number, number: number | undefined, known: ReadonlyMap<number, RealRow>, own: Source, size: number): Source {
  const sequence = rowsInTurn(reference.blocks, size)
  const first = entry.label?.numbers[0] ?? number
  if (first !== undefined && sequence.some((wanted) => wanted >= first)) return { ...own, missing: sequence.includes(first) ? 'itself' : `${sequence.find((wanted) => wanted >= first)}` }
  const wanted = sequence[index % Math.max(1, sequence.length)]
  const found = wanted === undefined ? undefined : known.get(wanted)
  // `As Rnd 7, but (5 sc, inc) x 6`: the change is worked instead.
  if (found && own.items.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')) return own
  const source = furtherOn(copied(found, `${wanted ?? 'no row'}`), number, wanted, sequence.length > 1 ? Math.min(...sequence) : undefined)
  const chains = reference.chains?.find(({ row }) => row === number)?.chains
  const undecided = own.items.filter((item) => item.node === 'unreadable')
  if (undecided.length > 0) return { ...source, items: [...source.items, ...undecided] }
  if (reference.brackets) return { ...source, items: withBracketTimes(source.items, reference.brackets, reference) }
  return chains === undefined ? source : { ...source, items: withChains(source.items, chains) }
}

/** Rows of a block that is repeated from a row on: the older rows that they name are as much further on. */
function furtherOn(source: Source, number: number | undefined, copies: number | undefined, from: number | undefined): Source {
  return number === undefined || copies === undefined || from === undefined ? source : { ...source, items: shiftedRows(source.items, number - copies, from) }
}

/** The same row with its spaces of another length; the chain that begins it stays. */
function withChains(items: readonly Instruction[], chains: number, head = true): readonly Instruction[] {
  return items.map((item, index) => {
    if (item.node === 'chain' && !(head && index === 0)) return { ...item, count: { ...item.count, values: [chains] } }
    return item.node === 'repeat' || item.node === 'group' ? { ...item, items: withChains(item.items, chains, false) } : item
  })
}
