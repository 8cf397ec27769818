/** So many stitches and rows over a distance in centimetres. */
export interface GaugeFigures {
  readonly sts: number
  readonly rows: number
  readonly over: number
}

/** How wide so many stitches lie, in centimetres: stitches ÷ stitches per centimetre. */
export function widthOf(stitches: number, gauge: GaugeFigures): number {
  return (stitches * gauge.over) / gauge.sts
}

/** How long so many rows stand, in centimetres. */
export function lengthOf(rows: number, gauge: GaugeFigures): number {
  return (rows * gauge.over) / gauge.rows
}

/** How far a round piece measures straight across, in centimetres, when its widest round has so many stitches. */
export function diameterOf(stitches: number, gauge: GaugeFigures): number {
  return widthOf(stitches, gauge) / Math.PI
}

/** How many stitches a width in centimetres takes, not rounded: measurement × gauge = count. */
export function stitchesFor(cm: number, gauge: GaugeFigures): number {
  return (cm * gauge.sts) / gauge.over
}

/** How many rows a length in centimetres takes, not rounded. */
export function rowsFor(cm: number, gauge: GaugeFigures): number {
  return (cm * gauge.rows) / gauge.over
}
