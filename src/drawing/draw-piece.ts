import type { WorkedRow } from '../fabric/worked-row.ts'
import { aboveForm } from './above.ts'
import { ballForm } from './ball.ts'
import { flatForm } from './flat.ts'
import { rowWidth, workedStitches, type InkedRow, type StitchSize } from './gauge.ts'
import { limbsOf } from './limbs.ts'
import { loopStrokes } from './loop.ts'
import type { Form, PieceDrawing } from './piece-drawing.ts'
import { fewEnough, room, scaleFor } from './scale.ts'
import { sideForm } from './side.ts'
import { sideBySide } from './side-by-side.ts'
import { turnedOver } from './turned-over.ts'

/** A piece to draw, or one that goes on from it. */
export interface DrawnPart {
  readonly shape?: 'flat' | 'tube' | 'cone' | 'ball'
  readonly rows: readonly InkedRow[]
  /** How many are made: two sleeves of one text. */
  readonly make?: number
}

/** A piece with those that go on from it, after it. */
export interface DrawnPiece {
  readonly parts: readonly DrawnPart[]
  /** How wide the piece is, in mm, when the pattern says it. */
  readonly across?: number
  /** Drawn with its first row at the top, as it hangs or lies when it is done. */
  readonly upsideDown?: boolean
}

export interface ToDraw extends DrawnPiece {
  /** Other pieces, which stand beside the first. */
  readonly beside?: readonly DrawnPiece[]
  /** What is written under each of several pieces, the first one included, by its size in mm; without a gauge there is none. */
  readonly words?: (piece: number, size?: { readonly width: number; readonly height: number }) => readonly string[]
  /** Stitches of a cord that stands on the piece as a loop. */
  readonly loop?: number
  /** Left out when the pattern gives no gauge: the drawing is then not to scale. */
  readonly size?: StitchSize
  /** Worn on a body: a closed piece begins at its top and goes over a head. */
  readonly worn: boolean
}

/** A line or two are no picture of anything. */
const fewest = 3

/** Draws a pattern's pieces from their rows. Undefined when rows could not be counted, so that there is nothing true to draw, or are too few. */
export function drawPiece({ beside = [], words, loop, size, worn, ...first }: ToDraw): PieceDrawing | undefined {
  const all = [first, ...beside].map(({ parts, ...piece }) => ({ ...piece, parts: counted(parts) }))
  const told = all.flatMap((piece, at) => (piece.parts.reduce((sum, { rows }) => sum + rows.length, 0) >= fewest && piece.parts.every(isTold) ? [{ ...piece, at }] : []))
  const [main] = told
  if (!main) return undefined
  const formOfAll = (stitch: StitchSize, toScale: boolean) => told.flatMap(({ parts, across, upsideDown, at }) => {
    const own = formOf(parts, { size: stitch, worn, ...(across === undefined || !toScale ? {} : { across }) })
    const form = own && upsideDown === true && own.view === 'flat' ? turnedOver(own) : own
    return form ? [{ form, at }] : []
  })
  const forms = formOfAll(size ?? { width: 1, height: 1 }, true)
  const [only] = forms
  if (!only) return undefined
  // Without a gauge one stitch is as wide as a row is high, and the pieces fill their room.
  const unit = Math.min(...forms.map(({ form }) => Math.min(room.width / form.width, room.height / form.height))) / Math.sqrt(forms.length)
  const drawn = size ? forms : formOfAll({ width: unit, height: unit }, false)
  const [alone, another] = drawn
  if (alone && !another) return atScale(alone.form, { scale: size ? scaleFor(alone.form) : 1, toScale: size !== undefined, ...(loop === undefined ? {} : { loop }) })
  const { form, scale } = sideBySide(drawn.map(({ form: own, at }) => ({ form: own, words: words?.(at, size && { width: own.width, height: own.height }) ?? [] })))
  return atScale(form, { scale, toScale: size !== undefined })
}

/** Rows that have stitches: what is worked in chains alone has no line, and slip stitches lie on the fabric. */
function counted(parts: readonly DrawnPart[]): readonly DrawnPart[] {
  const stands = ({ row }: InkedRow) => workedStitches(row.fabric.made).some(({ kind }) => kind !== 'sl st')
  return parts.map((part) => ({ ...part, rows: part.rows.filter(stands) })).filter(({ rows }) => rows.length > 0)
}

const isTold = ({ rows }: DrawnPart): boolean => rows.every(({ row }) => row.verdict !== 'cannot-tell')

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
  if (isFlat(parts, all)) return aboveForm(all, setting)
  const { trunk, limbs } = limbsOf(parts.map((part) => ({ ...part, rows: part.rows.filter(({ row }) => row.word === 'round') })))
  return sideForm(trunk, { ...setting, limbs })
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

function atScale(form: Form, { scale, toScale, loop }: { readonly scale: number; readonly toScale: boolean; readonly loop?: number }): PieceDrawing {
  const { strokes, everyRow, marked } = fewEnough(form, scale)
  const { view, width, height, outlines, dimensions, captions = [], legend } = form
  return {
    view, ...(toScale ? { scale } : {}), width, height, strokes, outlines, dimensions, captions,
    ...(loop === undefined ? {} : { loop: loopStrokes(loop, { middle: width / 2, scale }) }),
    rowLines: form.plainRows(scale).flatMap((row) => row.strokes),
    legend: marked ? legend : { ...withoutMarks, ...(legend.heavy === undefined ? {} : { heavy: legend.heavy }) },
    everyRow, rows: form.rows(scale).length, unseen: form.plainRows(scale).filter((row) => row.strokes.length === 0).length,
  }
}

const withoutMarks = { increases: false, decreases: false, tall: [], chains: false } as const
