import type { Pattern } from '../pattern/pattern.ts'
import type { GatheredLine } from './gather-lines.ts'
import { typeset } from './typeset.ts'

/** A row that a version of the pattern corrected. */
interface Correction {
  /** Small letters; left out where the change names no piece. */
  readonly piece?: string
  readonly first: number
  readonly last: number
  readonly says: string
}

/**
 * What the newest version says of each row that it corrected: `Front, Row 12: was “next 5 sts”.` A change names its row, and the piece where
 * the pattern has several; one that names no row, or a row that more than one piece has, marks none.
 */
export function correctionsOf({ changes, version, pieces }: Pattern): (piece: string, line: GatheredLine) => string | undefined {
  const newest = changes.filter((change) => change.version === version)
  // The first version corrects nothing.
  const found = changes.length < 2 ? [] : newest.flatMap(({ what }) => sentences(what).flatMap((sentence) => correctionIn(sentence, pieces.map(({ name }) => name))))
  return (piece, line) => {
    const numbers = line.rows.flat().flatMap(({ number }) => number ?? [])
    const own = found.find((one) => (one.piece === undefined ? pieces.length === 1 : one.piece === piece.toLowerCase()) && numbers.some((number) => number >= one.first && number <= one.last))
    return own && typeset(`Corrected in version ${version}: ${own.says}`)
  }
}

const sentences = (what: string): readonly string[] => what.split(/(?<=[.;])\s+(?=\p{Lu})/u)

function correctionIn(sentence: string, names: readonly string[]): readonly Correction[] {
  const [row, first, last] = /\b(?:rows?|rnds?|rounds?)\s+(\d+)(?:\s*(?:-|–|to)\s*(\d+))?/i.exec(sentence) ?? []
  if (row === undefined || first === undefined) return []
  const piece = names.map((name) => name.toLowerCase()).filter((name) => sentence.toLowerCase().includes(name.replace(/^the /, ''))).toSorted((a, b) => b.length - a.length)[0]
  const after = sentence.slice(sentence.indexOf(row) + row.length).replace(/^[\s:,–—-]+/, '').replace(/\.$/, '')
  return [{ ...(piece === undefined ? {} : { piece }), first: Number(first), last: Number(last ?? first), says: `${after === '' ? 'this row' : after}.` }]
}
