import { namePattern } from '../text/name-pattern.ts'
import { textOf } from '../text/source.ts'
import type { EdgeWords, NamedEdge } from '../fabric/named-edges.ts'
import type { EdgeUse, WorkedRow } from '../fabric/worked-row.ts'
import type { Span } from '../text/span.ts'
import { behindSeveral } from './behind-several.ts'
import type { ToldSeam } from '../fabric/sewn-rings.ts'
import type { WorkedPiece } from './checked-pattern.ts'
import type { Pattern, Piece, Seam } from './pattern.ts'

const laid = /\b(?:lay|lays|laid|place|put|hold|pin|set)\b[^.]*\b(?:on|upon|over|against|behind|together|tog|and|with)\b|\b(?:ws|rs|(?:wrong|right) sides?) (?:tog|together|touching)\b/i
const throughBoth = /\b(?:through|thru) (?:both|the two|two|all)\b|\bboth (?:layers|pieces|thicknesses)\b/i

/** Words that lay pieces on one another and go through both. */
const areLayers = (words: string): boolean => laid.test(words) && throughBoth.test(words)

/**
 * `Lay front on back, wrong sides touching. Every stitch of Rnd 1 goes through both.`: a round on two pieces at once is a seam of them, told in
 * a remark of the piece that it belongs to.
 */
export function layersSaid({ pieces, source }: Pattern, remarks: readonly { readonly span: Span; readonly piece: string }[]): readonly Seam[] {
  return remarks.flatMap(({ span, piece: name }) => {
    const piece = pieces.find((one) => one.name === name)
    const two = piece && laidTogether(piece, textOf(source, span), pieces, byName)
    return two ? [{ join: two.map((one) => one.name), span }] : []
  })
}

/**
 * `Hold Front and Back with wrong sides together, sc in each of 26 sts through both layers`: whatever edge the row goes along from end to end is one
 * of the other piece as well.
 */
export function layersWorked({ pieces, source }: Pattern, worked: readonly WorkedPiece[]): readonly Seam[] {
  const first = worked.filter(({ size }) => size === worked[0]?.size)
  return first.flatMap(({ piece, rows }) => {
    const [row] = rows
    const words = textOf(source, piece.rows)
    const two = row?.along && laidTogether(piece, words, pieces, joined)
    if (!row?.along) return []
    if (!two) return areLayers(words) ? behindSeveral(piece, row, first) : []
    const whole = new Set(row.along.filter(({ offers, worksOver }) => offers > 0 && worksOver === offers).map(({ edge }) => names[edge]))
    const seam = { join: two.map(({ name }) => name), within: true, span: row.written.text }
    const laid = row.along.flatMap((use) => laidWhole(use, piece, two, first))
    // Either side of a pocket is told once.
    const once = new Map(laid.map((edges) => [JSON.stringify(edges), edges])).values()
    const strip = roundPanel(row) ? two.find((one) => one.name !== piece.on && isAsLong(first.find((other) => other.piece === one), row.makes)) : undefined
    if (strip) return [{ join: [piece.name, strip.name], edges: [[{ edge: 'top' }, { edge: 'side', ...countTold(textOf(source, piece.rows), strip.name) }]], within: true, span: row.written.text }]
    const own = first.find((other) => other.piece.name === piece.on)?.edges.flatMap(({ edge, places }) => (edge === 'row-ends' && places > 0 ? [places] : [])) ?? []
    // `16 row-ends up the long side` and 10 up the short one: each of them must be a side of the other piece.
    const sides = [...new Set(row.along.flatMap(({ edge, offers, worksOver, through = offers }) => (edge === 'row-ends' && worksOver === offers && through === offers && own.includes(offers) ? [offers] : [])))]
    const apart = sides.length > 1 ? sides.map((count): readonly EdgeWords[] => two.map(({ name }) => (name === piece.on ? { edge: 'side', count } : { edge: 'side' }))) : []
    return [...[...whole].map((edge) => [{ edge }, { edge }]), ...apart, ...once].map((edges) => ({ ...seam, edges: [edges] }))
  })
}

/** Up to one end of a row from the other, over whole edges, with a stitch in each place: what lies behind is a strip, as a gusset is, and not of the same shape. */
function roundPanel({ along = [], makes }: WorkedRow): boolean {
  const worked = along.filter(({ worksOver }) => worksOver > 0)
  return worked.length > 2 && worked[0]?.edge === 'row-ends' && worked.at(-1)?.edge === 'row-ends' && worked.every(({ offers, worksOver }) => offers === worksOver) && worked.reduce((sum, { worksOver }) => sum + worksOver, 0) === makes
}

/** `[28 row-ends of Gusset]`: how many are said of it. */
function countTold(words: string, name: string): { readonly count?: number } {
  const [, count] = new RegExp(String.raw`\b(\d+) row[- ]?ends of (?:(?:one|the other|either|each|the left|the right) (?:long )?side of )?(?:the )?${namePattern(name)}(?!\p{L})`, 'iu').exec(words) ?? []
  return count === undefined ? {} : { count: Number(count) }
}

/** Rows that a strip may be too long or too short by, and still be meant for what it lies on (common practice, no source). */
const off = 3

const isAsLong = (strip: WorkedPiece | undefined, places: number): boolean => strip?.edges.some((one) => one.edge === 'row-ends' && Math.abs(one.places - places) <= off) === true

