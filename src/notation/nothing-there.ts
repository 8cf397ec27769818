import { numberAhead } from './numbers.ts'
import { isQuiet } from './parse-remark.ts'
import { takeStitchName, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import { inwards, takeInwardCorner } from './which-corner.ts'

const inner = new RegExp(`^(?:${inwards})$`)
/** Words that tell of a place that it is worked as if it were none. */
const plainly = /^(?:no|not|nor|neither|never|nothing|none|without|even|straight|past|passing|included|including|ignore|ignoring|disregard|plain|plainly|follow)$/
const works = /tog|^(?:together|twice|skip|miss|turn|join)$/
const separator = /^[,;.:()[\]–—]$/

/**
 * What is told of a corner is that nothing happens there:
 *
 *   do not inc or dec at inner corner   The inner corner is worked even   no shaping at inner corners   1 sc in each sc at the inner corner
 *   do not work extra stitches at the corners   none at the corners   do not work into the seams   no corner increases in this rnd
 */
export function parseNothingThere(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  const words = clauseWords(reader)
  if (noneThere(reader, words)) {
    reader.at += words.length
    return [{ node: 'aside', start, end: reader.end }]
  }
  if (!words.some((word, ahead) => inner.test(word) && /^corners?$/.test(words[ahead + 1] ?? ''))) return undefined
  if (fillThere(reader, before) || saysNothing(reader, words)) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** What a clause may hold that says of corners or seams that nothing goes into them. */
const ofNothing = ['work', 'working', 'into', 'st', 'sts', 'stitch', 'stitches', 'increase', 'increases', 'increasing', 'inc', 'extra', 'each']
const denied = /^(?:and |but )?(?:do not (?:work|make|place|put|add|inc|increase)|none|nothing|no (?:extra |additional )?(?:sts|stitches|increases|corner increases|sc|dc)|not)\b/

/** Without a number, and without a stitch that it would tell the number of. */
function noneThere(reader: Reader, words: readonly string[]): boolean {
  const [, ...others] = words
  if (!denied.test(words.join(' ')) || !others.some((word) => /^(?:corners?|seams?|spine|fold|gaps?)$/.test(word))) return false
  return isQuiet(reader, reader.at, reader.at + words.length, ...ofNothing, ...(/^(?:no|not)$/.test(words[0]!) ? ['sc', 'dc', 'hdc', 'tr'] : []))
}

function clauseWords(reader: Reader): readonly string[] {
  const words: string[] = []
  for (let ahead = 0; reader.at + ahead < reader.limit && !separator.test(reader.word(ahead)); ahead += 1) words.push(reader.word(ahead))
  return words
}

/** Takes the clause, and one behind it that speaks of the same place: `…; sc straight past it`, `…, where nothing is added`. */
function saysNothing(reader: Reader, words: readonly string[]): boolean {
  if (!countsNothing(reader, words)) return false
  reader.at += words.length
  const { at } = reader
  while (separator.test(reader.word())) reader.at += 1
  const behind = clauseWords(reader)
  const ofIt = (/^(?:where|which)$/.test(behind[0] ?? '') || behind.some((word) => /^(?:it|there)$/.test(word))) && countsNothing(reader, behind) && behind.some((word) => plainly.test(word))
  reader.at = ofIt ? reader.at + behind.length : at
  return ofIt || words.some((word) => plainly.test(word))
}

const countsNothing = (reader: Reader, words: readonly string[]): boolean => words.every((word, ahead) => !works.test(word) && (numberAhead(reader, ahead) === undefined || word === 'one' && words[ahead + 1] === 'another'))

/** `sc in each st at inner corner`, `at the inner corner 1 sc in each sc`: what fills the row anyway. */
function fillThere(reader: Reader, before: readonly Instruction[]): boolean {
  const { at } = reader
  const first = takeThere(reader)
  if (first) reader.take(',|:?', 'work|working?')
  if (numberAhead(reader) === 1) reader.at += 1
  const stitch = takeStitchName(reader)
  const fills = before.some((item) => item.node === 'work' && item.stitch === stitch && item.target?.walk === 'each' && (item.count?.values[0] ?? 1) === 1)
  if (fills && reader.take('in|into', 'each|every|all') && takeThing(reader) && (first || takeThere(reader)) && (reader.done || separator.test(reader.word()))) return true
  reader.at = at
  return false
}

const takeThere = (reader: Reader): boolean => reader.take('at|in|on', 'each|every|the|all?', 'of?', 'the?') && takeInwardCorner(reader)
