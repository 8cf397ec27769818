import type { Diagnostic, Hint, Label } from '../diagnostics/diagnostic.ts'
import type { Span } from '../text/span.ts'
import { didYouMean, meant } from './did-you-mean.ts'
import { entryAt, leaveOut, putText, textAt, type KeysEntry } from './entry.ts'
import { partNames, seamPart, namedEdges } from './seam-edges.ts'
import { quoted } from './shown.ts'
import type { PatternValues } from './schema/pattern.ts'

/** Every name that a piece has in the file, those included that are left out later because something else in them is wrong. */
export function writtenPieceNames(root: KeysEntry): ReadonlySet<string> {
  const pieces = entryAt(root, ['pieces'])
  const names = pieces?.kind === 'list' ? pieces.items.map((piece) => textAt(piece, ['name'])) : []
  return new Set(names.filter((name) => name !== undefined))
}

/**
 * Names of sizes and pieces are each given once, and a piece that is named is there. A piece that goes on from one that
 * is not there cannot be worked, so it is left out.
 */
export function nameFindings(root: KeysEntry, values: PatternValues, written: ReadonlySet<string>): readonly Diagnostic[] {
  return [
    ...twice(root, 'size', (values.sizes ?? []).map((name, index) => ({ name, path: ['sizes', index] }))),
    ...twice(root, 'piece', [
      ...values.pieces.map(({ name }, index) => ({ name, path: ['pieces', index, 'name'] })),
      ...gridsOf(values).map(({ name, index }) => ({ name, path: ['seams', index, 'name'] })),
    ]),
    ...onFindings(root, values, written),
    ...seamFindings(root, values, written),
  ]
}

function twice(root: KeysEntry, what: string, names: readonly { readonly name: string; readonly path: readonly (string | number)[] }[]): readonly Diagnostic[] {
  const first = new Map<string, Span>()
  return names.flatMap(({ name, path }) => {
    const span = entryAt(root, path)?.span
    const before = first.get(name)
    if (!span) return []
    if (before) return [wrong(`two ${what}s are called ${quoted(name)}`, { span, text: 'the second' }, { secondary: [{ span: before, text: 'the first' }] })]
    first.set(name, span)
    return []
  })
}

/** Joined grids that have a name, with the last piece in them. */
function gridsOf({ seams = [], pieces }: PatternValues): readonly { readonly name: string; readonly index: number; readonly last: number }[] {
  return seams.flatMap(({ name, grid, join }, index) => (name !== undefined && grid ? [{ name, index, last: pieces.findLastIndex((piece) => join.includes(piece.name)) }] : []))
}

function onFindings(root: KeysEntry, values: PatternValues, written: ReadonlySet<string>): readonly Diagnostic[] {
  const pieces = entryAt(root, ['pieces'])
  const all = pieces?.kind === 'list' ? [...pieces.items] : []
  const diagnostics: Diagnostic[] = []
  const grids = gridsOf(values)
  const names = [...written, ...grids.map(({ name }) => name)]
  // A border of a grid comes after the last of its motifs.
  const placeOf = new Map(grids.map(({ name, last }) => [name, last] as const))
  values.pieces.forEach(({ name }, index) => placeOf.has(name) || placeOf.set(name, index))
  const gone = new Set<number>()
  values.pieces.forEach(({ name, on: told = [] }, index) => told.forEach((on, nth) => {
    const entry = all[index] && entryAt(all[index], ['on'])
    const listed = entry?.kind === 'list' ? entry : undefined
    const span = (listed?.items[nth] ?? entry)?.span
    if (!span) return
    const likely = placeOf.has(on) || written.has(on) ? on : meant(on, names)
    const at = likely === undefined ? undefined : placeOf.get(likely)
    if (!placeOf.has(on) && !written.has(on)) {
      diagnostics.push(wrong(`${quoted(name)} goes on from ${quoted(on)}, but no piece has that name`, { span, text: 'no such piece' }, didYouMean(on, names)))
    } else if (at === index) {
      diagnostics.push(wrong(`${quoted(name)} goes on from itself`, { span, text: 'the piece itself' }))
    } else if (at !== undefined && at > index) {
      diagnostics.push(wrong(`${quoted(name)} goes on from ${quoted(on)}, which is worked after it`, { span, text: 'stands further down' }))
    }
    if (at === undefined || at >= index || gone.has(at)) gone.add(index)
    else if (likely !== undefined && likely !== on) putText(listed ?? all[index], listed ? nth : 'on', likely, span)
  }))
  for (const index of gone) leaveOut(pieces, index, all[index])
  return diagnostics
}

function seamFindings(root: KeysEntry, values: PatternValues, written: ReadonlySet<string>): readonly Diagnostic[] {
  const seams = entryAt(root, ['seams'])
  const all = seams?.kind === 'list' ? [...seams.items] : []
  const pieces = entryAt(root, ['pieces'])
  const staying = pieces?.kind === 'list' ? pieces.items.filter((piece) => !pieces.leaving.has(piece)) : []
  const there = new Set(staying.map((piece) => textAt(piece, ['name'])))
  const names = [...written]
  const parts = values.pieces.flatMap((piece) => partNames(piece.name, piece.rows))
  const diagnostics: Diagnostic[] = []
  values.seams?.forEach(({ join }, index) => {
    const joined = entryAt(all[index] ?? root, ['join'])
    const edges = namedEdges(join, names, parts)
    edges.forEach((name, place) => {
      const span = joined?.kind === 'list' ? (edges.length === join.length ? joined.items[place] : joined)?.span : undefined
      const { piece, unread } = seamPart(name, names, parts)
      if (unread && span) diagnostics.push({ code: 'words-passed-over', message: `a seam is not compared: ${quoted(name)} is not understood as an edge of ${piece}`, primary: { span, text: 'not understood' }, secondary: [] })
      if (there.has(piece) || !span) return
      const likely = meant(name, names)
      if (!written.has(name)) {
        diagnostics.push(wrong(`a seam joins ${quoted(name)}, but no piece has that name`, { span, text: 'no such piece' }, didYouMean(name, names)))
      }
      if (likely !== undefined && there.has(likely)) putText(joined, place, likely, span)
      else leaveOut(seams, index, all[index])
    })
  })
  return diagnostics
}

function wrong(message: string, primary: Label, more: { readonly secondary?: readonly Label[]; readonly hint?: Hint } = {}): Diagnostic {
  return { code: 'value-wrong', message, primary, secondary: [], ...more }
}
