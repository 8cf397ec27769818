import type { ProseSetting } from '../pages/prose.ts'
import type { TypeStyle } from '../type/styles.ts'
import { inWords } from './in-words.ts'

/** Styles of large print. Nothing is under 18 points, nothing is slanted, and all but heads is one plain face. */
export const large = {
  body: { font: 'count', size: 24, leading: 31 },
  strong: { font: 'countBold', size: 24, leading: 31 },
  number: { font: 'countBold', size: 30, leading: 31 },
  head: { font: 'head', size: 26, leading: 32 },
  small: { font: 'count', size: 18, leading: 22 },
  smallStrong: { font: 'countStrong', size: 18, leading: 22 },
} as const satisfies Readonly<Record<string, TypeStyle>>

/** Rules in points. */
export const largeRules = { opening: 2, between: 0.7 }

/** Where text ends and where the footer's rule lies, in mm from the top. */
export const largePage = { textBottom: 241.2, footerRule: 245.7 }

/** Where the words of a row start, in mm from the margin: its number and its box stand before them. */
export const wordsIndent = 33

/** A box that a thick pen can tick: side in mm, line in points. */
export const largeBox = { side: 9, weight: 1.2, inset: (1.2 * 25.4) / 72 / 2 }

/** A cell of a tally grid; neighbours share a line. */
export const largeCell = { side: 9, weight: 0.7, inset: 0 }

/** Gaps in mm. */
export const largeGaps = { under: 3, between: 5, section: 11 }

export const largeProse: ProseSetting = {
  text: large.body, subhead: large.strong, label: large.body, strong: 'countBold', emphasis: 'countStrong', width: 178, listIndent: 14, between: largeGaps.between, said: inWords,
}
