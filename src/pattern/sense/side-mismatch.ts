import type { PieceFacts } from '../../checks/facts.ts'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { ordinal } from '../../diagnostics/words.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import type { SenseFacts } from './sense-facts.ts'
import { turnAfter, turnBefore } from '../../fabric/turns.ts'
import { wordsOf } from './written-rows.ts'

/** Yarn that is joined anew, or a side that is said to face, begins the reckoning again. */
const anew = /\b(?:re-?join|attach|return|facing|fasten off|cut|break|join (?:yarn|[A-Z]\b|new|with [A-Z]\b))/i

/** A row that calls itself a right side row where turning makes it a wrong side row, or the reverse. Told once a piece. */
export function sideMismatch(facts: SenseFacts): readonly Diagnostic[] {
  return facts.facts.filter(({ size }) => size === 0).flatMap((piece, index) => {
    const remarks = facts.pieces[index]?.between ?? []
    let side: 'RS' | 'WS' | undefined
    let from: WorkedRow | undefined
    for (const [at, row] of piece.rows.entries()) {
      const own = piece.entries.find(({ span }) => span.start === row.written.span.start)
      const before = piece.rows[at - 1]
      const words = `${textOf(piece.source, row.written.text)} ${before ? textOf(piece.source, before.written.text) : ''}`
      const broken = anew.test(words) || remarks.some(({ afterRow }) => afterRow === at - 1) || before?.uncounted === true || before?.word !== row.word
      const turned = turnedBetween(piece, before, row)
      const follows = side === undefined || broken ? undefined : turned ? (side === 'RS' ? 'WS' : 'RS') : side
      const first = own && before?.written.span.start !== row.written.span.start
      const said = first ? own.label?.side : undefined
      if (said && follows && said !== follows && own?.label) return [told(own.label, said, { follows, from, turned })]
      if (said) from = row
      side = said ?? follows
    }
    return []
  })
}

function turnedBetween(piece: PieceFacts, before: WorkedRow | undefined, row: WorkedRow): boolean {
  const after = before && wordsOf(piece, before)
  const here = wordsOf(piece, row)
  return (here && turnBefore(here.read.items)) ?? (after && turnAfter(after.read.items)) ?? row.word === 'row'
}

function told(label: { readonly start: number; readonly end: number; readonly name: string }, said: 'RS' | 'WS', { follows, from, turned }: { readonly follows: string; readonly from: WorkedRow | undefined; readonly turned: boolean }): Diagnostic {
  const since = from ? { span: from.written.label, text: `${from.side ?? 'a side'} is said here` } : undefined
  return {
    code: 'side-mismatch',
    message: `${label.name.toLowerCase()} calls itself ${said}, but by the turns it is ${follows}`,
    primary: { span: { start: label.start, end: label.end }, text: `${turned ? 'turned' : 'not turned'} to here: ${follows}` },
    secondary: since ? [since] : [],
    ...(from?.number !== undefined && turned && { note: `counted from ${from.word} ${from.number}, every ${ordinal(2)} row is ${from.side}` }),
  }
}
