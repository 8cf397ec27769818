import type { Dimension, PieceDrawing } from '../drawing/piece-drawing.ts'

/**
 * What a pattern says in print, before HTML or PDF. Plain data: every word, figure and number a reader sees stands here, already
 * put as it is shown, so that page and print cannot disagree. Typographic signs are set here too: − × – and no-break spaces.
 */
export interface Booklet {
  readonly slug: string
  readonly title: string
  readonly number?: number
  readonly summary?: string
  readonly publisher: string
  readonly version: string
  /** ISO date, for machines: `2027-03-14`. */
  readonly date: string
  /** `14 March 2027` */
  readonly dateText: string
  readonly terms: 'US' | 'UK'
  /** The other terms, when the pattern is printed in both. */
  readonly alsoIn?: 'US' | 'UK'
  /** Names of sizes, smallest first; empty for one size. */
  readonly sizes: readonly string[]
  /** The one size that the booklet is of, when the pattern has several. */
  readonly size?: string
  /** Pattern and checklist are printed for each size alone as well. */
  readonly eachSize?: boolean
  /** The facts block, in order: Makes, Size, Yarn, Hook, Gauge, Worked, Terms, Level, You need, Length. */
  readonly facts: readonly Fact[]
  readonly materials: readonly MaterialLine[]
  /** What to mind in buying: whole sentences under the materials. */
  readonly buying?: readonly string[]
  readonly gauge?: GaugeText
  readonly abbreviations: readonly Abbreviation[]
  readonly specialStitches: readonly SpecialStitchText[]
  /** Safety notes, whole sentences, one paragraph each. Printed in Materials. */
  readonly cautions: readonly string[]
  /** The row shown under `How to read a row`, one with a repeat where the pattern has one. */
  readonly key?: RowLine
  readonly parts: readonly Part[]
  /** The piece drawn from its own counts; left out where a row could not be counted. */
  readonly drawing?: DrawingText
  /** Prose that comes before the parts (Notes) and after them (Assembly, Finishing …), from the Markdown body. */
  readonly before: readonly Section[]
  readonly after: readonly Section[]
  /** What closes a pattern: where help is to be had, what may be done with it, who had a part in it. */
  readonly closing?: readonly Section[]
  /** What each version brought, newest first, for print; the page has a list of its own. */
  readonly versions?: Section
  /** Sources of published tables that are shown. */
  readonly credits: readonly string[]
}

/** A drawing of the piece with all words that stand beside it. */
export interface DrawingText {
  readonly drawing: PieceDrawing
  /** Measures along the drawing: `9.5 cm (3¾ in) across`, `24 rounds`. Places as in the drawing. */
  readonly dimensions: readonly (Pick<Dimension, 'side' | 'from' | 'to'> & { readonly text: string })[]
  /** `Drawn full size`, `Drawn at one sixth, size Narrow`, `Not to scale`. */
  readonly scale: string
  /** What the marks stand for. */
  readonly caption: string
  /** What it shows, for somebody who cannot see it. */
  readonly alt: string
}

export interface Fact {
  readonly label: string
  readonly value: string
}

/** A line of the materials table. Columns: box, item, for, amount, weight. */
export interface MaterialLine {
  readonly kind: 'yarn' | 'total' | 'tool'
  /** `Yarn A, kelp` */
  readonly item: string
  /** Under the item in small type: `Super bulky (6), 100% polyester, 100 g = 68 m (74 yd)` */
  readonly make?: string
  readonly for: string
  /** `164 (328) m`; more facts on lines of their own: `179 (359) yd`, `2 (3) balls`. */
  readonly amount: readonly string[]
  readonly weight: string
  /** The weight in ounces, where it is in grams: `0.6 oz`. */
  readonly ounces?: string
}

export interface GaugeText {
  readonly paragraphs: readonly string[]
  /** The 5 cm window: how many stitches and rows fill it. Whole or half numbers. */
  readonly window?: { readonly stitches: number; readonly rows: number; readonly label: string }
}

export interface Abbreviation {
  readonly kind: 'stitch' | 'word' | 'sign'
  readonly us: string
  readonly uk: string
  readonly meaning: string
}

