import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'

type Kind = 'stitch' | 'row-end' | 'chain'

/**
 * Places of several kinds in one list, where a border goes all round:
 *
 *   (each st), each foundation ch and each row-end   (each row end), st or ch   (next 18 ch) or sts   (corner ch) or st
 *
 * Takes the words behind the first of them; gives what all of them are.
 */
export function takeOtherKinds(reader: Reader, first: Kind): 'edge' | 'stitch' | undefined {
  const { at } = reader
  const kinds: Kind[] = [first]
  for (let kind = nextKind(reader); kind !== undefined; kind = nextKind(reader)) kinds.push(kind)
  const several = new Set(kinds).size > 1 && (kinds.length > 2 || /^(?:or|and|&)$/.test(lastLink(reader, at)))
  const all = several ? (kinds.includes('row-end') ? 'edge' : lastLink(reader, at) === 'or' ? 'stitch' : undefined) : undefined
  if (!all) reader.at = at
  return all
}

const lastLink = (reader: Reader, from: number): string => reader.all.slice(from, reader.at).findLast(({ text }) => /^(?:or|and|&|,)$/i.test(text))?.text.toLowerCase() ?? ''

function nextKind(reader: Reader): Kind | undefined {
  const { at } = reader
  if (reader.take(',', 'and|or|&?') || reader.take('and|or|&')) {
    reader.take('in|into?', 'each|every?', 'foundation|beginning|beg|base|starting?')
    if (reader.take('row', '-?', 'end|ends')) return 'row-end'
    const noStitch = numberAhead(reader, 1) === undefined && !/^(?:sp|sps|space|spaces|-|of)$/.test(reader.word(1))
    if (noStitch && reader.take('ch|chain|chs|chains')) return 'chain'
    if (reader.take('st|sts|stitch|stitches')) return 'stitch'
  }
  reader.at = at
  return undefined
}
