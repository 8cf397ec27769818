import type { WorkedRow, WrittenRow } from '../fabric/worked-row.ts'
import { textOf, type Source } from '../text/source.ts'
import { spellingsOf, stitchOf, type Terms } from '../stitches/terms.ts'
import type { RealRow } from './booklet.ts'
import { perSize } from './figures.ts'
import type { GatheredLine } from './gather-lines.ts'
import { numberIn, workedBy } from './row-label.ts'
import { changeText, stitchesText } from './row-figures.ts'
import { shortWork, type ShortWords } from './short-work.ts'
import { yarnsInUse } from './yarn-in-use.ts'

/** What all rows of a piece have in common, as far as a checklist needs it. */
export interface PieceSetting {
  readonly source: Source
  readonly terms: Terms
  readonly sizes: readonly string[]
  /** Letters of the yarns, when there are several. */
  readonly yarns: readonly string[]
  /** The yarn that is in hand when the piece begins. */
  readonly firstYarn?: string
  /** Written rows of the whole pattern by where they begin, for rows that copy another's words. */
  readonly written: ReadonlyMap<number, WrittenIn>
}

/** A written row, and the piece that it belongs to. */
export interface WrittenIn {
  readonly row: WrittenRow
  readonly piece: string
}

/** The real rows of each line of a piece, in the order of the lines. */
export function realRows(lines: readonly GatheredLine[], setting: PieceSetting): readonly (readonly RealRow[])[] {
  const { source, terms, sizes, yarns, firstYarn } = setting
  const longest = lines.flatMap((line) => longestOf(line))
  const inHand = yarnsInUse(longest, source, firstYarn)
  const texts = lines.map(({ written }) => textOf(source, written.text))
  const words: ShortWords = { terms, inc: texts.some((text) => /\binc\b/i.test(text)), dec: texts.some((text) => /\bdec\b/i.test(text)) }
  const kinds = new Set(lines.flatMap(({ rows }) => rows.flat()).flatMap((row) => Object.keys(row.kinds)))
  const plain = plainWords([...kinds], terms, yarns)
  let from = 0
  return lines.map((line) => {
    const own = longestOf(line)
    const begin = from
    from += own.length
    return own.map((row, at): RealRow => {
      const yarn = inHand[begin + at]
      const before = inHand[begin + at - 1]
      const short = line.rows.every((rows) => rows[at] === undefined || isPlain(rows[at], setting, plain)) ? shortOfAll(line.rows.map((rows) => rows[at]), words) : undefined
      return {
        label: numberIn(line, at),
        sizes: workedBy(line, at, sizes),
        ...(row.side === undefined ? {} : { side: row.side }),
        yarn: yarns.length < 2 || yarn === undefined || begin + at > 0 && yarn === before ? '' : begin + at === 0 ? `${yarn}.` : `To ${yarn}.`,
        ...(short === undefined ? {} : { short }),
        change: changeOfAll(line, at),
        stitches: alike(line.rows.map((rows) => stitchesText(rows[at]))),
        inSizes: line.rows.map((rows) => stitchesText(rows[at])),
        ...asRow(textOf(source, line.written.text), at),
        ...asInPiece(row, line, setting),
      }
    })
  })
}

const longestOf = ({ rows }: GatheredLine): readonly WorkedRow[] => rows.toSorted((a, b) => b.length - a.length)[0] ?? []

/** Of a line that copies others (`Rep Rows 2-5`) the row that this one is like. */
function asRow(text: string, at: number): Pick<RealRow, 'as'> {
  const copied = copiedRows(text)
  return copied.length === 0 ? {} : { as: `${copied[at % copied.length]}` }
}

/** Of a row that copies one of another piece (`As for Front`) that piece and the row's number there. */
function asInPiece({ written: { copies, span }, number }: WorkedRow, line: GatheredLine, { written }: PieceSetting): Pick<RealRow, 'as' | 'asOf'> {
  const copied = copies === undefined ? undefined : written.get(copies)
  const own = written.get(span.start)
  // A line that has the other's words has no need to point to it.
  if (line.instead !== undefined || copied === undefined || own === undefined || copied.piece === own.piece || number === undefined) return {}
  const sizes = new Set(line.rows.map((rows) => rows.length))
  // Where the sizes have another number of rows, a number would be right for one of them alone.
  return { asOf: copied.piece, ...(sizes.size === 1 ? { as: `${number}` } : {}) }
}

