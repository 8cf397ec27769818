import type { Booklet, DrawingText } from '../booklet/booklet.ts'
import { drawnPaths } from './drawn-paths.ts'

/** Pixels for each mm of a piece on the shelf: 4 px are 1 cm. */
const pixels = 0.4
/** A flat piece so many times longer than wide lies on its side. */
const long = 1.6
/** Room for the outline's own line, in px. */
const around = 1

/** A piece on the shelf. Lengths in px. */
export interface ShelfPiece {
  readonly slug: string
  readonly number: string
  readonly title: string
  readonly width: number
  readonly height: number
  /** The box of the drawing, in mm of the piece as it stands. */
  readonly viewBox: string
  /** Turns the piece on its side. */
  readonly turned?: string
  readonly rows: string
  readonly outline: string
}

/** A piece as it stands on the shelf; undefined where it is not drawn to scale. */
export function shelfPiece(booklet: Booklet): ShelfPiece | undefined {
  return booklet.drawing?.drawing.scale === undefined ? undefined : pieceOf(booklet, booklet.drawing.drawing)
}

function pieceOf({ slug, number, title }: Booklet, drawing: DrawingText['drawing']): ShelfPiece {
  const { width, height, view, loop, rowLines, outlines } = drawing
  const lies = view === 'flat' && height > long * width
  const above = loop?.height ?? 0
  const [across, up] = lies ? [height, width] : [width, height + above]
  const edge = around / pixels
  const paths = (strokes: DrawingText['drawing']['strokes']) => drawnPaths(strokes).map(({ d }) => d).join('')
  return {
    slug, title, number: number === undefined ? '' : String(number), width: Math.ceil(across * pixels + 2 * around), height: Math.ceil(up * pixels + 2 * around),
    viewBox: [-edge, (lies ? 0 : -above) - edge, across + 2 * edge, up + 2 * edge].map((value) => String(Math.round(value * 10) / 10)).join(' '),
    // Its first row is then at the left, its last at the right.
    ...(lies ? { turned: `translate(${Math.round(height * 10) / 10} 0) rotate(90)` } : {}),
    rows: paths(rowLines),
    outline: outlines.map((points) => `M${points.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`).join('L')}Z`).join('') + paths(loop?.strokes ?? []),
  }
}
