import { yarnRuns, type InkedRow } from './gauge.ts'
import { line, pens, rowWeight } from './pens.ts'
import type { LineStroke } from './piece-drawing.ts'

/** A round of a solid as it is seen from the side. Lengths in mm of the piece. */
export interface SeenRound {
  readonly middle: number
  readonly reach: number
  /** Where its upper edge lies, and its lower edge. */
  readonly level: number
  readonly foot: number
  readonly scale: number
}

/** Stitches narrower than this, in mm on paper, are no marks of their own: a heavy line stands for them. */
const narrowest = 1.2

/**
 * The front half of a round: one line, and of a round in several colours a heavy mark for each stitch in another yarn than the first, or a
 * heavy stretch where stitches are too small for marks.
 */
export function roundLine(inked: InkedRow | undefined, { middle, reach, level, foot, scale }: SeenRound): readonly LineStroke[] {
  const { yarns } = inked ?? {}
  const whole = (yarn: number) => line([middle - reach, level], [middle + reach, level], rowWeight(yarn, Math.abs(level - foot) / scale))
  if (!yarns) return [whole(inked?.yarn ?? 0)]
  const turn = (at: number) => (at / yarns.length - 0.5) * 2 * Math.PI
  const seen = (at: number) => Math.sin(Math.max(-Math.PI / 2, Math.min(Math.PI / 2, turn(at))))
  const width = (2 * Math.PI * reach) / yarns.length
  if (width / scale < narrowest) {
    const runs = yarnRuns(yarns).filter(({ yarn, from, to }) => yarn > 0 && seen(to) - seen(from) > 1e-6)
    return [whole(0), ...runs.map(({ from, to }) => line([middle + reach * seen(from), level], [middle + reach * seen(to), level], pens.heavyRun))]
  }
  const high = (level + foot) / 2
  const half = 0.36 * (level - foot)
  return [whole(0), ...yarns.flatMap((yarn, at) => {
    const angle = turn(at + 0.5)
    if (yarn === 0 || Math.abs(angle) > (86 * Math.PI) / 180) return []
    const [x, arm] = [middle + reach * Math.sin(angle), 0.36 * width * Math.cos(angle)]
    return [line([x - arm, high], [x + arm, high], pens.heavyMark), line([x, high - half], [x, high + half], pens.heavyMark)]
  })]
}