/** A smaller piece that lies on an edge, as a pocket does, is worked through from end to end: as many places as it has there. */
function laidWhole({ edge, offers, through = 0 }: EdgeUse, { on }: Piece, two: readonly Piece[], worked: readonly WorkedPiece[]): readonly (readonly EdgeWords[])[] {
  const laid = worked.find(({ piece }) => two.includes(piece) && piece.name !== on)
  const has = laid?.edges.filter((one) => one.edge === edge).map(({ places }) => places) ?? []
  const [most] = has
  if (through === 0 || through === offers || most === undefined || has.some((places) => places !== most) || most >= offers) return []
  return [two.map(({ name }): EdgeWords => (name === on ? { edge: names[edge], part: true, count: through } : { edge: names[edge] }))]
}

/**
 * The same as a seam on the fabric: `Hold Strip A and Strip B together, join yarn at the left-hand edge of Strip A through both layers`.
 */
export function layersSewn({ pieces, source }: Pattern): readonly ToldSeam[] {
  return pieces.flatMap((piece, index): readonly ToldSeam[] => {
    const words = textOf(source, piece.rows)
    const other = laidTogether(piece, words, pieces, joined)?.find(({ name }) => name !== piece.on)
    const copies = pieces.findIndex(({ name, make }) => name === piece.on && make === 2)
    if (!other && copies >= 0 && areLayers(words)) return [[{ piece: index, words: 'ridge' }, { piece: copies, words: 'copy' }]]
    return other ? [[{ piece: index, words: 'ridge' }, { piece: pieces.indexOf(other), words: edgeAgainst(words, piece.on!, other.name) ?? 'facing' }]] : []
  })
}

/** `top of Bridge against the foundation of Far flap`: what lies behind, where it is not the like edge of the other piece. */
function edgeAgainst(words: string, on: string, other: string): EdgeWords | undefined {
  const edgeOf = (name: string): 'top' | 'bottom' | undefined => {
    const [, told] = new RegExp(String.raw`\b(top|foundation)(?: edge)? of (?:the )?${namePattern(name)}(?!\p{L})`, 'iu').exec(words) ?? []
    return told === undefined ? undefined : told.toLowerCase() === 'top' ? 'top' : 'bottom'
  }
  const [one, behind] = [edgeOf(on), edgeOf(other)]
  return one && behind && one !== behind ? { edge: behind } : undefined
}

/** The piece that one goes on from and another, where words lay them on one another and go through both. */
function laidTogether(piece: Piece, words: string, pieces: readonly Piece[], find: typeof joined): readonly Piece[] | undefined {
  if (piece.on === undefined || !areLayers(words)) return undefined
  const two = find(piece, words, pieces)
  return two.length === 2 && two.some(({ name }) => name === piece.on) ? two : undefined
}

const names: Readonly<Record<EdgeUse['edge'], NamedEdge>> = { top: 'top', step: 'side', 'row-ends': 'side', underside: 'bottom' }

/** The pieces that words lay on one another: by their names, or where there are but two, as `the halves`. */
function joined(piece: Piece, words: string, pieces: readonly Piece[]): readonly Piece[] {
  // `on: [Front, Gusset]`
  const told = pieces.filter(({ name }) => name === piece.on || piece.onAlso?.includes(name))
  if (told.length === 2) return told
  const base = pieces.filter((one) => one.name !== piece.name && one.on === undefined)
  const both = bothCalled(base, words)
  if (both.length === 2) return both
  return base.length === 2 && /\b(?:halves|pieces|panels|strips|sides)\b(?! (?:facing|together|out|in|inside|touching))/i.test(words) ? base : byName(piece, words, pieces)
}

/** `both houses` of House front, House back and Base. */
function bothCalled(pieces: readonly Piece[], words: string): readonly Piece[] {
  const [, several] = /\b(?:both|the two) (?:the )?(\p{L}+s)\b/iu.exec(words) ?? []
  if (several === undefined) return []
  const one = several.toLowerCase().replace(/ves$/, 'f').replace(/s$/, '')
  return pieces.filter(({ name }) => name.toLowerCase().split(/\s+/).some((word) => word === one || `${word}e` === one))
}

/** Pieces that words name; edgings where the row goes on from an edging, and else pieces that begin anew. */
function byName(piece: Piece, words: string, pieces: readonly Piece[]): readonly Piece[] {
  const onEdging = pieces.some(({ name, on }) => name === piece.on && on !== undefined)
  return pieces.filter((one) => one.name !== piece.name && (one.on !== undefined) === onEdging && isNamed(one, words, pieces))
}

/** By its name, or by the last word of it where no other piece ends in that. A number or a letter alone, as in `Panel 1`, names nothing. */
function isNamed({ name }: Piece, words: string, pieces: readonly Piece[]): boolean {
  const last = lastWord(name)
  const alone = /\p{L}{2}/u.test(last) && pieces.filter((other) => lastWord(other.name) === last).length === 1
  return has(words, name) || alone && has(words, last)
}

const lastWord = (name: string): string => name.toLowerCase().split(/\s+/).at(-1)!

const has = (words: string, name: string): boolean => new RegExp(String.raw`(?<!\p{L})${namePattern(name)}(?!\p{L})`, 'iu').test(words)
