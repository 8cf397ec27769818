import { listOf, ordinal, plural } from '../diagnostics/words.ts'
import { textOf, type Source } from '../text/source.ts'
import type { Run } from './booklet.ts'
import { capital, nbsp, perSize } from './figures.ts'
import type { GatheredLine } from './gather-lines.ts'
import { typeset } from './typeset.ts'

/** Where a line stands, as far as its label needs it. */
export interface LineNames {
  readonly source: Source
  /** Names of the sizes; empty for one size. */
  readonly sizes: readonly string[]
}

/** `3`, `9–10`, for sizes that differ `9–12 (13, 14)`, for a row without a number its first word: `Next`. */
export function label(line: GatheredLine, source: Source): string {
  const ranges = line.rows.filter((rows) => rows.length > 0).map((rows) => ({ first: rows[0]?.number, last: rows.at(-1)?.number }))
  if (line.written.first === undefined && line.written.last === undefined) return unnumbered(labelText(line, source)).word
  const firsts = ranges.map(({ first }) => first)
  const shown = ranges.map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`))
  const sameStart = firsts.every((first) => first === firsts[0]) && ranges.every(({ first, last }) => first !== last)
  return sameStart ? `${firsts[0]}–${perSize(ranges.map(({ last }) => `${last}`))}` : perSize(shown)
}

/** What stands before the row in the source; a row that has no label is called as it was worked: `Base`, `Next`. */
function labelText(line: GatheredLine, source: Source): string {
  const written = textOf(source, line.written.label)
  return written.trim() === '' ? line.rows.flat()[0]?.label ?? '' : written
}

/** The label of a row without a number, in its two parts: `Next 4 rows (RS):` is `Next` and `4 rows`, `Foundation:` is `Start`. */
function unnumbered(label: string): { readonly word: string; readonly howMany: string } {
  const bare = label.replace(/\s+/g, ' ').replace(/^.*\bonly\s*[:,–-]\s*/i, '').replace(/\s*[:.]\s*$/, '').replace(/\s*\((?:RS|WS)\)$/, '')
  if (/^foundation/i.test(bare)) return { word: 'Start', howMany: '' }
  const [, word = '', many, unit = ''] = /^(.*?)\s*(\d+(?: ?\([\d, –-]+\))?)?\s*\b(rows?|rnds?|rounds?)$/i.exec(bare) ?? [undefined, bare]
  return { word: word === '' ? 'Next' : capital(word), howMany: many === undefined ? '' : `${many} ${unit}` }
}

/**
 * What a line needs said before its own words, because it stood in the label and the number column has no room for it:
 * the sizes that work it when not all do, and how many rows it is worked for.
 */
export function ahead(line: GatheredLine, { source, sizes }: LineNames): readonly Run[] {
  const working = sizes.filter((_, size) => (line.rows[size]?.length ?? 0) > 0)
  const numbered = line.written.first !== undefined || line.written.last !== undefined
  const howMany = numbered ? '' : unnumbered(labelText(line, source)).howMany
  const said = [
    ...(working.length < sizes.length ? [`${plural('Size', working.length)} ${listOf(working)} only`] : []),
    ...(howMany === '' ? [] : [howMany]),
  ]
  return said.length === 0 ? [] : [{ text: typeset(`${said.join(', ')}: `), repeat: false }]
}

/** A box for each real row. A row that only some sizes work says which, beside its number. */
export function boxes(line: GatheredLine, { sizes }: LineNames): readonly string[] {
  const most = Math.max(...line.rows.map((rows) => rows.length))
  return Array.from({ length: most }, (_, index) => {
    const without = line.rows.some((rows) => rows.length > 0 && rows.length <= index)
    const working = sizes.filter((_, size) => (line.rows[size]?.length ?? 0) > index)
    const name = numberIn(line, index)
    return without ? `${name}${nbsp}${whichSizes(working, sizes)}` : name
  })
}

/**
 * The number of the row of a line that is so many in (from 0). Where it is another in each size: all of them, as the line itself has them,
 * `9 (13)`; in a line of several rows the row's place in it, `2nd`; a row alone without a number is the next.
 */
export function numberIn(line: GatheredLine, index: number): string {
  const numbersAt = (at: number) => line.rows.flatMap((rows) => rows[at]?.number ?? [])
  const longest = Math.max(...line.rows.map((rows) => rows.length))
  const apart = Array.from({ length: longest }, (_, at) => at).some((at) => new Set(numbersAt(at)).size > 1)
  if (!apart) return `${numbersAt(index)[0] ?? index + 1}`
  if (longest > 1) return ordinal(index + 1)
  return line.written.first === undefined ? 'Next' : perSize(numbersAt(index).map(String))
}

/** Which sizes work the row of a line that is so many in (from 0), where not all do: `from Adult`; else nothing. */
export function workedBy(line: GatheredLine, index: number, sizes: readonly string[]): string {
  const working = sizes.filter((_, size) => (line.rows[size]?.length ?? 0) > index)
  return working.length === sizes.length ? '' : whichSizes(working, sizes)
}

/** The longer lines are mostly those of the larger sizes: `from Adult`; else the names. */
function whichSizes(working: readonly string[], sizes: readonly string[]): string {
  const larger = working.length > 1 && working.length < sizes.length && working.at(-1) === sizes.at(-1)
    && working.every((name, index) => name === sizes[sizes.length - working.length + index])
  return larger ? `from${nbsp}${working[0]}` : working.join(`,${nbsp}`)
}
