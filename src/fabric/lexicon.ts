import type { Vocabulary } from '../notation/reader.ts'
import type { Stitch } from '../stitches/define.ts'
import { stitchNamed, stitchOf, type Terms } from '../stitches/terms.ts'

/** A stitch that a pattern defines for itself. */
export interface OwnStitch {
  readonly abbr: string
  readonly name?: string
  readonly worksOver: number
  readonly makes: number
  readonly height?: string
}

/** The words of one pattern: the trade's and its own. */
export interface Lexicon extends Vocabulary {
  readonly terms: Terms
  /** Facts of a stitch by its US word or by the pattern's own abbreviation. */
  stitch(us: string): Stitch | undefined
  /** Whether the word is defined by the pattern itself. */
  owns(us: string): boolean
}

const textured: Readonly<Record<string, string>> = {
  bo: 'bo', bobble: 'bo', pc: 'pc', popcorn: 'pc', puff: 'puff', cl: 'cl', cluster: 'cl', sh: 'sh', shell: 'sh', fan: 'sh',
}

/** Makes the lexicon of a pattern in its terms. A pattern's own definition wins over the trade's usual meaning. */
export function lexicon(terms: Terms, own: readonly OwnStitch[], sizes: number, yarns: readonly string[], pieces: readonly string[] = []): Lexicon {
  const owned = new Map<string, Stitch>()
  const ownWords = new Map<string, string>()
  for (const stitch of own) {
    // A pattern that explains `sc2tog` says what the trade says: it is no kind of its own.
    const trades = /tog$/i.test(stitch.abbr) ? stitchNamed(stitch.abbr.toLowerCase(), terms) : undefined
    if (trades && trades.worksOver === stitch.worksOver && trades.makes === stitch.makes) {
      if (stitch.name) ownWords.set(stitch.name.toLowerCase(), trades.us)
      continue
    }
    owned.set(stitch.abbr, ownStitch(stitch))
    ownWords.set(stitch.abbr.toLowerCase(), stitch.abbr)
    if (stitch.name) ownWords.set(stitch.name.toLowerCase(), stitch.abbr)
  }
  const named = (word: string): string | undefined => ownWords.get(word) ?? stitchNamed(word, terms)?.us ?? legged(word, terms, ownWords)
  const cache = new Map<string, string | undefined>()
  const nameOf = (word: string): string | undefined => {
    if (cache.has(word)) return cache.get(word)
    const found = named(word) ?? (word.endsWith('s') && word.length > 2 ? named(word.slice(0, -1)) : undefined)
    if (cache.size < 5_000) cache.set(word, found)
    return found
  }
  return {
    key: JSON.stringify([terms, own.map(({ abbr, name, worksOver, makes, height }) => [abbr, name, worksOver, makes, height]), sizes, yarns, pieces]),
    terms,
    sizes,
    yarns,
    // `Back Left Shoulder` is no `Back`.
    pieces: pieces.toSorted((one, other) => other.length - one.length),
    owns: (us) => owned.has(us),
    stitch: (us) => owned.get(us) ?? stitchOf(us) ?? shellOf(us),
    stitchAt(words) {
      for (let count = Math.min(words.length, 6); count > 0; count -= 1) {
        const stitch = nameOf(joined(words, count))
        if (stitch !== undefined) return { stitch, words: count }
      }
      return undefined
    },
  }
}

/** Words as one name; a hyphen touches its neighbours: `V - st` is `v-st`. */
function joined(words: readonly string[], count: number): string {
  return words.slice(0, count).join(' ').replace(/ [-–] /g, '-')
}

/** `4-dc bobble`, `5-dc shell`, `3-dc cluster` */
function legged(word: string, terms: Terms, own: ReadonlyMap<string, string>): string | undefined {
  const match = /^(\d{1,2})[- ]([a-z]+)[ -]([a-z]+)$/.exec(word)
  const kind = match && (own.get(match[3]!) ?? textured[match[3]!] ?? textured[match[3]!.replace(/s$/, '')])
  const base = match && stitchNamed(match[2]!, terms)
  if (!match || !kind || !base) return undefined
  return kind === 'cl' || kind === 'sh' ? `${match[1]}-${base.us} ${kind}` : kind
}

/** `5-dc sh`: so many stitches in one place. */
function shellOf(us: string): Stitch | undefined {
  const match = /^(\d{1,2})-(\S+) sh$/.exec(us)
  const base = match && stitchOf(match[2]!)
  if (!match || !base) return undefined
  return { us, uk: `${match[1]}-${base.uk} sh`, name: { us: `${us}ell`, uk: `${match[1]}-${base.uk} shell` }, worksOver: 1, makes: Number(match[1]), height: base.height, base: base.us,
    meaning: `${match[1]} {${base.us}} in one place` }
}

function ownStitch(stitch: OwnStitch): Stitch {
  const known = stitchOf(stitch.height ?? '')
  const usual = stitchNamed(stitch.abbr.toLowerCase(), 'US') ?? (stitch.name ? stitchNamed(stitch.name.toLowerCase(), 'US') : undefined)
  return {
    us: stitch.abbr, uk: stitch.abbr, name: { us: stitch.name ?? stitch.abbr, uk: stitch.name ?? stitch.abbr },
    worksOver: stitch.worksOver, makes: stitch.makes, height: known?.height ?? 1, ...(usual && usual.us !== stitch.abbr && { base: usual.us }), meaning: stitch.name ?? stitch.abbr,
  }
}
