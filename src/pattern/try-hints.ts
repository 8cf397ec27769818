import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic, Hint } from '../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { placeOf, textOf, type Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import type { CheckedPattern } from './checked-pattern.ts'

/** Counts that do not come out, and so may be mended by a number. */
const mendable = new Set(['total-mismatch', 'kind-mismatch', 'change-mismatch', 'row-overruns', 'places-left-over', 'repeat-does-not-divide'])
/** A search for hints costs at most so many checks of the pattern. */
const mostTries = 18

interface Change {
  readonly span: Span
  readonly replacement: string
  readonly text: string
}

/**
 * Offers changes that were tried: one number of the row, or its total. A change is offered only when the pattern, worked again with
 * it, has lost the finding and gained none. No guess, no hint.
 */
export function withTriedHints(checked: CheckedPattern, check: (source: Source) => CheckedPattern): readonly Diagnostic[] {
  let left = mostTries
  return checked.diagnostics.map((diagnostic) => {
    if (!mendable.has(diagnostic.code) || diagnostic.hint || diagnostic.sizes) return diagnostic
    const row = rowAt(checked, diagnostic.primary.span)
    if (!row) return diagnostic
    for (const change of changesFor(checked, row, diagnostic)) {
      if (left === 0) break
      left -= 1
      if (mends(checked, change, diagnostic, check)) return { ...diagnostic, hint: hintOf(change) }
    }
    return diagnostic
  })
}

function hintOf({ span, replacement, text }: Change): Hint {
  return { text, edit: { span, replacement } }
}

function rowAt(checked: CheckedPattern, span: Span): WorkedRow | undefined {
  return checked.pieces.flatMap(({ rows }) => rows).find(({ written }) => written.span.start <= span.start && span.end <= written.span.end)
}

/** Changes in the order of their likelihood: what the row after bears witness to comes first. */
function changesFor(checked: CheckedPattern, row: WorkedRow, diagnostic: Diagnostic): readonly Change[] {
  const { source } = checked
  const total = totalChange(source, row, diagnostic)
  const numbers = numberChanges(source, row)
  // A row after it that comes out on what this one makes says that the row is right and its total wrong.
  return total && nextComesOut(checked, row) ? [total, ...numbers] : [...numbers, ...(total ? [total] : [])]
}

function nextComesOut(checked: CheckedPattern, row: WorkedRow): boolean {
  const rows = checked.pieces.find((piece) => piece.rows.includes(row))?.rows ?? []
  const next = rows[rows.indexOf(row) + 1]
  return next === undefined || next.verdict === 'adds-up' && next.offers === row.makes && !next.assumed.some((words) => words.includes('it says'))
}

function totalChange(source: Source, row: WorkedRow, { code }: Diagnostic): Change | undefined {
  const { says } = row
  if (!says || code !== 'total-mismatch') return undefined
  const kinds = Object.values(says.kinds)
  const said = says.count ?? (kinds.length === 1 ? kinds[0] : undefined)
  const at = said === undefined ? -1 : textOf(source, says.span).search(new RegExp(String.raw`(?<!\d)${said}(?!\d)`))
  if (said === undefined || at === -1) return undefined
  const span = { start: says.span.start + at, end: says.span.start + at + `${said}`.length }
  const whole = textOf(source, says.span).replace(`${said}`, `${row.makes}`)
  return { span, replacement: `${row.makes}`, text: `the rows after it come out with what it makes, so the total is the likelier slip: write \`${whole.trim()}\`` }
}

/** Every number of the row one more and one less, those that say how often first. */
function numberChanges(source: Source, row: WorkedRow): readonly Change[] {
  const text = textOf(source, row.written.text)
  const found = [...text.matchAll(/(?<![\d.-])(\d{1,4})(?![\d.½¼¾]|st\b|nd\b|rd\b|th\b|\s*[a-z]*tog)(\s*(?:more )?times|\s*x\b)?/gi)]
  const often = (match: RegExpExecArray): boolean => match[2] !== undefined || /[x×]\s*$/.test(text.slice(0, match.index))
  return [...found.filter(often), ...found.filter((match) => !often(match))].slice(0, 8).flatMap((match) => {
    const start = row.written.text.start + match.index
    const span = { start, end: start + match[1]!.length }
    return [Number(match[1]) + 1, Number(match[1]) - 1].filter((value) => value > 0).map((value) => {
      const shown = `${value}${match[2] ?? ''}`.replace(/\s+/g, ' ')
      const stands = `${match[1]}${match[2] ?? ''}`.replace(/\s+/g, ' ')
      const comes = row.says ? ', and makes what it says' : ''
      return { span, replacement: `${value}`, text: `with \`${shown}\` for \`${stands}\` the row comes out${comes}` }
    })
  })
}

/** Whether the change takes the finding away and brings no other. */
function mends(checked: CheckedPattern, change: Change, diagnostic: Diagnostic, check: (source: Source) => CheckedPattern): boolean {
  const { source } = checked
  const text = source.text.slice(0, change.span.start) + change.replacement + source.text.slice(change.span.end)
  const again = check({ path: source.path, text })
  const before = new Map<string, number>()
  for (const found of checked.diagnostics) count(before, key(source, found), 1)
  count(before, key(source, diagnostic), -1)
  for (const found of again.diagnostics) count(before, key(again.source, found), -1)
  const doubted = (all: CheckedPattern): number => all.pieces.reduce((sum, { rows }) => sum + rows.filter(({ verdict }) => verdict !== 'adds-up').length, 0)
  return [...before.values()].every((left) => left >= 0) && doubted(again) < doubted(checked)
}

function count(counts: Map<string, number>, name: string, by: number): void {
  counts.set(name, (counts.get(name) ?? 0) + by)
}

/** A finding by its code and line: a change moves columns, never lines. */
function key(source: Source, { code, primary }: Diagnostic): string {
  return `${severityOf(code)} ${code} ${placeOf(source, primary.span.start).line}`
}
