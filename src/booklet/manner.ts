import { textOf, type Source } from '../text/source.ts'
import type { GatheredLine } from './gather-lines.ts'

/** How a piece is worked, as its head says it. */
export type Manner = 'in rows' | 'in joined rounds' | 'in joined rounds, turned' | 'in a spiral'

/**
 * Rows or rounds by the first line; of rounds, those that no line and no note joins run on in a spiral.
 * `notes` is the prose of the pattern, where a join that every round has may be said once for all.
 */
export function mannerOf(lines: readonly GatheredLine[], source: Source, notes: string): Manner {
  const rows = lines.flatMap(({ rows }) => rows[0] ?? [])
  const first = rows.find((row) => row.number !== undefined) ?? rows[0]
  if (first?.word !== 'round') return 'in rows'
  const joined = joinsEveryRound(notes) || lines.some(({ written }) => joins(textOf(source, written.text)))
  if (!joined) return 'in a spiral'
  return rows.some((row) => row.side === 'WS') ? 'in joined rounds, turned' : 'in joined rounds'
}

const negative = /\b(?:do not|don't|don’t|never|without|not) join\w*/gi

/** Whether a round is closed here: `join with sl st`, `ss in first dc`. `Join B` brings in a yarn and closes nothing. */
function joins(text: string): boolean {
  const said = text.replace(negative, '')
  return /\b[Jj]oin(?!ed|ing)(?! (?:yarn|new|colour|color)\b)(?! [A-Z]\b)/.test(said)
    || /\b(?:[Ss]l st|[Ss]s) (?:in|into|to) (?:the )?(?:first|top|beg)\b/.test(said)
}

function joinsEveryRound(notes: string): boolean {
  const said = notes.replace(negative, '')
  return /\bjoin[^.]*\b(?:each|every|all) (?:rnd|round)|\b(?:each|every|all) (?:rnd|round)s?\b[^.]*\bjoin/i.test(said)
}