export interface SpecialStitchText {
  readonly abbr: string
  readonly name: string
  readonly how: string
}

/** A piece of the pattern. */
export interface Part {
  /** Place in the booklet, from 1. */
  readonly number: number
  readonly name: string
  /** How many are made; one when it is not said. */
  readonly make?: number
  /** Beside the head: `Make 2. In rows, with A. Ch 41 (61). US terms.` */
  readonly line: string
  /** The word over the number column. */
  readonly counting: 'Row' | 'Round'
  /** Whether the rows have sides (RS, WS), and so a Side column. */
  readonly sides: boolean
  readonly lines: readonly PartLine[]
}

export type PartLine = RowLine | InstructionLine

/** A row, or a range of rows with one text. */
export interface RowLine {
  readonly kind: 'row'
  /** Stable name for links and saved ticks: `ball-9`. */
  readonly id: string
  /** What stands in the number column: `3`, `9–10`, `Next`. */
  readonly label: string
  /** One box for each real row: its number in words short enough to stand beside the box: `9`, `10`. One entry for a single row. */
  readonly boxes: readonly string[]
  readonly side?: 'RS' | 'WS'
  readonly text: readonly Run[]
  /** `6 ×`, `6 (8) ×`; empty when the row has no repeat. */
  readonly repeats: string
  /** `+6`, `−6`, `+6 (8)`; empty when nothing changes and on the first row. */
  readonly change: string
  /** The running count, one for each size (one entry for one size): `48`. `?` when it cannot be told. */
  readonly stitches: readonly string[]
  /**
   * What the count is made of: `8 ch-2 sps`, spaces that the next row may need to know, and before them the stitches by kind where
   * the designer counts more than one kind, or by yarn: `28 dc, 4 ch-2 sps`, `40 B, 8 A`. Empty otherwise.
   */
  readonly spaces: string
  /** Counts on the way through a long row: `After the repeat: 48.` Left out where there are none. */
  readonly checkpoint?: string
  /** What the newest version corrected in it: `Corrected in version 1.2.0: was “next 5 sts”.` */
  readonly corrected?: string
  /** How far through the piece the row ends, by stitches, 0 to 1, first size. */
  readonly progress: number
  /** Its real rows, for a checklist. */
  readonly real?: readonly RealRow[]
}

/** One real row of a line, as a checklist has it. */
export interface RealRow {
  /** Its number: `9`. */
  readonly label: string
  /** Which sizes work it, where not all do: `from Adult`; empty when all do. */
  readonly sizes: string
  readonly side?: 'RS' | 'WS'
  /** What is done about the yarn first: `A.`, `To B.`; empty when nothing is. */
  readonly yarn: string
  /** `(4 sc, inc) × 6`; left out where a short form would lose something. */
  readonly short?: string
  /** The number of the row that it is worked like. */
  readonly as?: string
  /** The piece that has the row which it is worked like, when that is another. */
  readonly asOf?: string
  readonly change: string
  /** One for each size, a dash for one that leaves the row out; one alone when it holds for all that work the row. */
  readonly stitches: readonly string[]
  /** The same, always one for each size. */
  readonly inSizes?: readonly string[]
}

/** Something to do between two rows: never a row without a number. */
export interface InstructionLine {
  readonly kind: 'instruction'
  /** A safety caution, said where the hazard enters. */
  readonly caution?: true
  /** It says what the rows after it are, and is nothing to do: `Rows 1–11: As for Front.` */
  readonly about?: true
  readonly text: readonly Run[]
}

/** A stretch of row text. `repeat` runs are underlined. */
export interface Run {
  readonly text: string
  readonly repeat: boolean
}

/** A headed piece of prose. */
export interface Section {
  readonly heading: string
  readonly blocks: readonly Block[]
}

export type Block =
  | { readonly kind: 'paragraph'; readonly inlines: readonly Inline[] }
  | { readonly kind: 'subheading'; readonly inlines: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Block[])[] }

export interface Inline {
  readonly text: string
  readonly strong: boolean
  readonly emphasis: boolean
  readonly href?: string
}
