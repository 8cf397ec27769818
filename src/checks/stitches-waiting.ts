import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { PatternFacts } from './facts.ts'

/** Stitches passed over for a sleeve or a thumb are taken up by some row, or the maker is left with a hole. Told once an opening. */
export function stitchesWaiting({ waiting, pieces }: PatternFacts): readonly Diagnostic[] {
  const sizes = pieces[0]?.sizes ?? []
  return [...Map.groupBy(waiting, ({ span }) => span.start).values()].map((same) => {
    const [first] = same
    const held = [...new Set(same.map(({ size }) => sizes[size] ?? ''))]
    return {
      code: 'stitches-waiting' as const,
      message: `${counted(first!.stitches, 'stitch')} ${first!.stitches === 1 ? 'is' : 'are'} passed over here to wait, and no row takes ${first!.stitches === 1 ? 'it' : 'them'} up`,
      primary: { span: first!.span, text: 'still waiting at the end' },
      secondary: [],
      ...(held.length < Math.max(1, sizes.length) && { sizes: held }),
    }
  })
}
