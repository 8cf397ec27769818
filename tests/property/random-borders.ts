import { oneOf, whole, type Draw } from './random-rows.ts'

/** A rectangle and a border round it, in words, with the border's stitches added up edge by edge. */
export interface BorderedRectangle {
  readonly rows: readonly string[]
  /** Parts of the border in working order: its words and the stitches that they make. */
  readonly parts: readonly BorderPart[]
  readonly turned: boolean
  /** `ch-2` spaces that the border makes. */
  readonly spaces: number
}

export interface BorderPart {
  readonly words: string
  readonly makes: number
  /** The same part with one place too few or too many, where the words tell a number of places; its stitches go along. */
  readonly slipped?: { readonly words: string; readonly makes: number } | undefined
}

/** How the corners of a border are turned. */
type Corner = 'plain' | 'chain' | 'three' | 'group'

interface Edge {
  readonly places: number
  readonly side: 'stitches' | 'rows' | 'underside'
  /** The edge lies between corner stitches that are worked on their own. */
  readonly between: boolean
}

const counted = (count: number, word: string): string => (count === 1 ? `next ${word}` : `each of next ${count} ${word}s`)

/** A flat rectangle of sc, hdc or dc with one border round, each part worded in one of the trade's ways. */
export function borderedRectangle(draw: Draw): BorderedRectangle {
  const stitch = oneOf(draw, ['sc', 'hdc', 'dc'])
  const width = whole(draw, 4, 24)
  const height = whole(draw, 2, 12) * 2
  const start = stitch === 'dc' ? 3 : 2
  const rows = [
    `Foundation: Ch ${width + start - 1}.`,
    `Row 1: ${stitch === 'sc' ? 'Sc' : stitch === 'hdc' ? 'Hdc' : 'Dc'} in ${start === 2 ? '2nd' : '3rd'} ch from hook and in each ch across. (${width})`,
    `Rows 2-${height}: Ch ${start - 1}, turn, ${stitch} in each st across. (${width})`,
  ]
  const turned = oneOf(draw, [true, false])
  const corner = oneOf<Corner>(draw, ['plain', 'chain', 'three', 'group'])
  const between = corner === 'three' || corner === 'group'
  const top: Edge = { places: width, side: 'stitches', between }
  const side: Edge = { places: height, side: 'rows', between: false }
  const bottom: Edge = { places: width, side: 'underside', between }
  const edges = turned ? [top, side, bottom, side] : [side, bottom, side, top]
  const rate = oneOf(draw, [1, 1.5, 2])
  return { rows, turned, parts: edges.flatMap((edge) => partsOf(draw, edge, corner, rate)), spaces: corner === 'chain' || corner === 'group' ? 4 : 0 }
}

function partsOf(draw: Draw, edge: Edge, corner: Corner, rate: number): readonly BorderPart[] {
  if (edge.side === 'rows') return [alongRows(draw, edge.places, rate), ...chainAfter(corner)]
  if (!edge.between) return [alongStitches(draw, edge, edge.places), ...chainAfter(corner)]
  const words = corner === 'three' ? '3 sc' : '(sc, ch 2, sc)'
  const makes = corner === 'three' ? 3 : 2
  const thing = edge.side === 'underside' ? 'ch' : 'st'
  return [
    { words: `${words} in ${oneOf(draw, [`next ${thing}`, ...(edge.side === 'underside' ? ['first foundation ch'] : ['first st'])])}`, makes },
    alongStitches(draw, edge, edge.places - 2),
    { words: `${words} in ${oneOf(draw, [`next ${thing}`, ...(edge.side === 'underside' ? ['last foundation ch'] : ['last st'])])}`, makes },
  ]
}

const chainAfter = (corner: Corner): readonly BorderPart[] => (corner === 'chain' ? [{ words: 'ch 2', makes: 0 }] : [])

function alongStitches(draw: Draw, { side }: Edge, places: number): BorderPart {
  const ways: ((count: number) => string)[] = side === 'stitches'
    ? [(count) => `sc in ${count === 1 ? 'next st' : `next ${count} sts`}`, (count) => `sc in ${counted(count, 'st')}`]
    : [
        (count) => `sc in the underside of ${count === 1 ? 'next ch' : `each of next ${count} ch`}`,
        (count) => `working along the underside of the foundation ch, sc in ${count === 1 ? 'next ch' : `each of next ${count} ch`}`,
      ]
  const words = oneOf(draw, ways)
  const off = places === 1 ? 1 : oneOf(draw, [-1, 1])
  return { words: words(places), makes: places, slipped: { words: words(places + off), makes: places + off } }
}

/** `rate` stitches for each row-end, the same on both sides. */
function alongRows(draw: Draw, rows: number, rate: number): BorderPart {
  const half = rows / 2
  const off = oneOf(draw, [-1, 1])
  if (rate === 1.5) {
    const pairs = (count: number): string => `(sc in next row-end, 2 sc in next row-end) ${count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`}`
    return oneOf(draw, [
      { words: pairs(half), makes: 3 * half, slipped: half + off > 0 ? { words: pairs(half + off), makes: 3 * (half + off) } : undefined },
      { words: `work ${3 * half} sc evenly along ${rows} row-ends`, makes: 3 * half, slipped: { words: `work ${3 * half} sc evenly along ${rows + off} row-ends`, makes: 3 * half } },
      { words: `work ${3 * half} sc evenly along the side`, makes: 3 * half },
    ])
  }
  const each = (count: number): string => `${rate === 1 ? '' : '2 '}sc in each of next ${count} row-ends`
  return oneOf(draw, [
    { words: each(rows), makes: rate * rows, slipped: { words: each(rows + off), makes: rate * (rows + off) } },
    { words: `${rate === 1 ? '' : '2 '}sc in each row-end along the side`, makes: rate * rows },
    { words: `work ${rate * rows} sc evenly along the side`, makes: rate * rows },
  ])
}

/** The pattern of a rectangle with its border as a round of the same piece. */
export function withBorder({ rows, turned, spaces }: BorderedRectangle, parts: readonly BorderPart[], total = sumOf(parts)): string {
  const words = parts.map(({ words: part }) => part).join(', ')
  const says = spaces === 0 ? `(${total})` : `(${total} sc, ${spaces} ch-2 sps)`
  const block = [...rows, `Rnd ${Number(/Rows 2-(\d+)/.exec(rows.at(-1)!)![1]) + 1}: Ch 1, ${turned ? 'turn' : 'do not turn'}, ${words}, join with sl st in first sc. ${says}`]
  return `---
title: Rectangle
terms: US
conventions: { turning-chains: { sc: not counted, hdc: not counted, dc: not counted } }
pieces:
  - name: Cloth
    rows: |
${block.map((line) => `      ${line}`).join('\n')}
---
`
}

/** Stitches of a border, its parts added up. */
export const sumOf = (parts: readonly BorderPart[]): number => parts.reduce((sum, { makes }) => sum + makes, 0)
