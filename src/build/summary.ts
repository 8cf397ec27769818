import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { patternFolder } from '../components/paper-path.ts'
import { rowsIn } from '../components/shelf-line.ts'
import { counted } from '../diagnostics/words.ts'
import { countFindings } from './closing-summary.ts'
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
  const pages = (await readdir(join(root, 'dist'), { recursive: true })).filter((name) => /(?:index|404)\.html$/.test(name)).length
  const table = booklets.map((booklet, at) => [
    booklet.title,
    counted(rows[at]?.rows ?? 0, 'row'),
    ...paperCells(papers.find(({ slug }) => slug === booklet.slug), booklet.slug),
  ])
  const warnings = countFindings(collected.flatMap(({ diagnostics }) => diagnostics)).warnings
  const total = rows.reduce((sum, one) => sum + one.rows, 0)
  const uncounted = rows.reduce((sum, one) => sum + one.uncounted, 0)
  return [
    ...columns(table),
    '',
    `${counted(booklets.length, 'pattern')}, ${counted(total, 'row')}: ${uncounted === 0 ? 'every count comes out' : `${uncounted} could not be counted, the others come out`}.`,
    ...(warnings > 0 ? [`${counted(warnings, 'warning')}: \`npm run check\` shows ${warnings === 1 ? 'it' : 'them'}.`] : []),
    `${counted(pages, 'page')} and ${counted(papers.length, 'PDF')} in dist/, made in ${seconds.toFixed(1)} s.`,
  ].join('\n')
}

function paperCells(paper: Paper | undefined, slug: string): readonly string[] {
  if (!paper) return ['', '', `sold: release/${patternFolder(slug)}`]
  return [counted(paper.pages, 'page'), `${Math.ceil(paper.bytes / 1000)} kB`, `dist/${paper.path}`]
}

function columns(table: readonly (readonly string[])[]): readonly string[] {
  const widths = Array.from({ length: 4 }, (_, at) => Math.max(0, ...table.map((cells) => cells[at]?.length ?? 0)))
  return table.map((cells) =>
    cells.map((cell, at) => (at === 0 || at > 3 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))).join('  ').trimEnd(),
  )
}

