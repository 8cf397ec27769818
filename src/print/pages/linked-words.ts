import type { Booklet, Part, Run } from '../../booklet/booklet.ts'
import type { Span } from '../type/break-lines.ts'
import type { FontRole } from '../type/fonts.ts'

/** Names of the anchors that words of a pattern lead to. */
export const anchorOf = {
  abbreviation: (word: string) => `word-${word.toLowerCase()}`,
  part: (number: number) => `part-${number}`,
}

/** The words of the list of abbreviations, in the terms of the printing; signs are no words. */
export function listedWords({ abbreviations, terms }: Pick<Booklet, 'abbreviations' | 'terms'>): ReadonlySet<string> {
  const words = abbreviations.filter(({ kind }) => kind !== 'sign').flatMap(({ us, uk }) => (terms === 'US' ? us : uk).split(/,\s*/))
  return new Set(words.map((word) => word.toLowerCase()))
}

/**
 * Runs of a row as spans, each listed word linked to its meaning where it stands first: a link at every word would be a page of links.
 * `linked` keeps what was linked before.
 */
export function linkedSpans(runs: readonly Run[], font: FontRole, words: ReadonlySet<string>, linked: Set<string>): readonly Span[] {
  return runs.flatMap(({ text, repeat }): readonly Span[] => {
    const spans: Span[] = []
    let from = 0
    for (const { 0: found, index } of text.matchAll(/\p{L}[\p{L}\d]*(?:[\s\u00a0-]\p{L}[\p{L}\d]*)?/gu)) {
      const [one = ''] = found.split(/[\s\u00a0-]/)
      const word = [found.replaceAll('\u00a0', ' '), one].find((candidate) => words.has(candidate.toLowerCase()))
      if (word === undefined || linked.has(word.toLowerCase())) continue
      linked.add(word.toLowerCase())
      if (index > from) spans.push({ text: text.slice(from, index), repeat, font })
      spans.push({ text: text.slice(index, index + word.length), repeat, font, href: `#${anchorOf.abbreviation(word)}` })
      from = index + word.length
    }
    return [...spans, ...(from < text.length ? [{ text: text.slice(from), repeat, font }] : [])]
  })
}

/** The line under a part's head as spans, with the part that it goes on from linked to its own head. */
export function partLineSpans({ line }: Pick<Part, 'line'>, parts: readonly Pick<Part, 'name' | 'number'>[], font: FontRole): readonly Span[] {
  const from = /\bon from (.+?)\. /.exec(line)?.[1]
  const other = parts.find(({ name }) => name === from)
  if (from === undefined || !other) return [{ text: line, font }]
  const at = line.indexOf(from)
  return [{ text: line.slice(0, at), font }, { text: from, font, href: `#${anchorOf.part(other.number)}` }, { text: line.slice(at + from.length), font }]
}
