import { toString } from 'mdast-util-to-string'
import { stitchNamed } from '../stitches/terms.ts'
import type { Conventions, Pattern } from './pattern.ts'

/** Stitch at whose height a chain of so many stands, in US words. */
const heights: Readonly<Record<number, string>> = { 2: 'hdc', 3: 'dc', 4: 'tr', 5: 'dtr' }

/**
 * What the pattern says of turning chains: in its conventions, and in words in its notes (`Ch 3 at the start of each row counts as
 * dc`). The front-matter wins.
 */
export function saidConventions(pattern: Pattern, remarks: readonly string[]): Conventions {
  const said: Record<string, boolean> = {}
  for (const sentence of [...remarks, toString(pattern.body)].flatMap((text) => text.split(/(?<=[.;!])\s|\n/))) {
    const chain = /\b(?:ch|chain)[ -]?(\d)\b/i.exec(sentence) ?? /\b(\d)[ -]?ch\b/i.exec(sentence)
    if (!chain || !/turn|throughout|begin|beg\b|start|each r|every r/i.test(sentence)) continue
    const not = /(?:does|do) not count|doesn[’']t count|not (?:counted|a st)|never counts?/i.test(sentence)
    const as = /counts?(?: always)? as (?:a |an |the |first |one |1 )*([\p{L} ]+?)(?:[.,;)]| throughout| unless| here|$)/iu.exec(sentence)
    if (!not && !as) continue
    const named = as ? stitchNamed(as[1]!.trim().toLowerCase(), pattern.terms)?.us : undefined
    const stitch = named ?? heights[Number(chain[1])]
    if (stitch !== undefined) said[stitch] = !not
  }
  return { ...pattern.conventions, turningChains: { ...said, ...pattern.conventions.turningChains } }
}
