import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Booklet } from '../booklet/booklet.ts'
import { severityOf } from '../diagnostics/codes.ts'
import type { Collected } from './collect-patterns.ts'
import type { Paper } from './write-papers.ts'

interface Made {
  readonly collected: readonly Collected[]
  readonly papers: readonly Paper[]
  readonly root: string
  readonly seconds: number
}

/** What a build made and where, in a few lines. */
export async function summary({ collected, papers, root, seconds }: Made): Promise<string> {
  const booklets = collected.flatMap(({ booklet }) => (booklet ? [booklet] : []))
  const rows = booklets.map(rowsIn)
  const pages = (await readdir(join(root, 'dist'), { recursive: true })).filter((name) => name.endsWith('.html')).length
  const table = booklets.map((booklet, at) => [
    booklet.title,
    count(rows[at] ?? 0, 'row'),
    ...paperCells(papers.find(({ slug }) => slug === booklet.slug)),
  ])
  const warnings = collected.flatMap(({ diagnostics }) => diagnostics).filter(({ code }) => severityOf(code) === 'warning').length
  const total = rows.reduce((sum, one) => sum + one, 0)
  return [
    ...columns(table),
    '',
    `${count(booklets.length, 'pattern')}, ${count(total, 'row')}: every count comes out.`,
    ...(warnings > 0 ? [`${count(warnings, 'warning')}: \`npm run check\` shows ${warnings === 1 ? 'it' : 'them'}.`] : []),
    `${count(pages, 'page')} and ${count(papers.length, 'PDF')} in dist/, made in ${seconds.toFixed(1)} s.`,
  ].join('\n')
}

/** Real rows, each size's once: a range of five rows is five. */
function rowsIn({ parts }: Booklet): number {
  return parts.flatMap(({ lines }) => lines).reduce((sum, line) => sum + (line.kind === 'row' ? line.boxes.length : 0), 0)
}

function paperCells(paper: Paper | undefined): readonly string[] {
  if (!paper) return ['no paper: it is sold']
  return [count(paper.pages, 'page'), `${Math.ceil(paper.bytes / 1000)} kB`, `dist/${paper.path}`]
}

function columns(table: readonly (readonly string[])[]): readonly string[] {
  const widths = Array.from({ length: 4 }, (_, at) => Math.max(0, ...table.map((cells) => cells[at]?.length ?? 0)))
  return table.map((cells) =>
    cells.map((cell, at) => (at === 0 || at > 3 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))).join('  ').trimEnd(),
  )
}

function count(number: number, noun: string): string {
  return `${number.toLocaleString('en')} ${noun}${number === 1 ? '' : 's'}`
}
