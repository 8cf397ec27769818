import { patternFolder } from '../components/paper-path.ts'
import { rowsIn } from '../components/shelf-line.ts'
import { counted } from '../diagnostics/words.ts'
import type { WorkedPattern } from './work-pattern.ts'
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
export function madeOf({ full: { slug, booklet, sold }, warnings }: WorkedPattern, own: readonly Paper[]): Made {
  const [paper] = own
  return {
    slug, sold, title: booklet?.title ?? slug, ...(booklet ? rowsIn(booklet) : { rows: 0, uncounted: 0 }), warnings,
    papers: sold ? 0 : own.length, ...(paper && !sold ? { paper } : {}),
  }
}

/** More patterns than this are not all named. */
const mostNamed = 40

/** What a build made and where, in a few lines. Patterns that are as before are counted and not named. */
export function summary(made: readonly Made[], { pages, known, seconds }: { readonly pages: number; readonly known: ReadonlySet<string>; readonly seconds: number }): string {
  const anew = made.filter(({ slug }) => !known.has(slug))
  const kept = made.length - anew.length
  const sum = (of: (one: Made) => number) => made.reduce((total, one) => total + of(one), 0)
  const [uncounted, warnings] = [sum((one) => one.uncounted), sum((one) => one.warnings)]
  return [
    ...columns(anew.slice(0, mostNamed).map((one) => [one.title, counted(one.rows, 'row'), ...paperCells(one)])),
    ...(anew.length > mostNamed ? [`and ${anew.length - mostNamed} more`] : []),
    '',
    `${counted(made.length, 'pattern')}, ${counted(sum(({ rows }) => rows), 'row')}: ${uncounted === 0 ? 'every count comes out' : `${uncounted} could not be counted, the others come out`}.`,
    ...(warnings > 0 ? [`${counted(warnings, 'warning')}: \`npm run check\` shows ${warnings === 1 ? 'it' : 'them'}.`] : []),
    ...(kept > 0 ? [`${counted(kept, 'pattern')} ${kept === 1 ? 'is' : 'are'} as before; ${anew.length === 0 ? 'nothing was' : anew.length === 1 ? 'only the other one was' : `only the other ${anew.length} were`} made anew.`] : []),
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
