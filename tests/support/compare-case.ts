import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../src/fabric/worked-row.ts'
import type { CheckedPattern } from '../../src/pattern/checked-pattern.ts'
import { placeOf } from '../../src/text/source.ts'
import type { ExpectedDiagnostic } from './caret-lines.ts'
import type { ExpectedTable } from './expected-rows.ts'
import type { WrappedFence } from './wrap-rows.ts'

/**
 * What differs between the diagnostics a fence asks for and those it gets, both ways; empty when nothing does.
 * A fence is no whole publication, so what it lacks to be published is never its subject.
 */
export function differingDiagnostics(
  got: readonly Diagnostic[], expected: readonly ExpectedDiagnostic[], wrapped: WrappedFence, uncounted: boolean,
): string[] {
  const open = [...expected]
  const differences: string[] = []
  for (const diagnostic of got) {
    const place = placeInFence(diagnostic, wrapped)
    const at = open.findIndex((wanted) => samePlace(wanted, place) && wanted.code === diagnostic.code && sameSizes(wanted, diagnostic))
    const letPass = diagnostic.code === 'key-missing-to-publish' || (uncounted && diagnostic.code === 'count-missing')
    if (at === -1 && letPass) continue
    if (at === -1) differences.push(`not asked for: ${shown({ ...place, code: diagnostic.code })}: ${diagnostic.message}`)
    else open.splice(at, 1)
  }
  return [...differences, ...open.map((wanted) => `did not come: ${shown(wanted)}`)]
}

interface Place {
  readonly line: number
  readonly column: number
  readonly endColumn: number
}

/** Line and columns of a diagnostic, counted in the fence. One that runs over a line end is taken to end there. */
function placeInFence({ primary }: Diagnostic, { source, linesBefore, columnsBefore }: WrappedFence): Place {
  const start = placeOf(source, primary.span.start)
  const lineEnd = source.text.indexOf('\n', primary.span.start)
  const end = lineEnd === -1 ? primary.span.end : Math.min(primary.span.end, lineEnd)
  return {
    line: start.line - linesBefore,
    column: start.column - columnsBefore,
    endColumn: start.column - columnsBefore + Math.max(end - primary.span.start, 0),
  }
}

function samePlace(a: Place, b: Place): boolean {
  return a.line === b.line && a.column === b.column && a.endColumn === b.endColumn
}

function sameSizes(wanted: ExpectedDiagnostic, got: Diagnostic): boolean {
  return wanted.sizes === undefined || wanted.sizes.join() === (got.sizes ?? []).join()
}

function shown({ line, column, endColumn, code }: Place & { readonly code: string }): string {
  return `line ${line}, columns ${column}-${endColumn - 1} ${code}`
}

/** What differs between a table and the worked rows it names; empty when nothing does. */
export function differingRows(checked: CheckedPattern, table: ExpectedTable): string[] {
  return table.rows.flatMap((line) => {
    const rows = rowsNamed(checked, line)
    if (rows.length === 0) return [`no row worked is called ${[...line.values()].join(' | ')}`]
    return rows.flatMap(({ where, row }) => differingCells(row, line).map((difference) => `${where}: ${difference}`))
  })
}

/** The rows that a table line speaks of: of its size and piece if it names them, else of every size of the one piece that has such a row. */
function rowsNamed({ pieces }: CheckedPattern, line: ReadonlyMap<string, string>): { where: string; row: WorkedRow }[] {
  const label = line.get('row') ?? ''
  const named = pieces
    .filter(({ piece, size }) => (line.get('piece') ?? piece.name) === piece.name && (line.get('size') ?? size) === size)
    .map((piece) => ({ piece, rows: piece.rows.filter((row) => sameLabel(row.label, label)) }))
    .filter(({ rows }) => rows.length > 0)
  const pieceNames = new Set(named.map(({ piece }) => piece.piece.name))
  if (pieceNames.size > 1) throw new Error(`${label} is in ${[...pieceNames].join(' and ')}: the table needs a column \`piece\``)
  return named.map(({ piece, rows }) => {
    if (rows.length > 1) throw new Error(`${rows.length} rows of ${piece.piece.name} are called ${label}`)
    return { where: piece.size === undefined ? label : `${label}, size ${piece.size}`, row: rows[0]! }
  })
}

function sameLabel(a: string, b: string): boolean {
  const plain = (label: string) => label.toLowerCase().replace(/^(round|rd)\b/, 'rnd').trim()
  return plain(a) === plain(b)
}

function differingCells(row: WorkedRow, line: ReadonlyMap<string, string>): string[] {
  const facts: Readonly<Record<string, string>> = {
    offers: String(row.offers),
    'works over': String(row.worksOver),
    leaves: String(row.leaves),
    makes: String(row.makes),
    kinds: countsShown(row.kinds),
    spaces: countsShown(row.spaces),
    verdict: row.verdict,
    side: row.side ?? 'none',
    says: String(row.says?.count ?? 'none'),
  }
  return [...line].flatMap(([column, wanted]) => {
    if (wanted === '') return []
    if (column === 'assumed') {
      return row.assumed.some((text) => text.includes(wanted)) ? [] : [`nothing assumed says \`${wanted}\`, only: ${row.assumed.join('; ') || 'nothing'}`]
    }
    const got = facts[column]
    if (got === undefined) return []
    const same = column === 'kinds' || column === 'spaces' ? countsShown(countsOf(wanted)) === got : wanted === got
    return same ? [] : [`${column} ${got}, and the table says ${wanted}`]
  })
}

/** `16 dc, 8 sc` as counts by kind; `none` is no kind at all. */
function countsOf(cell: string): Record<string, number> {
  if (cell === 'none') return {}
  return Object.fromEntries(cell.split(',').map((entry) => {
    const found = /^(\d+) (\S.*)$/.exec(entry.trim())
    if (!found) throw new Error(`not a count by kind: \`${entry}\``)
    return [found[2]!, Number(found[1])]
  }))
}

function countsShown(counts: Readonly<Record<string, number>>): string {
  const present = Object.entries(counts).filter(([, count]) => count !== 0)
  return present.map(([kind, count]) => `${count} ${kind}`).sort().join(', ') || 'none'
}
