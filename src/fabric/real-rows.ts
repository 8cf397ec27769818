import type { RowLabel } from '../notation/labels.ts'
import { parseRow, type ReadRow } from '../notation/parse-row.ts'
import type { RowReference } from '../notation/row-reference.ts'
import { splitRows } from '../notation/split-rows.ts'
import { inSize, type Instruction } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'
import type { Lexicon } from './lexicon.ts'

/** A row as it is written, read once for all sizes. */
export interface WrittenEntry {
  readonly label?: RowLabel
  readonly read: ReadRow
  readonly span: Span
  readonly text: Span
}

/** A remark between rows: printed, not counted. */
export interface Remark {
  readonly span: Span
  /** How many written rows stand before it. */
  readonly after: number
}

/** Reads a piece's block of rows. */
export function readRows(text: string, block: Span, lexicon: Lexicon): { readonly entries: readonly WrittenEntry[]; readonly remarks: readonly Remark[] } {
  const entries: WrittenEntry[] = []
  const remarks: Remark[] = []
  for (const part of splitRows(text, block, lexicon.sizes)) {
    if (part.kind === 'between') remarks.push({ span: part.span, after: entries.length })
    else entries.push({ ...(part.label && { label: part.label }), read: parseRow(text, part.text.start, part.text.end, lexicon), span: part.span, text: part.text })
  }
  return { entries, remarks }
}

/** One row that is really worked: a range gives as many as it has rows. */
export interface RealRow {
  readonly entry: WrittenEntry
  readonly label: string
  readonly number?: number
  readonly round: boolean
  readonly side?: 'RS' | 'WS'
  /** What is worked, after following references. */
  readonly items: readonly Instruction[]
  readonly loop?: 'back' | 'front' | 'third'
  /** The row's total is stated here: of a range that changes the count it holds for the last row only. */
  readonly last: boolean
  /** `work even`: one stitch in each, of the kind below. */
  readonly even: boolean
  /** The row it copies was not found. */
  readonly missing?: string
  /** Index within its range. */
  readonly index: number
}

interface Known {
  readonly items: readonly Instruction[]
  readonly loop?: 'back' | 'front' | 'third' | undefined
  readonly even: boolean
}

/** Expands the written rows of a piece in one size to the rows that are really worked. */
export function realRows(entries: readonly WrittenEntry[], size: number, sizeNames: readonly string[], most: number): readonly RealRow[] {
  const rows: RealRow[] = []
  const known = new Map<number, Known>()
  const alternates: { parity: number; entry: WrittenEntry }[] = []
  let number = 0
  let round = false
  const push = (row: RealRow): void => {
    rows.push(row)
    if (row.number !== undefined) {
      known.set(row.number, { items: row.items, loop: row.loop, even: row.even })
      number = row.number
    }
  }
  for (const entry of entries) {
    const { label, read } = entry
    if (!holdsFor(label, size, sizeNames)) continue
    round = isRound(entry, round)
    const plan = numbersOf(entry, size, number)
    for (const alternate of alternates) fillAlternate(alternate, plan[0], number, round, push)
    if (label?.alternate) alternates.push({ parity: (label.numbers[0] ?? 0) % 2, entry })
    for (const [index, planned] of plan.entries()) {
      if (rows.length >= most) return rows
      const source = sourceOf(read, index, planned, known, rows, number)
      push({
        entry, label: planned === undefined ? (label?.name ?? startName(entry, rows)) : `${prefixOf(label, round)} ${planned}`, ...(planned !== undefined && { number: planned }), round,
        ...sideOf(label, index, rows), items: source.items, ...(source.loop && { loop: source.loop }), last: index === plan.length - 1, even: source.even,
        ...(source.missing !== undefined && { missing: source.missing }), index,
      })
    }
  }
  return rows
}

/** `Row 2 and all even rows`: the rows between two written ones are worked by it. */
function fillAlternate(alternate: { parity: number; entry: WrittenEntry }, until: number | undefined, from: number, round: boolean, push: (row: RealRow) => void): void {
  const { entry, parity } = alternate
  if (until === undefined) return
  for (let number = from + 1; number < until; number += 1) {
    if (number % 2 === parity % 2) {
      push({ entry, label: `${prefixOf(entry.label, round)} ${number}`, number, round, items: entry.read.items, ...(entry.read.loop && { loop: entry.read.loop }), last: true, even: false, index: 0 })
    }
  }
}

function holdsFor(label: RowLabel | undefined, size: number, names: readonly string[]): boolean {
  if (!label?.onlySizes || names.length === 0) return true
  return label.onlySizes.some((name) => name.toLowerCase() === names[size]?.toLowerCase())
}

