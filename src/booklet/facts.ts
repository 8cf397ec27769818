import { listOf, plural } from '../diagnostics/words.ts'
import { hookLabel } from '../measures/hooks.ts'
import { tradeName, yarnWeightLabel } from '../measures/yarn-weights.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { wordFor } from '../stitches/terms.ts'
import type { Abbreviation, Fact } from './booklet.ts'
import { capital, figure, inWords, nbsp, perSize, withUnit } from './figures.ts'
import { gaugeLine } from './gauge-text.ts'
import { yarnNeed } from './materials.ts'
import type { WorkedPart } from './part.ts'
import { furtherSizes, sizesText } from './sizes-text.ts'
import { typeset } from './typeset.ts'

/** The facts block: what a maker looks for before anything else. A fact that is not known is left out. */
export function factsOf(pattern: Pattern, parts: readonly WorkedPart[], abbreviations: readonly Abbreviation[], text: string): readonly Fact[] {
  const { gauge, materials, terms, level } = pattern
  const counting = parts[0]?.part.counting ?? 'Row'
  const facts: readonly (readonly [string, string])[] = [
    ['Makes', makes(pattern, parts)],
    ['Size', sizesText(pattern)],
    ...furtherSizes(pattern),
    ['Yarn', yarnText(pattern)],
    ['Hook', (materials?.hooks ?? []).map((mm) => hookLabel(mm, terms)).join('; ')],
    [terms === 'UK' ? 'Tension' : 'Gauge', gauge === undefined ? '' : gaugeLine(gauge, counting, terms)],
    ['Worked', worked(parts)],
    ['Terms', termsText(pattern, parts)],
    ['Level', capital(level ?? '')],
    ['You need', skills(abbreviations, pattern, text)],
    ['Length', length(parts)],
  ]
  return facts.filter(([, value]) => value !== '').map(([label, value]) => ({ label, value }))
}

/** `One ball and one becket`. Pieces that go on from one another are one thing, by the last word of the title: `One hat`. */
function makes({ title }: Pattern, parts: readonly WorkedPart[]): string {
  const begun = parts.filter(({ piece }) => piece.on === undefined)
  const whole = begun.length === 1 && parts.length > 1
  const things = begun.map(({ piece }) => {
    const name = whole ? (title.split(/\s+/).at(-1) ?? title).toLowerCase() : shortName(piece.name)
    return `${inWords(piece.make)} ${plural(name, piece.make)}`
  })
  return typeset(capital(listOf(things)))
}

function shortName(name: string): string {
  return name.replace(/^the /i, '').toLowerCase()
}

/** `Medium (4), worsted, two colours: A 25 m, B 15 m` */
function yarnText({ materials, sizes, terms }: Pattern): string {
  const yarns = materials?.yarns ?? []
  if (yarns.length === 0) return ''
  const weights = [...new Set(yarns.flatMap(({ weight }) => weight ?? []))]
  const kinds = weights.map((weight) => {
    const label = yarnWeightLabel(weight)
    const trade = tradeName(weight, terms)
    return trade === undefined || label.toLowerCase().startsWith(trade) ? label : `${label}, ${trade}`
  })
  const amounts = yarns.map((yarn) => {
    const { metres, grams } = yarnNeed(yarn, Math.max(1, sizes.length))
    const amount = metres.length > 0 ? withUnit(metres, 'm') : grams.length > 0 ? withUnit(grams, 'g') : ''
    return yarns.length > 1 && yarn.letter !== undefined ? `${yarn.letter}${nbsp}${amount}` : amount
  }).filter((amount) => amount !== '')
  const what = [listOf(kinds), ...(yarns.length > 1 ? [`${inWords(yarns.length)} colours`] : [])].filter((text) => text !== '').join(', ')
  if (amounts.length === 0) return capital(what)
  return capital(what === '' ? amounts.join(', ') : `${what}: ${amounts.join(', ')}`)
}

/** `US: sc is the UK dc`, by the stitch that there is most of, since the word alone does not say which stitch is meant. */
function termsText({ terms }: Pattern, parts: readonly WorkedPart[]): string {
  const counts = new Map<string, number>()
  for (const [kind, count] of parts.flatMap(({ sizes }) => sizes[0] ?? []).flatMap(({ kinds }) => Object.entries(kinds))) counts.set(kind, (counts.get(kind) ?? 0) + count)
  const other = terms === 'US' ? 'UK' : 'US'
  const [most] = [...counts].filter(([kind]) => wordFor(kind, 'US') !== wordFor(kind, 'UK')).toSorted((a, b) => b[1] - a[1])
  return most === undefined ? terms : `${terms}: ${wordFor(most[0], terms)} is the ${other}${nbsp}${wordFor(most[0], other)}`
}

/** `In a spiral; becket in rows` */
function worked(parts: readonly WorkedPart[]): string {
  const own = parts.filter(({ piece, manner }, index) => index === 0 || piece.on === undefined || manner !== parts[0]?.manner)
  const [first, ...rest] = own
  if (first === undefined) return ''
  const others = rest.filter(({ manner }) => manner !== first.manner).map(({ piece, manner }) => `${shortName(piece.name)} ${manner}`)
  return typeset(capital([first.manner, ...others].join('; ')))
}

/** The stitches that the pattern asks for, and the ways of beginning that want learning: `Sc, inc, dec, adjustable ring`. */
function skills(abbreviations: readonly Abbreviation[], { terms }: Pattern, text: string): string {
  const stitches = abbreviations.filter(({ kind }) => kind === 'stitch').map(({ us, uk }) => (terms === 'UK' ? uk : us))
  const ring = /\b(?:adjustable|magic) (?:ring|circle|loop)\b/i.exec(text)?.[0].toLowerCase()
  return capital([...stitches, ...(ring === undefined ? [] : [ring])].join(', '))
}

/** `24 rounds and 4 rows; 916 stitches`, over all copies. */
function length(parts: readonly WorkedPart[]): string {
  const sizes = Math.max(0, ...parts.map((part) => part.sizes.length))
  const reckon = (counting: 'Row' | 'Round' | undefined, of: 'rows' | 'stitches') => Array.from({ length: sizes }, (_, size) =>
    parts.filter(({ part }) => counting === undefined || part.counting === counting).reduce((sum, { sizes, piece }) => {
      const rows = sizes[size] ?? []
      return sum + piece.make * (of === 'rows' ? rows.length : rows.reduce((stitches, row) => stitches + row.makes, 0))
    }, 0))
  const counted = (counts: readonly number[], word: string) =>
    (counts.some((count) => count > 0) ? [`${perSize(counts.map(figure))}${nbsp}${plural(word, Math.max(...counts))}`] : [])
  const rows = listOf([...counted(reckon('Round', 'rows'), 'round'), ...counted(reckon('Row', 'rows'), 'row')])
  const untold = parts.some((part) => part.sizes.flat().some((row) => row.verdict === 'cannot-tell'))
  return [rows, ...(untold ? [] : counted(reckon(undefined, 'stitches'), 'stitch'))].filter((text) => text !== '').join('; ')
}
