import type { WorkedRow } from '../fabric/worked-row.ts'
import { aboveForm } from './above.ts'
import { ballForm } from './ball.ts'
import { flatForm } from './flat.ts'
import { rowWidth, workedStitches, type InkedRow, type StitchSize } from './gauge.ts'
import { loopStrokes } from './loop.ts'
import type { Form, PieceDrawing } from './piece-drawing.ts'
import { fewEnough, room, scaleFor } from './scale.ts'
import { sideForm } from './side.ts'

/** A piece to draw, or one that goes on from it. */
export interface DrawnPart {
  readonly shape?: 'flat' | 'tube' | 'cone' | 'ball'
  readonly rows: readonly InkedRow[]
}

export interface ToDraw {
  /** The piece, and after it those that go on from it. */
  readonly parts: readonly DrawnPart[]
  /** Stitches of a cord that stands on the piece as a loop. */
  readonly loop?: number
  /** Left out when the pattern gives no gauge: the drawing is then not to scale. */
  readonly size?: StitchSize
  /** How wide the piece is, in mm, when the pattern says it. */
  readonly across?: number
  /** Worn on a body: a closed piece begins at its top and goes over a head. */
  readonly worn: boolean
}

/** A line or two are no picture of anything. */
const fewest = 3

/** Draws a piece from its rows. Undefined when rows could not be counted, so that there is nothing true to draw, or are too few. */
export function drawPiece({ parts, loop, size, across, worn }: ToDraw): PieceDrawing | undefined {
  const counted = parts.map((part) => ({ ...part, rows: part.rows.filter(({ row }) => workedStitches(row.fabric.made).length > 0) }))
  const [main] = counted
  if (!main || main.rows.length < fewest || counted.some(({ rows }) => rows.some(({ row }) => row.verdict === 'cannot-tell'))) return undefined
  const form = formOf(counted, { size: size ?? { width: 1, height: 1 }, worn, ...(across === undefined ? {} : { across }) })
  if (!form) return undefined
  if (size) return atScale(form, scaleFor(form), loop, true)
  // Without a gauge one stitch is as wide as a row is high, and the piece fills its room.
  const unit = Math.min(room.width / form.width, room.height / form.height)
  const fitted = formOf(counted, { size: { width: unit, height: unit }, worn })
  return fitted && atScale(fitted, 1, loop, false)
}

interface FormSetting {
  readonly size: StitchSize
  readonly across?: number
  readonly worn: boolean
}

function formOf(parts: readonly DrawnPart[], setting: FormSetting): Form | undefined {
  const [main, ...others] = parts
  if (!main) return undefined
  if (main.shape === 'ball') return ballForm(main.rows, setting)
  if (!inRounds(main.rows)) {
    const border = others.filter(({ rows }) => inRounds(rows)).flatMap(({ rows }) => rows)
    const goingOn = others.filter(({ rows }) => !inRounds(rows)).flatMap(({ rows }) => rows)
    return flatForm([...main.rows, ...goingOn], { size: setting.size, border })
  }
  const all = parts.flatMap((part) => part.rows).filter(({ row }) => row.word === 'round')
  return isFlat(parts, all) ? aboveForm(all, setting) : sideForm(all, setting)
}

const inRounds = (rows: readonly InkedRow[]): boolean => rows[0]?.row.word === 'round'

/** A disc grows by six stitches or more a round; one with a few straight rounds at its edge is no tube yet. */
const flattest = 5

/** Whether rounds lie flat: said so of every piece, or, where nothing is said, grown from the middle as fast as a disc. */
function isFlat(parts: readonly DrawnPart[], rows: readonly InkedRow[]): boolean {
  const shapes = parts.flatMap(({ shape }) => shape ?? [])
  if (shapes.length > 0) return shapes.every((shape) => shape === 'flat')
  const last = rows.at(-1)
  const grows = rows.every(({ row }, at) => at === 0 || rowWidth(row) >= rowWidth(rows[at - 1]?.row ?? row))
  return last !== undefined && grows && begins(rows[0]?.row) && rowWidth(last.row) >= flattest * rows.length
}

const begins = (row: WorkedRow | undefined): boolean => row?.fabric.made.some(({ into }) => into?.kind === 'ring' || into?.kind === 'ch') ?? false

function atScale(form: Form, scale: number, loop: number | undefined, toScale: boolean): PieceDrawing {
  const { strokes, everyRow, marked } = fewEnough(form, scale)
  const { view, width, height, outlines, dimensions, legend } = form
  return {
    view, ...(toScale ? { scale } : {}), width, height, strokes, outlines, dimensions,
    ...(loop === undefined ? {} : { loop: loopStrokes(loop, { middle: width / 2, scale }) }),
    rowLines: form.plainRows(scale).flatMap((row) => row.strokes),
    legend: marked ? legend : { ...withoutMarks, ...(legend.heavy === undefined ? {} : { heavy: legend.heavy }) },
    everyRow, rows: form.rows(scale).length, unseen: form.plainRows(scale).filter((row) => row.strokes.length === 0).length,
  }
}

const withoutMarks = { increases: false, decreases: false, tall: [], chains: false } as const
