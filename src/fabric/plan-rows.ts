import type { RowLabel } from '../notation/labels.ts'
import type { PieceReference } from '../notation/reference-to-piece.ts'
import type { Block, RowReference } from '../notation/row-reference.ts'
import { inSize } from '../notation/target.ts'
import type { WrittenEntry } from './real-rows.ts'
import { ofPart, underHeading } from './under-heading.ts'

/** A row that will be worked, before it is known what it copies. */
export interface PlannedRow {
  readonly entry: WrittenEntry
  /** Undefined for a row without a number (a foundation). */
  readonly number: number | undefined
  /** Index within the written row. */
  readonly index: number
  readonly last: boolean
}

/** How many real rows a written row is taken to stand for at the most. */
const most = 20_000

/**
 * Numbers the real rows of a piece in one size, in the order in which they are worked: `Rows 2, 4 and 6` lie between `Rows 3 and 5`.
 */
export function planRows(entries: readonly WrittenEntry[], size: number, sizeNames: readonly string[], others: (piece: string) => readonly OtherRow[]): readonly PlannedRow[] {
  const planned: PlannedRow[] = []
  const alternates: WrittenEntry[] = []
  let last = 0
  const written = entries.filter(({ label }) => holdsFor(label, size, sizeNames))
  for (const [at, entry] of written.entries()) {
    const numbers = numbersOf(entry, written[at + 1], size, last, others, planned)
    for (const alternate of alternates) planned.push(...between(alternate, last, numbers[0]))
    if (entry.label?.alternate) alternates.push(entry)
    for (const [index, number] of numbers.entries()) planned.push({ entry, number, index, last: index === numbers.length - 1 })
    last = Math.max(...numbers.map((number) => number ?? last), entry.label && entry.label.numbers.length > 0 && (numbers[0] ?? 0) < last ? (numbers.at(-1) ?? last) : last)
    if ((numbers[0] ?? last) < last && numbers.length === 1 && numbers[0] === 1) last = 1
  }
  return inOrder(planned)
}

/** Rows listed apart are put where their numbers belong; a section that begins again at 1 stays a section of its own. */
function inOrder(planned: readonly PlannedRow[]): readonly PlannedRow[] {
  const lists = planned.some(({ entry }) => isList(entry.label))
  if (!lists) return planned
  const numbered = planned.filter(({ number }) => number !== undefined).toSorted((a, b) => a.number! - b.number!)
  let next = 0
  return planned.map((row) => (row.number === undefined ? row : numbered[next++]!))
}

function isList(label: RowLabel | undefined): boolean {
  const numbers = label?.numbers ?? []
  return numbers.length > 1 && isSpread(numbers)
}

/** `Row 2 and all even rows`: the rows between two written ones are worked by it. */
function between(entry: WrittenEntry, from: number, until: number | undefined): readonly PlannedRow[] {
  const parity = (entry.label?.numbers[0] ?? 0) % 2
  const rows: PlannedRow[] = []
  for (let number = from + 1; number < (until ?? 0); number += 1) if (number % 2 === parity) rows.push({ entry, number, index: 0, last: true })
  return rows
}

/** Whether a row is worked in a size: `Sizes L and XL only:` is not, in the others. */
export function holdsFor(label: RowLabel | undefined, size: number, names: readonly string[]): boolean {
  if (!label?.onlySizes || names.length === 0) return true
  return label.onlySizes.some((name) => name.toLowerCase() === names[size]?.toLowerCase())
}

type Numbers = readonly (number | undefined)[]

function numbersOf(entry: WrittenEntry, next: WrittenEntry | undefined, size: number, last: number, others: (piece: string) => readonly OtherRow[], before: readonly PlannedRow[]): Numbers {
  const { label, read } = entry
  const range = label?.bySize?.[size]
  if (range) return Array.from({ length: Math.max(0, Math.min(range.last - range.first + 1, most)) }, (_, index) => range.first + index)
  const { reference } = read
  const there = reference?.kind === 'piece' ? rowsCalled(reference.name, entry, others, before) : []
  if (label && label.numbers.length > 0) return label.alternate ? label.numbers.slice(0, 1) : (withItsParts(label.numbers, reference, there) ?? label.numbers)
  if (!label && (last === 0 || entry.headed) && reference?.kind === 'piece' && (entry.headed || before.length === 0 || before.every(isFoundation))) return asThere(reference, there, next, size, before.length > 0)
  const rows = reference?.kind === 'piece' && !onlyFoundation(entry) ? rowsOfPiece(reference, there, next, size) : countOf(reference, label, size, last, before)
  const named = label?.word !== 'unsaid' || label.howMany !== undefined
  const numbered = label === undefined ? reference !== undefined : named || reference !== undefined
  const hidden = numbered && (last > 0 || label !== undefined) && !/foundation|base|set|start|begin/i.test(label?.name ?? '')
  return Array.from({ length: Math.min(rows, most) }, (_, index) => (hidden ? last + index + 1 : undefined))
}

