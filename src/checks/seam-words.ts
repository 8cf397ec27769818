import type { Label } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { EdgeWords, NamedEdge } from '../fabric/named-edges.ts'
import type { SeamFacts } from './facts.ts'

/** What is told of a seam whose edges do not match. */
export interface SeamWords {
  readonly message: string
  /** Beside the place. */
  readonly short: string
  readonly note?: string
  /** Where the two edges are written, when it is not the totals of the last rows. */
  readonly edges?: readonly Label[]
  /** As what it is told: an edge that is eased in, of quite another length, or as long but turning in other places; else as a mismatch. */
  readonly code?: 'seam-eased' | 'seam-lengths-apart' | 'seam-corners-apart' | undefined
  /** The sides of row-ends that do not match, and by how much: two sides of one piece that are alike off have one slip behind them. */
  readonly off?: readonly string[]
}

/** A longer edge that is eased in: by how much is told, and where the seam's own words say it, only where that is another number. */
export function easedWords(seam: SeamFacts, size: number, apart: number, each: string): SeamWords | undefined {
  const said = easedBy(seam, size)
  if (said === apart) return undefined
  if (said !== undefined) return { message: `${counted(said, 'stitch')} ${said === 1 ? 'is' : 'are'} said to be eased in, but the edges are ${apart === 0 ? 'alike' : `${apart} apart`}: ${each}`, short: `eases in ${said}, not ${apart}` }
  return apart === 0 ? undefined : { code: 'seam-eased', message: `${counted(apart, 'stitch')} ${apart === 1 ? 'is' : 'are'} to be eased in: ${each}`, short: `eases in ${apart}` }
}

/** How many stitches the seam's words say are eased in, in one size. */
export const easedBy = ({ eases }: SeamFacts, size: number): number | undefined => eases?.[size] ?? eases?.at(-1)

/** What a named edge is called. */
export const edgeNames: Readonly<Record<NamedEdge, string>> = { top: 'top', bottom: 'lower edge', left: 'left side', right: 'right side', side: 'side', added: 'added chains', stepped: 'stepped edge', any: 'edge', all: 'edge' }

/** The edges that a seam names, in one size. */
export const edgesInSize = ({ edges }: SeamFacts, size: number): readonly (EdgeWords | undefined)[] => edges?.[size] ?? edges?.[0] ?? []
