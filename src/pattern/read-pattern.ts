import type { Root } from 'mdast'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { readBody } from './body.ts'
import type { KeysEntry } from './entry.ts'
import { findFrontMatter, type FrontMatter } from './find-front-matter.ts'
import { readFrontMatter } from './front-matter.ts'
import { missingToPublish } from './missing-to-publish.ts'
import type { Pattern } from './pattern.ts'
import { nameFindings, writtenPieceNames } from './piece-names.ts'
import { rowsInBlocks } from './rows-in-blocks.ts'
import type { PatternValues } from './schema/pattern.ts'
import { quoted } from './shown.ts'
import { sizeListFindings } from './size-lists.ts'
import { slugOf, titleFromSlug } from './slug.ts'
import { stitchWordFindings } from './stitch-words.ts'
import { toPattern } from './to-pattern.ts'
import { validate, type Context } from './validate.ts'

/** A pattern file as read: the pattern, whenever its terms and pieces can be made sense of, and all that is to be looked at. */
export interface ReadPattern {
  readonly pattern?: Pattern
  readonly diagnostics: readonly Diagnostic[]
}

/** Reads a pattern file. Its rows are found and not yet read; what is wrong is said and left out, so that the rest goes on. */
export function readPattern(source: Source): ReadPattern {
  const zero = source.text.indexOf('\0')
  if (zero !== -1) return { diagnostics: [unreadable('the file holds a zero sign, so it is not a text in UTF-8', { start: zero, end: zero + 1 }, 'not text')] }
  const front = findFrontMatter(source.text)
  if (!front) return { diagnostics: [...foreignSigns(source), frontMatterMissing(source)] }
  const { pattern, diagnostics } = readHalves(source, front)
  return { ...(pattern ? { pattern } : {}), diagnostics: inOrder([...foreignSigns(source), ...notClosed(front), ...diagnostics]) }
}

function readHalves(source: Source, front: FrontMatter): ReadPattern {
  const { root, diagnostics, losesKeys, rows } = readFrontMatter(source, front.yaml)
  if (!root) return { diagnostics }
  const context = { source, opening: front.opening, losesKeys, fallbackTitle: titleFromSlug(slugOf(source.path)) }
  const notInBlocks = rowsInBlocks(root, source, rows)
  const { values, findings } = checkedValues(root, context, diagnostics.length + notInBlocks.length === 0)
  const body = readBody(source, front.body)
  const unpublished = losesKeys ? [] : missingToPublish(root, front.opening)
  const all = [...diagnostics, ...notInBlocks, ...findings, ...unpublished, ...(body ? [] : [tooDeep(front.body)])]
  return values ? { pattern: toPattern(source, { root, values, body: body ?? emptyBody }), diagnostics: all } : { diagnostics: all }
}

const emptyBody: Root = { type: 'root', children: [] }

/** The schema first; then what only the values together can show. `sound` while nothing was found before. */
function checkedValues(root: KeysEntry, context: Context, sound: boolean): { readonly values?: PatternValues; readonly findings: readonly Diagnostic[] } {
  const written = writtenPieceNames(root)
  const { values, diagnostics } = validate(root, context)
  if (!values) return { findings: diagnostics }
  const together = [
    ...sizeListFindings(root, values),
    ...stitchWordFindings(root, values),
    ...nameFindings(root, values, written),
  ]
  // Something was left out for what was found, so the values are read anew. What is missing now was said before.
  const again = sound && diagnostics.length + together.length === 0 ? values : validate(root, context).values
  return { ...(again ? { values: again } : {}), findings: [...diagnostics, ...together] }
}

function frontMatterMissing({ text }: Source): Diagnostic {
  const first = /\S.*/.exec(text)
  const start = first?.index ?? 0
  const span = { start, end: start + (first?.[0].trimEnd().length ?? 0) }
  const message = first ? `the file begins with ${quoted(first[0])}, but a pattern begins with a line of \`---\`` : 'the file is empty'
  return {
    code: 'front-matter-missing',
    message,
    primary: { span, text: 'no `---` before this' },
    secondary: [],
    note: 'the front-matter stands at the top of the file between two lines of `---` and holds the title, the terms and the rows',
  }
}

function notClosed({ opening, closed }: FrontMatter): readonly Diagnostic[] {
  if (closed) return []
  return [{
    code: 'front-matter-broken',
    message: 'the front-matter has no second line of `---`, so nothing says where it ends',
    primary: { span: opening, text: 'begins here' },
    secondary: [],
  }]
}

/** Signs that stand for letters lost when a file in another encoding was read as UTF-8: one finding, however many. */
function foreignSigns({ text }: Source): readonly Diagnostic[] {
  const first = text.indexOf('\uFFFD')
  if (first === -1) return []
  const note = 'the sign � stands where a letter was lost: the file was not saved as UTF-8'
  return [{ ...unreadable('the file holds letters that were lost in saving', { start: first, end: first + 1 }, 'a lost letter'), note }]
}

function tooDeep(body: number): Diagnostic {
  return unreadable('the prose is nested too deep to be read', { start: body, end: body }, 'from here on')
}

function unreadable(message: string, span: Span, text: string): Diagnostic {
  return { code: 'file-unreadable', message, primary: { span, text }, secondary: [] }
}

function inOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return [...diagnostics].sort((a, b) => a.primary.span.start - b.primary.span.start)
}
