import type { Booklet, DrawingText } from '../booklet/booklet.ts'

/** What a shopper sees of a pattern that is sold: what it makes and needs, and none of the work. */
export function withoutRows(booklet: Booklet): Booklet {
  const { key: _row, drawing, ...rest } = booklet
  return {
    ...rest, ...(drawing ? { drawing: withoutStitches(drawing) } : {}), parts: rest.parts.map((part) => ({ ...part, line: '', lines: [] })), specialStitches: [], before: [], after: [],
  }
}

/** The piece as lines of rows: single stitches would be the work itself. */
function withoutStitches({ drawing, scale, alt }: DrawingText): DrawingText {
  const word = drawing.view === 'flat' ? 'row' : 'round'
  const strokes = drawing.rowLines
  return { drawing: { ...drawing, strokes }, dimensions: [], scale, caption: `Each line is one ${word}.`, alt: alt.replace(/, drawn from .*$/s, '.') }
}
