import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import { inSizeAt, placeOfKey, type SenseFacts } from './sense-facts.ts'

/** Words that put a yarn away instead of taking it up. */
const putsAway = /^(?:fasten|cut|break|drop|carry|leave|weave)/i

/** The materials say which rounds a yarn is for, and the rows use it in others. `for: "ball, Rounds 1-10 and 16-24"`. Told once. */
export function yarnRowsMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const { materials, source } = facts.pattern
  return (materials?.yarns ?? []).flatMap(({ letter, for: use = '' }, index): readonly Diagnostic[] => {
    const told = numbersIn(use)
    if (letter === undefined || told.size === 0) return []
    const pieces = inSizeAt(facts).filter(({ rows }) => rows.some(({ yarns }) => yarns.length > 0))
    const named = pieces.filter(({ piece }) => use.toLowerCase().includes(piece.name.toLowerCase().replace(/^the /, '')))
    const piece = named.length === 1 ? named[0] : pieces.length === 1 ? pieces[0] : undefined
    if (!piece || piece.rows.some(({ yarns, uncounted }) => uncounted || yarns.filter(({ span }) => !putsAway.test(textOf(source, span).trim())).length > 1)) return []
    const used = rowsWith(letter, piece.rows, (row) => row.yarns.find(({ span }) => !putsAway.test(textOf(source, span).trim()))?.yarn)
    const missing = [...used].filter((number) => !told.has(number))
    const extra = [...told].filter((number) => !used.has(number))
    if (used.size === 0 || missing.length + extra.length === 0) return []
    const word = piece.rows.find(({ number }) => number !== undefined)?.word ?? 'row'
    const first = piece.rows.find(({ number }) => number === (missing[0] ?? extra[0]))
    return [{
      code: 'yarn-rows-mismatch',
      message: missing.length > 0 ? `the materials give other ${word}s for yarn ${letter}: ${word} ${missing[0]} is worked with it` : `the materials give ${word} ${extra[0]} for yarn ${letter}, but it is worked with another`,
      primary: { span: placeOfKey(facts, `materials.yarns.${index}.for`), text: `${word}s of ${letter}` },
      secondary: first ? [{ span: first.written.label, text: missing.length > 0 ? `with ${letter}` : `not with ${letter}` }] : [],
    }]
  }).slice(0, 1)
}

function numbersIn(use: string): ReadonlySet<number> {
  const list = /\b(?:rows?|rounds?|rnds?)\s+(\d[\d\s,–-]*(?:(?:and|to|&)\s*\d[\d\s,–-]*)*)/i.exec(use)?.[1]
  const numbers = new Set<number>()
  for (const [, from = '', to] of (list ?? '').matchAll(/(\d+)(?:\s*(?:-|–|to)\s*(\d+))?/g)) {
    for (let number = Number(from); number <= Math.min(Number(to ?? from), Number(from) + 2_000); number += 1) numbers.add(number)
  }
  return numbers
}

function rowsWith(letter: string, rows: readonly WorkedRow[], takes: (row: WorkedRow) => string | undefined): ReadonlySet<number> {
  const used = new Set<number>()
  let inHand: string | undefined
  for (const row of rows) {
    inHand = takes(row) ?? inHand
    if (inHand === letter && row.number !== undefined) used.add(row.number)
  }
  return used
}
