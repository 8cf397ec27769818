import { checkPattern } from '../../src/pattern/check-pattern.ts'
import type { Source } from '../../src/text/source.ts'
import { median, milliseconds, type Ratio } from './turn-by-turn.ts'

/** So many rows of so many stitches, in repeats of four. */
function fabric({ rows, wide }: { readonly rows: number; readonly wide: number }): Source {
  const text = [
    '---', 'title: Hawser', 'terms: US', 'conventions: { turning-chains: { sc: not counted } }', 'pieces:', '  - name: Hawser', '    rows: |',
    `      Row 1: Ch ${wide + 1}, sc in 2nd ch from hook and in each ch across. (${wide})`,
    ...Array.from({ length: rows - 1 }, (_, at) => `      Row ${at + 2}: Ch 1, turn, *sc in next 3 sts, dc in next st; rep from * across. (${wide})`),
    '---', '',
  ].join('\n')
  return { path: 'hawser.md', text }
}

/** Microseconds for one stitch, the median of several checks. */
function perStitch(rows: number, wide: number): number {
  const source = fabric({ rows, wide })
  const { pieces, diagnostics } = checkPattern(source)
  const wrong = diagnostics.find(({ code }) => code !== 'key-missing-to-publish')
  if (wrong || pieces[0]?.rows.length !== rows) throw new Error(`the bench's own rows do not come out: ${wrong?.message}`)
  const turns = Math.max(3, Math.min(40, 1_000_000 / (rows * wide)))
  return (median(Array.from({ length: turns }, () => milliseconds(() => checkPattern(source)))) * 1000) / (rows * wide)
}

const shown = (count: number): string => count.toLocaleString('en')

/** Time for one stitch in a large piece against the time for one in a piece of ten thousand: below 1 where the cost grows slower than the work. */
export function growthBench(): readonly Ratio[] {
  perStitch(10, 1_000)
  const small = perStitch(10, 1_000)
  const sizes = [
    { rows: 100, wide: 1_000 },
    { rows: 1_000, wide: 1_000 },
    { rows: 10, wide: 10_000 },
    { rows: 10, wide: 100_000 },
  ]
  return sizes.map(({ rows, wide }) => {
    const here = perStitch(rows, wide)
    const name = `growth, a stitch of ${shown(rows)} × ${shown(wide)} against one of 10 × 1,000`
    return { name, ratio: here / small, detail: `${here.toFixed(2)} µs a stitch against ${small.toFixed(2)} µs` }
  })
}
