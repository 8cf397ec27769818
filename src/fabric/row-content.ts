import type { RowText } from '../notation/row-text.ts'
import type { Instruction } from '../notation/syntax.ts'
import { saidCount } from './after-slip.ts'
import { saysOf } from './compare-total.ts'
import { mirroredWords } from './mirrored-words.ts'
import type { RealRow } from './real-rows.ts'
import type { WorkedRow } from './worked-row.ts'

/** What a row told by a rule or as "work even" goes by: the kind of stitch below, and the change that the row below made. */
interface Below {
  readonly kind: string
  readonly change: number
}

/** What a real row works in a size: its own instructions, or what a rule makes of it. */
export function itemsOf(row: RealRow, below: Below, size: number): readonly Instruction[] {
  if (row.even || row.change === 0) return evenItems(below, row)
  if (row.change !== undefined) return shapingItems(below, row)
  const { rowLists = [] } = row.entry.read
  return size > 0 && rowLists.length > 0 ? rowsInSize(row.items, new Map(rowLists.map(({ values }) => [values[0], values[size]]))) : row.items
}

/** `The row-end of Row 12 (16)` in the second size: wherever the instructions name Row 12 they mean Row 16. */
function rowsInSize<Part>(part: Part, rows: ReadonlyMap<unknown, unknown>): Part {
  if (Array.isArray(part)) return part.map((each: unknown) => rowsInSize(each, rows)) as Part
  if (typeof part !== 'object' || part === null) return part
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, key === 'ofRow' ? (rows.get(value) ?? value) : rowsInSize(value, rows)])) as Part
}

/** `Work even`: one stitch of the kind below in each. */
function evenItems(below: Below, row: RealRow): readonly Instruction[] {
  const { start, end } = row.entry.text
  return [{ node: 'work', stitch: below.kind, target: { walk: 'each', toEnd: true, thing: { kind: 'stitch' }, start, end }, start, end }]
}

/** A row of a rule: so many stitches more or fewer, or as many as the row before had. */
function shapingItems(below: Below, row: RealRow): readonly Instruction[] {
  const { start, end } = row.entry.text
  const change = row.change === 'as-set' ? below.change : (row.change ?? 0)
  if (change === 0) return evenItems(below, row)
  return [{ node: 'shape', by: change > 0 ? 'inc' : 'dec', count: { values: [Math.abs(change)], start, end }, places: 'evenly', start, end }]
}

/** `In next ch-2 sp of Second square` in that square itself tells it from the one that it is joined to: the place is its own. */
export function withoutOwnName(items: readonly Instruction[], name: string): readonly Instruction[] {
  return items.map((item) => {
    if (item.node === 'repeat') return { ...item, items: withoutOwnName(item.items, name), ...(item.ending && { ending: withoutOwnName(item.ending, name) }) }
    if ((item.node !== 'work' && item.node !== 'group') || item.target?.ofPiece?.toLowerCase() !== name.toLowerCase()) return item
    const { ofPiece: _, ...target } = item.target
    return target.thing || target.walk === 'same' ? { ...item, target } : item
  })
}

/** The total of a range holds for its last row; where nothing changes, for all of them. */
export function textFor(row: RealRow): RowText {
  const { read } = row.entry
  const listed = read.totals.find(({ byRow }) => byRow !== undefined)
  if (listed?.byRow && listed.byRow.length === row.entry.label?.numbers.length) return { ...read, totals: [{ ...listed, count: { ...listed.byRow[row.index]!, start: listed.start, end: listed.end } }] }
  const atRow = read.totals.filter(({ atRow }) => atRow !== undefined)
  if (atRow.length > 0) return { ...read, totals: read.totals.filter(({ atRow: at }) => at === undefined || at === row.number) }
  if (row.last || row.entry.read.reference === undefined && !changesOnItsWay(row)) return read
  return { ...read, totals: [] }
}

/** `Rows 9-14: 2 sc in first st, sc across (24)`: every row has another count, and the last one is said. */
function changesOnItsWay(row: RealRow): boolean {
  const shapes = (items: readonly Instruction[]): boolean => items.some((item) =>
    item.node === 'shape' || item.node === 'skip' || item.node === 'work' && (item.stitch === 'inc' || item.stitch === 'dec' || (item.count?.values[0] ?? 1) > 1 && item.target !== undefined || /tog$/.test(item.stitch))
    || (item.node === 'repeat' || item.node === 'group') && shapes(item.items))
  return row.change !== undefined || shapes(row.items)
}

function totalOf({ totals }: RowText, size: number): Pick<WorkedRow['written'], 'copiesTotal'> {
  const total = saidCount(saysOf(totals, size))
  return total === undefined ? {} : { copiesTotal: total }
}

function reversedOf(row: RealRow, size: number): NonNullable<WorkedRow['written']['reversed']> {
  const words = mirroredWords(row.items, size)
  return words ? { words } : {}
}

/** Where a real row is written. */
export function writtenOf(row: RealRow, size = 0): WorkedRow['written'] {
  const { entry } = row
  const numbers = entry.label?.numbers ?? []
  return {
    span: entry.span,
    label: entry.label ? { start: entry.label.start, end: entry.label.end } : { start: entry.span.start, end: entry.span.start },
    text: { start: entry.text.start, end: entry.read.totals.length > 0 ? Math.max(entry.text.start, Math.min(...entry.read.totals.map(({ start }) => start))) : entry.text.end },
    ...(entry.heading !== undefined && { heading: entry.heading }),
    ...(row.copies && { copies: row.copies.span.start }),
    ...(row.totalled && totalOf(row.totalled.read, size)),
    ...(row.mirrored && row.copies && { reversed: reversedOf(row, size) }),
    totalled: entry.read.totals.length > 0 || entry.read.reference?.kind === 'piece',
    ...(numbers.length > 0 && { first: numbers[0]!, last: numbers.at(-1)! }),
  }
}
