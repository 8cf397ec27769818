import { lexicon } from '../../src/fabric/lexicon.ts'
import type { Stretch } from '../../src/fabric/laid-row.ts'
import { readRows } from '../../src/fabric/real-rows.ts'
import type { Conventions } from '../../src/fabric/conventions.ts'
import type { PieceRun } from '../../src/fabric/piece-run.ts'
import { workPiece } from '../../src/fabric/work-piece.ts'

/** Both ways along a piece's outline, its places by name. */
export interface NamedOutline {
  readonly onward: string
  readonly turned: string
  /** Rows that do not come out. */
  readonly wrong: readonly string[]
}

const letters = 'abcdefghijklmnop'

/** Rows of one piece in words, worked on their own. Unless said, a turning chain counts from dc on, and slip stitches at the edges do not. */
export function workedPiece(text: string, conventions: Partial<Conventions> = {}): PieceRun {
  const words = lexicon('US', [], 1, [])
  const { entries } = readRows(text, { start: 0, end: text.length }, words)
  return workPiece({
    name: 'Piece', entries, lexicon: words, size: 0, sizeNames: [], readings: new Map(),
    conventions: { turningChains: { sc: false, hdc: false, dc: true }, slipStitchesCount: false, ...conventions },
  })
}

/**
 * Works rows that are given in words and names the places of the outline. The first row that makes stitches is `a`, the next `b`;
 * `a3` is the third stitch that it made, slip stitches that only lead in or out apart. `end c` is a row-end. Undersides: `z2` under
 * the second stitch of the first row, `cx2` under the second chain that was added for row c, in the order of its chains from outside.
 */
export function namedOutline(text: string, conventions: Partial<Conventions> = {}): NamedOutline {
  const run = workedPiece(text, conventions)
  const laid = run.rows.filter(({ kinds }) => Object.keys(kinds).some((kind) => kind !== 'ch'))
  const letterOf = new Map(laid.map(({ label }, index) => [label, letters[index]!]))
  return {
    onward: inWords(run.outline.walk(false), letterOf),
    turned: inWords(run.outline.walk(true), letterOf),
    wrong: run.rows.filter(({ verdict }) => verdict !== 'adds-up').map(({ label, makes, verdict }) => `${label} makes ${makes}: ${verdict}`),
  }
}

function inWords(stretches: readonly Stretch[], letterOf: ReadonlyMap<string, string>): string {
  return stretches.map(({ edge, rows, places }) => {
    if (edge === 'row-ends') return `end ${rows.map(({ name }) => letterOf.get(name)).join(' ')}`
    const row = rows[0]!
    const letter = letterOf.get(row.name)!
    const names = places.map((place) => {
      if (edge !== 'underside') return `${letter}${row.places.indexOf(place) + 1}`
      const under = row.foundation.indexOf(place)
      if (under >= 0) return `z${under + 1}`
      return `${letter}x${(row.startChains.includes(place) ? row.startChains : row.endChains).indexOf(place) + 1}`
    })
    return names.join(' ')
  }).join(' | ')
}
