import { inchesFromCm, nearestHalfCm, quarterInchText } from '../measures/units.ts'
import type { Finished, Pattern } from '../pattern/pattern.ts'
import { capital, figure, forSizes, nbsp, perSize, unparted } from './figures.ts'
import { typeset } from './typeset.ts'

/** How each measurement is said after its figures: `30 cm wide`. */
const directions: Readonly<Record<string, string>> = {
  width: 'wide', length: 'long', height: 'high', depth: 'deep', circumference: 'around', diameter: 'across', across: 'across', around: 'around',
}

/** Centimetres with inches: `9.5 cm (3¾ in)`, for sizes `30 (40) cm, 11¾ (15¾) in`. */
export function bothUnits(cm: readonly (readonly number[])[]): string {
  const across = (sides: readonly string[]) => sides.join(` ×${nbsp}`)
  const centimetres = `${across(cm.map((values) => perSize(values.map((value) => figure(nearestHalfCm(value))))))}${nbsp}cm`
  const inches = `${across(cm.map((values) => perSize(values.map((value) => quarterInchText(inchesFromCm(value))))))}${nbsp}in`
  return cm.every((values) => values.every((value) => value === values[0])) ? `${centimetres} (${inches})` : `${centimetres}, ${inches}`
}

/** All finished measurements: `9.5 cm (3¾ in) across; becket 7.5 cm (3 in) long`. With sizes, those of the first thing alone. */
export function sizesText(pattern: Pattern): string {
  const { sizes } = pattern
  const [first, ...others] = thingsOf(pattern)
  if (first === undefined) return ''
  // Names are long: unlike their figures they may stand on more than one line.
  const [smallest, ...larger] = sizes.map(unparted)
  const named = larger.length > 0 ? `${smallest} (${larger.join(', ')}): ` : ''
  const things = sizes.length > 1 ? [first] : [first, ...others]
  return typeset(capital(`${named}${things.map(({ name, text }) => `${name}${text}`).join('; ')}`))
}

/** With sizes, each further measurement on a line of its own: three of them in a row are a heap of figures. */
export function furtherSizes(pattern: Pattern): readonly (readonly [label: string, value: string])[] {
  if (pattern.sizes.length < 2) return []
  return thingsOf(pattern).slice(1).map(({ name, text, label }) => [label, typeset(label === '' ? `${name}${text}` : text)])
}

interface Thing {
  /** Before its figures, with a space after it; empty for the first thing. */
  readonly name: string
  readonly text: string
  readonly label: string
}

function thingsOf({ finished, sizes }: Pattern): readonly Thing[] {
  const count = Math.max(1, sizes.length)
  const owners = [...new Set(finished.map(({ of }) => of))]
  return owners.flatMap((owner, index): readonly Thing[] => {
    const own = finished.filter(({ of }) => of === owner)
    const bare = owner?.replace(/^the /i, '').toLowerCase()
    const name = index > 0 && bare !== undefined ? `${bare} ` : ''
    if (sizes.length < 2) return [{ name, text: measurements(own, count), label: '' }]
    const sides = own.filter(({ what }) => ['width', 'length', 'height'].includes(what.toLowerCase()))
    if (sides.length === own.length && own.length === 2) return [{ name, text: measurements(own, count), label: capital(bare ?? 'Size') }]
    return own.map(({ what, is }, at) => {
      const measure = bothUnits([forSizes(is, count)])
      const label = capital(bare === undefined || what.toLowerCase().includes(bare) ? what : `${bare} ${what.toLowerCase()}`)
      return { name: index === 0 && at === 0 ? '' : name, text: index === 0 && at === 0 ? said(what, measure) : measure, label }
    })
  })
}

/** Two sides of one thing are set together: `30 × 82 cm (11¾ × 32¼ in)`. */
function measurements(own: readonly Finished[], sizes: number): string {
  const wide = own.find(({ what }) => what.toLowerCase() === 'width')
  const long = own.find(({ what }) => ['length', 'height'].includes(what.toLowerCase()))
  const sides = wide !== undefined && long !== undefined ? [wide, long] : []
  const rest = own.filter((one) => !sides.includes(one))
  return [
    ...(sides.length === 0 ? [] : [bothUnits(sides.map(({ is }) => forSizes(is, sizes)))]),
    ...rest.map(({ what, is }) => said(what, bothUnits([forSizes(is, sizes)]))),
  ].join(', ')
}

/** `9.5 cm (3¾ in) across`; `30 (40) cm, 11¾ (15¾) in, wide`; what has no such word stands before: `brim 5 cm (2 in)`. */
function said(what: string, measure: string): string {
  const direction = directions[what.toLowerCase()]
  if (direction === undefined) return `${what.toLowerCase()} ${measure}`
  return measure.endsWith(')') ? `${measure} ${direction}` : `${measure}, ${direction}`
}
