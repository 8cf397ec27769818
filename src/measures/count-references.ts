import type { WorkedRow } from '../fabric/worked-row.ts'
import type { Span } from '../text/span.ts'

/** A piece in one size, as far as a reference to a count needs it. */
export interface CountedPiece {
  readonly name: string
  readonly rows: readonly WorkedRow[]
}

/** What a reference comes to: a count for each size, or why there is none. */
export type ReferredCount =
  | { readonly counts: readonly number[] }
  | { readonly reason: string }

/** A `:count[Front row 4]` in the prose, and what it comes to. */
export interface CountReference {
  readonly span: Span
  /** What stands between the brackets. */
  readonly reference: string
  readonly is: ReferredCount
}

/** Every `:count[…]` in a text, from an offset on. `pieces` holds each piece once a size, smallest size first. */
export function countReferences(text: string, from: number, pieces: readonly CountedPiece[]): readonly CountReference[] {
  return [...text.slice(from).matchAll(/:count\[([^\]\n]*)\]/g)].map((found) => ({
    span: { start: from + found.index, end: from + found.index + found[0].length },
    reference: found[1] ?? '',
    is: referredCount(found[1] ?? '', pieces),
  }))
}

/**
 * What `Front row 4` counts: the stitches that the row ends with, in every size. `Front last row` is the last one, `Front rows`
 * the number of rows. The name may be left out when the pattern has one piece. Row, round and rnd are one word here.
 */
export function referredCount(reference: string, pieces: readonly CountedPiece[]): ReferredCount {
  const [, before = '', what = '', number] =
    /^(.*?)\s*\b(last (?:row|round|rnd)|rows|rounds|rnds|(?:row|round|rnd)\s+(\d+))$/i.exec(reference.trim()) ?? []
  if (what === '') return { reason: `\`${reference.trim()}\` names no row: it takes a form such as \`Front row 4\`, \`Front last row\` or \`Front rows\`` }

  const named = pieces.filter(({ name }) => before === '' || sameName(name, before))
  const names = [...new Set(named.map(({ name }) => name))]
  if (names.length === 0) return { reason: `there is no piece named ${before}` }
  if (names.length > 1) return { reason: `it names no piece, and the pattern has ${names.length}` }

  const counts = named.map(({ rows }) => countIn(rows, what, number === undefined ? undefined : Number(number)))
  const known = counts.filter((count) => count !== undefined)
  return known.length === counts.length ? { counts: known } : { reason: `${names[0]} has no ${what.toLowerCase()}` }
}

function countIn(rows: readonly WorkedRow[], what: string, number: number | undefined): number | undefined {
  if (number !== undefined) return rows.find((row) => row.number === number)?.makes
  if (/^last/i.test(what)) return rows.at(-1)?.makes
  return rows.filter((row) => row.number !== undefined).length
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase().replace(/^the /, '') === b.toLowerCase().replace(/^the /, '')
}
