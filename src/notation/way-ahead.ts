import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { isQuiet } from './parse-remark.ts'
import { takeLandmark } from './parse-way.ts'
import { takeWhichStitches } from './parse-saying.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/**
 * `down the left front work 1 dc in first row-end`, `along the top of the second arm 2 dc in first st`, `up out of the notch, sc in …`, `across First Prong work …`: which
 * way the work goes, by words that name no edge. What is worked there follows, and tells its places.
 */
export function parseWayAhead(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^(?:[,.;:(]|and|then|now)$/.test(reader.word(-1))
  reader.take('now|then|and')
  reader.take('work|working|continue|continuing|go|going')
  if (begins && reader.take('down|up|along|across|over|around|round', 'and?', 'down|up|out|back|over|along|across|into?', 'of?')) {
    const named = takePieceName(reader) !== undefined
    if (!named && !reader.take('the|its|this|that|each')) return back(reader, at)
    const { at: from } = reader
    let told: number | undefined
    for (; !reader.done && reader.at - from < 8 && !endsWay(reader); reader.at += 1) {
      const { at: here } = reader
      if (!takeWhichStitches(reader)) continue
      told = here
      break
    }
    const to = told ?? reader.at
    const leads = worksHere(reader) || told !== undefined || to - at < 6 && worksBehindComma(reader) || reader.take('work|working|make|making|put|putting|place|placing')
    if (leads && (named && to === from || isQuiet(reader, from, to))) return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  // `working down neck edge of first shoulder,`
  if (begins && reader.take('working|going') && reader.take('down|up|along|across') && takeLandmark(reader) && reader.word() === ',') return [{ node: 'aside', start, end: reader.end }]
  return back(reader, at)
}

function back(reader: Reader, at: number): undefined {
  reader.at = at
  return undefined
}

const endsWay = (reader: Reader): boolean => reader.done || /^(?:[,.;:()[\]*]|work|working|make|making|put|putting|place|placing)$/.test(reader.word()) || worksHere(reader)

/** `around the Tab, sc in next row-end`: the way is a clause of its own. */
function worksBehindComma(reader: Reader): boolean {
  const { at } = reader
  const works = reader.take(',|:') && worksHere(reader)
  reader.at = at
  return works
}

/** `2 dc in`, `sc in`, `3 sc into` */
function worksHere(reader: Reader): boolean {
  const stitch = numberAhead(reader) === undefined ? 0 : 1
  const found = reader.vocabulary.stitchAt([reader.word(stitch), reader.word(stitch + 1)])
  return found !== undefined && /^(?:in|into)$/.test(reader.word(stitch + found.words))
}
