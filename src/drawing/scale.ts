import type { Form, RowStrokes, Stroke } from './piece-drawing.ts'

/** The room that a piece may fill, in mm on paper. */
export const room = { width: 96, height: 120 }
/** How many times smaller a piece may be drawn. */
export const steps = [1, 2, 4, 6, 8, 10, 12, 16, 20, 24, 32, 40]
/** More strokes than these are a grey patch, and cost more ink than they are worth. */
export const mostStrokes = 1500

/** Whether a piece fits the room when it is drawn so many times smaller. */
export function fits({ width, height }: Pick<Form, 'width' | 'height'>, scale: number): boolean {
  return width <= room.width * scale && height <= room.height * scale
}

/** The largest scale at which a piece fits its room, as how many times smaller it is then. */
export function scaleFor(form: Pick<Form, 'width' | 'height'>): number {
  const { width, height } = form
  return steps.find((step) => fits(form, step)) ?? Math.ceil(Math.max(width / room.width, height / room.height))
}

/** What is drawn of a piece. */
export interface Drawn {
  readonly strokes: readonly Stroke[]
  readonly everyRow: number
  /** Whether single stitches are marked. */
  readonly marked: boolean
}

/** The strokes of a piece: all of its rows with their marks; where those are too many every second row, or the rows alone, every second or fourth of them if need be. */
export function fewEnough(form: Form, scale: number): Drawn {
  const rows = form.rows(scale)
  const tries: readonly Drawn[] = [
    { strokes: strokesOf(rows, 1), everyRow: 1, marked: true },
    // Seen from above each round stands on the one before it: none can be left out.
    ...(form.view === 'above' ? [] : [{ strokes: strokesOf(rows, 2), everyRow: 2, marked: true }]),
  ]
  const found = tries.find(({ strokes }) => strokes.length <= mostStrokes)
  if (found) return found
  const plain = form.plainRows(scale)
  let everyRow = 1
  while (strokesOf(plain, everyRow).length > mostStrokes) everyRow *= 2
  return { strokes: strokesOf(plain, everyRow), everyRow, marked: false }
}

/** The last row stays: it is the edge of the piece. */
function strokesOf(rows: readonly RowStrokes[], every: number): readonly Stroke[] {
  return rows.filter((_, at) => at % every === 0 || at === rows.length - 1).flatMap(({ strokes, marks }) => [...strokes, ...marks])
}
