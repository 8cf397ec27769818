import type { Root } from 'mdast'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import type { Says, WorkedRow, WrittenRow } from '../../../src/fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../../../src/pattern/checked-pattern.ts'
import type { Pattern, Piece } from '../../../src/pattern/pattern.ts'
import type { Source } from '../../../src/text/source.ts'
import type { Span } from '../../../src/text/span.ts'

/** A line of rows with what it comes to, worked by hand. */
export interface HandRow {
  /** As written: label, text and total are cut apart by `|`: `Rnd 3:|*Sc in next st, inc; rep from * around.|(18)`. */
  readonly written: string
  readonly numbers?: readonly number[]
  /** What the row is called where no label is written. */
  readonly name?: string
  /** For each size, what each real row makes. An empty list: the size leaves the line out. */
  readonly makes: readonly (readonly number[])[]
  readonly word?: 'row' | 'round'
  readonly side?: 'RS' | 'WS'
  /** What is repeated, as written, and how often in each size. */
  readonly repeats?: readonly (readonly [string, ...number[]])[]
  readonly spaces?: Readonly<Record<string, number>>
  readonly kinds?: Readonly<Record<string, number>>
  readonly saysKinds?: Readonly<Record<string, number>>
  readonly verdict?: WorkedRow['verdict']
  /** Letters of the yarns that it names. */
  readonly yarns?: readonly string[]
}

export interface HandPiece {
  readonly name: string
  readonly piece?: Partial<Piece>
  /** Rows, and lines that are printed and not counted. */
  readonly lines: readonly (HandRow | string)[]
}

/** A checked pattern whose counts were worked by hand, for what a booklet makes of it. */
export function byHand(pieces: readonly HandPiece[], pattern: Partial<Pattern> = {}, body = ''): CheckedPattern {
  const rowsText = pieces.map(({ lines }) => `${lines.map((line) => (typeof line === 'string' ? line : line.written.replaceAll('|', ' '))).join('\n')}\n`)
  const source: Source = { path: 'by-hand.md', text: `${rowsText.join('\n')}\n${body}` }
  const sizes = Math.max(1, pattern.sizes?.length ?? 0)
  const starts = rowsText.map((_, index) => rowsText.slice(0, index).reduce((sum, text) => sum + text.length + 1, 0))
  const made = pieces.map((piece, index) => workedPieces(piece, starts[index]!, source, sizes, pattern.sizes ?? []))
  return {
    source,
    pattern: {
      source, slug: 'by-hand', title: 'By Hand', access: 'free', terms: 'US', sizes: [], conventions: { turningChains: {} }, stitches: [],
      pieces: made.map(([first]) => first!.piece), seams: [], finished: [], changes: [], accepted: [], body: markdown(body, source), places: new Map(), ...pattern,
    },
    pieces: made.flat(),
    diagnostics: [],
  }
}

function workedPieces({ name, piece, lines }: HandPiece, start: number, source: Source, sizes: number, names: readonly string[]): readonly WorkedPiece[] {
  const own: Piece = { name, make: 1, rows: { start, end: start }, nameSpan: { start, end: start }, ...piece }
  const placed = lines.map((line, index) => {
    const before = lines.slice(0, index).reduce((sum, other) => sum + (typeof other === 'string' ? other : other.written).length + 1, 0)
    return { line, at: start + before }
  })
  const between = placed.flatMap(({ line, at }, index) => (typeof line === 'string' ? [{ text: line, at, afterRow: index }] : []))
  return Array.from({ length: sizes }, (_, size) => ({
    piece: own,
    ...(names[size] === undefined ? {} : { size: names[size] }),
    rows: placed.flatMap(({ line, at }) => (typeof line === 'string' ? [] : workedRows(line, at, source, size))),
    between, edges: [],
  }))
}

function workedRows(row: HandRow, at: number, source: Source, size: number): readonly WorkedRow[] {
  const [label = '', text = '', total = ''] = row.written.split('|')
  const textStart = at + label.length + (label === '' ? 0 : 1)
  const totalStart = textStart + text.length + 1
  const numbers = row.numbers ?? []
  const written: WrittenRow = {
    span: { start: at, end: at + row.written.length },
    label: { start: at, end: at + label.length },
    text: { start: textStart, end: textStart + text.length },
    ...(/\d/.test(label) && !/^next/i.test(label) && numbers.length > 0 ? { first: numbers[0]!, last: numbers.at(-1)! } : {}),
  }
  const says: Says = { span: { start: totalStart, end: totalStart + total.length }, kinds: row.saysKinds ?? {}, spaces: row.spaces ?? {} }
  return (row.makes[size] ?? row.makes[0] ?? []).map((makes, index) => ({
    label: row.name ?? label.replace(/[:(].*/, ''),
    word: row.word ?? (/^r(?:nd|ound)/i.test(label) ? 'round' : 'row'),
    ...(numbers[0] === undefined ? {} : { number: numbers[0] + index }),
    ...(row.side === undefined ? {} : { side: row.side }),
    written,
    offers: makes, worksOver: makes, leaves: 0, makes,
    kinds: row.kinds ?? { sc: makes },
    spaces: row.spaces ?? {},
    ...(total === '' ? {} : { says }),
    verdict: row.verdict ?? 'adds-up',
    assumed: [], tally: [],
    repeats: (row.repeats ?? []).map(([repeated, ...times]) => ({ span: spanOf(source, written.text, repeated), times: times[size] ?? times[0]! })),
    troubles: [],
    agreement: { total: true, kinds: true, change: true },
    yarns: (row.yarns ?? []).map((yarn) => ({ yarn, span: written.text })),
    fabric: { made: [], left: [], turned: false },
  }))
}

function spanOf(source: Source, within: Span, text: string): Span {
  const start = source.text.indexOf(text, within.start)
  if (start === -1 || start + text.length > within.end) throw new Error(`the row does not hold ${text}`)
  return { start, end: start + text.length }
}

function markdown(body: string, source: Source): Root {
  const root = unified().use(remarkParse).use(remarkGfm).use(remarkDirective).parse(body)
  const shift = source.text.length - body.length
  const moved = (node: { position?: { start: { offset?: number }; end: { offset?: number } }; children?: unknown }): void => {
    if (node.position) {
      node.position.start.offset = (node.position.start.offset ?? 0) + shift
      node.position.end.offset = (node.position.end.offset ?? 0) + shift
    }
    for (const child of (node.children ?? []) as (typeof node)[]) moved(child)
  }
  moved(root as never)
  return root
}

/** Runs as one string, repeats between `_` marks: how a person would underline them by hand. */
export function underlinedText(runs: readonly { readonly text: string; readonly repeat: boolean }[]): string {
  return runs.map(({ text, repeat }) => (repeat ? `_${text}_` : text)).join('')
}

/** No-break spaces as the ordinary ones, where they are not the subject. */
export function plainSpaces(text: string): string {
  return text.replaceAll('\u00a0', ' ')
}
