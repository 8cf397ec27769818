import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import { takeRows } from './row-numbers.ts'
import type { Turn } from './syntax.ts'

/**
 * Which of several rows are turned, in a clause or a bracket of its own:
 *
 *   turn after every row except the last   omit the turn on Row 8   at end of Row 8, do not turn   but finish Row 8 without turning   turn all rows but the last   after Row 8 leave the work unturned
 */
export function turnOfRows(reader: Reader): readonly Turn[] | undefined {
  const { at } = reader
  const bracket = reader.take('(')
  reader.take('but|and|though')
  const found = turnedAfter(reader) ?? unturnedAfter(reader) ?? excepted(reader)
  if (found && (bracket ? reader.take(')') : clauseEnds(reader))) return found
  reader.at = at
  return undefined
}

const clauseEnds = (reader: Reader): boolean => placeEnds(reader, '–', '—', '-', 'but', 'ready', 'so', 'as')

/** `turn after each row`, `turn at end of Rows 2-7 only`, `turn all rows but the last`, and what is said of the one that is not. */
function turnedAfter(reader: Reader): readonly Turn[] | undefined {
  const { start } = reader
  if (!reader.take('turn|turning', 'the?', 'work|piece?')) return undefined
  takeAfter(reader)
  const turns = { node: 'turn', turns: true, start } as const
  if (reader.take('each|every|all', 'of?', 'the|these?', 'row|rows')) {
    const { at: end } = reader
    const row = takeExcept(reader) ? takeRow(reader) : undefined
    if (row === undefined) reader.at = end
    else takeWhenNot(reader)
    return [{ ...turns, end: reader.end }, ...(row === undefined ? [] : [unturned(row, start, reader)])]
  }
  // The row behind those that are turned is not.
  const rows = takeRows(reader)
  if (!rows || rows.length < 2) return undefined
  reader.take('only')
  return [{ ...turns, end: reader.end }, unturned(rows.at(-1)! + 1, start, reader)]
}

/** `do not turn after Row 8`, `on Row 8, finish without turning`, `ending Row 8 without the turn`, `omitting final turn`. */
function unturnedAfter(reader: Reader): readonly Turn[] | undefined {
  const { start } = reader
  reader.take('finish|finishing|end|ending|stop|stopping')
  takeAfter(reader)
  const before = takeRow(reader)
  reader.take(',')
  reader.take('finish|end|stop')
  const not = takeNot(reader, before !== undefined)
  if (!not) return undefined
  const { at: behind } = reader
  const after = takeAfter(reader) || reader.take('the') ? takeRow(reader) : undefined
  if (after === undefined) reader.at = behind
  const row = before ?? after ?? (not === 'last' ? not : undefined)
  return [row === undefined ? { node: 'turn', turns: false, start, end: reader.end } : unturned(row, start, reader)]
}

/** `except after Row 8, when you do not turn`, `not after the last row`, `unless you have just worked Row 8`: behind a turn. */
function excepted(reader: Reader): readonly Turn[] | undefined {
  const { start } = reader
  if (!takeExcept(reader) && !reader.take('not|unless', 'you?', 'have?', 'just?', 'worked|completed|finished?')) return undefined
  takeAfter(reader)
  const row = takeRow(reader)
  if (row === undefined) return undefined
  takeWhenNot(reader)
  return [unturned(row, start, reader)]
}

const unturned = (afterRow: NonNullable<Turn['afterRow']>, start: number, reader: Reader): Turn => ({ node: 'turn', turns: false, afterRow, start, end: reader.end })

/** `after`, `at the end of`, `on` */
function takeAfter(reader: Reader): boolean {
  return reader.take('at|after|on|by|in', 'the?', 'end', 'of') || reader.take('at|after|on|in', 'working|completing|finishing?')
}

function takeExcept(reader: Reader): boolean {
  const { at } = reader
  reader.take(',|–|—|-')
  if (!reader.take('except|excepting|bar', 'for|at|after|on?', 'the?', 'end?', 'of?') && !reader.take('apart', 'from') && !reader.take('other', 'than') && !reader.take('but', 'not?', 'at|after|on?', 'the?', 'end?', 'of?')) {
    reader.at = at
    return false
  }
  if (reader.word(-1) === 'the') reader.at -= 1
  return true
}

/** `Row 8`, `the 8th`, `the last one`, `last of these rows`, `the last time` */
function takeRow(reader: Reader): Turn['afterRow'] {
  const { at } = reader
  const row = takeRowNamed(reader, 'the?')
  if (row !== undefined) return row
  reader.take('the')
  const nth = reader.peek()
  if (nth?.kind === 'ordinal') {
    reader.at += 1
    return nth.value
  }
  if (reader.take('last|final')) {
    reader.take('of', 'these|the|them', 'rows?') || reader.take('row|one|time|repeat|repetition')
    return 'last'
  }
  if (reader.take('this|that', 'row')) return 'last'
  reader.at = at
  return undefined
}

/** `do not turn`, `omit the turn`, `without turning`; of a row that was named also `keep the same side facing`. `last` for `the final turn`. */
function takeNot(reader: Reader, named: boolean): 'turn' | 'last' | undefined {
  const { at } = reader
  if (reader.take('do', 'not|n’t', 'turn') || reader.take('don’t|don\'t', 'turn') || reader.take('without', 'turning') || reader.take('without', 'the|a', 'turn')) {
    reader.take('the?', 'work|piece')
    return 'turn'
  }
  if (reader.take('omit|omitting|skip|skipping') || reader.take('leave|leaving', 'off|out')) {
    const last = reader.take('the?', 'final|last')
    if (!last) reader.take('the|this|that')
    if (reader.take('turn|turning')) return last ? 'last' : 'turn'
  }
  reader.at = at
  if (reader.take('leave|leaving|keep|keeping', 'the?', 'work|piece?', 'unturned') || named && reader.take('keep|keeping', 'the', 'same|right|wrong', 'side', 'facing', 'you?')) return 'turn'
  reader.at = at
  return undefined
}

/** `, when you do not turn`, `, where you keep the same side facing`: said again of the row that was named. */
function takeWhenNot(reader: Reader): void {
  const { at } = reader
  reader.take(',?', 'when|where', 'you?')
  if (!takeNot(reader, true)) reader.at = at
}
