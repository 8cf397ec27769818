import { listOf } from '../diagnostics/words.ts'
import type { WorkedRow, WrittenRow } from '../fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../pattern/checked-pattern.ts'
import type { Pattern, Piece } from '../pattern/pattern.ts'
import { textOf, type Source } from '../text/source.ts'
import type { InstructionLine, Part, PartLine } from './booklet.ts'
import { correctionsOf } from './corrections.ts'
import { sentence } from './figures.ts'
import { gatherLines, isOnlyChains, type GatheredLine } from './gather-lines.ts'
import { mannerOf, type Manner } from './manner.ts'
import { realRows, type WrittenIn } from './real-rows.ts'
import { plainRuns } from './row-text.ts'
import { rowLine } from './row-line.ts'
import { typeset } from './typeset.ts'

/** A piece on its way into print, with what the facts block says of it. */
export interface WorkedPart {
  readonly part: Part
  readonly piece: Piece
  readonly manner: Manner
  /** Its rows in every size, foundation left out. */
  readonly sizes: readonly (readonly WorkedRow[])[]
  /** The yarn of the foundation, when it names one. */
  readonly firstYarn?: string
}

/** The longest foundation, in characters, that stands beside the head; a longer one is a line of its own. */
const besideHead = 60

/** The pieces of a pattern as the parts of its booklet, in the order in which they are worked. `notes` is the prose as plain text. */
export function partsOf(checked: CheckedPattern, pattern: Pattern, notes: string): readonly WorkedPart[] {
  const ids = new Set<string>()
  const written = new Map(checked.pieces.flatMap(({ piece, rows }) => rows.map((row) => [row.written.span.start, { row: row.written, piece: piece.name }] as const)))
  const remarks = [...new Map(checked.pieces.flatMap(({ between }) => between).map(({ at, text }) => [at, text] as const))].toSorted(([a], [b]) => a - b)
  return pattern.pieces.flatMap((piece) => {
    const worked = checked.pieces.filter((candidate) => candidate.piece.name === piece.name)
    return worked.length === 0 ? [] : [{ piece, worked }]
  }).map(({ piece, worked }, index) => partOf({ piece, worked, number: index + 1, pattern, notes, written, remarks, ids }))
}

interface PartMaking {
  readonly piece: Piece
  readonly worked: readonly WorkedPiece[]
  readonly number: number
  readonly pattern: Pattern
  readonly notes: string
  readonly written: ReadonlyMap<number, WrittenIn>
  /** What stands between the rows of all pieces, by where it stands. */
  readonly remarks: readonly (readonly [number, string])[]
  /** The names of lines so far: no two lines of a booklet share one. */
  readonly ids: Set<string>
}

function partOf({ piece, worked, number, pattern, notes, written, remarks, ids }: PartMaking): WorkedPart {
  const { source } = pattern
  const all = gatherLines(worked.map(({ rows }) => rows), (row) => copiedFrom(row, { piece, written }))
  const [first] = all
  const foundation = first !== undefined && isFoundation(first) ? first : undefined
  const lines = foundation === undefined ? all : all.slice(1)
  const manner = mannerOf(lines, source, notes)
  const begins = foundation === undefined ? '' : textOf(source, foundation.written.text).replace(/\s+/g, ' ').trim()
  const rows = lines.flatMap((line) => line.rows.flat())
  const done = progress(lines)
  const firstYarn = foundation?.rows.flat()[0]?.yarns[0]?.yarn
  const yarns = (pattern.materials?.yarns ?? []).flatMap(({ letter }) => letter ?? [])
  const real = realRows(lines, { source, terms: pattern.terms, sizes: pattern.sizes, yarns, written, ...(firstYarn === undefined ? {} : { firstYarn }) })
  const correctedBy = correctionsOf(pattern)
  const rowLines = lines.map((line, index) => {
    const corrected = correctedBy(piece.name, line)
    return rowLine(line, {
      source, terms: pattern.terms, sizes: pattern.sizes, progress: done[index] ?? 1, id: idOf(line, piece, ids), real: real[index] ?? [], written,
      ...(corrected === undefined ? {} : { corrected }),
    })
  })
  return {
    piece,
    manner,
    ...(firstYarn === undefined ? {} : { firstYarn }),
    sizes: worked.map((size) => size.rows.filter((row) => !foundation?.rows.flat().includes(row))),
    part: {
      number,
      name: piece.name,
      ...(piece.make === 1 ? {} : { make: piece.make }),
      line: partLine({ piece, manner, begins: begins.length <= besideHead ? begins : '', notes, rows, terms: pattern.terms }),
      counting: manner === 'in rows' ? 'Row' : 'Round',
      sides: manner === 'in rows' ? rows.some((row) => row.side !== undefined) : rows.some((row) => row.side === 'WS'),
      lines: [
        ...instructions(piece.note === undefined ? [] : [piece.note]),
        ...instructions(begins.length > besideHead ? [begins] : []),
        ...withInstructions(lines, rowLines, { worked, source, remarks }),
      ],
    },
  }
}

