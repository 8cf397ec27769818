import { mmPerPoint } from '../sheet/measures.ts'
import type { Placed, PlacedEllipse, PlacedLine } from '../sheet/placed.ts'
import { acrossPage, digits, fromBottom, points, upPage } from './numbers.ts'

/** Operators for lines, ellipses and pencil boxes, those of one weight and dash together. Everything is black; ends are butt, those of a drawing's strokes round. */
export function drawLines(placed: readonly Placed[]): string {
  const groups = new Map<string, string[]>()
  for (const one of placed) {
    if (one.kind === 'text') continue
    const dash = one.kind === 'line' && one.dash ? `[${one.dash.map(acrossPage).join(' ')}] 0 d` : '[] 0 d'
    const ends = one.kind === 'line' && one.use === 'drawing' ? '1 J' : '0 J'
    const pen = `${digits(one.weight)} w ${ends} ${dash}`
    const paths = groups.get(pen)
    if (paths) paths.push(pathOf(one))
    else groups.set(pen, [pathOf(one)])
  }
  return [...groups].map(([pen, paths]) => `${pen}\n${paths.join('\n')}\nS`).join('\n')
}

function pathOf(one: Exclude<Placed, { kind: 'text' }>): string {
  if (one.kind === 'line') return pathOfLine(one)
  if (one.kind === 'ellipse') return pathOfEllipse(one)
  return `${acrossPage(one.x)} ${upPage(one.y + one.side)} ${acrossPage(one.side)} ${acrossPage(one.side)} re`
}

/** A tenth of a point, a thirtieth of a mm: strokes of a drawing are many, and no finer on any printer. */
const coarse = (value: number) => digits(Math.round(value * 10) / 10)

function pathOfLine({ x1, y1, x2, y2, use }: PlacedLine): string {
  if (use === 'drawing') return `${coarse(points(x1))} ${coarse(fromBottom(y1))} m ${coarse(points(x2))} ${coarse(fromBottom(y2))} l`
  return `${acrossPage(x1)} ${upPage(y1)} m ${acrossPage(x2)} ${upPage(y2)} l`
}

/** Four Bézier curves; 0.5523 is how long their handles are for a circle of radius 1. */
function pathOfEllipse({ x, y, rx, ry, turn = 0 }: PlacedEllipse): string {
  const angle = (-turn * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const handle = 0.5523
  const at = (u: number, v: number) => {
    const [across, up] = [u * rx, v * ry]
    return `${coarse(points(x + across * cos - up * sin))} ${coarse(fromBottom(y) + (across * sin + up * cos) / mmPerPoint)}`
  }
  return [
    `${at(1, 0)} m`,
    `${at(1, handle)} ${at(handle, 1)} ${at(0, 1)} c`,
    `${at(-handle, 1)} ${at(-1, handle)} ${at(-1, 0)} c`,
    `${at(-1, -handle)} ${at(-handle, -1)} ${at(0, -1)} c`,
    `${at(handle, -1)} ${at(1, -handle)} ${at(1, 0)} c h`,
  ].join(' ')
}
