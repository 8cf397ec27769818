import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import type { PatternFacts, PieceFacts, SeamFacts } from './facts.ts'

type Side = PieceFacts['edge']['sides'][number]

/** Motifs of a grid are joined side to side: sides that meet have the same number of stitches. Told once a grid and size. */
export function motifSidesMismatch({ seams, pieces }: PatternFacts): readonly Diagnostic[] {
  return seams.flatMap((seam) => {
    if (!seam.grid || seam.ease) return []
    const bySize = Map.groupBy(pieces.filter(({ name }) => seam.join.includes(name)), ({ size }) => size)
    const wrong = [...bySize].flatMap(([size, motifs]) => {
      const slip = slipOf(motifs, seam.grid!)
      return slip ? [{ size, slip, sizes: motifs[0]!.sizes }] : []
    })
    const first = wrong[0]
    if (!first) return []
    const { size, slip, sizes } = first
    return [{
      code: 'motif-sides-mismatch',
      message: `${slip.message}${sizes[size] === undefined ? '' : ` in size ${sizes[size]}`}`,
      primary: { span: seam.span, text: slip.short },
      secondary: slip.motifs.flatMap(({ name, rows }) => (rows.at(-1)?.says ? [{ span: rows.at(-1)!.says!.span, text: `the last of ${name}` }] : [])),
      ...(wrong.length < Math.max(1, sizes.length) && { sizes: wrong.map((one) => sizes[one.size] ?? '') }),
    } satisfies Diagnostic]
  })
}

interface Slip {
  readonly message: string
  readonly short: string
  readonly motifs: readonly PieceFacts[]
}

function slipOf(motifs: readonly PieceFacts[], { across, down }: NonNullable<SeamFacts['grid']>): Slip | undefined {
  // A round that does not add up makes its sides wrong too: that is the same slip.
  const sound = motifs.filter(({ sound, edge }) => sound && edge.sides.length > 2)
  const lopsided = sound.find(({ edge }) => doesNotTile(edge.sides, Math.min(across, down) > 1))
  if (lopsided) return { message: `the sides of ${lopsided.name} do not match when it is joined to its like: they have ${sidesIn(lopsided)}`, short: `sides of ${listOf(lopsided.edge.sides.map(({ stitches }) => String(stitches)))}`, motifs: [lopsided] }
  const apart = sound.length < 2 || across * down < 2 ? undefined : sound.find((motif) => sound.every((other) => other === motif || cornersDiffer(motif, other) === false && !meets(motif, other)))
  if (!apart) return undefined
  const others = sound.filter((motif) => motif !== apart)
  return {
    message: `motifs that are joined have no side in common: ${[apart, ...others].toSorted((a, b) => motifs.indexOf(a) - motifs.indexOf(b)).map((motif) => `${motif.name} has ${sidesIn(motif)} on its sides`).join(', ')}`,
    short: sound.map(({ edge }) => listOf([...new Set(edge.sides.map(({ stitches }) => String(stitches)))])).join(' against '),
    motifs: [apart, ...others],
  }
}

/**
 * In a grid a side meets the opposite side of the next motif of its kind. In a strip only one pair of sides meets. Motifs with an odd
 * number of corners are turned to one another.
 */
function doesNotTile(sides: readonly Side[], bothWays: boolean): boolean {
  if (sides.length % 2 === 1) return false
  const half = sides.length / 2
  const match = sides.slice(0, half).map((side, index) => side.stitches === sides[index + half]!.stitches && side.spaces === sides[index + half]!.spaces)
  return bothWays ? match.includes(false) : !match.includes(true)
}

/** Motifs with other corners meet as their shapes let them. */
function cornersDiffer(one: PieceFacts, other: PieceFacts): boolean {
  return one.edge.sides.length !== other.edge.sides.length
}

/** One side at least is as long in both, by stitches, by stitches and chains, or by the spaces that are joined. */
function meets(one: PieceFacts, other: PieceFacts): boolean {
  return one.edge.sides.some((ours) => other.edge.sides.some((theirs) => [
    [ours.stitches, theirs.stitches], [ours.stitches + ours.chains, theirs.stitches + theirs.chains], [ours.stitches + ours.spaces, theirs.stitches + theirs.spaces], [ours.spaces || -1, theirs.spaces],
  ].some(([a, b]) => a === b)))
}

/** `5 stitches`, where all sides are alike; else `5, 5, 6 and 5 stitches`. */
function sidesIn({ edge }: PieceFacts): string {
  const words = (numbers: readonly number[], thing: string): string => (new Set(numbers).size === 1 ? counted(numbers[0]!, thing) : `${listOf(numbers.map(String))} ${thing === 'space' ? 'spaces' : 'stitches'}`)
  const spaces = edge.sides.map((side) => side.spaces)
  return `${words(edge.sides.map(({ stitches }) => stitches), 'stitch')}${spaces.some((count) => count > 0) ? `, and ${words(spaces, 'space')}` : ''}`
}
