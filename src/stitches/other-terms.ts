import type { Stitch } from './define.ts'
import { stitchNamed, type Terms } from './terms.ts'

/** The terms that a pattern may be turned into. */
export function otherTerms(terms: Terms): Terms {
  return terms === 'US' ? 'UK' : 'US'
}

/**
 * A stitch as it is written in the given terms, put in the other terms in the same manner of writing: `Sc` becomes `Dc`, `2sctog`
 * `2dctog`, `half double crochets` `half treble crochets`. Undefined for what is no stitch, and for a spelling that both terms have.
 */
export function inOtherTerms(written: string, terms: Terms): string | undefined {
  const bare = written.replace(/\s+/g, ' ')
  const stitch = stitchNamed(bare.toLowerCase(), terms)
  if (stitch !== undefined) return turned(bare, stitch, terms)
  const one = /s$/i.test(bare) ? bare.slice(0, -1) : undefined
  const many = one === undefined ? undefined : stitchNamed(one.toLowerCase(), terms)
  const text = one === undefined || many === undefined ? undefined : turned(one, many, terms)
  // `ss` is one slip stitch and several.
  return text === undefined || text.endsWith('ss') ? text : `${text}s`
}

function turned(written: string, stitch: Stitch, terms: Terms): string | undefined {
  const to = sameManner(written.toLowerCase(), stitch, terms)
  const own = sides[terms]
  if (to.toLowerCase() === written.toLowerCase()) return undefined
  return written === stitch[own] ? to : inCase(written, to)
}

const sides = { US: 'us', UK: 'uk' } as const

/** The spelling of a stitch in the other terms that corresponds to one in these: short form to short form, name to name. */
function sameManner(written: string, stitch: Stitch, terms: Terms): string {
  const [from, to] = [sides[terms], sides[otherTerms(terms)]]
  if (written === stitch[from].toLowerCase()) return stitch[to]
  const [nameFrom, nameTo] = [stitch.name[from].toLowerCase(), stitch.name[to]]
  if (written === nameFrom) return nameTo
  const means = (word: string | undefined) => word !== undefined && stitchNamed(word.toLowerCase(), otherTerms(terms))?.us === stitch.us
  if (means(written)) return written
  if (written === nameFrom.replace(/ crochet\b/g, '')) {
    const short = nameTo.replace(/ crochet\b/g, '')
    return means(short) ? short : nameTo
  }
  // The lists of made stitches correspond: `2sctog`, `2dctog`. Those of plain ones are each terms' own.
  const also = stitch.base === undefined ? undefined : stitch.also?.[to]?.[(stitch.also[from] ?? []).findIndex((one) => one.toLowerCase() === written)]
  return also !== undefined && means(also) ? also : stitch[to]
}

/** Small letters, capitals, or a capital at the head, as they were written. */
function inCase(written: string, text: string): string {
  const letters = written.replace(/\P{L}/gu, '')
  if (letters.length > 1 && letters === letters.toUpperCase()) return text.toUpperCase()
  return letters[0] === letters[0]?.toUpperCase() ? text.replace(/\p{L}/u, (letter) => letter.toUpperCase()) : text
}