/** `Rows 1-18: As for Back`, which ends in two shoulders that both have Rows 17 and 18: the front has both as well. What numbers anew from the first row is a section of its own. */
function withItsParts(numbers: readonly number[], reference: RowReference | undefined, there: readonly OtherRow[]): Numbers | undefined {
  if (reference?.kind !== 'piece' || reference.blocks || reference.to !== undefined || isSpread(numbers)) return undefined
  const numbered = there.flatMap(({ number }) => number ?? [])
  const anew = numbered.findIndex((number, index) => index > 0 && number <= numbers[0]! && number <= numbered[index - 1]!)
  const all = numbered.slice(0, anew < 0 ? undefined : anew).filter((number) => number >= numbers[0]! && number <= numbers.at(-1)!)
  return all.length > numbers.length && numbers.every((number) => all.includes(number)) ? all : undefined
}

/** Numbers that do not follow one another. */
const isSpread = (numbers: readonly number[]): boolean => numbers.at(-1)! - numbers[0]! !== numbers.length - 1

/** The rows of another piece that an entry speaks of, or those under another heading of its own piece: `As for First earflap`. */
function rowsCalled(name: string, entry: WrittenEntry, others: (piece: string) => readonly OtherRow[], before: readonly PlannedRow[]): readonly OtherRow[] {
  const theirs = others(name)
  return theirs.length > 0 ? underHeading(theirs, entry) : ofPart(before, name, entry)
}

/** A row of another piece, as far as it is counted. */
type OtherRow = { readonly number?: number | undefined; readonly entry: WrittenEntry }

/** `Ch 25.`: the chain alone. */
const isFoundation = ({ entry }: PlannedRow): boolean => entry.read.items.some(({ node }) => node === 'chain') && entry.read.items.every(({ node }) => node === 'chain' || node === 'aside')

/** `Work as Back to the end of Row 14` at the beginning of a piece: its rows are called as they are there; behind a chain of its own without the chain. */
function asThere(reference: PieceReference, rows: readonly OtherRow[], next: WrittenEntry | undefined, size: number, begun: boolean): Numbers {
  if (reference.blocks) return rowsInTurn(reference.blocks, size)
  const numbers = rows.slice(0, rowsOfPiece(reference, rows, next, size)).map(({ number }) => number)
  return begun ? numbers.filter((number) => number !== undefined) : numbers
}

/**
 * How many rows are taken from another piece: those that are named, those as far as one of them, or all. `Work as Right mitt to the thumb rnd` is
 * without that round where the next row is a thumb round of its own.
 */
function rowsOfPiece({ blocks, to }: PieceReference, rows: readonly OtherRow[], next: WrittenEntry | undefined, size: number): number {
  if (blocks) return rowsInTurn(blocks, size).length
  if (to === undefined) return rows.length
  if (typeof to === 'string') return Math.max(1, endsWith(to, rows) + (next?.label?.name.toLowerCase() === to ? 0 : 1))
  const last = next?.label?.numbers[0] === inSize(to, size) ? inSize(to, size) - 1 : inSize(to, size)
  return rows.filter(({ number }) => (number ?? 0) <= last).length
}

/** Where a row stands that is told by its name, as the armhole row; -1 where no label calls one so. */
export function endsWith(name: string, rows: readonly OtherRow[]): number {
  return rows.findLastIndex(({ entry }) => entry.label?.name.toLowerCase() === name)
}

/** The rows of blocks in the order in which they are worked. */
export function rowsInTurn(blocks: readonly Block[], size: number): readonly number[] {
  return blocks.flatMap(({ rows, times }) => Array.from({ length: Math.min(times ? inSize(times, size) : 1, 5_000) }, () => rows).flat())
}

/** `Foundation: As for Front.`: that one row of it. */
function onlyFoundation({ label, read: { reference } }: WrittenEntry): boolean {
  return /^foundation|^base/i.test(label?.name ?? '') && reference?.kind === 'piece' && reference.to === undefined
}

/** How many rows an unnumbered row stands for. */
function countOf(reference: RowReference | undefined, label: RowLabel | undefined, size: number, last: number, before: readonly PlannedRow[]): number {
  if (label?.howMany) return label.howMany.length === 1 ? label.howMany[0]! : (label.howMany[size] ?? 1)
  switch (reference?.kind) {
    case 'last': return inSize(reference.count, size) * (reference.times ? inSize(reference.times, size) : 1)
    case 'even': return reference.rows ? inSize(reference.rows, size) : 1
    // `Rep Row 2 until there are 24 rows`
    case 'copy': return reference.until ? Math.max(1, inSize(reference.until, size) - last) : rowsInTurn(reference.blocks, size).length
    case 'schedule': return scheduled(reference.changes, reference.until, size, before)
    default: return 1
  }
}

/** Rows of a rule that stops at a number: as many as lead there from the last total that is stated. */
function scheduled(changes: readonly number[], until: number | undefined, size: number, before: readonly PlannedRow[]): number {
  if (until === undefined || changes.length !== 1) return Math.max(1, changes.length)
  const total = before.findLast(({ entry }) => entry.read.totals.some(({ count, kinds }) => count ?? kinds[0]))?.entry.read.totals.at(-1)
  const stated = total?.count ?? total?.kinds[0]?.count
  const rows = stated ? (until - inSize(stated, size)) / (changes[0] || 1) : 1
  return Number.isInteger(rows) && rows > 0 ? rows : 1
}