function copiedRows(text: string): readonly number[] {
  const [, first, last] = /^\s*(?:rep(?:eat)?|work as|as)\s+(?:rows?|rnds?|rounds?)\s+(\d+)(?:\s*(?:-|–|to|and)\s*(\d+))?/i.exec(text) ?? []
  if (first === undefined) return []
  return Array.from({ length: Math.max(1, Number(last ?? first) - Number(first) + 1) }, (_, at) => Number(first) + at)
}

/** Words of a row that its stitches say as well. */
const said = `in each next first last same st sts stitch stitches across around round rnd row rows rnds rep repeat from to and end join with sl ch turn inc dec
  ring make an adjustable magic hook all of the this change fasten off times time more twice once together tog as do not then ending beg top over remaining
  rem ss continue into until only back front loop loops blo flo bl fl`.split(/\s+/)

function plainWords(kinds: readonly string[], terms: Terms, yarns: readonly string[]): ReadonlySet<string> {
  const spellings = kinds.flatMap((kind) => {
    const stitch = stitchOf(kind)
    return stitch === undefined ? [kind] : spellingsOf(stitch, terms)
  })
  return new Set([...said, ...spellings.flatMap((spelling) => spelling.split(/[\s-]+/)), ...yarns].map((word) => word.toLowerCase()))
}

/** Whether a row has no words but those that its stitches say: then nothing is lost in a short form. A row that copies another has its words. */
function isPlain(row: WorkedRow, { source, written }: PieceSetting, plain: ReadonlySet<string>): boolean {
  const { copies } = row.written
  const words = copies === undefined ? row.written : written.get(copies)?.row
  if (words === undefined) return false
  const text = textOf(source, words.text)
  const taken = new Set(row.yarns.map(({ yarn }) => yarn))
  // A row in several colours says where each begins.
  if (/\bwith\b.*\bwith\b/i.test(text) && taken.size > 1) return false
  const isKnown = (word: string) => /^\d+(?:st|nd|rd|th)?$/.test(word) || plain.has(word.toLowerCase())
  return (text.match(/[\p{L}\d]+/gu) ?? []).every(isKnown)
}

/** One figure where all sizes that work the row have the same. */
function alike(figures: readonly string[]): readonly string[] {
  const told = figures.filter((one) => one !== '–')
  return told.every((one) => one === told[0]) ? told.slice(0, 1) : figures
}

function changeOfAll(line: GatheredLine, at: number): string {
  const compared = line.rows.map((rows, size) => ({ own: rows[at], before: at === 0 ? line.before[size] : rows[at - 1] }))
  const working = changeText(compared.filter(({ own }) => own !== undefined))
  return working.includes('(') ? changeText(compared) : working
}

/** One short form for all sizes; where they differ in numbers alone, the numbers of all of them: `48 (56) sc`. */
function shortOfAll(rows: readonly (WorkedRow | undefined)[], words: ShortWords): string | undefined {
  const working = rows.filter((row) => row !== undefined)
  const shorts = working.map((row) => shortWork(row, words))
  const [first] = shorts
  if (first === undefined || shorts.includes(undefined)) return undefined
  const parts = shorts.map((short) => (short ?? '').split(/(?<![\d-])(\d+)(?![\d-])/))
  const same = parts.every((own) => own.length === parts[0]?.length && own.every((part, at) => at % 2 === 1 || part === parts[0]?.[at]))
  if (!same) return undefined
  const inOrder = rows.map((row) => (row === undefined ? undefined : parts[working.indexOf(row)]))
  return (parts[0] ?? []).map((part, at) => {
    const numbers = parts.map((own) => own[at] ?? '')
    return at % 2 === 0 || numbers.every((number) => number === part) ? part : perSize(inOrder.map((own) => own?.[at] ?? '–'))
  }).join('')
}
