import type { Root } from 'mdast'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { easedIn } from './eased-in.ts'
import { entryAt, placesOf, type KeysEntry, type Path } from './entry.ts'
import type { Conventions, Gauge, Materials, Pattern, Piece, Seam, SpecialStitch } from './pattern.ts'
import { said } from './said.ts'
import { copyTold, partNames, seamPartBySize, namedEdges, type PartName } from './seam-edges.ts'
import { slugOf } from './slug.ts'
import { usWord } from './stitch-words.ts'
import type { PatternValues } from './schema/pattern.ts'

/** The pattern from values that passed, with the places of what they were read from. Stitches get their US words here. */
export function toPattern(source: Source, { root, values, body }: {
  readonly root: KeysEntry
  readonly values: PatternValues
  readonly body: Root
}): Pattern {
  const spanOf = (...path: Path): Span => entryAt(root, path)?.span ?? root.span
  const own = (values.stitches ?? []).map(({ abbr }) => abbr)
  const us = (word: string): string => usWord(word, values.terms, own) ?? word
  const sizes = values.sizes ?? []
  const parted = values.pieces.flatMap(({ name, rows }) => partNames(name, rows))
  return said({
    source,
    slug: slugOf(source.path),
    title: values.title,
    number: values.number,
    summary: values.summary,
    designer: values.designer,
    version: values.version,
    date: values.date,
    access: values.access,
    terms: values.terms,
    level: values.level,
    madeFor: values['made-for'],
    sizes,
    papers: values.papers,
    gauge: values.gauge && gaugeOf(values.gauge, us),
    conventions: conventionsOf(values.conventions ?? {}, us),
    materials: values.materials && materialsOf(values.materials),
    stitches: (values.stitches ?? []).map((stitch, index) => specialStitchOf(stitch, us, spanOf('stitches', index))),
    pieces: values.pieces.map(({ rows: _, on: [on, ...others] = [], ...piece }, index) => ({
      ...said(piece), ...onto(on, others),
      rows: spanOf('pieces', index, 'rows'),
      nameSpan: spanOf('pieces', index, 'name'),
    })),
    seams: (values.seams ?? []).map((seam, index) => seamOf(seam, values.pieces.map(({ name }) => name), parted, spanOf('seams', index))),
    finished: (values.finished ?? []).map(({ what, of, is }, index) =>
      said({ what, of, is: forEachSize(is, sizes.length), span: spanOf('finished', index) })),
    licence: values.licence,
    contact: values.contact,
    errata: values.errata,
    credits: values.credits,
    changes: values.changes ?? [],
    accepted: (values.accepted ?? []).map(({ code, row, piece, why }, index) =>
      said({ code, row, piece, why, codeSpan: spanOf('accepted', index, 'code'), span: spanOf('accepted', index) })),
    body,
    places: placesOf(root),
  })
}

/** `on: [Left panel, Middle panel]`: it begins on the first of them. */
function onto(on: string | undefined, others: readonly string[]): Pick<Piece, 'on' | 'onAlso'> {
  const also = [...new Set(others)].filter((name) => name !== on)
  return { ...(on !== undefined && { on }), ...(also.length > 0 && { onAlso: also }) }
}

function seamOf({ join, grid, name, by, ease, ...seam }: NonNullable<PatternValues['seams']>[number], names: readonly string[], parted: readonly PartName[], span: Span): Seam {
  const texts = namedEdges(join, names, parted)
  const parts = texts.map((text) => seamPartBySize(text, names, parted))
  const copies = texts.map((text, index) => copyTold(text, parts[index]![0]!.piece))
  const sizes = Math.max(...parts.map(({ length }) => length))
  // `whip stitch, easing in the fullness` says it as well.
  const eased = ease ?? (by !== undefined && /\beas(?:e|ed|ing)\b/i.test(by) ? true : undefined)
  return said({
    join: parts.map(([first]) => first!.piece),
    copies: copies.some((copy) => copy !== undefined) ? copies : undefined,
    unread: parts.some(([first]) => first!.unread) ? true as const : undefined,
    edges: parts.some(([first]) => first!.edge) ? Array.from({ length: sizes }, (_, size) => parts.map((part) => (part[size] ?? part[0]!).edge)) : undefined,
    grid, name, by, sides: seam['wrong-sides'] ?? seam['right-sides'], ease: eased, eases: eased && by !== undefined ? easedIn(by) : undefined, span,
  })
}

function gaugeOf(gauge: NonNullable<PatternValues['gauge']>, us: (word: string) => string): Gauge {
  return said({ ...gauge, stitch: gauge.stitch === undefined ? undefined : us(gauge.stitch) })
}

function conventionsOf(conventions: NonNullable<PatternValues['conventions']>, us: (word: string) => string): Conventions {
  const counts = (says: 'counted' | 'not counted' | undefined) => (says === undefined ? undefined : says === 'counted')
  const chains = Object.entries(conventions['turning-chains'] ?? {})
  return said({
    turningChains: Object.fromEntries(chains.map(([stitch, says]) => [us(stitch), says === 'counted'])),
    slipStitchesCount: counts(conventions['slip-stitches']),
    chainsCount: counts(conventions.chains),
  })
}

function materialsOf({ yarns = [], hooks = [], notions = [] }: NonNullable<PatternValues['materials']>): Materials {
  return {
    yarns: yarns.map(({ needs = [], ...yarn }) => ({ ...said(yarn), needs })),
    hooks,
    notions: notions.map(said),
  }
}

function specialStitchOf(stitch: NonNullable<PatternValues['stitches']>[number], us: (word: string) => string, span: Span): SpecialStitch {
  const { abbr, name, makes, height, how } = stitch
  return said({ abbr, name, worksOver: stitch['works-over'], makes, height: height === undefined ? undefined : us(height), how, span })
}

/** One length alone holds for every size. */
function forEachSize(lengths: readonly number[], sizes: number): readonly number[] {
  const [only] = lengths
  return lengths.length === 1 && only !== undefined && sizes > 1 ? Array.from({ length: sizes }, () => only) : lengths
}
