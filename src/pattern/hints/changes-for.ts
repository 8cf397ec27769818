import type { DiagnosticCode } from '../../diagnostics/codes.ts'
import { textOf } from '../../text/source.ts'
import { chainChanges } from './chain-changes.ts'
import { rowsOf, type Change, type Slip } from './change.ts'
import { conventionChanges, unsaidChainChanges } from './convention-changes.ts'
import { endChanges } from './end-changes.ts'
import { foundationChanges } from './foundation-changes.ts'
import { labelChanges } from './label-changes.ts'
import { kindsChanges } from './kinds-changes.ts'
import { moreChanges } from './more-changes.ts'
import { howManyChanges, numberChanges, timesChanges } from './number-changes.ts'
import { placeChanges } from './place-changes.ts'
import { rangeLengthChanges, totalChanges } from './total-changes.ts'

type Changes = (slip: Slip) => readonly Change[]

const ofWords: readonly Changes[] = [howManyChanges, moreChanges, timesChanges, chainChanges, numberChanges, foundationChanges, conventionChanges, endChanges, placeChanges]
const ofEnds: readonly Changes[] = [moreChanges, timesChanges, numberChanges, chainChanges, endChanges, foundationChanges, conventionChanges, placeChanges]

/** What is tried for each finding, likeliest slip first. A new kind of change is a file of its own and a place in these lists. */
const table: Partial<Record<DiagnosticCode, readonly Changes[]>> = {
  'total-mismatch': ofWords,
  'kind-mismatch': ofWords,
  'change-mismatch': ofWords,
  'row-overruns': ofEnds,
  'places-left-over': [moreChanges, timesChanges, endChanges, numberChanges, chainChanges, foundationChanges, conventionChanges, placeChanges],
  'repeat-does-not-divide': [numberChanges, endChanges, foundationChanges, chainChanges, conventionChanges, placeChanges],
  'row-ends-passed': [numberChanges, timesChanges],
  'row-number-out-of-order': [labelChanges],
  'range-length-mismatch': [rangeLengthChanges],
  'place-missing': [numberChanges, placeChanges],
  'turning-chain-unsaid': [unsaid],
}

/** The changes to try for a finding, none twice. Empty for a finding that no small change mends. */
export function changesFor(slip: Slip): readonly Change[] {
  const kinds = table[slip.diagnostic.code]
  if (!kinds) return []
  const total = [...totalChanges(slip), ...kindsChanges(slip)]
  const likely = ({ fits }: Change): number => (fits === undefined ? 1 : fits ? 0 : 2)
  const others = kinds.flatMap((changes) => changes(slip)).toSorted((a, b) => likely(a) - likely(b))
  // Where the row's words are likelier wrong, the total is tried all the same, before the less likely of them.
  const before = totalIsLikelier(slip) ? 0 : 5
  const all = [...others.slice(0, before), ...total, ...others.slice(before)]
  const seen = new Set<string>()
  return all.filter(({ span, replacement }) => {
    const key = `${span.start} ${span.end} ${replacement}`
    const fresh = !seen.has(key) && textOf(slip.source, span) !== replacement
    seen.add(key)
    return fresh
  })
}

/**
 * Whether the total is likelier wrong than the row's words: the next row comes out on what the row makes, or, where there is none, what
 * it makes goes on as the rows before did and what it says does not.
 */
export function totalIsLikelier(slip: Slip): boolean {
  const { row } = slip
  const rows = rowsOf(slip)
  const at = rows.indexOf(row)
  const next = rows[at + 1]
  if (next) return next.verdict === 'adds-up' && next.offers === row.makes && !next.assumed.some((words) => words.includes('it says'))
  const [last, older] = [rows[at - 1], rows[at - 2]].map((other) => (other?.number === undefined ? undefined : other.makes))
  if (last === undefined) return true
  const goesOn = older === undefined ? last : last + (last - older)
  return row.makes === goesOn || row.says?.count !== goesOn && row.says?.count !== last
}

function unsaid({ checked: { pattern }, source, diagnostic }: Slip): readonly Change[] {
  const chains = /\d/.exec(textOf(source, diagnostic.primary.span))?.[0]
  return pattern ? unsaidChainChanges(pattern, Number(chains ?? 0)) : []
}
