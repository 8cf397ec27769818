import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { cmFromInches, metresFromYards, gramsFromOunces } from '../../measures/units.ts'
import { spanOf } from './passages.ts'
import { plainNumber, type SenseFacts } from './sense-facts.ts'

interface Pair {
  /** One before the other, and the other before the one. */
  readonly forms: readonly { readonly form: RegExp; readonly first: boolean }[]
  /** One in the units of the other. */
  readonly convert: (value: number) => number
  readonly shown: string
  /** Rounding that leaflets do, in the units of the other: 4 in are printed as 10 cm. */
  readonly slack: number
}

const beside = String.raw`\(|/|=|or\b`
/** `30 cm (8 in, 12 in)` is the end of a list of lengths in one unit, and the list of them in the other. */
const closed = String.raw`(?!\s*,\s*\d|\s*(?:x|×|by|and)\s*\d)`

const value = String.raw`(\d{1,4}(?:[.,]\d{1,3})?(?:\s?[¼½¾⅓⅔⅛⅜⅝⅞])?|[¼½¾⅓⅔⅛⅜⅝⅞])\s?`
const inches = String.raw`(?:in|ins|inch|inches|"|”|″)`
const forms = (one: string, other: string): Pair['forms'] => [
  { form: new RegExp(String.raw`(?<![\d.,/x×–-]\s?)${value}${one}\s*(?:${beside})\s*${value}${other}\b${closed}`, 'giu'), first: true },
  { form: new RegExp(String.raw`(?<![\d.,/x×–-]\s?)${value}${other}\s*(?:${beside})\s*${value}${one}(?![\p{L}])${closed}`, 'giu'), first: false },
]

const pairs: readonly Pair[] = [
  { forms: forms(inches, 'cm'), convert: cmFromInches, shown: 'cm', slack: 0.7 },
  { forms: forms(inches, 'mm'), convert: (inches) => cmFromInches(inches) * 10, shown: 'mm', slack: 3 },
  { forms: forms(String.raw`(?:yd|yds|yards?)`, 'm'), convert: metresFromYards, shown: 'm', slack: 1 },
  { forms: forms(String.raw`(?:oz|ounces?)`, 'g'), convert: gramsFromOunces, shown: 'g', slack: 2 },
]

/** A length in two units that are not the same length: `18 in (50 cm)`. Told beyond five in a hundred and the rounding of leaflets. */
export function conversionWrong({ rows, prose }: SenseFacts): readonly Diagnostic[] {
  return [...prose, ...rows].flatMap((passage) => pairs.flatMap(({ forms, convert, shown, slack }) => {
    return forms.flatMap(({ form, first }) => [...passage.text.matchAll(form)].flatMap((match): readonly Diagnostic[] => {
      const [imperial, metric] = first ? [valueOf(match[1]!), valueOf(match[2]!)] : [valueOf(match[2]!), valueOf(match[1]!)]
      const is = convert(imperial)
      if (Math.abs(is - metric) <= Math.max(slack, is * 0.05)) return []
      return [{
        code: 'conversion-wrong',
        message: `${plainNumber(metric, 2)} ${shown} is not the same as what stands beside it, which is ${plainNumber(is)} ${shown}`,
        primary: { span: spanOf(passage, match), text: `${plainNumber(is)} against ${plainNumber(metric, 2)} ${shown}` },
        secondary: [],
        note: 'a difference of up to five in a hundred is let pass, and rounding as leaflets do it',
      }]
    }))
  }))
}

const signs: Readonly<Record<string, number>> = { '¼': 1 / 4, '½': 1 / 2, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8 }

function valueOf(text: string): number {
  const sign = text.at(-1) ?? ''
  const fraction = signs[sign] ?? 0
  const whole = fraction === 0 ? text : text.slice(0, -1).trim()
  return Number((whole || '0').replace(',', '.')) + fraction
}