function prefixOf(label: RowLabel | undefined, round: boolean): string {
  if (label && label.word !== 'unsaid') return label.prefix
  return round ? 'Rnd' : 'Row'
}

function startName(entry: WrittenEntry, rows: readonly RealRow[]): string {
  if (rows.length === 0) return entry.read.items.some((item) => item.node === 'work') ? 'Base' : 'Foundation'
  return 'Next'
}

/** A row is a round when it says so, when it works into a ring, or when it goes on from rounds without saying that it is a row. */
function isRound(entry: WrittenEntry, before: boolean): boolean {
  const word = entry.label?.word
  if (word === 'round') return true
  if (word === 'row') return entry.read.items.some((item) => item.node === 'join') && before
  return before || ring(entry.read.items)
}

function ring(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group') && item.target?.walk === 'ring' || item.node === 'join' || (item.node === 'repeat' && ring(item.items)))
}

/** Numbers of the real rows that a written row stands for; undefined for a row without a number. */
function numbersOf(entry: WrittenEntry, size: number, last: number): readonly (number | undefined)[] {
  const { label, read } = entry
  if (label && label.numbers.length > 0) {
    const range = label.bySize?.[size]
    if (range) return span(range.first, range.last)
    return label.alternate ? label.numbers.slice(0, 1) : label.numbers
  }
  const rows = countOf(read.reference, label, size)
  const numbered = label === undefined ? read.reference !== undefined : label.word !== 'unsaid' || label.howMany !== undefined
  const hidden = numbered && (last > 0 || label !== undefined) && !/foundation|base|set|start|begin/i.test(label?.name ?? '')
  return Array.from({ length: rows }, (_, index) => (hidden ? last + index + 1 : undefined))
}

function span(first: number, last: number): readonly number[] {
  return Array.from({ length: Math.max(0, Math.min(last - first + 1, 20_000)) }, (_, index) => first + index)
}

/** How many rows an unnumbered row stands for. */
function countOf(reference: RowReference | undefined, label: RowLabel | undefined, size: number): number {
  if (label?.howMany) return label.howMany.length === 1 ? label.howMany[0]! : (label.howMany[size] ?? 1)
  if (!reference) return 1
  if (reference.kind === 'last') return inSize(reference.count, size) * (reference.times ? inSize(reference.times, size) : 1)
  if (reference.kind === 'even') return reference.rows ? inSize(reference.rows, size) : 1
  if (reference.kind === 'copy') return reference.blocks.reduce((sum, block) => sum + block.rows.length * (block.times ? inSize(block.times, size) : 1), 0)
  return 1
}

interface Source extends Known {
  readonly missing?: string
}

function sourceOf(read: ReadRow, index: number, number: number | undefined, known: ReadonlyMap<number, Known>, rows: readonly RealRow[], _last: number): Source {
  const { reference } = read
  const own: Source = { items: read.items, loop: read.loop, even: false }
  if (!reference || reference.kind === 'piece') return own
  if (reference.kind === 'even') return { items: read.items, even: true }
  if (reference.kind === 'copy') {
    const sequence = reference.blocks.flatMap((block) => repeated(block.rows, block.times && block.rows.length > 0 ? block.times.values[0]! : 1))
    const wanted = sequence[index % Math.max(1, sequence.length)]
    if (wanted === undefined || number !== undefined && wanted >= number - index) return { ...own, missing: wanted === undefined ? 'no row' : wanted === number || wanted >= number! - index ? 'itself' : `${wanted}` }
    const found = known.get(wanted)
    // `As Rnd 7, but (5 sc, inc) x 6`: the change is worked instead.
    if (found && read.items.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')) return own
    return found ? { items: found.items, loop: found.loop, even: found.even } : { ...own, missing: `${wanted}` }
  }
  const count = reference.count.values[0] ?? 1
  const source = rows[rows.length - (index % count) - count + (index % count)] ?? rows.at(-1)
  return source ? { items: source.items, loop: source.loop, even: source.even } : { ...own, missing: 'a row before' }
}

function repeated(rows: readonly number[], times: number): readonly number[] {
  return times === 1 ? rows : Array.from({ length: Math.min(times, 5_000) }, () => rows).flat()
}

/** Sides alternate from the last one said, for as long as the rows turn. */
function sideOf(label: RowLabel | undefined, index: number, _rows: readonly RealRow[]): { readonly side?: 'RS' | 'WS' } {
  return label?.side && index === 0 ? { side: label.side } : {}
}
