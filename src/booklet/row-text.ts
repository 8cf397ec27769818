import type { WorkedRow } from '../fabric/worked-row.ts'
import { textOf, type Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import type { Run } from './booklet.ts'
import { capital, sentence } from './figures.ts'
import { typeset } from './typeset.ts'

/** A repeat of a row's own text that stands in no other repeat. */
export interface OuterRepeat {
  /** From the star to the semicolon, or from bracket to bracket. */
  readonly span: Span
  /** How often each of the given rows works it. */
  readonly times: readonly number[]
}

/** The repeats that are underlined, in reading order. A repeat inside another is part of its line and gets none of its own. */
export function outerRepeats(source: Source, text: Span, rows: readonly WorkedRow[]): readonly OuterRepeat[] {
  const found = new Map<string, { readonly span: Span; readonly times: number[] }>()
  for (const { span, times } of rows.flatMap((row) => row.repeats)) {
    if (span.start < text.start || span.end > text.end) continue
    const key = `${span.start}-${span.end}`
    const known = found.get(key)
    if (known) known.times.push(times)
    else found.set(key, { span, times: [times] })
  }
  const own = [...found.values()]
  return own.filter(({ span }) => !own.some((other) => holds(other.span, span)))
    .sort((a, b) => a.span.start - b.span.start)
    .map(({ span, times }) => ({ span: underlined(source, text, span), times }))
}

function holds(larger: Span, smaller: Span): boolean {
  return larger.start <= smaller.start && larger.end >= smaller.end && (larger.start < smaller.start || larger.end > smaller.end)
}

/** With the sign that closes the repeat: the semicolon, the second star or the bracket. */
function underlined(source: Source, text: Span, repeat: Span): Span {
  const opens = source.text[repeat.start] ?? ''
  const closes = opens === '(' || opens === '[' || opens === '{' ? ')]}' : '*;†'
  const inside = textOf(source, repeat).trimEnd()
  if (closes.includes(inside.at(-1) ?? '') && inside.length > 1) return { start: repeat.start, end: repeat.start + inside.length }
  const [after = ''] = /^\s*(?:\*+|[;†)\]}])/.exec(source.text.slice(repeat.end, text.end)) ?? []
  const end = after !== '' && closes.includes(after.at(-1) ?? '') ? repeat.end + after.length : repeat.start + inside.length
  return { start: repeat.start, end }
}

/** A row's text as it is printed: one line, a capital, the signs of print, a full stop, the repeats marked. */
export function rowRuns(source: Source, text: Span, repeats: readonly Span[]): readonly Run[] {
  const { folded, from } = fold(source, text)
  const set = typeset(capital(folded))
  return stopped(joined(set.split('').map((character, index) => {
    const at = from[index] ?? text.end
    return { text: character, repeat: repeats.some((span) => at >= span.start && at < span.end) }
  })))
}

/** Neighbours that are both repeated, or both not, as one run. */
export function joined(runs: readonly Run[]): readonly Run[] {
  const out: { text: string; readonly repeat: boolean }[] = []
  for (const { text, repeat } of runs) {
    const open = out.at(-1)
    if (open && open.repeat === repeat) open.text += text
    else out.push({ text, repeat })
  }
  return out
}

/** Text that is no row, put the same way. */
export function plainRuns(text: string): readonly Run[] {
  return [{ text: typeset(sentence(text.replace(/\s+/g, ' '))), repeat: false }]
}

/** White space folded to one space, with the place in the source of every character that is left. */
function fold(source: Source, text: Span): { readonly folded: string; readonly from: readonly number[] } {
  let folded = ''
  const from: number[] = []
  for (let at = text.start; at < text.end; at += 1) {
    const character = source.text[at] ?? ''
    const space = /\s/.test(character)
    if (space && (folded === '' || folded.endsWith(' '))) continue
    folded += space ? ' ' : character
    from.push(at)
  }
  return { folded: folded.trimEnd(), from }
}

function stopped(runs: readonly Run[]): readonly Run[] {
  const last = runs.at(-1)
  if (!last || /[.!?…]$/.test(last.text)) return runs
  const trimmed = last.text.replace(/[\s,;:–—-]+$/, '')
  if (last.repeat) return [...runs, { text: '.', repeat: false }]
  return [...runs.slice(0, -1), { text: `${trimmed}.`, repeat: false }]
}
