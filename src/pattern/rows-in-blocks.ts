import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { entryAt, leaveOut, type Entry, type KeysEntry, type TextEntry } from './entry.ts'
import { diagnosticOf, type FoundRows } from './front-matter.ts'
import { blockNote, strayTrouble } from './rows-slips.ts'
import { isRowLabel } from './yaml-lines.ts'

/**
 * Sees to it that every piece's `rows` are text whose span is the rows as they stand in the file: from the start of the first
 * line that has words to the end of the last. Only a `|` block leaves a text as it is written; other forms are said to be
 * wrong, and read all the same where the file holds their lines as lines.
 */
export function rowsInBlocks(root: KeysEntry, source: Source, found: FoundRows): readonly Diagnostic[] {
  const pieces = entryAt(root, ['pieces'])
  if (pieces?.kind !== 'list') return []
  return pieces.items.flatMap((piece) => (piece.kind === 'keys' ? rowsOfPiece(piece, source, found) : []))
}

function rowsOfPiece(piece: KeysEntry, source: Source, found: FoundRows): readonly Diagnostic[] {
  const pair = piece.pairs.get('rows')
  if (!pair) return []
  const { key, value } = pair
  const read = found.all.get(key.start)
  const isBlock = value.kind === 'text' && value.style === 'literal'
  const span = read ?? (isBlock || value.kind !== 'empty' ? linesOf(source.text, key, value) : undefined)
  const strays = strayRowsOf(piece)
  const diagnostics = [...(read || isBlock || value.kind === 'empty' ? [] : [notInBlock(source.text, key, value)]), ...strays.diagnostics]
  const all = span && withStrays(source.text, span, [...found.stray, ...strays.spans])
  if (all && all.end > all.start) piece.pairs.set('rows', { key, value: rowsAt(all, source) })
  else if (value.kind !== 'empty' && !isBlock) leaveOut(piece, 'rows', value)
  return diagnostics
}

function rowsAt(span: Span, { text }: Source): TextEntry {
  return { kind: 'text', span, value: text.slice(span.start, span.end), style: 'literal' }
}

/** The lines of a value that begins below its key; undefined when it begins beside it, or when its lines have dashes. */
function linesOf(text: string, key: Span, value: Entry): Span | undefined {
  if (value.kind === 'list' || value.kind === 'empty') return undefined
  const isBlock = value.kind === 'text' && (value.style === 'literal' || value.style === 'folded')
  if (value.kind === 'text' && value.style === 'quoted') return undefined
  const lineEnd = text.indexOf('\n', key.end)
  if (lineEnd === -1 || (!isBlock && lineEnd > value.span.start)) return isBlock ? { start: value.span.end, end: value.span.end } : undefined
  return wordsOf(text, { start: lineEnd + 1, end: Math.max(lineEnd + 1, value.span.end) })
}

/** From the start of the first line that has words to the end of the last such line, without its line break. */
function wordsOf(text: string, { start, end }: Span): Span {
  const lines = text.slice(start, end)
  const first = lines.search(/\S/)
  if (first === -1) return { start, end: start }
  return { start: start + lines.lastIndexOf('\n', first) + 1, end: start + lines.trimEnd().length }
}

/** Rows that became keys of their piece because they stand no further in than `rows` itself. */
function strayRowsOf(piece: KeysEntry): { readonly spans: readonly Span[]; readonly diagnostics: readonly Diagnostic[] } {
  const strays = [...piece.pairs].filter(([name]) => isRowLabel(name))
  const [first] = strays
  if (!first) return { spans: [], diagnostics: [] }
  for (const [name] of strays) piece.pairs.delete(name)
  const spans = strays.map(([, { key, value }]) => ({ start: key.start, end: Math.max(key.end, value.span.end) }))
  return { spans, diagnostics: [diagnosticOf('rows-not-in-block', strayTrouble(first[0], first[1].key))] }
}

/** The rows with those that follow them outside the block: nothing but spaces stands between. */
function withStrays(text: string, rows: Span, strays: readonly Span[]): Span {
  let { end } = rows
  for (const stray of strays) if (stray.start >= end && text.slice(end, stray.start).trim() === '') end = stray.end
  return { start: rows.start, end }
}

function notInBlock(text: string, key: Span, value: Entry): Diagnostic {
  const { start, end } = value.span
  const folded = value.kind === 'text' && value.style === 'folded'
  // A value of many lines is shown by its key.
  const beside = value.kind === 'text' && !text.slice(key.end, end).includes('\n')
  return diagnosticOf('rows-not-in-block', {
    message: folded ? '`rows` begins a `>` block, which joins its lines, but must begin a `|` block' : '`rows` does not begin a `|` block',
    span: folded ? { start, end: start + 1 } : beside ? value.span : key,
    label: 'no `|` block',
    note: blockNote,
  })
}
