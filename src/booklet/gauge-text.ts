import { hookLabel } from '../measures/hooks.ts'
import { inchesFromCm, quarterInchText } from '../measures/units.ts'
import { lengthOf, widthOf } from '../measures/size.ts'
import type { Gauge } from '../pattern/pattern.ts'
import { wordFor, type Terms } from '../stitches/terms.ts'
import type { GaugeText } from './booklet.ts'
import { capital, figure, inWords, nbsp, sentence } from './figures.ts'
import { typeset } from './typeset.ts'

/** The side of the window that a swatch is laid on, in centimetres. */
const windowSide = 5

/** `16 sc and 16 rounds = 10 cm (4 in)` */
export function gaugeLine({ stitch, sts, rows, over }: Gauge, counting: 'Row' | 'Round', terms: Terms): string {
  const what = stitch === undefined ? 'sts' : wordFor(stitch, terms)
  return typeset(`${figure(sts)} ${what} and ${figure(rows)} ${counting.toLowerCase()}s = ${distance(over)}`)
}

/** What the gauge section says, and how the 5 cm window is marked. */
export function gaugeText(gauge: Gauge, counting: 'Row' | 'Round', terms: Terms): GaugeText {
  const word = terms === 'UK' ? 'tension' : 'gauge'
  const window = windowOf(gauge)
  const after = gauge.after === undefined ? '' : `, ${gauge.after}`
  const hook = gauge.hook === undefined ? '' : `, with a ${hookLabel(gauge.hook, terms)} hook`
  const first = sentence(`${gaugeLine(gauge, counting, terms)}${hook}${after}`)
  if (window === undefined) return { paragraphs: [first, sentence(remedy(word))] }
  const rows = `${counting.toLowerCase()}s`
  const number = Number.isInteger(window.stitches) && Number.isInteger(window.rows) ? inWords : figure
  const fill = `${number(window.stitches)} stitches and ${number(window.rows)} ${rows} fill it when your print is full size and your ${word} is right`
  return {
    paragraphs: [first, `Lay your swatch on the window. ${sentence(capital(fill))} ${sentence(remedy(word))}`],
    window,
  }
}

function remedy(word: string): string {
  return `With more stitches than the ${word} asks for, take a larger hook; with fewer, a smaller one`
}

/** The gauge brought down to 5 cm, when that gives whole or half stitches and rows that a tick can mark. */
function windowOf(gauge: Gauge): GaugeText['window'] {
  const stitches = windowSide / widthOf(1, gauge)
  const rows = windowSide / lengthOf(1, gauge)
  if (![stitches, rows].every((count) => count >= 1 && Math.abs(count * 2 - Math.round(count * 2)) < 1e-6)) return undefined
  const half = (count: number) => Math.round(count * 2) / 2
  return { stitches: half(stitches), rows: half(rows), label: `${windowSide}${nbsp}cm, ${figure(half(stitches))}${nbsp}stitches` }
}

/** The trade takes 10 cm and 4 in for the same distance; any other is converted. */
function distance(cm: number): string {
  const inches = cm === 10 ? '4' : quarterInchText(inchesFromCm(cm))
  return `${figure(cm)}${nbsp}cm (${inches}${nbsp}in)`
}
