import { textOf } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import type { Pattern, Piece, Seam } from './pattern.ts'

const laid = /\b(?:lay|lays|laid|place|put|hold|pin|set)\b[^.]*\b(?:on|upon|over|against|behind|together|and|with)\b/i
const throughBoth = /\bthrough (?:both|the two|two|all)\b|\bboth (?:layers|pieces|thicknesses)\b/i

/**
 * `Lay front on back, wrong sides touching. Every stitch of Rnd 1 goes through both.`: a round on two pieces at once is a seam of them, told in
 * a remark of the piece that it belongs to.
 */
export function layersSaid({ pieces, source }: Pattern, remarks: readonly { readonly span: Span; readonly piece: string }[]): readonly Seam[] {
  return remarks.flatMap(({ span, piece }) => {
    const words = textOf(source, span)
    const on = pieces.find(({ name }) => name === piece)?.on
    const own = pieces.find(({ name }) => name === on)
    if (!own || !laid.test(words) || !throughBoth.test(words)) return []
    const named = pieces.filter((one) => one.name !== piece && one.on === undefined && isNamed(one, words, pieces))
    return named.length === 2 && named.includes(own) ? [{ join: named.map(({ name }) => name), span }] : []
  })
}

/** By its name, or by the last word of it where no other piece ends in that. */
function isNamed({ name }: Piece, words: string, pieces: readonly Piece[]): boolean {
  const last = lastWord(name)
  const alone = pieces.filter((other) => lastWord(other.name) === last).length === 1
  return has(words, name) || alone && has(words, last)
}

const lastWord = (name: string): string => name.toLowerCase().split(/\s+/).at(-1)!

const has = (words: string, name: string): boolean => new RegExp(String.raw`(?<!\p{L})${name.replace(/[^\p{L}\d ]/gu, '.')}(?!\p{L})`, 'iu').test(words)
