import { mmPerPoint } from '../sheet/measures.ts'
import { heightsOf, type FontRole } from './fonts.ts'

/** How a kind of text is set: size and leading in points, tracking in em. */
export interface TypeStyle {
  readonly font: FontRole
  readonly size: number
  readonly leading: number
  readonly tracking?: number
}

/** Every style of the print page. Nothing is under 8 points, and no figure column mixes weights. */
export const styles = {
  subtitle: { font: 'textItalic', size: 15, leading: 19 },
  head: { font: 'head', size: 15, leading: 18 },
  subhead: { font: 'textStrong', size: 10.5, leading: 14 },
  text: { font: 'text', size: 10.5, leading: 14 },
  item: { font: 'textStrong', size: 10.5, leading: 14 },
  rowNumber: { font: 'countBold', size: 11, leading: 14 },
  countsLine: { font: 'countBold', size: 10.5, leading: 14 },
  figure: { font: 'count', size: 9.5, leading: 14 },
  amount: { font: 'count', size: 10.5, leading: 14 },
  amountTotal: { font: 'countBold', size: 10.5, leading: 14 },
  side: { font: 'countStrong', size: 8.5, leading: 14 },
  columnHead: { font: 'countStrong', size: 8, leading: 10 },
  label: { font: 'countStrong', size: 8.5, leading: 11 },
  fact: { font: 'text', size: 10.5, leading: 13 },
  word: { font: 'count', size: 10.5, leading: 13 },
  wordStrong: { font: 'countStrong', size: 10.5, leading: 13 },
  partLine: { font: 'count', size: 9.5, leading: 12 },
  note: { font: 'count', size: 8.5, leading: 11 },
  noteStrong: { font: 'countStrong', size: 8.5, leading: 11 },
  caption: { font: 'count', size: 8.5, leading: 10.5 },
  boxLabel: { font: 'count', size: 9, leading: 13 },
  band: { font: 'text', size: 9, leading: 12 },
  barLabel: { font: 'count', size: 8, leading: 10 },
  capitals: { font: 'countStrong', size: 8, leading: 10, tracking: 0.09 },
} as const satisfies Readonly<Record<string, TypeStyle>>

/** Height of a line in mm. */
export const lineHeight = (style: Pick<TypeStyle, 'leading'>) => style.leading * mmPerPoint

/** How far the baseline lies under the top of its line, in mm: the leading is shared out above and below. */
export function baselineIn({ font, size, leading }: TypeStyle): number {
  const { ascent, descent } = heightsOf(font)
  return ((leading - (ascent + descent) * size) / 2 + ascent * size) * mmPerPoint
}
