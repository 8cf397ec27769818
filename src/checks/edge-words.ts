import { listOf, plural } from '../diagnostics/words.ts'
import type { EdgeUse, WorkedRow } from '../fabric/worked-row.ts'

/** How a sentence names an edge. */
export function edgeName(edge: string): string {
  return edge === 'underside' ? 'the underside of the foundation' : edge === 'top' ? 'the top' : 'a side'
}

/**
 * Of a border where it begins, and the edges that it does not use up, with how many places of each it uses; the height of a step or a low
 * row, which a border passes, is left out, and so are those edges of a flat row before the first and behind the last that it goes along.
 * Nothing where all are used up, or the row goes along no outline.
 */
export function edgesNote({ along = [], word }: WorkedRow): { readonly note?: string } {
  const isUsed = ({ worksOver }: EdgeUse): boolean => worksOver > 0
  const met = word === 'row' && along.some(isUsed) ? along.slice(along.findIndex(isUsed), along.findLastIndex(isUsed) + 1) : along
  const short = met.filter((use) => use.worksOver < use.offers && !(isLow(use) && use.worksOver === 0))
  if (short.length === 0) return {}
  const [single, several] = [true, false].map((isSingle) => short.filter(({ offers }) => (offers === 1) === isSingle))
  const uses = [...(several!.length > 0 ? [`it works over ${listOf(several!.map(useOf))}`] : []), ...(single!.length > 0 ? [`it leaves out ${listOf(single!.map(edgeWords))}`] : [])]
  return { note: [...beginning(along), ...uses].join('; ') }
}

/** `it begins in stitch 3 of the 8 of Row 6, and a side comes next`. */
function beginning(along: readonly EdgeUse[]): readonly string[] {
  const index = along.findIndex(({ beginsAt }) => beginsAt !== undefined)
  const first = along[index]
  if (!first) return []
  const next = [...along.slice(index + 1), ...along.slice(0, index)].find((use) => !isLow(use))
  const { beginsAt = 1, offers, rows, edge } = first
  const place = edge === 'row-ends' ? `at the row-end of ${rows[beginsAt - 1]}`
    : offers === 1 ? `in ${edgeWords(first)}`
    : edge === 'underside' ? `in chain ${beginsAt} of the ${offers} of the underside` : `in stitch ${beginsAt} of the ${offers} of ${rows[0]}`
  return [`it begins ${place}${next ? `, and ${edgeWords(next)} ${next.offers === 1 ? 'comes' : 'come'} next` : ''}`]
}

function edgeWords({ edge, rows, offers }: EdgeUse): string {
  if (edge === 'row-ends') return `the ${rowEnds(rows[0]!, rows.at(-1)!)}`
  const number = offers === 1 ? 'one' : offers
  return edge === 'underside' ? `the ${number} ${plural('chain', offers)} of the underside` : `the ${number} ${plural('stitch', offers)} of ${rows[0]}`
}

/** `row-ends from Row 8 to Row 1 of Back`: a piece that both are of is named once. */
export function rowEnds(from: string, to: string): string {
  if (from === to) return `row-end of ${from}`
  const piece = / of .*/.exec(to)?.[0] ?? ''
  return `row-ends from ${piece !== '' && from.endsWith(piece) ? from.slice(0, -piece.length) : from} to ${to}`
}

/** Row-ends that are passed as a matter of course: the height of a step or a low row. */
const isLow = ({ edge, offers }: EdgeUse): boolean => edge === 'row-ends' && offers <= 2

function useOf({ edge, rows, offers, worksOver }: EdgeUse): string {
  const number = `${worksOver === 0 ? 'none' : worksOver} of the ${offers}`
  if (edge === 'row-ends') return `${number} ${rowEnds(rows[0]!, rows.at(-1)!)}`
  return edge === 'underside' ? `${number} chains of the underside` : `${number} stitches of ${rows[0]}`
}
