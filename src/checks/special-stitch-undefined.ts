import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Instruction } from '../notation/syntax.ts'
import type { PatternFacts } from './facts.ts'

/** Stitches whose making differs from designer to designer: a pattern that uses them says how they are made. */
const special = new Set(['bo', 'pc', 'puff', 'cl', 'beg cl', 'knot st', 'star st'])

/** A special stitch is counted in the trade's usual meaning, but the maker needs the pattern's own words. Told once a stitch. */
export function specialStitchUndefined({ pieces, defined }: PatternFacts): readonly Diagnostic[] {
  const found = new Map<string, Diagnostic>()
  for (const { entries } of pieces) for (const { read } of entries) visit(read.items, (stitch, span) => {
    if (!special.has(stitch) || defined.has(stitch) || found.has(stitch)) return
    found.set(stitch, {
      code: 'special-stitch-undefined',
      message: `\`${stitch}\` is used, but the pattern does not say how it is made`,
      primary: { span, text: 'not defined under `stitches`' },
      secondary: [],
      note: 'it is counted as one stitch in one place',
    })
  })
  return [...found.values()]
}

function visit(items: readonly Instruction[], each: (stitch: string, span: { start: number; end: number }) => void): void {
  for (const item of items) {
    if (item.node === 'work') each(item.stitch, item.name ?? { start: item.start, end: item.end })
    else if (item.node === 'repeat' || item.node === 'group') visit(item.items, each)
  }
}
