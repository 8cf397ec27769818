import { liveWidth } from '../sheet/measures.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import type { FontRole } from '../type/fonts.ts'

/** Sizes for a title, largest first, in points, with how many lines each may take. Below 40 only a title that no cover could hold otherwise. */
const steps = [
  { size: 74, leading: 70, lines: 1 },
  { size: 62, leading: 62, lines: 1 },
  { size: 50, leading: 50, lines: 1 },
  { size: 50, leading: 48, lines: 2 },
  { size: 40, leading: 40, lines: 3 },
  { size: 28, leading: 30, lines: 5 },
  { size: 20, leading: 23, lines: 8 },
] as const

/** The largest step at which a title fits, and its lines. A word is broken only where not even the smallest step holds it. */
export function titleSetting(title: string, font: FontRole): { readonly size: number; readonly leading: number; readonly lines: readonly Line[] } {
  const tracking = -0.02
  const longest = Math.max(...title.split(/\s+/).map((word) => widest(word, font)))
  for (const { size, leading, lines: most } of steps) {
    if (longest * size > liveWidth) continue
    const lines = breakLines([{ text: title, font }], { size, width: liveWidth, tracking })
    if (lines.length <= most) return { size, leading, lines }
  }
  const { size, leading } = { size: 15, leading: 18 }
  return { size, leading, lines: breakLines([{ text: title, font }], { size, width: liveWidth, tracking }) }
}

/** Width of a word in mm at one point of size. */
function widest(word: string, font: FontRole): number {
  const [line] = breakLines([{ text: word, font }], { size: 1, width: Number.POSITIVE_INFINITY, tracking: -0.02 })
  return (line?.width ?? 0)
}
