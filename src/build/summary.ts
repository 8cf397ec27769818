import { patternFolder } from '../components/paper-path.ts'
import { rowsIn } from '../components/shelf-line.ts'
import { counted } from '../diagnostics/words.ts'
import { countFindings } from './closing-summary.ts'
import type { Collected } from './collect-patterns.ts'
import type { Paper } from './write-papers.ts'

/** What a build made of one pattern, as the summary tells it. */
export interface Made {
  readonly slug: string
  readonly title: string
  readonly sold: boolean
  readonly rows: number
  readonly uncounted: number
  readonly warnings: number
  /** How many papers, and the first of them: the pattern itself. */
  readonly papers: number
  readonly paper?: Pick<Paper, 'path' | 'bytes' | 'pages'>
}

/** What was made of a pattern that was worked. */
export function madeOf({ slug, booklet, sold, diagnostics }: Collected, papers: readonly Paper[]): Made {
  const own = papers.filter((paper) => paper.slug === slug)
  const [paper] = own
  return {
    slug, sold, title: booklet?.title ?? slug, ...(booklet ? rowsIn(booklet) : { rows: 0, uncounted: 0 }), warnings: countFindings(diagnostics).warnings,
    papers: sold ? 0 : own.length, ...(paper && !sold ? { paper } : {}),
  }
}

/** What a build made and where, in a few lines. */
export function summary(made: readonly Made[], { pages, kept, seconds }: { readonly pages: number; readonly kept: number; readonly seconds: number }): string {
  const sum = (of: (one: Made) => number) => made.reduce((total, one) => total + of(one), 0)
  const [uncounted, warnings] = [sum((one) => one.uncounted), sum((one) => one.warnings)]
  return [
    ...columns(made.map((one) => [one.title, counted(one.rows, 'row'), ...paperCells(one)])),
    '',
    `${counted(made.length, 'pattern')}, ${counted(sum(({ rows }) => rows), 'row')}: ${uncounted === 0 ? 'every count comes out' : `${uncounted} could not be counted, the others come out`}.`,
    ...(warnings > 0 ? [`${counted(warnings, 'warning')}: \`npm run check\` shows ${warnings === 1 ? 'it' : 'them'}.`] : []),
    ...(kept > 0 ? [`${counted(kept, 'pattern')} ${kept === 1 ? 'is' : 'are'} as before; only ${made.length - kept === 1 ? 'the other one was' : `the other ${made.length - kept} were`} made anew.`] : []),
    `${counted(pages, 'page')} and ${counted(sum(({ papers }) => papers), 'PDF')} in dist/, made in ${seconds.toFixed(1)} s.`,
  ].join('\n')
}

function paperCells({ paper, sold, slug }: Made): readonly string[] {
  if (sold) return ['', '', `sold: release/${patternFolder(slug)}`]
  if (!paper) return ['no paper']
  return [counted(paper.pages, 'page'), `${Math.ceil(paper.bytes / 1000)} kB`, `dist/${paper.path}`]
}

function columns(table: readonly (readonly string[])[]): readonly string[] {
  const widths = Array.from({ length: 4 }, (_, at) => Math.max(0, ...table.map((cells) => cells[at]?.length ?? 0)))
  return table.map((cells) =>
    cells.map((cell, at) => (at === 0 || at > 3 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))).join('  ').trimEnd(),
  )
}
