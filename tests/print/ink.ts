import type { LaidOut, Placed } from '../../src/print/sheet/placed.ts'
import { frameOf, onPage, overlap } from './placed-tree.ts'

export const describeOne = (one: Placed) => (one.kind === 'text' ? `"${one.text}"` : one.kind) + ` on page ${one.page + 1}`

/** Pairs of boxes on a page whose ink would touch. Lines are thin and meet on purpose, cells of a grid share theirs; words and boxes must keep clear. */
export function touching(laidOut: LaidOut, cell: number): readonly string[] {
  return laidOut.pages.flatMap((_, page) => {
    const all = onPage(laidOut, page).map((one) => ({ one, frame: frameOf(one) }))
    const solid = all.filter(({ one }) => one.kind === 'text' || (one.kind === 'box' && one.weight !== cell))
    return solid.flatMap((a, at) => {
      const others = [...solid.slice(at + 1), ...all.filter(({ one }) => one.kind === 'line' && one.use !== 'repeat')]
      return others
        .filter((b) => overlap(a.frame, b.frame) > 0.05 && !(a.one.kind === 'box' && b.one.kind === 'line'))
        .map((b) => `${describeOne(a.one)} and ${describeOne(b.one)}`)
    })
  })
}

/** What stands outside the live area, 18 to 196 mm across and 14 to 265.4 mm down. */
export function outside(laidOut: LaidOut): readonly string[] {
  return laidOut.pages.flatMap((_, page) => onPage(laidOut, page)).filter((one) => {
    const { left, right, top, bottom } = frameOf(one)
    // Only the bar beside a corrected row may stand in the margin.
    if (one.kind === 'line' && one.use === 'change') return left < 14.5 || right > 15.5
    return left < 17.99 || right > 196.01 || top < 13.74 || bottom > 265.41
  }).map(describeOne)
}
