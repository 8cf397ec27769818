import type { Form, LineStroke, Point, RowStrokes, Stroke } from './piece-drawing.ts'
import { room, steps } from './scale.ts'

/** A piece that is drawn beside others, with the words under it, one line each. */
export interface Neighbour {
  readonly form: Form
  readonly words: readonly string[]
}

/** In mm on paper: between pieces, between a piece and its words, from line to line of them, and the width of one letter of them. */
const space = { between: 7, words: 2.4, line: 4, letter: 1.55 }

/** Several pieces have their measures under them and none beside them, so that they may fill more of the page than one, in mm on paper. */
const wide = 112
const fits = ({ width, height }: Pick<Form, 'width' | 'height'>, scale: number): boolean => width <= wide * scale && height <= room.height * scale

/** The most lines of pieces, one under the other. */
const mostLines = 3

/** Pieces beside one another at one scale, the largest at which they fit the room: in one line, or in two or three where that is larger. */
export function sideBySide(neighbours: readonly Neighbour[]): { readonly form: Form; readonly scale: number } {
  for (const scale of steps) {
    for (let lines = 1; lines <= Math.min(mostLines, neighbours.length); lines += 1) {
      const form = placedIn(inLines(neighbours, lines, scale), scale)
      if (fits(form, scale)) return { form, scale }
    }
  }
  const form = placedIn([neighbours], 1)
  const scale = Math.ceil(Math.max(form.width / wide, form.height / room.height))
  return { form: placedIn([neighbours], scale), scale }
}

const cellWidth = ({ form, words }: Neighbour, scale: number) => Math.max(form.width, Math.max(0, ...words.map(({ length }) => length)) * space.letter * scale)
const cellHeight = ({ form, words }: Neighbour, scale: number) => form.height + (words.length === 0 ? 0 : space.words + words.length * space.line) * scale

/** Pieces in so many lines, in their order, each line as full as the widest must be. */
function inLines(all: readonly Neighbour[], count: number, scale: number): readonly (readonly Neighbour[])[] {
  const widths = all.map((one) => cellWidth(one, scale) + space.between * scale)
  const most = widths.reduce((sum, width) => sum + width, 0) / count
  const lines: Neighbour[][] = [[]]
  let so = 0
  for (const [at, one] of all.entries()) {
    const width = widths[at] ?? 0
    const line = lines.at(-1)
    if (line && line.length > 0 && lines.length < count && so + width / 2 > most) {
      lines.push([one])
      so = width
    } else {
      line?.push(one)
      so += width
    }
  }
  return lines
}

interface PlacedPiece {
  readonly one: Neighbour
  readonly dx: number
  readonly dy: number
  /** Where its words stand. */
  readonly x: number
  readonly y: number
}

/** Each line of pieces stands on one base line; lines are centred over one another. */
function placedIn(lines: readonly (readonly Neighbour[])[], scale: number): Form {
  const gap = space.between * scale
  const lineWidth = (line: readonly Neighbour[]) => line.reduce((sum, one) => sum + cellWidth(one, scale), 0) + gap * (line.length - 1)
  const width = Math.max(...lines.map(lineWidth))
  const placed: PlacedPiece[] = []
  let top = 0
  for (const line of lines) {
    const base = top + Math.max(...line.map(({ form }) => form.height))
    let left = (width - lineWidth(line)) / 2
    for (const one of line) {
      const cell = cellWidth(one, scale)
      placed.push({ one, dx: left + (cell - one.form.width) / 2, dy: base - one.form.height, x: left + cell / 2, y: base + space.words * scale })
      left += cell + gap
    }
    top = base + Math.max(...line.map((one) => cellHeight(one, scale) - one.form.height)) + gap
  }
  return together(placed, { width, height: top - gap })
}

function together(placed: readonly PlacedPiece[], { width, height }: { readonly width: number; readonly height: number }): Form {
  const forms = placed.map(({ one }) => one.form)
  const legends = forms.map(({ legend }) => legend)
  const crosses = [...new Set(legends.flatMap(({ cross }) => cross ?? []))]
  const heavy = legends.find((legend) => legend.heavy !== undefined)?.heavy
  const circles = legends.find((legend) => legend.circles !== undefined)?.circles
  const views = new Set(forms.map(({ view }) => view))
  const [view] = views
  const rowsOf = (of: 'rows' | 'plainRows') => (scale: number): readonly RowStrokes[] =>
    placed.flatMap(({ one, dx, dy }) => one.form[of](scale).map(({ strokes, marks }) => ({ strokes: strokes.map((stroke) => moved(stroke, dx, dy)), marks: marks.map((stroke) => moved(stroke, dx, dy)) })))
  return {
    view: views.size === 1 && view !== undefined ? view : 'several', width, height,
    outlines: placed.flatMap(({ one, dx, dy }) => one.form.outlines.map((points) => points.map(([x, y]): Point => [x + dx, y + dy]))),
    dimensions: [],
    captions: placed.filter(({ one }) => one.words.length > 0).map(({ one, x, y }) => ({ x, y, lines: one.words })),
    legend: {
      ...(crosses.length === 0 ? {} : { cross: crosses.length === 1 ? crosses[0] ?? 'stitch' : 'stitch' }),
      increases: legends.some(({ increases }) => increases), decreases: legends.some(({ decreases }) => decreases), chains: legends.some(({ chains }) => chains),
      tall: [...new Set(legends.flatMap(({ tall }) => tall))], ...(heavy === undefined ? {} : { heavy }), ...(circles === undefined ? {} : { circles }),
    },
    rows: rowsOf('rows'),
    plainRows: rowsOf('plainRows'),
  }
}

/** A stroke so far across and down from where it was. */
export function moved(stroke: Stroke, dx: number, dy: number): Stroke {
  const at = (value: number) => Math.round(value * 100) / 100 + 0
  if (stroke.kind === 'ellipse') return { ...stroke, x: at(stroke.x + dx), y: at(stroke.y + dy) }
  return { ...stroke, x1: at(stroke.x1 + dx), y1: at(stroke.y1 + dy), x2: at(stroke.x2 + dx), y2: at(stroke.y2 + dy) } satisfies LineStroke
}
