import type { InkedRow } from '../../../src/drawing/gauge.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

/** Rows as the engine works them, foundation left out, all in the first yarn; a row that does not come out is a slip of the test. */
export function worked(rows: readonly string[], yarns: readonly number[] = []): readonly InkedRow[] {
  const text = ['---', 'title: Piece', 'terms: US', 'conventions: { turning-chains: { sc: not counted, dc: counted } }', 'pieces:', '  - name: Piece', '    rows: |', ...rows.map((row) => `      ${row}`), '---', ''].join('\n')
  const checked = checkPattern({ path: 'piece.md', text })
  const slips = checked.diagnostics.filter(({ code }) => !code.startsWith('key-missing'))
  if (slips.length > 0) throw new Error(slips.map(({ message }) => message).join('; '))
  const own = checked.pieces[0]?.rows.filter(({ number }) => number !== undefined) ?? []
  return own.map((row, at) => ({ row, yarn: yarns[at] ?? 0 }))
}

export const round2 = (value: number): number => Math.round(value * 100) / 100 + 0
