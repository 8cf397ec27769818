import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { patternChecks, pieceChecks, rowChecks } from './all-checks.ts'
import type { PatternFacts, PieceFacts, RowFacts } from './facts.ts'
import { withoutStop } from './row-words.ts'
import { rowInDoubt } from './row-not-checked.ts'
import { toldOnce } from './told-once.ts'

/** Runs every check over a pattern in all its sizes. One slip, one finding: the same code at the same place is told once, with its sizes. */
export function runChecks(facts: PatternFacts, sizes: readonly string[]): readonly Diagnostic[] {
  const found = new Map<string, { readonly diagnostic: Diagnostic; readonly sizes: Set<number> }>()
  const note = (diagnostic: Diagnostic, size: number): void => {
    const { start, end } = diagnostic.primary.span
    const key = `${diagnostic.code} ${start} ${end}`
    const known = found.get(key)
    if (known) known.sizes.add(size)
    else found.set(key, { diagnostic, sizes: new Set([size]) })
  }
  // Where written rows begin that are wrong, by size: a piece that copies them is wrong with them.
  const wrongIn = new Map(facts.pieces.map(({ size }) => [size, new Set<number>()]))
  for (const piece of facts.pieces) {
    for (const diagnostic of rowFindings(piece, wrongIn.get(piece.size)!)) note(diagnostic, piece.size)
    for (const check of pieceChecks) for (const diagnostic of check(piece, facts.pieces)) note(diagnostic, piece.size)
  }
  dropFollowers(found, facts.pieces.flatMap(({ entries }) => entries))
  const across = patternChecks.flatMap((check) => check(facts))
  const told = [...found.values()].map(({ diagnostic, sizes: held }) =>
    held.size === Math.max(1, sizes.length) ? diagnostic : { ...diagnostic, sizes: [...held].sort((a, b) => a - b).map((size) => sizes[size] ?? '') })
  // Where a convention is of two minds, that is the slip; the total beside it is right either way.
  const split = new Set(across.filter(({ code }) => code === 'turning-chain-two-minds').map(({ primary }) => primary.span.start))
  const all = toldOnce([...told.filter(({ code, primary }) => code !== 'total-mismatch' || !split.has(primary.span.start)), ...across], facts)
  const doubt = all.some(({ code }) => severityOf(code) === 'error' || code === 'row-not-checked' || code === 'words-passed-over') ? undefined : rowInDoubt(facts)
  return doubt ? [...all, doubt] : all
}

/** A list of the wrong length in a total makes the total wrong too: that is the same slip. */
function dropFollowers(found: Map<string, { readonly diagnostic: Diagnostic }>, entries: readonly PieceFacts['entries'][number][]): void {
  const lists = [...found.values()].filter(({ diagnostic }) => diagnostic.code === 'size-list-length').map(({ diagnostic }) => diagnostic.primary.span)
  // A number that is out of order takes the rows that are referred to by number with it.
  const numbered = [...found.values()].some(({ diagnostic }) => diagnostic.code === 'row-number-out-of-order')
  for (const [key, { diagnostic }] of found) {
    if (numbered && diagnostic.code === 'row-reference-unknown') found.delete(key)
    const { start, end } = diagnostic.primary.span
    const entry = entries.find(({ span }) => span.start <= start && end <= span.end)
    if (/^(total|kind|change)-mismatch$|^places-left-over$|^row-overruns$/.test(diagnostic.code) && entry && lists.some((list) => list.start >= entry.span.start && list.end <= entry.span.end)) found.delete(key)
  }
}

/** A row that copies another is at fault where it stands itself; the words it copies are shown beside. */
function atTheRow({ source, row }: RowFacts, diagnostic: Diagnostic): Diagnostic {
  const { written } = row
  const { primary } = diagnostic
  if (primary.span.start >= written.span.start && primary.span.end <= written.span.end) return diagnostic
  return { ...diagnostic, primary: { span: withoutStop(source, written.text), text: primary.text }, secondary: [{ span: primary.span, text: 'these are the words it copies' }, ...diagnostic.secondary] }
}

function rowFindings(piece: PieceFacts, wrong: Set<number>): readonly Diagnostic[] {
  const { source, lexicon, rows } = piece
  return rows.flatMap((row, index) => {
    // A row that copies a wrong one is wrong with it, and so are the other rows of the same range: that is the same slip.
    if (row.written.copies !== undefined && wrong.has(row.written.copies)) wrong.add(row.written.span.start)
    if (wrong.has(row.written.span.start)) return []
    const before = rows[index - 1]
    const below = row.onRow === undefined ? before : (rows.slice(0, index).findLast(({ number }) => number === row.onRow) ?? before)
    const facts = { source, row, before, below, lexicon }
    const diagnostic = rowFinding(facts)
    if (!diagnostic) return []
    if (severityOf(diagnostic.code) === 'error' || diagnostic.code === 'row-not-checked') wrong.add(row.written.span.start)
    return [atTheRow(facts, diagnostic)]
  })
}

/** The first cause of a row; with words that cannot be read, what is found without them. */
function rowFinding(facts: RowFacts): Diagnostic | undefined {
  for (const check of rowChecks) {
    const diagnostic = check(facts)
    if (!diagnostic) continue
    const rest = facts.row.withoutUnread && rowFinding({ ...facts, row: facts.row.withoutUnread })
    return rest ? { ...diagnostic, note: `${diagnostic.note}; without these words ${rest.message}`, ...(rest.tally && { tally: rest.tally }) } : diagnostic
  }
  return undefined
}
