import { listOf } from '../diagnostics/words.ts'
import type { EdgeUse, WorkedRow } from '../fabric/worked-row.ts'

/** How a sentence names an edge. */
export function edgeName(edge: string): string {
  return edge === 'underside' ? 'the underside of the foundation' : edge === 'top' ? 'the top' : 'a side'
}

/**
 * Of a border the edges that it does not use up, with how many places of each it uses; the height of a step or a low row, which a border
 * passes, is left out, and so are those of a flat row before the first and behind the last that it goes along. Nothing where all are used
 * up, or the row goes along no outline.
 */
export function edgesNote({ along = [], word }: WorkedRow): { readonly note?: string } {
  const isUsed = ({ worksOver }: EdgeUse): boolean => worksOver > 0
  const met = word === 'row' && along.some(isUsed) ? along.slice(along.findIndex(isUsed), along.findLastIndex(isUsed) + 1) : along
  const short = met.filter(({ edge, offers, worksOver }) => worksOver < offers && !(edge === 'row-ends' && offers <= mayPass && worksOver === 0))
  if (short.length === 0) return {}
  return { note: `it works over ${listOf(short.map(useOf))}` }
}

/** Row-ends that are passed as a matter of course. */
const mayPass = 2

function useOf({ edge, rows, offers, worksOver }: EdgeUse): string {
  const number = `${worksOver === 0 ? 'none' : worksOver} of the ${offers}`
  if (edge === 'row-ends') return `${number} row-ends from ${rows[0]} to ${rows.at(-1)}`
  return edge === 'underside' ? `${number} chains of the underside` : `${number} stitches of ${rows[0]}`
}
