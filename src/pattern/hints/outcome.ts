import { rowName } from '../../checks/row-words.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import { quoted, type Change, type Slip } from './change.ts'

/** What came of a change: the words of the hint, and whether another row bears witness to it. */
export interface Outcome {
  readonly text: string
  readonly witnessed: boolean
  /** The row leaves places unworked, which is seldom what was meant. */
  readonly leaves?: boolean
}

/**
 * Words for a change that mends: the change itself, what the row then comes to, and the next row that states a count and works over
 * just this number. `again` is the pattern as it was worked with the change.
 */
export function outcomeOf(slip: Slip, change: Change, again: CheckedPattern): Outcome {
  if (slip.diagnostic.code === 'row-number-out-of-order') return { text: `${change.words} the numbers run on`, witnessed: false }
  const rows = rowsAgain(slip, again)
  const row = rows.find((worked) => worked.label === slip.row.label && (worked.written.first ?? -1) === (slip.row.written.first ?? -1))
  if (!row) return { text: `${change.words} the pattern comes out`, witnessed: false }
  if (slip.diagnostic.code === 'range-length-mismatch') return { text: `${change.words} the range is as long as it says`, witnessed: false }
  const witness = witnessOf(rows, row)
  const seen = witness && `${rowName(witness)} works over ${witness.worksOver}${change.ofTotal ? ' as well' : ' too'}`
  if (change.ofTotal) {
    return { text: seen ? `${seen}, so the total is the likelier slip: ${change.words}` : `if the row is right as it stands, the total is the slip: ${change.words}`, witnessed: seen !== undefined }
  }
  return { text: `${change.words} ${whatItComesTo(slip, row, change.withTotal === true ? undefined : again)}${seen ? `, and ${seen}` : ''}`, witnessed: seen !== undefined, leaves: row.leaves > 0 }
}

function rowsAgain(slip: Slip, again: CheckedPattern): readonly WorkedRow[] {
  const size = slip.checked.pieces.find((worked) => worked.piece === slip.piece && worked.rows.includes(slip.row))?.size
  return again.pieces.find((worked) => worked.piece.name === slip.piece.name && worked.size === size)?.rows ?? []
}

/** The first row after it that states a count of its own, comes out, and works over all that this one makes. */
function witnessOf(rows: readonly WorkedRow[], row: WorkedRow): WorkedRow | undefined {
  const next = rows.slice(rows.indexOf(row) + 1).find(({ written }) => written.span.start !== row.written.span.start)
  const stands = next?.says && next.verdict === 'adds-up' && next.offers === row.makes && next.worksOver === row.makes
  return stands ? next : undefined
}

function whatItComesTo({ diagnostic: { code, sizes } }: Slip, row: WorkedRow, again: CheckedPattern | undefined): string {
  const name = sizes && sizes.length > 0 ? `${rowName(row)} in ${sizes.join(', ')}` : rowName(row)
  const made = row.says && again ? `makes the ${saidWords(row, again)} it says` : `makes ${row.makes}`
  return /mismatch$/.test(code) ? `${name} ${made}` : `${name} works over ${row.leaves > 0 ? '' : 'all '}${row.worksOver} and ${made}`
}

/** A total as it is written, without its brackets; a list of sizes has only the number of the size that is meant. */
function saidWords(row: WorkedRow, { source }: CheckedPattern): string {
  const { says } = row
  if (!says) return ''
  const words = textOf(source, says.span).replace(/^[\s([{=—–-]+|[\s)\]}.]+$/g, '')
  const sizeList = /\d\s*[([]\s*\d/.test(words)
  return sizeList || words.length > 30 ? `${says.count ?? row.makes}` : quoted(words).slice(1, -1)
}
