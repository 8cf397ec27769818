import type { Nodes } from 'mdast'
import { visit } from 'unist-util-visit'
import { inOtherTerms, otherTerms } from '../../stitches/other-terms.ts'
import { stitchNamed, type Terms } from '../../stitches/terms.ts'
import type { Source } from '../../text/source.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import { checkOnce } from '../check-pattern.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import type { Pattern } from '../pattern.ts'
import { sameCounts } from './same-counts.ts'
import { editsIn, type Edit, type Keeping } from './words-in-terms.ts'

/**
 * A pattern in the given terms: its source with every word of a stitch, and every other word that the terms differ in, put in its
 * place, and all of it read, worked and checked again. Undefined when that does not come to the same counts, row for row: then
 * there is no such edition, rather than a wrong one.
 */
export function patternInTerms(checked: CheckedPattern, terms: Terms): CheckedPattern | undefined {
  const { pattern } = checked
  if (pattern === undefined) return undefined
  if (pattern.terms === terms) return checked
  const turned = checkOnce(sourceInOtherTerms(checked, pattern))
  return turned.pattern?.terms === terms && sameCounts(checked, turned) ? turned : undefined
}

/** The source with the edits made. */
export function sourceInOtherTerms({ source, pieces }: CheckedPattern, pattern: Pattern): Source {
  const keeping = keepingOf(pattern)
  const remarks = pieces.flatMap(({ between }) => between).map(({ at, text }): Span => ({ start: at, end: at + text.length }))
  const edits = [
    ...frontMatter(pattern, keeping),
    ...pattern.pieces.flatMap(({ rows }) => rowsEdits(source, rows, remarks, keeping)),
    ...proseEdits(pattern, keeping),
  ]
  return { path: source.path, text: withEdits(source.text, edits) }
}

function withEdits(text: string, edits: readonly Edit[]): string {
  let out = ''
  let at = 0
  for (const edit of edits.toSorted((a, b) => a.start - b.start)) {
    if (edit.start < at) continue
    out += text.slice(at, edit.start) + edit.text
    at = edit.end
  }
  return out + text.slice(at)
}

/** A stitch that the pattern defines under a word of the trade, but with a name of its own, keeps its word. */
function keepingOf({ terms, stitches, pieces }: Pattern): Keeping {
  const own = stitches.filter(({ abbr, name }) => {
    const known = stitchNamed(abbr.toLowerCase(), terms)
    return known !== undefined && name !== undefined && stitchNamed(name.toLowerCase(), terms)?.us !== known.us
  })
  return { terms, kept: new Set([...pieces.map(({ name }) => name), ...own.map(({ abbr }) => abbr)].map((name) => name.toLowerCase())) }
}

function rowsEdits(source: Source, rows: Span, remarks: readonly Span[], keeping: Keeping): readonly Edit[] {
  const within = remarks.filter(({ start, end }) => start >= rows.start && end <= rows.end).toSorted((a, b) => a.start - b.start)
  const edits: Edit[] = []
  let at = rows.start
  for (const remark of [...within, { start: rows.end, end: rows.end }]) {
    if (remark.start < at) continue
    edits.push(...editsIn(source.text, { start: at, end: remark.start }, 'rows', keeping), ...editsIn(source.text, remark, 'prose', keeping))
    at = remark.end
  }
  return edits
}

/** Sentences of the front-matter. Names that other keys refer to, and the title, stay. */
const sentences = /^summary$|^gauge\.after$|^stitches\.\d+\.how$|^pieces\.\d+\.note$|^materials\.(?:yarns|notions)\.\d+\.(?:for|what)$|^seams\.\d+\.by$/
/** Where rows are quoted or stitches named. */
const rowWords = /^gauge\.stitch$|^stitches\.\d+\.(?:abbr|name|height)$|^changes\.\d+\.what$/

function frontMatter({ source, places, terms }: Pattern, keeping: Keeping): readonly Edit[] {
  return [...places].flatMap(([path, span]): readonly Edit[] => {
    if (path === 'terms') return [{ ...span, text: textOf(source, span).replace(/US|UK/, otherTerms(terms)) }]
    if (/^conventions\.turning-chains\.[^.]+$/.test(path)) return keyEdit(source.text, span, terms)
    if (rowWords.test(path)) return editsIn(source.text, span, 'rows', keeping)
    return sentences.test(path) ? editsIn(source.text, span, 'prose', keeping) : []
  })
}

/** The key before a value: `sc: not counted`. */
function keyEdit(text: string, value: Span, terms: Terms): readonly Edit[] {
  const found = /([\p{L}\d -]*[\p{L}\d])(["']?\s*:\s*["']?)$/u.exec(text.slice(0, value.start))
  const key = found?.[1]?.trimStart()
  const turned = key === undefined ? undefined : inOtherTerms(key, terms)
  if (found === null || key === undefined || turned === undefined) return []
  const end = value.start - (found[2] ?? '').length
  return [{ start: end - key.length, end, text: turned }]
}

/** The words of the Markdown body; what `:count[…]` refers to stays. */
function proseEdits({ source, body }: Pattern, keeping: Keeping): readonly Edit[] {
  const edits: Edit[] = []
  visit(body, (node: Nodes) => {
    if (node.type === 'textDirective' || node.type === 'html') return 'skip'
    if (node.type !== 'text' && node.type !== 'inlineCode' && node.type !== 'code') return undefined
    const [start, end] = [node.position?.start.offset, node.position?.end.offset]
    if (start !== undefined && end !== undefined) edits.push(...editsIn(source.text, { start, end }, 'prose', keeping))
    return undefined
  })
  return edits
}
