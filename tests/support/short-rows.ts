/**
 * Short rows as a person keeps them apart: every row is a heap of loops on the needle of a finger, what a row leaves at its end is put
 * on a pin with the number of the row that it belongs to. Rows go to and fro, so each side has its own pins, the newest nearest the
 * hook. It knows nothing else, and shares nothing with the engine.
 */
export interface Pin {
  /** The row whose stitches wait. */
  readonly ofRow: number
  readonly stitches: number
}

export interface ShortRow {
  readonly number: number
  /** Stitches of the row below that it works. */
  readonly over: number
  /** Stitches of the row below that it puts on a pin. */
  readonly leaves: number
  /** Pins that it goes on to, in its order. */
  readonly takes: readonly Pin[]
}

/** A piece of short rows, and what still waits at each of its sides. */
export class ShortRows {
  readonly rows: ShortRow[] = []
  private onHook: number
  private readonly sides: readonly [Pin[], Pin[]] = [[], []]

  constructor(width: number) {
    this.onHook = width
    this.rows.push({ number: 1, over: width, leaves: 0, takes: [] })
  }

  /** Stitches of the last row. */
  get stitches(): number {
    return this.onHook
  }

  /** Pins at the side where the next row ends, the nearest first. */
  get ahead(): readonly Pin[] {
    return this.sides[this.side()].toReversed()
  }

  /** The next row leaves stitches at its end. */
  leave(stitches: number): void {
    const number = this.rows.length + 1
    const over = this.onHook - stitches
    this.sides[this.side()].push({ ofRow: number - 1, stitches })
    this.rows.push({ number, over, leaves: stitches, takes: [] })
    this.onHook = over
  }

  /** The next row works all of the row below and goes on over so many pins. */
  take(pins: number): void {
    const side = this.sides[this.side()]
    const takes = Array.from({ length: pins }, () => side.pop()).filter((pin) => pin !== undefined)
    this.rows.push({ number: this.rows.length + 1, over: this.onHook, leaves: 0, takes })
    this.onHook += takes.reduce((sum, { stitches }) => sum + stitches, 0)
  }

  private side(): 0 | 1 {
    return this.rows.length % 2 === 0 ? 0 : 1
  }
}
