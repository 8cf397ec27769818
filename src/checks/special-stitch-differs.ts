import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { textOf } from '../text/source.ts'
import type { PatternFacts } from './facts.ts'

/** `4-dc bobble` in a row of a pattern whose bobble is said to have 5 legs. Told once a place. */
export function specialStitchDiffers({ pieces, definitions, source }: PatternFacts): readonly Diagnostic[] {
  const entries = new Set(pieces.filter(({ size }) => size === 0).flatMap(({ entries: written }) => written))
  return [...entries].flatMap(({ text }) => definitions.flatMap(({ words, legs }) => {
    const used = new RegExp(String.raw`(?<![\d-])(\d{1,2})-[a-z]+ (?:${words.map((word) => word.replace(/[^\p{L}\d -]/gu, '.')).join('|')})(?![\p{L}])`, 'giu')
    return [...textOf(source, text).matchAll(used)].filter(([, count]) => Number(count) !== legs).map((match): Diagnostic => {
      const start = text.start + match.index
      return {
        code: 'special-stitch-differs',
        message: `a row has a \`${match[0]}\`, but the pattern's own has ${legs}`,
        primary: { span: { start, end: start + match[0].length }, text: `${match[1]} against ${legs}` },
        secondary: [],
      }
    })
  }))
}
