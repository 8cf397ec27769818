import { ordinals } from './number-words.ts'
import { takeNumber, takeTimesWord } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

/** How often a bracket of the row that is copied is worked: each of them, or the one of that order. */
export interface BracketTimes {
  readonly nth?: number
  readonly times: Num
}

const brackets = 'bracket|brackets|bracketed|repeat|repeats'

/**
 * Behind a row that is pointed at, how often its brackets are worked instead:
 *
 *   , but make each bracket 9 times   , working the brackets twice   , with the first bracket worked 3 times and the second 4 times   , but rep between brackets 9 times instead of 4
 */
export function takeBracketTimes(reader: Reader): readonly BracketTimes[] {
  const found: BracketTimes[] = []
  const { at } = reader
  reader.take(',|;?', 'but|except|only?', 'with|that|now?', 'you?')
  reader.take('work|working|make|making|do|doing|rep|repeat|repeating')
  for (let one = bracket(reader, false); one; one = bracket(reader, true)) {
    found.push(one)
    const { at: more } = reader
    reader.take(',|and|;', 'and?')
    if (!namesBracket(reader, true)) {
      reader.at = more
      break
    }
  }
  if (found.length === 0) reader.at = at
  return found
}

function bracket(reader: Reader, further: boolean): BracketTimes | undefined {
  const which = takeBracket(reader, further)
  reader.take('worked|made|done|repeated')
  const times = which && (takeTimesWord(reader) ?? takeNumber(reader))
  if (!times || !/^(?:once|twice|thrice)$/.test(reader.word(-1)) && !reader.take('times|x|×')) return undefined
  if (reader.take('instead', 'of') || reader.take('rather', 'than')) takeTimesWord(reader) ?? (takeNumber(reader), reader.take('times'))
  reader.take('only') || reader.take('in', 'all|total')
  return { ...(which.nth !== undefined && { nth: which.nth }), times }
}

function namesBracket(reader: Reader, further: boolean): boolean {
  const { at } = reader
  const named = takeBracket(reader, further) !== undefined
  reader.at = at
  return named
}

/** `each bracket`, `what is in brackets`, `the second bracket`; behind another one `the second` is enough. */
function takeBracket(reader: Reader, further: boolean): { readonly nth?: number } | undefined {
  const { at } = reader
  reader.take('what|the?', 'instructions|sts|stitches|part|section?', 'is|stands?', 'in|inside|between|within', 'the|each|both|square|round?')
  reader.take('each|every|both|all|the|a', 'of?', 'the?')
  const nth = ordinalHere(reader)
  if (reader.take(brackets, 'part|section|instructions?') || further && nth !== undefined) return nth === undefined ? {} : { nth }
  reader.at = at
  return undefined
}

function ordinalHere(reader: Reader): number | undefined {
  const token = reader.peek()
  const nth = token?.kind === 'ordinal' ? token.value : reader.word() === 'first' ? 1 : ordinals[reader.word()]
  if (nth !== undefined) reader.at += 1
  return nth
}
