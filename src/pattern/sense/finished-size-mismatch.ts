import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { inchesFromCm } from '../../measures/units.ts'
import { diameterOf, lengthOf, widthOf } from '../../measures/size.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
import type { Finished, Gauge } from '../pattern.ts'
import { baseOf } from './base-stitch.ts'
import { inSizeAt, labelAt, onlyIn, plainNumber, sizeCount, type SenseFacts } from './sense-facts.ts'

/** Let pass: five in a hundred, and one centimetre. One stitch in sixteen is six in a hundred, and is told. */
const slack = { share: 0.05, cm: 1 }

/** A finished measurement that the counts do not give at the pattern's own gauge. Told once a measurement, with its sizes. */
export function finishedSizeMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const { gauge, finished } = facts.pattern
  if (!gauge) return []
  const compared = finished.flatMap((measure, index) => comparison(facts, measure, index, gauge) ?? [])
  const told = compared.flatMap(({ diagnostic }) => diagnostic ?? [])
  const [first, ...others] = told
  if (!first || others.length === 0 || told.length < compared.length) return told
  // Where no measurement comes out, the gauge is likelier wrong than all of them.
  return [{ ...first, secondary: [...first.secondary, ...others.map(({ primary }) => primary)], note: `${first.note}; every measurement that was compared is off, so it may be the gauge` }]
}

/** A measurement set beside the counts; undefined where no count gives it, without a finding where it comes out. */
function comparison(facts: SenseFacts, measure: Finished, index: number, gauge: Gauge): { readonly diagnostic?: Diagnostic } | undefined {
  const { pieces, places, sizes } = facts.pattern
  const at = pieces.findIndex(({ name }) => (measure.of === undefined ? pieces.length === 1 : plainName(name) === plainName(measure.of)))
  const compared = Array.from({ length: at === -1 ? 0 : sizeCount(facts) }, (_, size) => size).flatMap((size) => {
    const piece = inSizeAt(facts, size)[at]
    const said = measure.is[size] ?? measure.is[0]
    const near = piece && said !== undefined ? nearest(measure, piece, gauge, said) : undefined
    return near === undefined || said === undefined ? [] : [{ size, said, ...near }]
  })
  const wrong = compared.filter(({ cm, said }) => Math.abs(cm - said) > Math.max(slack.cm, said * slack.share))
  const first = wrong[0]
  if (!first) return compared.length === 0 ? undefined : {}
  const size = sizes[first.size]
  return {
    diagnostic: {
      code: 'finished-size-mismatch',
      message: `the ${measure.what} of ${pieces[at]!.name} is given as ${plainNumber(first.said)} cm${size === undefined ? '' : ` in size ${size}`}, but ${first.words} at the gauge ${first.words.startsWith('1 ') ? 'is' : 'are'} ${plainNumber(first.cm)} cm`,
      primary: { span: places.get(`finished.${index}.is`) ?? measure.span, text: `${plainNumber(first.cm)} cm, or ${plainNumber(inchesFromCm(first.cm))} in, by the counts` },
      secondary: labelAt(facts, 'gauge', 'at this gauge'),
      note: `${first.sum}; five in a hundred, and 1 cm, are let pass`,
      ...onlyIn(facts, wrong.map(({ size: held }) => held)),
    },
  }
}

const plainName = (name: string): string => name.toLowerCase().replace(/^the /, '')

interface Reckoned {
  readonly cm: number
  readonly words: string
  readonly sum: string
}

/** What comes nearest to the measurement among the counts that it may have been taken from. Undefined where no count gives it. */
function nearest(measure: Finished, piece: WorkedPiece, gauge: Gauge, said: number): Reckoned | undefined {
  if (piece.rows.length === 0 || piece.rows.some(({ verdict, spaces }) => verdict !== 'adds-up' || Object.keys(spaces).length > 0)) return undefined
  const found = reckoned(measure.what, piece, gauge)
  return found.toSorted((a, b) => Math.abs(a.cm - said) - Math.abs(b.cm - said))[0]
}

function reckoned(what: string, piece: WorkedPiece, gauge: Gauge): readonly Reckoned[] {
  const rows = piece.rows.filter(({ number }) => number !== undefined)
  const flat = rows.every(({ word }) => word === 'row')
  const rounds = rows.every(({ word }) => word === 'round')
  if (!inGaugeStitch(piece, gauge) || rows.length === 0) return []
  const counts = [...new Set(rows.map(({ makes }) => makes))].filter((count) => count > 0)
  const stitches = `${plainNumber(gauge.sts, 2)} sts over ${plainNumber(gauge.over)} cm`
  if (/^(?:width|wide)$/i.test(what) && flat) {
    return counts.map((count) => ({ cm: widthOf(count, gauge), words: `${count} stitches`, sum: `${count} ÷ ${stitches}` }))
  }
  if (/^(?:circumference|around|chest|bust|hips?|waist|head)$/i.test(what) && rounds) {
    return counts.map((count) => ({ cm: widthOf(count, gauge), words: `${count} stitches`, sum: `${count} ÷ ${stitches}` }))
  }
  if (/^diameter$/i.test(what) && rounds) {
    const widest = Math.max(...counts)
    const flatDisc = { cm: 2 * lengthOf(rows.length, gauge), words: `${rows.length} rounds`, sum: `2 × ${rows.length} rounds ÷ ${plainNumber(gauge.rows, 2)} over ${plainNumber(gauge.over)} cm` }
    return [{ cm: diameterOf(widest, gauge), words: `${widest} stitches`, sum: `${widest} ÷ ${stitches}, ÷ π` }, ...(piece.piece.shape === 'ball' || piece.piece.shape === 'tube' ? [] : [flatDisc])]
  }
  if (/^(?:length|height|depth|long|tall|high)$/i.test(what) && flat && piece.piece.on === undefined && rows.every(({ leaves }) => leaves === 0)) {
    return [{ cm: lengthOf(rows.length, gauge), words: `${rows.length} row${rows.length === 1 ? '' : 's'}`, sum: `${rows.length} rows ÷ ${plainNumber(gauge.rows, 2)} over ${plainNumber(gauge.over)} cm` }]
  }
  return []
}

/** Where most of the piece is in another stitch, its gauge is another. A gauge in pattern holds for all. */
function inGaugeStitch({ rows }: WorkedPiece, { stitch }: Gauge): boolean {
  if (stitch === undefined || baseOf(stitch) === undefined) return true
  const counts = rows.filter(({ number }) => number !== undefined).flatMap(({ kinds }) => Object.entries(kinds))
  const all = counts.reduce((sum, [, count]) => sum + count, 0)
  const same = counts.reduce((sum, [kind, count]) => (baseOf(kind) === baseOf(stitch) ? sum + count : sum), 0)
  return same >= all * 0.8
}
