import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOf, type Source } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { CheckedPattern } from '../checked-pattern.ts'

/** A replacement in the file. */
export interface Edit {
  readonly span: Span
  readonly replacement: string
}

/** The file with edits made. They do not overlap. */
export function edited({ path, text }: Source, edits: readonly Edit[]): Source {
  let made = ''
  let at = 0
  for (const { span, replacement } of edits.toSorted((a, b) => a.span.start - b.span.start)) {
    made += text.slice(at, span.start) + replacement
    at = span.end
  }
  return { path, text: made + text.slice(at) }
}

/** What came of edits: whether these findings are gone, and which are new. */
export interface Gain {
  readonly gone: boolean
  readonly gained: readonly Diagnostic[]
}

/** Compares a pattern that was checked again after edits with what it was. */
export function compare(before: CheckedPattern, edits: readonly Edit[], findings: readonly Diagnostic[], after: CheckedPattern): Gain {
  const left = new Map<string, number>()
  const note = (key: string, by: number): number => {
    const count = (left.get(key) ?? 0) + by
    left.set(key, count)
    return count
  }
  for (const found of before.diagnostics) note(keyOf(found, found.primary.span.start, before.source), 1)
  const wanted = findings.map((found) => keyOf(found, found.primary.span.start, before.source))
  for (const key of wanted) note(key, -1)
  const gained: Diagnostic[] = []
  let gone = true
  for (const found of after.diagnostics) {
    const key = keyOf(found, offsetBefore(edits, found.primary.span.start), before.source)
    if (note(key, -1) >= 0) continue
    if (wanted.includes(key)) gone = false
    else gained.push(found)
  }
  return { gone, gained }
}

/** Whether edits take these findings away and bring no other, and leave no more rows in doubt. */
export function mends(before: CheckedPattern, edits: readonly Edit[], findings: readonly Diagnostic[], after: CheckedPattern): boolean {
  const { gone, gained } = compare(before, edits, findings, after)
  return gone && gained.length === 0 && doubtfulRows(after) <= doubtfulRows(before)
}

/** A finding by its code and its line in the file as it was: a change moves what stands behind it. */
function keyOf({ code }: Diagnostic, offset: number, source: Source): string {
  return `${code} ${placeOf(source, offset).line}`
}

/** Where an offset of the edited file stood before. */
function offsetBefore(edits: readonly Edit[], offset: number): number {
  let moved = 0
  for (const { span, replacement } of edits.toSorted((a, b) => a.span.start - b.span.start)) {
    const start = span.start + moved
    if (offset < start) break
    if (offset < start + replacement.length) return span.start
    moved += replacement.length - (span.end - span.start)
  }
  return offset - moved
}

function doubtfulRows({ pieces }: CheckedPattern): number {
  return pieces.reduce((sum, { rows }) => sum + rows.filter(({ verdict }) => verdict !== 'adds-up').length, 0)
}
