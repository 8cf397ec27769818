import { wordFor } from '../../stitches/terms.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { Pattern } from '../pattern.ts'
import { quoted, type Change, type Slip } from './change.ts'

/** What the front-matter says of turning chains and slip stitches, turned round. */
export function conventionChanges({ checked: { pattern } }: Pick<Slip, 'checked'>): readonly Change[] {
  if (!pattern) return []
  return [...pattern.places].flatMap(([path, span]) => {
    const [, key] = /^conventions\.(?:turning-chains\.)?([^.]+)$/.exec(path) ?? []
    const said = textOf(pattern.source, span)
    if (key === undefined || !/^(?:not )?counted$/.test(said)) return []
    const turned = said === 'counted' ? 'not counted' : 'counted'
    return [{ span, replacement: turned, words: `with ${quoted(`${key}: ${turned}`)} in the conventions` }]
  })
}

/** A turning chain of which nothing is said: the two answers, as lines of the front-matter. The stitch is the one of its height. */
export function unsaidChainChanges(pattern: Pattern, chains: number): readonly Change[] {
  const height = ['', 'sc', 'hdc', 'dc', 'tr', 'dtr'][chains]
  const stitches = [...new Set([height, 'sc', 'hdc', 'dc'])].filter((stitch) => stitch !== undefined && stitch !== '')
  return stitches.slice(0, 2).flatMap((stitch) => ['not counted', 'counted'].map((says) => {
    const entry = `${wordFor(stitch!, pattern.terms)}: ${says}`
    return { ...placeFor(pattern, entry), words: `with ${quoted(entry)} under \`turning-chains\` in the conventions` }
  }))
}

/** Where an entry of `turning-chains` goes: into the group that is there, in its own form, or into a new one below the terms. */
function placeFor({ source: { text }, places }: Pattern, entry: string): { readonly span: Span; readonly replacement: string } {
  const chains = places.get('conventions.turning-chains')
  const conventions = places.get('conventions')
  if (chains) return atHead(text, chains, entry)
  if (conventions) return atHead(text, conventions, `turning-chains: { ${entry} }`)
  const terms = places.get('terms')?.end ?? text.indexOf('\n')
  const lineEnd = text.indexOf('\n', terms)
  return put(lineEnd === -1 ? text.length : lineEnd, `\nconventions:\n  turning-chains: { ${entry} }`)
}

/** At the head of a group: `{ entry, … }` or a line of its own with the indentation of the others. */
function atHead(text: string, group: Span, entry: string): { readonly span: Span; readonly replacement: string } {
  if (text[group.start] === '{') return put(group.start + 1, / *\}/y.test(text.slice(group.start + 1, group.start + 3)) ? ` ${entry} ` : ` ${entry},`)
  const indent = group.start - (text.lastIndexOf('\n', group.start - 1) + 1)
  return put(group.start, `${entry}\n${' '.repeat(indent)}`)
}

function put(at: number, replacement: string): { readonly span: Span; readonly replacement: string } {
  return { span: { start: at, end: at }, replacement }
}
