import { cluster, foundation, post, together, type Stitch } from './define.ts'
import { stitches } from './table.ts'

export type Terms = 'US' | 'UK'

/** The stitch of a US word, made ones (`dc5tog`, `4-dc cl`) included. */
export function stitchOf(us: string): Stitch | undefined {
  return stitches.get(us) ?? madeOf(us, 'US')
}

/** What a US word is called in the terms of the reader. A word that is no stitch of ours (a pattern's own) stays. */
export function wordFor(us: string, terms: Terms): string {
  if (terms === 'US') return us
  return stitchOf(us)?.uk ?? us
}

/** All the ways in which a stitch is written in the given terms, in small letters. */
export function spellingsOf(stitch: Stitch, terms: Terms): readonly string[] {
  const side = terms === 'US' ? 'us' : 'uk'
  const name = stitch.name[side].toLowerCase()
  const short = name.replace(/ crochet\b/g, '')
  const forms = [stitch[side], name, ...(stitch.also?.[side] ?? [])].map((form) => form.toLowerCase())
  // `treble` alone is the stitch; `single` alone is not a word that patterns use.
  if (short !== name && short !== 'single' && short !== 'double' && short !== 'half double') forms.push(short)
  return forms
}

const known = {
  US: spelt('US'),
  UK: spelt('UK'),
}

function spelt(terms: Terms): ReadonlyMap<string, Stitch> {
  const words = new Map<string, Stitch>()
  for (const stitch of stitches.values()) {
    for (const form of spellingsOf(stitch, terms)) if (!words.has(form)) words.set(form, stitch)
  }
  return words
}

/** The stitch that a word, in small letters, stands for in the given terms; undefined when it stands for none. */
export function stitchNamed(word: string, terms: Terms): Stitch | undefined {
  return known[terms].get(word) ?? madeOf(word, terms)
}

/** Every spelling in the given terms: for the nearest word to a misspelt one. */
export function allSpellings(terms: Terms): readonly string[] {
  return [...known[terms].keys()]
}

/** `dc5tog`, `5dctog`, `FPdc2tog`, `4-dc cl`: stitches made from another one and a number. */
function madeOf(word: string, terms: Terms): Stitch | undefined {
  const tog = /^([a-z]+)(\d{1,2})tog$/i.exec(word) ?? /^(\d{1,2})([a-z]+)tog$/i.exec(word)
  if (tog) {
    const [a, b] = [tog[1]!, tog[2]!]
    const base = stitchNamed((/\d/.test(a) ? b : a).toLowerCase(), terms)
    const n = Number(/\d/.test(a) ? a : b)
    return base && n > 1 ? together(base, n) : undefined
  }
  const legs = /^(\d{1,2})-([a-z]+) ?(cl|clusters?)$/i.exec(word)
  if (legs) {
    const base = stitchNamed(legs[2]!.toLowerCase(), terms)
    return base && cluster(base, Number(legs[1]))
  }
  const raised = /^([fb])p([a-z]+)$/i.exec(word)
  if (raised) {
    const base = known[terms].get(raised[2]!.toLowerCase())
    return base && post(base, raised[1]!.toLowerCase() === 'f' ? 'front' : 'back')
  }
  const founded = /^f([a-z]+)$/i.exec(word)
  const base = founded && known[terms].get(founded[1]!.toLowerCase())
  return base && base.height > 0 && base.worksOver === 1 && base.makes === 1 && !base.base ? foundation(base) : undefined
}
