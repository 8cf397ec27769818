import type { EdgeWords } from './named-edges.ts'
import type { HowSewn, SewnEdge, ToldSeam } from './sewn-rings.ts'

/** How the seams of a pattern may be meant: as they are told, with a ridge over the ends of rows, as far as the armholes, or with chains as they were made. */
export function readingsOfSeams(seams: readonly ToldSeam[]): readonly { readonly seams: readonly ToldSeam[]; readonly how?: HowSewn }[] {
  const has = (one: (seam: ToldSeam) => boolean): boolean => seams.some(one)
  return [
    { seams },
    ...(has(([{ words }]) => words === 'ridge') ? [{ seams, how: { ends: true } }] : []),
    ...(has(isOfSides) ? [{ seams: seams.map(belowTheSteps) }] : []),
    ...(has(tellsChains) ? [{ seams: seams.map(chainsAsMade) }] : []),
  ]
}

/** A seam of whole sides, which may be meant only as far as the armholes. */
const isOfSides = (seam: ToldSeam): boolean => seam.every(({ words }) => typeof words !== 'string' && isWholeSide(words))

const isWholeSide = ({ edge, rows, count, part, under, below }: EdgeWords): boolean => (edge === 'left' || edge === 'right') && !rows && count === undefined && !part && under === undefined && !below

/** `left side of Front` that is sewn as far as its first step. */
function belowTheSteps(seam: ToldSeam): ToldSeam {
  const below = (edge: SewnEdge): SewnEdge => (typeof edge.words === 'string' ? edge : { ...edge, words: { ...edge.words, below: true } })
  return isOfSides(seam) ? [below(seam[0]), below(seam[1])] : seam
}

const isOfChains = (words: SewnEdge['words']): words is EdgeWords => typeof words !== 'string' && words.edge === 'bottom' && (words.at === 'first' || words.at === 'last')

const tellsChains = (seam: ToldSeam): boolean => seam.some(({ words }) => isOfChains(words))

/** `last 6 ch of foundation of Back`: the first row begins where the chain ends, so that its last chains as they were made are the first as they are worked. */
function chainsAsMade(seam: ToldSeam): ToldSeam {
  const turned = (edge: SewnEdge): SewnEdge => (isOfChains(edge.words) ? { ...edge, words: { ...edge.words, at: edge.words.at === 'first' ? 'last' : 'first' } } : edge)
  return [turned(seam[0]), turned(seam[1])]
}