/** A foundation of chains is said at the head of the part. One that is made of stitches is a row like any other. */
function isFoundation({ rows }: GatheredLine): boolean {
  return rows.flat().every((row) => row.number === undefined && isOnlyChains(row))
}

/** Rows that are as those of another piece are printed in full, so that nobody turns back for them; reversed ones have words of their own. */
function copiedFrom({ written: { copies, reversed } }: WorkedRow, { piece, written }: Pick<PartMaking, 'piece' | 'written'>): WrittenRow | undefined {
  const copied = copies === undefined || reversed !== undefined ? undefined : written.get(copies)
  return copied === undefined || copied.piece === piece.name ? undefined : copied.row
}

function idOf(line: GatheredLine, piece: Piece, ids: Set<string>): string {
  const name = piece.name.toLowerCase().replace(/^the /, '').normalize('NFD').replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')
  const base = `${name === '' ? 'part' : name}-${line.rows.flat()[0]?.number ?? 'start'}`
  let id = base
  for (let again = 2; ids.has(id); again += 1) id = `${base}-${again}`
  ids.add(id)
  return id
}

/** After each line, the share of the piece's stitches that are worked, in the first size. */
function progress(lines: readonly GatheredLine[]): readonly number[] {
  const stitches = lines.map(({ rows }) => (rows[0] ?? []).reduce((sum, row) => sum + row.makes, 0))
  const all = stitches.reduce((sum, count) => sum + count, 0)
  let soFar = 0
  return stitches.map((count) => {
    soFar += count
    return all === 0 ? 1 : soFar / all
  })
}

interface PartHead {
  readonly piece: Piece
  readonly manner: Manner
  /** The foundation as written; empty when it is not said here. */
  readonly begins: string
  readonly notes: string
  readonly rows: readonly WorkedRow[]
  readonly terms: Pattern['terms']
}

/** `Make 2. In rows, with A. Ch 41 (61). US terms.` The yarn is said of the whole piece when no row brings in another. */
function partLine({ piece, manner, begins, notes, rows, terms }: PartHead): string {
  const [, yarn, rest] = /^[Ww]ith ([A-Z]), (.+)$/.exec(begins) ?? []
  const alone = yarn !== undefined && rows.every((row) => row.yarns.every((named) => named.yarn === yarn))
  const way = manner === 'in a spiral' && /\bmarker\b/i.test(notes) ? 'in a spiral; move the marker up each round' : manner
  const sentences = [
    piece.on === undefined ? `make ${piece.make}` : `${piece.make > 1 ? `make ${piece.make}; go` : 'goes'} on from ${listOf([piece.on, ...(piece.onAlso ?? [])])}`,
    alone ? `${way}, with ${yarn}` : way,
    alone && rest !== undefined ? rest : begins,
    `${terms} terms`,
  ]
  return typeset(sentences.map(sentence).filter((text) => text !== '').join(' '))
}

function instructions(texts: readonly string[]): readonly InstructionLine[] {
  return texts.map((text) => ({ kind: 'instruction', text: plainRuns(text) }))
}

/** Puts the lines that are printed and not counted where they stand in the source. */
function withInstructions(
  lines: readonly GatheredLine[], rowLines: readonly PartLine[], { worked, source, remarks }: { readonly worked: readonly WorkedPiece[]; readonly source: Source; readonly remarks: PartMaking['remarks'] },
): readonly PartLine[] {
  const said = new Map(worked.flatMap(({ between }) => between).map(({ at, text }) => [at, text]))
  const waiting = [...said].sort(([a], [b]) => a - b)
  const placed: PartLine[] = []
  lines.forEach((line, index) => {
    const before = waiting.filter(([at]) => at < line.written.span.start)
    waiting.splice(0, before.length)
    placed.push(...instructions(before.map(([, text]) => text)))
    const row = rowLines[index]
    // Where the words of another piece stand in a line's place, the line itself comes first: `Rows 1–11: As for Front.`
    if (line.instead && lines[index - 1]?.instead?.span.start !== line.instead.span.start) placed.push(...instructions([unTotalled(line.instead, source)]).map((one) => ({ ...one, about: true as const })))
    else placed.push(...instructions(between(lines[index - 1], line, remarks)))
    if (row) placed.push(row)
  })
  return [...placed, ...instructions(waiting.map(([, text]) => text))]
}

/** Of two lines that both stand for one written row, as those of `Rows 1-18: As for Back` do, what stands between their rows there: the heading of a shoulder, and where its yarn is joined. */
function between(before: GatheredLine | undefined, line: GatheredLine, remarks: PartMaking['remarks']): readonly string[] {
  if (!line.instead || !before?.instead) return []
  return remarks.filter(([at]) => at > before.written.text.start && at < line.written.text.start).map(([, text]) => text)
}

/** A written row from its label to the end of its words; the total stands at its rows. */
function unTotalled({ label, text }: WrittenRow, source: Source): string {
  return textOf(source, { start: label.start, end: text.end }).replace(/\s+/g, ' ')
}
