import type { Code, Root, Table } from 'mdast'
import { toString } from 'mdast-util-to-string'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { withoutCaretLines, type ExpectedDiagnostic } from './caret-lines.ts'
import { comparesRows, tableOf, worksSingleRows, type ExpectedTable } from './expected-rows.ts'
import { fenceAttributes } from './fence-attributes.ts'
import { wholeFile, wrapRows, type WrappedFence } from './wrap-rows.ts'

/** A `rows` or `pattern` fence with what is expected of it. */
export interface FenceCase {
  readonly kind: 'fence'
  readonly name: string
  /** Line of the fence in the Markdown file, 1-based. */
  readonly line: number
  readonly wrapped: WrappedFence
  readonly expected: readonly ExpectedDiagnostic[]
  readonly uncounted: boolean
  readonly tables: readonly ExpectedTable[]
  readonly reports: readonly { readonly line: number; readonly text: string }[]
}

/** A table of single rows, each worked on so many sc. */
export interface SingleRowsCase {
  readonly kind: 'single-rows'
  readonly name: string
  readonly line: number
  readonly table: ExpectedTable
}

export type SpecCase = FenceCase | SingleRowsCase

/** Every case in a Markdown text. A case takes the name of the heading above it. */
export function readCases(markdown: string, fallbackName: string): readonly SpecCase[] {
  const text = withoutFrontMatter(markdown)
  const lines = text.split('\n')
  const found: SpecCase[] = []
  let name = fallbackName
  let fence: FenceCase | undefined
  // Bytes that are no text have a report too; catalogue.test.ts works them.
  let underBytes = false
  visit(unified().use(remarkParse).use(remarkGfm).parse(text) as Root, (node) => {
    const line = node.position?.start.line ?? 1
    if (node.type === 'heading') {
      name = toString(node)
      fence = undefined
      underBytes = false
    } else if (node.type === 'code' && node.lang === 'bytes') {
      underBytes = true
    } else if (node.type === 'code' && (node.lang === 'rows' || node.lang === 'pattern')) {
      fence = fenceCase(node, name, line)
      underBytes = false
      found.push(fence)
    } else if (node.type === 'code' && node.lang === 'report' && !underBytes) {
      fence = replaceLast(found, fence, line, (above) => ({ ...above, reports: [...above.reports, { line, text: node.value }] }))
    } else if (node.type === 'table') {
      const table = tableAt(node, lines)
      if (worksSingleRows(table.header)) found.push({ kind: 'single-rows', name, line, table })
      else if (comparesRows(table.header)) {
        fence = replaceLast(found, fence, line, (above) => ({ ...above, tables: [...above.tables, table] }))
      }
    }
  })
  return found
}

function fenceCase(node: Code, name: string, line: number): FenceCase {
  const { text, expected } = withoutCaretLines(node.value)
  const attributes = fenceAttributes(node.lang === 'rows' ? (node.meta ?? '') : '')
  const uncounted = node.lang === 'rows' ? attributes.uncounted : (node.meta ?? '').includes('uncounted')
  const wrapped = node.lang === 'rows' ? wrapRows(text, attributes) : wholeFile(text)
  return { kind: 'fence', name, line, wrapped, expected, uncounted, tables: [], reports: [] }
}

function replaceLast(
  found: SpecCase[], fence: FenceCase | undefined, line: number, change: (above: FenceCase) => FenceCase,
): FenceCase {
  if (!fence) throw new Error(`line ${line}: no rows or pattern fence stands above it under the same heading`)
  const changed = change(fence)
  found[found.lastIndexOf(fence)] = changed
  return changed
}

function tableAt(node: Table, lines: readonly string[]): ExpectedTable {
  const { start, end } = node.position!
  return tableOf(lines.slice(start.line - 1, end.line), start.line)
}

/** Front-matter gives way to as many empty lines, so that every line keeps its number. */
function withoutFrontMatter(markdown: string): string {
  const front = /^---\n[\s\S]*?\n---(?=\n|$)/.exec(markdown)
  return front ? markdown.slice(front[0].length).replace(/^/, '\n'.repeat(front[0].split('\n').length - 1)) : markdown
}
