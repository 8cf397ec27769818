import type { Placed, PlacedBox, PlacedEllipse, PlacedLine } from '../sheet/placed.ts'
import { acrossPage, digits, fromBottom, points, upPage } from './numbers.ts'

/** Operators for lines, ellipses and pencil boxes, those of one weight and dash together. Everything is black; ends are butt, those of a drawing's strokes round. */
export function drawLines(placed: readonly Placed[]): string {
  const groups = new Map<string, { readonly paths: string[]; readonly whole: string[] }>()
  for (const one of placed) {
    if (one.kind === 'text') continue
    const dash = one.kind === 'line' && one.dash ? `[${one.dash.map(acrossPage).join(' ')}] 0 d` : '[] 0 d'
    const ends = one.kind === 'line' && one.use === 'drawing' ? '1 J' : '0 J'
    const pen = `${digits(one.weight)} w ${ends} ${dash}`
    const known = groups.get(pen) ?? { paths: [], whole: [] }
    groups.set(pen, known)
    if (one.kind === 'ellipse') known.whole.push(ellipse(one))
    else known.paths.push(pathOf(one))
  }
  return [...groups].map(([pen, { paths, whole }]) => [pen, ...whole, ...(paths.length === 0 ? [] : [...paths, 'S'])].join('\n')).join('\n')
}

function pathOf(one: PlacedLine | PlacedBox): string {
  if (one.kind === 'line') return pathOfLine(one)
  return `${acrossPage(one.x)} ${upPage(one.y + one.side)} ${acrossPage(one.side)} ${acrossPage(one.side)} re`
}

/** A tenth of a point, a thirtieth of a mm: strokes of a drawing are many, and no finer on any printer. */
const coarse = (value: number) => digits(Math.round(value * 10) / 10)

function pathOfLine({ x1, y1, x2, y2, use }: PlacedLine): string {
  if (use === 'drawing') return `${coarse(points(x1))} ${coarse(fromBottom(y1))} m ${coarse(points(x2))} ${coarse(fromBottom(y2))} l`
  return `${acrossPage(x1)} ${upPage(y1)} m ${acrossPage(x2)} ${upPage(y2)} l`
}

/**
 * An ellipse about the page's corner, moved to its place: chains are alike, and what is written the same each time packs to nothing. Four Bézier
 * curves; 0.5523 is how long their handles are for a circle of radius 1.
 */
function ellipse({ x, y, rx, ry, turn = 0 }: PlacedEllipse): string {
  const angle = (-turn * Math.PI) / 180
  const turned = [Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle)].map((value) => String(Math.round(value * 1000) / 1000 + 0))
  const handle = 0.5523
  const at = (u: number, v: number) => `${digits(points(u * rx))} ${digits(points(v * ry))}`
  const path = [
    `${at(1, 0)} m`,
    `${at(1, handle)} ${at(handle, 1)} ${at(0, 1)} c`,
    `${at(-handle, 1)} ${at(-1, handle)} ${at(-1, 0)} c`,
    `${at(-1, -handle)} ${at(-handle, -1)} ${at(0, -1)} c`,
    `${at(handle, -1)} ${at(1, -handle)} ${at(1, 0)} c h`,
  ].join(' ')
  return `q ${turned.join(' ')} ${coarse(points(x))} ${coarse(fromBottom(y))} cm ${path} S Q`
}
