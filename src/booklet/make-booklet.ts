import { yarnStandardsCredit } from '../measures/yarn-weights.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Pattern, SpecialStitch } from '../pattern/pattern.ts'
import { abbreviationsOf } from './abbreviations.ts'
import type { Booklet, Part, RowLine, SpecialStitchText } from './booklet.ts'
import { cautionsOf, withCautions } from './cautions.ts'
import { closingOf } from './closing.ts'
import { dateText } from './date-text.ts'
import { drawingText } from './drawing-text.ts'
import { factsOf } from './facts.ts'
import { capital, sentence } from './figures.ts'
import { gaugeText } from './gauge-text.ts'
import { buyingNotes, materialLines } from './materials.ts'
import { partsOf, type WorkedPart } from './part.ts'
import { proseOf, proseText } from './prose.ts'
import { typeset } from './typeset.ts'

/**
 * What a checked pattern says in print. Everything a reader sees comes from here, so that page, print and checklist cannot
 * disagree. A pattern that lacks what publishing needs still gives a booklet, with those parts empty.
 */
export function makeBooklet(checked: CheckedPattern): Booklet {
  const { pattern } = checked
  if (pattern === undefined) {
    throw new Error(`this is our mistake, not your pattern's: ${checked.source.path} could not be read, and a booklet was asked of it`)
  }
  const counted = checked.pieces.map(({ piece, rows }) => ({ name: piece.name, rows }))
  const prose = proseOf(pattern, counted)
  const words = proseText(prose)
  const worked = partsOf(checked, pattern, words)
  const parts = worked.map(({ part }) => part)
  const specialStitches = pattern.stitches.map(specialText)
  const counting = parts[0]?.counting ?? 'Row'
  const gauge = pattern.gauge === undefined ? undefined : gaugeText(pattern.gauge, counting, pattern.terms)
  const said = [...parts.map(partWords), ...specialStitches.map(({ how }) => how), ...(gauge?.paragraphs ?? [])].join('\n')
  const abbreviations = abbreviationsOf({
    rows: said, prose: words, terms: pattern.terms, special: pattern.stitches, sizes: pattern.sizes,
    sides: parts.some(({ sides }) => sides), kinds: kindsIn(worked),
  })
  const all = [pattern.title, pattern.summary ?? '', words, said].join('\n')
  const key = keyRow(parts)
  const drawing = drawingText(pattern, worked)
  return {
    slug: pattern.slug,
    title: typeset(pattern.title),
    ...(pattern.number === undefined ? {} : { number: pattern.number }),
    ...(pattern.summary === undefined ? {} : { summary: typeset(pattern.summary) }),
    publisher: pattern.designer ?? '',
    version: pattern.version ?? '',
    date: pattern.date ?? '',
    dateText: dateText(pattern.date ?? ''),
    terms: pattern.terms,
    sizes: pattern.sizes,
    ...(pattern.papers === 'each size' && pattern.sizes.length > 1 ? { eachSize: true } : {}),
    facts: factsOf(pattern, worked, abbreviations, `${said}\n${words}`),
    materials: materialLines(pattern),
    buying: buyingNotes(pattern),
    ...(gauge === undefined ? {} : { gauge }),
    abbreviations,
    specialStitches,
    cautions: cautionsOf(pattern, all),
    ...(key === undefined ? {} : { key }),
    parts: withCautions(parts, pattern, all),
    ...(drawing === undefined ? {} : { drawing }),
    ...prose,
    ...closingOf(pattern),
    credits: credits(pattern),
  }
}

/** All words of a part that a maker reads while working. */
function partWords({ line, lines }: Part): string {
  const texts = lines.map((row) => `${row.text.map(({ text }) => text).join('')}${row.kind === 'row' && row.spaces !== '' ? ` ${row.spaces}` : ''}`)
  return [line, ...texts].join('\n')
}

function kindsIn(parts: readonly WorkedPart[]): readonly string[] {
  const rows = parts.flatMap(({ sizes }) => sizes.flat())
  return [...new Set(rows.flatMap(({ kinds }) => Object.entries(kinds).filter(([, count]) => count > 0).map(([kind]) => kind)))]
}

function specialText({ abbr, name, how, worksOver, makes }: SpecialStitch): SpecialStitchText {
  const counts = `Works over ${worksOver} and makes ${makes}.`
  return { abbr, name: capital(name ?? abbr), how: typeset([sentence(how ?? ''), counts].filter((text) => text !== '').join(' ')) }
}

/** A row that only says which other it is like shows nothing of how rows are read. */
const copying = /^(?:[^:]*: )?(?:rep|repeat|as|work as)\b/i
/** A sample of so many letters is read at a glance. */
const shortEnough = 120
const wordsOf = (text: RowLine['text']): string => text.map((run) => run.text).join('')

/** The row that shows how rows are read: the first with a repeat, since that is what wants showing. */
function keyRow(parts: readonly Part[]): RowLine | undefined {
  const rows = parts.flatMap(({ lines }) => lines).filter((line) => line.kind === 'row')
  const own = rows.filter(({ text }) => !copying.test(wordsOf(text)))
  const repeating = own.filter(({ text }) => text.some(({ repeat }) => repeat))
  return repeating.find(({ text }) => wordsOf(text).length <= shortEnough) ?? repeating.toSorted((a, b) => wordsOf(a.text).length - wordsOf(b.text).length)[0]
    ?? own.find(({ repeats }) => repeats !== '') ?? own[0] ?? rows[0]
}

/** Figures of the yarn table stand in the materials as soon as a yarn has its category. */
function credits({ materials }: Pattern): readonly string[] {
  return (materials?.yarns ?? []).some(({ weight }) => weight !== undefined) ? [yarnStandardsCredit] : []
}
