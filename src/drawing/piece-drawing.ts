/** A place on a drawing in mm of the real piece, from its top left corner: across, then down. */
export type Point = readonly [x: number, y: number]

/** A straight stroke. Places in mm of the real piece; `weight` in mm on paper, whatever the scale. */
export interface LineStroke {
  readonly kind: 'line'
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly weight: number
}

/** An ellipse in outline: a chain, a stitch in a third colour, a round seen from above. Turned clockwise, in degrees. */
export interface EllipseStroke {
  readonly kind: 'ellipse'
  readonly x: number
  readonly y: number
  readonly rx: number
  readonly ry: number
  readonly turn: number
  readonly weight: number
}

export type Stroke = LineStroke | EllipseStroke

/**
 * How the piece is looked at: a ball, a flat thing, a solid of rounds from the side, a disc or a block of rounds from above, or several
 * pieces beside one another in more ways than one.
 */
export type View = 'ball' | 'flat' | 'side' | 'above' | 'several'

/** What is measured beside a drawing: a stretch of its width or of its height, in mm of the real piece. */
export interface Dimension {
  readonly side: 'below' | 'left' | 'right'
  readonly from: number
  readonly to: number
  /** What the stretch stands for: its length, the way around it, how many rounds it has. */
  readonly says: 'length' | 'around' | 'rounds'
  readonly value: number
}

/** Words under a piece that stands among others: the middle of their first line, in mm of the real piece. */
export interface Caption {
  readonly x: number
  readonly y: number
  readonly lines: readonly string[]
}

/** What a mark stands for, as far as a caption must say it. `stitch` is a US word, or `stitch` where kinds are mixed. */
export interface Legend {
  readonly cross?: string
  readonly increases: boolean
  readonly decreases: boolean
  /** Kinds drawn as a T (US words). */
  readonly tall: readonly string[]
  readonly chains: boolean
  /** Places among the yarns (from 0) of what is drawn heavy, and as circles. */
  readonly heavy?: number
  readonly circles?: number
}

/** A piece drawn from its own worked rows: one mark a stitch, or one line a row. Plain shapes that print and web both draw. */
export interface PieceDrawing {
  readonly view: View
  /** How many times larger the piece is than its drawing: 1, 2, 4, 6 …; left out when it is not drawn to scale. */
  readonly scale?: number
  /** In mm of the real piece; of the paper when it is not to scale. */
  readonly width: number
  readonly height: number
  readonly strokes: readonly Stroke[]
  /** A loop on top of the piece: it stands over the drawing's top edge, at negative heights. `height` in mm of the piece. */
  readonly loop?: { readonly height: number; readonly strokes: readonly Stroke[] }
  /** The edges of the piece, each a closed line. */
  readonly outlines: readonly (readonly Point[])[]
  /** One stroke or more for each row, without marks of stitches: for a drawing that is too small for them. */
  readonly rowLines: readonly Stroke[]
  readonly dimensions: readonly Dimension[]
  /** Of several pieces, what each is; empty for one. */
  readonly captions: readonly Caption[]
  readonly legend: Legend
  /** 1 when all rows are drawn, 2 when every second is, 4 when every fourth is. */
  readonly everyRow: number
  /** Rows or rounds that the piece has. */
  readonly rows: number
  /** Rounds that lie flat under the piece, so that nothing is seen of them from its side. */
  readonly unseen: number
}

/** A row on its way into a drawing. */
export interface RowStrokes {
  /** The line of the row, or its marks. */
  readonly strokes: readonly Stroke[]
  /** Marks laid over the line. */
  readonly marks: readonly Stroke[]
}

/** A piece before a scale is chosen. Lengths in mm of the real piece. */
export interface Form {
  readonly view: View
  readonly width: number
  readonly height: number
  readonly outlines: readonly (readonly Point[])[]
  readonly dimensions: readonly Dimension[]
  readonly captions?: readonly Caption[]
  readonly legend: Legend
  /** Rows from first to last, drawn so many times smaller. */
  readonly rows: (scale: number) => readonly RowStrokes[]
  /** The same with one line a row, where the marks would be too many. */
  readonly plainRows: (scale: number) => readonly RowStrokes[]
}
