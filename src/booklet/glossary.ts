import type { Stitch } from '../stitches/define.ts'
import { stitches } from '../stitches/table.ts'
import { stitchNamed, wordFor } from '../stitches/terms.ts'
import type { Abbreviation } from './booklet.ts'
import { tradeWords } from './trade-words.ts'

/** A word of the glossary: how it is written in US and in UK terms, and what it stands for. */
export interface GlossaryEntry {
  /** Its place on the page: `fpdc`. */
  readonly place: string
  readonly kind: 'stitch' | 'word'
  readonly us: string
  readonly uk: string
  /** Whole names; empty for words that are no stitch. */
  readonly usName: string
  readonly ukName: string
  /** In US terms. */
  readonly meaning: string
}

const shaping: readonly GlossaryEntry[] = [
  { place: 'ch', kind: 'stitch', us: 'ch', uk: 'ch', usName: 'chain', ukName: 'chain', meaning: 'yarn over and pull through the loop on the hook' },
  { place: 'inc', kind: 'stitch', us: 'inc', uk: 'inc', usName: 'increase', ukName: 'increase', meaning: '2 stitches in one stitch; each pattern says which' },
  { place: 'dec', kind: 'stitch', us: 'dec', uk: 'dec', usName: 'decrease', ukName: 'decrease', meaning: 'the next 2 stitches worked together as one; each pattern says which' },
]

/** All stitches and words of the trade that rows may use, stitches first. */
export function glossary(): readonly GlossaryEntry[] {
  const own = new Set(shaping.map(({ us }) => us))
  return [
    ...shaping,
    ...[...stitches.values()].filter(({ us }) => !own.has(us)).map(stitchEntry),
    ...tradeWords.map(({ us, uk, meaning }): GlossaryEntry => ({
      place: wordPlace(us[0] ?? ''), kind: 'word', us: us.join(', '), uk: uk.join(', '), usName: '', ukName: '', meaning: meaning.join(', '),
    })),
  ]
}

function stitchEntry(stitch: Stitch): GlossaryEntry {
  return {
    place: placeOf(stitch.us), kind: 'stitch', us: stitch.us, uk: stitch.uk, usName: stitch.name.us, ukName: stitch.name.uk,
    meaning: stitch.meaning.replace(/\{([^}]+)\}/g, (_, us: string) => wordFor(us, 'US')),
  }
}

/** Where an abbreviation of a pattern stands in the glossary; undefined for signs and for stitches of the pattern's own. */
export function glossaryPlace({ kind, us }: Abbreviation): string | undefined {
  if (kind === 'sign') return undefined
  if (kind === 'word') {
    const first = us.split(', ')[0] ?? ''
    const known = tradeWords.find((word) => word.us.includes(first))
    return known && wordPlace(known.us[0] ?? '')
  }
  if (shaping.some((entry) => entry.us === us)) return us
  const stitch = stitchNamed(us.toLowerCase(), 'US') ?? stitches.get(us)
  return stitch && placeOf(stitch.us)
}

const placeOf = (word: string) => word.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '')

const wordPlace = (word: string) => `word-${placeOf(word)}`
