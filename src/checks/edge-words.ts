import { counted, listOf } from '../diagnostics/words.ts'
import type { EdgeUse, WorkedRow } from '../fabric/worked-row.ts'

/** How a sentence names an edge. */
export function edgeName(edge: string): string {
  return edge === 'underside' ? 'the underside of the foundation' : edge === 'top' ? 'the top' : 'a side'
}

/** A border's edges one by one: how many places of each it uses. Nothing for a row that goes along no outline. */
export function edgesNote({ along }: WorkedRow): { readonly note?: string } {
  if (!along || along.length === 0) return {}
  return { note: `edge by edge it works over ${listOf(along.map(useOf))}` }
}

function useOf({ edge, rows, offers, worksOver }: EdgeUse): string {
  const number = worksOver === offers ? `all ${offers}` : `${worksOver} of ${offers}`
  if (edge === 'row-ends') return offers === 1 ? `${worksOver === 1 ? 'the one row-end' : 'none of the one row-end'} (${rows[0]})` : `${number} row-ends (${rows[0]} to ${rows.at(-1)})`
  if (edge === 'underside') return `${number} ${offers === 1 ? 'chain' : 'chains'} of the underside`
  return `${worksOver === offers ? counted(offers, 'stitch') : `${worksOver} of ${counted(offers, 'stitch')}`} of ${rows[0]}`
}
