import type { FontRole } from '../type/fonts.ts'

/** Text on its baseline. Places and widths in mm from the top left of the page, sizes in points, tracking in em. */
export interface PlacedText {
  readonly kind: 'text'
  readonly page: number
  readonly x: number
  readonly y: number
  readonly width: number
  readonly text: string
  readonly font: FontRole
  readonly size: number
  readonly tracking?: number
  /** No font has this character: a box is drawn in its place, and readers are told what it is. */
  readonly missing?: true
  readonly href?: string
  /** Reads upwards; `x` and `y` are where it begins, on a baseline that runs up the page. */
  readonly turned?: true
}

/** A check box that is drawn for the pencil and can be ticked on a screen. `x`, `y`, `side`: its square in mm, from the middle of one line to the middle of the other; weight in points. */
export interface PlacedBox {
  readonly kind: 'box'
  readonly page: number
  readonly x: number
  readonly y: number
  readonly side: number
  readonly weight: number
  /** What is ticked, in words: `The ball, Round 9`. Unique in a document. */
  readonly name: string
}

/** What a line is for. A repeat line lies under the words to repeat, a change bar outside the margin; all others rule the page or draw a measure. */
export type LineUse = 'rule' | 'repeat' | 'measure' | 'drawing' | 'change'

/** A straight line in black; weight in points. */
export interface PlacedLine {
  readonly kind: 'line'
  readonly page: number
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly weight: number
  readonly use: LineUse
  /** Dashes and gaps in mm. */
  readonly dash?: readonly [number, number]
}

/** An ellipse in outline: a chain. */
export interface PlacedEllipse {
  readonly kind: 'ellipse'
  readonly page: number
  readonly x: number
  readonly y: number
  readonly rx: number
  readonly ry: number
  /** Turned clockwise, in degrees. */
  readonly turn?: number
  readonly weight: number
}

export type Placed = PlacedText | PlacedBox | PlacedLine | PlacedEllipse

/** What a part of the page is to somebody who hears it: standard structure types of PDF. */
export type TagType =
  | 'Document' | 'H1' | 'H2' | 'H3' | 'P' | 'Span' | 'Link' | 'Figure' | 'Form' | 'L' | 'LI' | 'Lbl' | 'LBody'
  | 'Table' | 'THead' | 'TBody' | 'TR' | 'TH' | 'TD'

/** A node of the structure tree. Its leaves are the placed boxes themselves, in reading order. */
export interface Tag {
  readonly type: TagType
  readonly children: (Tag | Placed)[]
  /** Of a TH: which cells it is the head of. */
  readonly scope?: 'Row' | 'Column'
  readonly colSpan?: number
  readonly rowSpan?: number
  /** Of a list. */
  readonly numbering?: 'Decimal' | 'None'
  /** Of a figure, in words. */
  readonly alt?: string
  /** What a box stands for that is drawn in the place of a character. */
  readonly actual?: string
  /** Of a link: an address, or `#` and the name of an anchor. */
  readonly href?: string
}

/** A page without its tagged boxes: what only rules it, and what is repeated from page to page. */
export interface PageFurniture {
  readonly ruling: Placed[]
  readonly pagination: Placed[]
}

/** A bookmark. */
export interface Bookmark {
  readonly title: string
  readonly page: number
  /** In mm from the top of the page. */
  readonly y: number
}

/** A whole document, laid out. Plain data: drawing it needs no more knowledge of patterns. */
export interface LaidOut {
  readonly pages: readonly PageFurniture[]
  readonly root: Tag
  readonly bookmarks: readonly Bookmark[]
  /** Places that links inside the document lead to: a link to `#name` goes to the anchor `name`. */
  readonly anchors: ReadonlyMap<string, Omit<Bookmark, 'title'>>
}

/** Whether a child of a tag is a tag itself. */
export function isTag(child: Tag | Placed): child is Tag {
  return 'children' in child
}
