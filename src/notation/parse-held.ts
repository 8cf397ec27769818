import { takeNumber } from './numbers.ts'
import { takePieceOrPart } from './parse-piece-name.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'

const sides = 'left|right|first|second|1st|2nd|third|3rd|other|one|either|front|back|same'
const openings = 'bridge|underarm|armhole|underarms|thumb|thumbhole|armpit|opening'

const holes = 'slit|slot|opening|hole|gap|armhole|underarm|thumbhole|buttonhole|keyhole'

/** Whether a noun names an opening: \`underarm\`, \`thumb\`. */
export const isOpening = (noun: string): boolean => openings.split('|').includes(noun)

/** `of underarm`, `at the left underarm`, `of the ch-4 at right underarm`, `along underarm ch`: the chain over stitches that wait. Gives the words. */
export function takeOpening(reader: Reader): string | undefined {
  const { at } = reader
  if (reader.take('of|at|along|across|on|to|from|over|in', 'the|one|either|a?')) {
    if (reader.take('ch|chain', '-')) {
      takeNumber(reader)
      reader.take('sp|space')
      reader.take('of|at|along|across|over|in', 'the?')
    }
    reader.take(`${sides}?`, `${sides}?`)
    // `in the underarm seam`: no chain over stitches, but what two edges have become.
    if (reader.take(openings, 'ch|chain|chains|opening|hole|gap|edge|sts?') && !/^(?:seam|seams|join|joins)$/.test(reader.word())) {
      // `the second opening of Row 5`: a row of no more than one such place needs no number.
      takeRowNamed(reader, 'of|in|on', 'the?')
      return wordsFrom(reader, at)
    }
    // `of the ch-6`: the chain by its length.
    if (/^(ch|chain)$/.test(reader.word(-3)) && reader.word(-2) === '-' && reader.all.slice(at, reader.at).some(({ text }) => text === 'of')) return wordsFrom(reader, at)
  }
  reader.at = at
  return undefined
}

/** `held sts`, `sts held for left sleeve`, `skipped sts of Yoke`: what follows stitches that wait. Gives the words and the row that is named. */
export function takeHeldTail(reader: Reader): { readonly words: string; readonly ofRow?: number } | undefined {
  const { at } = reader
  let ofRow: number | undefined
  for (;;) {
    const { at: here } = reader
    const row = takeRowNamed(reader, 'held|left|skipped|missed|waiting?', 'of|from|on|in|at?', 'the?')
    if (row !== undefined) {
      ofRow = row
      continue
    }
    if (reader.take('of|from|on') && takePieceOrPart(reader) !== undefined) continue
    reader.at = here
    if (reader.take('held|left|skipped|saved|waiting?', 'for|at', 'the|a?', `${sides}?`, 'sleeve|sleeves|thumb|armhole|underarm|opening')) continue
    reader.at = here
    // `of the other slit in Rnd 3`, `of 2nd hand opening`
    if (reader.take('of|from|at|in', 'the?', sides, 'thumb|hand|neck|arm|button?', holes)) continue
    reader.at = here
    break
  }
  return reader.at === at ? undefined : { words: wordsFrom(reader, at), ...(ofRow !== undefined && { ofRow }) }
}

/** `held sts`, `28 held stitches`: the word before the thing. */
export function takeHeldWord(reader: Reader): boolean {
  return reader.take('held|saved|waiting|parked', 'sleeve|thumb|instep|body|front|back?') && takeThing(reader) !== undefined
}

function wordsFrom(reader: Reader, from: number): string {
  return reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
}

/** `the first unworked sc below the chain`: the chain goes over it. */
export function takeLeftUnderChain(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('unworked|free') && takeThing(reader)?.kind === 'stitch' && reader.take('below|under|beneath|underneath', 'the', 'ch|chain') && placeEnds(reader)) return true
  reader.at = at
  return false
}
