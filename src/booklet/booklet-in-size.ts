import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Materials, Pattern } from '../pattern/pattern.ts'
import type { Block, Booklet, Inline, Part, Run, Section } from './booklet.ts'
import { inSize } from './figures.ts'
import { makeBooklet } from './make-booklet.ts'

/**
 * What a pattern says in print for one of its sizes (from 0): the counts and figures of that size alone, and no brackets to choose from.
 * A pattern without sizes gives its one booklet.
 */
export function bookletInSize(checked: CheckedPattern, size: number): Booklet {
  const { pattern } = checked
  const name = pattern?.sizes[size]
  if (pattern === undefined || name === undefined) return makeBooklet(checked)
  const only = (text: string) => chosen(text, pattern.sizes.length, size)
  const booklet = makeBooklet({ ...checked, pattern: narrowed(pattern, size), pieces: checked.pieces.filter((piece) => piece.size === name) })
  return {
    ...booklet,
    size: name,
    facts: booklet.facts.map((fact) => (fact.label === 'Size' ? { ...fact, value: `${name}: ${fact.value.replace(/^\p{Lu}(?=\p{Ll})/u, (letter) => letter.toLowerCase())}` } : fact)),
    parts: booklet.parts.map((part) => partInSize(part, only)),
    ...(booklet.key === undefined ? {} : { key: { ...booklet.key, text: runsIn(booklet.key.text, only) } }),
    specialStitches: booklet.specialStitches.map((stitch) => ({ ...stitch, how: only(stitch.how) })),
    before: booklet.before.map((section) => sectionIn(section, only)),
    after: booklet.after.map((section) => sectionIn(section, only)),
  }
}

type Only = (text: string) => string

const listOf = (value: string) => new RegExp(`(?<![\\d.,])(${value})[\\s\\u00a0]?[([]((?:${value})(?:,[\\s\\u00a0]?(?:${value}))*)[)\\]]`, 'g')
/** Ranges come first: the end of one is no number of its own. */
const lists = [listOf('\\d+–\\d+'), listOf('\\d[\\d.]*|–')]

/** `5 m (7 m)`: a list of sizes too, where the unit is the same; `13 cm (5 in)` is one length in two units. */
const measured = /(?<![\d.,])(\d[\d.]*[\s\u00a0](cm|mm|m|g))[\s\u00a0]?\((\d[\d.]*[\s\u00a0]\2(?:,[\s\u00a0]?\d[\d.]*[\s\u00a0]\2)*)\)/g

/** `48 (56, 64)` -> `56` for the second of three sizes, `1–11 (1–15)` -> `1–15`. Brackets of another length are no list of sizes and stay. */
export function chosen(text: string, sizes: number, size: number): string {
  const own = (whole: string, first: string, others: string) => {
    const values = [first, ...others.split(/,[\s\u00a0]?/)]
    return values.length === sizes ? (values[size] ?? whole) : whole
  }
  const withUnits = text.replace(measured, (whole, first: string, _unit: string, others: string) => own(whole, first, others))
  return lists.reduce((chosenSoFar, list) => chosenSoFar.replace(list, own), withUnits)
}

function narrowed(pattern: Pattern, size: number): Pattern {
  const { materials } = pattern
  const own = <T>(values: readonly T[]): readonly T[] => [inSize(values, size)].filter((value) => value !== undefined)
  const things: Materials | undefined = materials && {
    ...materials,
    yarns: materials.yarns.map((yarn) => ({ ...yarn, needs: own(yarn.needs) })),
    notions: materials.notions.map((notion) => ({
      ...notion, ...(notion.count === undefined ? {} : { count: own(notion.count) }), ...(notion.amount === undefined ? {} : { amount: own(notion.amount) }),
    })),
  }
  return { ...pattern, sizes: [], ...(things === undefined ? {} : { materials: things }), finished: pattern.finished.map((one) => ({ ...one, is: own(one.is) })) }
}

function partInSize(part: Part, only: Only): Part {
  return {
    ...part,
    line: only(part.line),
    lines: part.lines.map((line) => ({ ...line, text: runsIn(line.text, only) })),
  }
}

const runsIn = (runs: readonly Run[], only: Only): readonly Run[] => runs.map((run) => ({ ...run, text: only(run.text) }))

function sectionIn({ heading, blocks }: Section, only: Only): Section {
  return { heading, blocks: blocks.map((block) => blockIn(block, only)) }
}

function blockIn(block: Block, only: Only): Block {
  if (block.kind === 'list') return { ...block, items: block.items.map((item) => item.map((inner) => blockIn(inner, only))) }
  return { ...block, inlines: block.inlines.map((inline): Inline => ({ ...inline, text: only(inline.text) })) }
}
