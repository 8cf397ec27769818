import { rowHeight, rowWidth, type InkedRow, type StitchSize } from './gauge.ts'

/** A round of a solid: its radius, and how far along the axis its edges lie from where the first round begins. Mm. */
export interface Belt {
  readonly radius: number
  readonly from: number
  readonly to: number
}

/**
 * The rounds of a solid along its axis. Fabric keeps its height: a round that is wider than the last by so much rises by the less,
 * so that a disc lies flat and a tube stands upright. Where a disc goes over into a tube, the fabric bends in a curve.
 */
export function belts(rows: readonly InkedRow[], { size, worn }: { readonly size: StitchSize; readonly worn: boolean }): readonly Belt[] {
  const solid = asMade(rows, size)
  const heights = rows.map(({ row }) => rowHeight(row, size))
  if (!beginsClosed(rows[0]?.row)) return solid
  if (isStuffed(rows)) return upsideDown(rounded(upsideDown(rounded(solid, heights)), heights.toReversed()))
  return worn ? rounded(solid, heights) : solid
}

/** The rounds of a garment as it is laid flat: each as high as it is, whatever it widens by. */
export function laidFlat(rows: readonly InkedRow[], size: StitchSize): readonly Belt[] {
  let along = 0
  return rows.map(({ row }) => {
    const from = along
    along += rowHeight(row, size)
    return { radius: (rowWidth(row) * size.width) / (2 * Math.PI), from, to: along }
  })
}

/** Closed at both ends: it is stuffed, or it could not be. */
export function isStuffed(rows: readonly InkedRow[]): boolean {
  const widths = rows.map(({ row }) => rowWidth(row))
  return beginsClosed(rows[0]?.row) && (widths.at(-1) ?? 0) < 0.4 * Math.max(...widths)
}

function upsideDown(solid: readonly Belt[]): readonly Belt[] {
  const whole = solid.at(-1)?.to ?? 0
  return solid.toReversed().map(({ radius, from, to }) => ({ radius, from: whole - to, to: whole - from }))
}

function asMade(rows: readonly InkedRow[], size: StitchSize): readonly Belt[] {
  const radii = rows.map(({ row }) => (rowWidth(row) * size.width) / (2 * Math.PI))
  const heights = rows.map(({ row }) => rowHeight(row, size))
  const closedAtStart = beginsClosed(rows[0]?.row)
  const crown = closedAtStart ? crownOf(radii, heights) : []
  const toe = crownOf(radii.toReversed(), heights.toReversed()).toReversed()
  let along = 0
  return radii.map((radius, at) => {
    const height = heights[at] ?? 0
    const before = radii[at - 1] ?? (closedAtStart ? 0 : radius)
    const own = crown[at] ?? toe[at - (radii.length - toe.length)]
    const rise = own ?? Math.sqrt(Math.max(0, height * height - (radius - before) ** 2))
    const from = along
    along += rise
    return { radius, from, to: along }
  })
}

/** What is inside may stretch a round, or pull it in, by so much of the widest at the most. */
const mostStretched = 0.25

/**
 * The same over a head or over stuffing: the closed end bends round it as half a ball, as wide as the piece, and pulls the first straight
 * rounds in with it. A piece whose rounds are far from that shape stays as it is made.
 */
function rounded(solid: readonly Belt[], heights: readonly number[]): readonly Belt[] {
  const full = solid.findIndex(({ radius }, at) => at > 0 && radius <= (solid[at - 1]?.radius ?? 0))
  const radius = solid[full - 1]?.radius ?? 0
  if (full < 3) return solid
  let length = 0
  let along = 0
  const bent = solid.map((belt, at): Belt => {
    const before = length / radius
    length += heights[at] ?? 0
    const turn = Math.min(length / radius, Math.PI / 2)
    const isOver = before < Math.PI / 2
    // The round that goes over the edge of the half ball rises straight for the rest of its height.
    const rise = isOver ? radius * (Math.cos(before) - Math.cos(turn)) + Math.max(0, length - (radius * Math.PI) / 2) : belt.to - belt.from
    const from = along
    along += rise
    return { radius: isOver ? radius * Math.sin(turn) : belt.radius, from, to: along }
  })
  return bent.every((belt, at) => Math.abs(belt.radius - (solid[at]?.radius ?? 0)) <= mostStretched * radius) ? bent : solid
}

const beginsClosed = (row: InkedRow['row'] | undefined): boolean => row?.fabric.made.some(({ into }) => into?.kind === 'ring') ?? false

/**
 * How much each round of a crown rises, from its closed end on: a quarter of an ellipse over rounds that widen until the solid goes
 * straight on. Empty where nothing of the kind is there.
 */
function crownOf(radii: readonly number[], heights: readonly number[]): readonly number[] {
  const full = radii.findIndex((radius, at) => at > 0 && radius <= (radii[at - 1] ?? 0))
  const edge = radii[full - 1] ?? 0
  const goesOn = full > 2 && (radii[full] ?? 0) > 0.97 * edge && (radii[0] ?? edge) < 0.4 * edge
  if (!goesOn) return []
  const length = heights.slice(0, full).reduce((sum, height) => sum + height, 0)
  const depth = ellipseDepth(edge, length)
  const over = radii.slice(0, full).map((radius) => depth * (1 - Math.sqrt(Math.max(0, 1 - (radius / edge) ** 2))))
  return over.map((level, at) => level - (over[at - 1] ?? 0))
}

/** How deep a quarter of an ellipse is that is so wide and so long along its curve: flat when the curve is no longer than it is wide. Found by halving. */
function ellipseDepth(width: number, length: number): number {
  let [low, high] = [0, 2 * length]
  for (let step = 0; step < 40 && length > width; step += 1) {
    const middle = (low + high) / 2
    if (quarterOfEllipse(width, middle) > length) high = middle
    else low = middle
  }
  return low
}

/** Ramanujan's second approximation of 1914, good to a thousandth even for a flat ellipse. */
function quarterOfEllipse(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2
  return (Math.PI / 4) * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
}
