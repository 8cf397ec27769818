import { readFileSync } from 'node:fs'
import type { Root } from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { comparesRows, tableOf, type ExpectedTable } from '../support/expected-rows.ts'

/** A slip set into the pattern's text, and what must be found. */
export interface Planted {
  readonly line: number
  /** The piece in whose rows it is set; left out where the words stand once in the pattern. */
  readonly piece?: string
  readonly insteadOf: string
  readonly write: string
  /** The one code that comes of it. */
  readonly found: string
  /** What of the pattern's text is pointed at; left out where the place says nothing. */
  readonly at?: string
}

/** A page of this folder: what the rows of a pattern come to by hand, and slips that must not pass. */
export interface Page {
  readonly tables: readonly ExpectedTable[]
  readonly planted: readonly Planted[]
}

/** Reads a page. A table with the column `row` is counts by hand, one with `instead of` is slips. */
export function readPage(path: string): Page {
  const text = readFileSync(path, 'utf8')
  const lines = text.split('\n')
  const tables: ExpectedTable[] = []
  const planted: Planted[] = []
  visit(unified().use(remarkParse).use(remarkGfm).parse(text) as Root, 'table', (node) => {
    const { start, end } = node.position!
    const table = tableOf(lines.slice(start.line - 1, end.line), start.line)
    if (table.header.includes('instead of')) planted.push(...table.rows.map((row, index) => slipOf(row, table.line + 2 + index)))
    else if (comparesRows(table.header)) tables.push(table)
    else throw new Error(`${path}:${table.line}: neither counts nor slips`)
  })
  return { tables, planted }
}

function slipOf(row: ReadonlyMap<string, string>, line: number): Planted {
  const [piece = '', insteadOf = '', write = '', found = '', at = ''] = ['in', 'instead of', 'write', 'found', 'at'].map((word) => row.get(word))
  return { line, insteadOf, write, found, ...(piece !== '' && { piece }), ...(at !== '' && { at }) }
}

/** The pattern's text with the slip in it. The words it stands for must be there, once. */
export function withSlip(text: string, { line, piece, insteadOf, write }: Planted): string {
  const from = piece === undefined ? 0 : text.indexOf(`\n  - name: ${piece}\n`)
  const end = piece === undefined ? text.length : text.slice(from + 1).search(/\n(?: {2}- name: |\w)/) + from + 1
  const rows = text.slice(from, end)
  const times = rows.split(insteadOf).length - 1
  if (from < 0 || times !== 1) throw new Error(`line ${line}: \`${insteadOf}\` stands ${times} times in ${piece ?? 'the pattern'}, and not once`)
  return text.slice(0, from) + rows.replace(insteadOf, write) + text.slice(end)
}

/**
 * A table that speaks of ranges and of all sizes, line by line and size by size:
 *
 *   | Body | Rnds 3-16 (18, 20) | 88 (96, 104) |     | Yoke | Rnds 5-7 | 92 (96, 100), 8 more each |
 */
export function inFull(table: ExpectedTable, sizes: readonly string[]): ExpectedTable {
  const named = sizes.length === 0 ? [undefined] : sizes
  const rows = table.rows.flatMap((line) => named.flatMap((size, index) => {
    const { word, first, last, by } = rangeOf(inSize(line.get('row') ?? '', index))
    return Array.from({ length: Math.max(0, Math.floor((last - first) / by) + 1) }, (_, step) => new Map([...line].map(([column, cell]) => (
      column === 'row' ? [column, first === 0 ? word : `${word} ${first + step * by}`] as const : [column, atStep(inSize(cell, index), step)] as const
    )).concat(size === undefined ? [] : [['size', size]])))
  }))
  return { ...table, rows }
}

/** `40 (60)` is 40 in the first size and 60 in the second; what has no list is the same in all. */
function inSize(cell: string, size: number): string {
  return cell.replace(/([\d-]+) \(([\d-]+(?:, [\d-]+)*)\)/g, (_, smallest: string, others: string) => {
    const values = [smallest, ...others.split(', ')]
    const value = values[size]
    if (value === undefined) throw new Error(`\`${cell}\` has ${values.length} sizes, and not ${size + 1}`)
    // `Rows 4-11 (13)`: the range begins alike and ends elsewhere.
    return smallest.includes('-') && !value.includes('-') ? `${smallest.split('-')[0]}-${value}` : value
  })
}

/** `Rows 6-78 by 4` are every fourth row. */
function rangeOf(label: string): { readonly word: string; readonly first: number; readonly last: number; readonly by: number } {
  const found = /^(Row|Rnd)s? (\d+)(?:-(\d+))?(?: by (\d+))?$/.exec(label)
  if (!found) return { word: label, first: 0, last: 0, by: 1 }
  return { word: found[1]!, first: Number(found[2]), last: Number(found[3] ?? found[2]), by: Number(found[4] ?? 1) }
}

function atStep(cell: string, step: number): string {
  const found = /^(\d+)(.*), (\d+) (more|fewer) each$/.exec(cell)
  if (!found) return cell
  return `${Number(found[1]) + step * Number(found[3]) * (found[4] === 'more' ? 1 : -1)}${found[2]}`
}
