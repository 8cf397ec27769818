import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { stitchOf } from '../../stitches/terms.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** Something that a maker has to be able to do, and the lowest level at which makers expect it. */
interface Technique {
  readonly what: string
  readonly level: 'easy' | 'intermediate'
  readonly holds: (facts: SenseFacts) => boolean
}

const kinds = ({ pieces }: SenseFacts): ReadonlySet<string> => new Set(pieces.flatMap(({ rows }) => rows).flatMap((row) => Object.keys(row.kinds)))
const anyKind = (test: (kind: string) => boolean) => (facts: SenseFacts): boolean => [...kinds(facts)].some(test)
const anyRow = (words: RegExp) => ({ rows }: SenseFacts): boolean => rows.some(({ text }) => words.test(text))

/** By what the trade council's levels of projects say in words, from memory; only what stands clearly above a level is here. */
const techniques: readonly Technique[] = [
  { what: 'post stitches', level: 'easy', holds: anyKind((kind) => stitchOf(kind)?.into === 'post') },
  { what: 'bobbles, popcorns, puffs or clusters', level: 'easy', holds: anyKind((kind) => /^(?:bo|pc|puff|cl|\d+-\w+ cl|star st|knot st)$/.test(kind)) },
  { what: 'stitches of its own', level: 'easy', holds: ({ pattern }) => pattern.stitches.length > 0 },
  { what: 'several colours in one row', level: 'easy', holds: ({ pieces }) => pieces.some(({ rows }) => rows.some(({ yarns }) => new Set(yarns.map(({ yarn }) => yarn)).size > 1 && yarns.length > 3)) },
  { what: 'stitches worked into rows further down', level: 'easy', holds: anyKind((kind) => stitchOf(kind)?.into === 'below') },
  { what: 'Tunisian crochet', level: 'intermediate', holds: anyKind((kind) => kind === 'tss') },
  { what: 'edges that are left and gone back to', level: 'intermediate', holds: anyRow(/\breturn to\b[^.]*\b(?:unworked|held|left)\b/i) },
]

const ranks = ['basic', 'easy', 'intermediate', 'complex']

/** A level that promises less than the rows ask: a beginner meets the first post stitch at midnight. */
export function levelBelowTechniques(facts: SenseFacts): readonly Diagnostic[] {
  const { level } = facts.pattern
  if (level === undefined) return []
  const above = techniques.filter((technique) => ranks.indexOf(technique.level) > ranks.indexOf(level) && technique.holds(facts))
  if (above.length === 0) return []
  return [{
    code: 'level-below-techniques',
    message: `the level is ${level}, but the rows have ${listOf(above.map(({ what }) => what))}`,
    primary: { span: placeOfKey(facts, 'level'), text: level },
    secondary: [],
    note: 'levels rate the project; makers read them as what they have to be able to do',
  }]
}
