import { visit } from 'unist-util-visit'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { Pattern } from '../pattern.ts'

/** A stretch of the pattern's words, and where it begins in the source. Its text is the source's own, sign for sign. */
export interface Passage {
  readonly text: string
  readonly start: number
  readonly kind: 'row' | 'remark' | 'summary' | 'how' | 'note' | 'change' | 'body' | 'heading'
  /** The piece that a row, a remark or a piece's note belongs to. */
  readonly piece?: string
  /** Of a paragraph of the body: the heading that it stands under. */
  readonly under?: string
}

/** Everything said outside the rows. `remarks` are the lines between rows, each with its piece. */
export function prosePassages(pattern: Pattern, remarks: readonly { readonly span: Span; readonly piece: string }[]): readonly Passage[] {
  return [...frontMatterPassages(pattern), ...remarks.map(({ span, piece }) => passage(pattern, span, { kind: 'remark', piece })), ...bodyPassages(pattern)]
}

const keys: readonly (readonly [RegExp, Passage['kind']])[] = [
  [/^summary$/, 'summary'], [/^stitches\.\d+\.how$/, 'how'], [/^pieces\.(\d+)\.note$/, 'note'], [/^changes\.\d+\.what$/, 'change'],
]

function frontMatterPassages(pattern: Pattern): readonly Passage[] {
  return [...pattern.places].flatMap(([path, span]) => keys.flatMap(([key, kind]) => {
    const found = key.exec(path)
    if (!found) return []
    const piece = found[1] === undefined ? undefined : pattern.pieces[Number(found[1])]?.name
    return [passage(pattern, span, { kind, ...(piece !== undefined && { piece }) })]
  }))
}

/** Paragraphs, headings and cells of the body. Counts that the booklet fills in are left out: they cannot drift. */
function bodyPassages(pattern: Pattern): readonly Passage[] {
  const passages: Passage[] = []
  let under: string | undefined
  visit(pattern.body, (node) => {
    if (node.type !== 'paragraph' && node.type !== 'heading' && node.type !== 'tableCell') return
    const start = node.position?.start.offset
    const end = node.position?.end.offset
    if (start === undefined || end === undefined) return
    const found = passage(pattern, { start, end }, { kind: node.type === 'heading' ? 'heading' : 'body', ...(under !== undefined && { under }) })
    if (node.type === 'heading') under = found.text.replace(/^#+\s*/, '')
    passages.push(found)
  })
  return passages
}

function passage({ source }: Pattern, span: Span, about: Omit<Passage, 'text' | 'start'>): Passage {
  return { text: textOf(source, span).replace(/:count\[[^\]\n]*\]/g, (found) => ' '.repeat(found.length)), start: span.start, ...about }
}

/** A sentence of a passage. */
export interface Sentence extends Passage {
  readonly of: Passage
}

const known = new WeakMap<Passage, readonly Sentence[]>()

/** The sentences of a passage, parted once. A point between figures, after a letter alone or after `approx` ends none. */
export function sentencesOf(of: Passage): readonly Sentence[] {
  const parted = known.get(of) ?? part(of)
  known.set(of, parted)
  return parted
}

function part(of: Passage): readonly Sentence[] {
  const sentences: Sentence[] = []
  let from = 0
  const close = (to: number): void => {
    const text = of.text.slice(from, to)
    const blank = text.length - text.trimStart().length
    if (text.trim() !== '') sentences.push({ ...of, text: text.trim(), start: of.start + from + blank, of })
    from = to
  }
  for (const { index, 0: mark } of of.text.matchAll(/(?<!\b(?:approx|incl|no|nos|fig|rnd|st|sts|e\.g|i\.e|\p{L}))[.!?](?=\s)/giu)) close(index + mark.length)
  close(of.text.length)
  return sentences
}

/** Where a match stands in the source. `group` is the text of a group of it, when only that is meant. */
export function spanOf(passage: Passage, match: RegExpExecArray, group?: string): Span {
  const inside = group === undefined ? 0 : Math.max(0, match[0].indexOf(group))
  const start = passage.start + match.index + inside
  return { start, end: start + (group ?? match[0]).length }
}

/** Whether a sentence speaks of what is not there or not to be done: `no buttons`, `do not stuff`. With a place, only its clause is asked. */
export function denies(sentence: string, at?: number): boolean {
  const text = at === undefined ? sentence : clauseAt(sentence, at)
  return /\b(?:no|not|never|without|instead|rather than|omit|leave (?:out|off)|skip the|optional(?:ly)?|if you (?:like|prefer|want)|cannot|none)\b|n[’']t\b/i.test(text)
}

function clauseAt(sentence: string, at: number): string {
  const from = Math.max(...[';', ':', '—'].map((sign) => sentence.lastIndexOf(sign, at)))
  const to = /[;:—]/.exec(sentence.slice(at))?.index
  return sentence.slice(from + 1, to === undefined ? undefined : at + to)
}

const words = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** Numbers of a sentence in figures or in words up to twelve; for a pattern of a regular expression. */
export const numberForm = String.raw`\d{1,5}|${words.join('|')}|both`

/** What such a number comes to. */
export function numberFrom(text: string): number {
  if (/^both$/i.test(text)) return 2
  const word = words.indexOf(text.toLowerCase())
  return word === -1 ? Number(text) : word
}
