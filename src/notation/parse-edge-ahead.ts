import { numberAhead } from './numbers.ts'
import { takeEdgeName, undersideNamed } from './parse-edge.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { takeWayAlong, takeWholeWay } from './parse-way.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { rowEndsAhead } from './row-ends-ahead.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction, Start } from './syntax.ts'
import type { EdgeName, Num } from './target.ts'

/**
 * Which edge comes next, and the way along it:
 *
 *   Working down the first side,   along the bottom edge:   rotate and work along the front edge from hem to neck:   from neck to hem:
 *   working along front edge from Row 20 down to Row 1,   working into base of foundation ch,   foundation:   across the starting chain work   along Row 17 work   working up along the row-ends,
 */
export function edgeAhead(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^([,.;:()]|and|then|now)$/.test(reader.word(-1))
  reader.take('rotate|turn', 'the?', 'piece|work?', 'to|and?')
  reader.take('now|then|and|continue|continuing')
  reader.take('to?', 'work|working|worked')
  reader.take('go|going|come|coming|move|moving|carry|carrying', 'on?')
  const way = reader.take('along|across|down|up|on|over|around|round|under') || reader.word(1) === 'both' && reader.take('through')
  const along = way && (reader.take('along|across|over|on') || true)
  const { at: piece } = reader
  // `Over the First strap, work 3 sc in the first sc`
  if (begins && way && takePieceName(reader) !== undefined && (reader.word() === ',' || stitchAhead(reader))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = piece
  const named = along ? (stitchesOfRow(reader) ?? edgeNamed(reader)) : (intoUnderside(reader) ?? (begins ? headed(reader) : undefined))
  const chains = named === 'underside' ? chainsNamed(reader, at) : undefined
  if (named) takeWholeWay(reader)
  if (named) reader.take('only')
  // `working along top edge in ends of rows,`: what is the top of a shawl is a side of its rows.
  const ofRows = named !== undefined && reader.take('in|into') && rowsEnds(reader)
  const name = ofRows || (named === 'top' || named === 'underside') && rowEndsAhead(reader) ? 'side' : named
  const from = named || !along ? wayAlong(reader) : undefined
  if (named && !from) takeWayAlong(reader)
  if (named) reader.take('with', 'the?', 'rs|right', 'side?', 'facing', 'you|up?')
  if (!name && !from || !atEnd(reader)) {
    reader.at = at
    return undefined
  }
  reader.take(':')
  // `sc in each of next 18 ch on underside`: behind the stitches it names where they were, and not where the row goes on.
  if (!begins || !name) return [{ node: 'aside', start, end: reader.end }]
  return [{ node: 'start', target: { walk: 'edge', edge: name, ...(chains && { count: chains }), ...(from?.ofRow !== undefined && { ofRow: from.ofRow }), start, end: reader.end }, start, end: reader.end }]
}

/** `the underside of the 5 added ch`, `of the 3 fsc`: how many there are. */
function chainsNamed(reader: Reader, from: number): Num | undefined {
  const token = reader.all.slice(from, reader.at).find(({ kind, text }, index, all) => kind === 'number' && !/^(?:rows?|to|and|-|–)$/i.test(all[index - 1]?.text ?? '') && /^(?:ch|chs|chains?|added|extra|new|fsc|fhdc|fdc|ftr)$/i.test(all[index + 1]?.text ?? text))
  return token?.value === undefined ? undefined : { values: [token.value], start: token.start, end: token.end }
}

/** `on Close half sc in ends of Rows 1 and 2`: what is worked there follows at once. */
const stitchAhead = (reader: Reader): boolean => reader.vocabulary.stitchAt([reader.word(numberAhead(reader) === undefined ? 0 : 1)]) !== undefined

/** `(3 sc in first sc, sc in next 18 sc, 3 sc in last sc) across top`: the edge behind what is worked along it. */
export function edgeBehind(reader: Reader): Start | undefined {
  const { at, start } = reader
  const edge = reader.take('along|across|down|up|over|on') ? edgeNamed(reader) : undefined
  if (edge && edge !== 'any' && placeEnds(reader)) return { node: 'start', target: { walk: 'edge', edge, start, end: reader.end }, start, end: reader.end }
  reader.at = at
  return undefined
}

/** The edge ends the clause, or what is worked there follows at once: `down the left-hand edge work 2 dc in …`, `up the edge with 2 sc in …`. */
function atEnd(reader: Reader): boolean {
  if (reader.done || /^[,.:;)*[(]$/.test(reader.word()) || reader.peek()?.kind === 'mark') return true
  // `down the side at a rate of 3 sc for every 2 rows`, `up the other side at the same rate, 3 sc to 2 rows`
  if (reader.take('at', 'a|the', 'rate|ratio', 'of') || reader.take('at', 'the', 'same', 'rate|ratio') && /^[,:;]$/.test(reader.word())) return true
  // `along the bottom 3 sc in first ch`, `working up the front edge sc in end of Row 1`
  const stitch = numberAhead(reader) === undefined ? 0 : 1
  if (reader.vocabulary.stitchAt([reader.word(stitch)]) && /^(in|into)$/.test(reader.word(stitch + 1))) return true
  const worked = numberAhead(reader, 1) !== undefined || /^[([]$/.test(reader.word(1)) || reader.vocabulary.stitchAt([reader.word(1)]) !== undefined
  if (/^[–—]$/.test(reader.word()) && worked) return true
  return /^(work|working|make|with|put|putting|place|placing)$/.test(reader.word()) && worked && reader.take('work|working|make|with|put|putting|place|placing')
}

/** `working into base of foundation ch,`, `working into row ends of right side,` */
function intoUnderside(reader: Reader): EdgeName | undefined {
  const { at } = reader
  const into = reader.take('in|into|to')
  if (into && undersideNamed(reader)) return 'underside'
  if (into && sideByRowEnds(reader)) return 'side'
  reader.at = at
  return undefined
}

/** `foundation: 2 sc in first ch`, `left side: sc in 8 row-ends`: the edge heads what is worked along it. */
function headed(reader: Reader): EdgeName | undefined {
  const { at } = reader
  const name = edgeNamed(reader)
  if (name && reader.word() === ':') return name
  reader.at = at
  return undefined
}

function edgeNamed(reader: Reader): EdgeName | undefined {
  const { at } = reader
  if (undersideNamed(reader)) return 'underside'
  reader.take('the')
  if (sideByRowEnds(reader)) return 'side'
  reader.at = at
  return takeEdgeName(reader)
}

/** `the row-ends of the long edge`, `the right-hand row-ends` */
function sideByRowEnds(reader: Reader): boolean {
  const { at } = reader
  reader.take('the?', 'left|right', '-?', 'hand?')
  if (!rowsEnds(reader)) {
    reader.at = at
    return false
  }
  const { at: tail } = reader
  if (!takeOfPiece(reader) && (!reader.take('of|on|at|along', 'the?') || takeEdgeName(reader) === undefined)) reader.at = tail
  return true
}

/** `along Row 17 work`, `across the top of Row 17:`: its stitches. A line that is only drawn along a row works none of them. */
function stitchesOfRow(reader: Reader): EdgeName | undefined {
  const { at } = reader
  const top = reader.take('the?', 'top|tops', 'edge?') || reader.take('the?', 'sts|stitches')
  const named = takeRowNamed(reader, ...(top ? ['of'] : [])) !== undefined || reader.take(...(top ? ['of'] : []), 'the', 'last|final', 'row')
  if (named && (/^(work|working|make|with|:)$/.test(reader.word()) || worksThere(reader))) return 'top'
  reader.at = at
  return undefined
}

/** `across Row 9, 3 sc in first st`, `over Row 6: sc in each st`, `along the 7th row (miss 2 dc, …) 12 times`: what is worked there follows at once. */
function worksThere(reader: Reader): boolean {
  const opened = /^[([*]$/.test(reader.word())
  const next = opened || /^[,;–—]$/.test(reader.word()) ? 1 : 0
  const stitch = next + (numberAhead(reader, next) === undefined ? 0 : 1)
  return opened && /^(skip|sk|miss)$/.test(reader.word(next)) || reader.vocabulary.stitchAt([reader.word(stitch), reader.word(stitch + 1)]) !== undefined
}

/** `row-ends`, `ends of the rows`, `sides of rows`. */
function rowsEnds(reader: Reader): boolean {
  return reader.take('the?', 'row', '-?', 'ends') || reader.take('the?', 'ends|sides|edges', 'of', 'the?', 'rows')
}

const landmarks = 'neck|neckline|hem|top|bottom|corner|armhole|armholes|waist|cuff|shoulder|underarm|beginning|end|start|left|right|tip|point|toe|heel|brim'

/** `from hem to neck`, `from Row 20 down to Row 1`, `up to the neck`: the way along an edge. Gives the row that it begins at. */
function wayAlong(reader: Reader): { readonly ofRow?: number } | undefined {
  const { at } = reader
  const from = reader.take('from') ? landmark(reader) : {}
  const toTheEnd = reader.at === at && reader.word() === 'to' && reader.take('to', 'the?', 'end')
  if (from && !toTheEnd && reader.take('up|down|back?', 'to|towards|toward') && landmark(reader) && reader.at - at > 2) return from
  reader.at = at
  return undefined
}

function landmark(reader: Reader): { readonly ofRow?: number } | undefined {
  const ofRow = takeRowNamed(reader)
  if (ofRow !== undefined) return { ofRow }
  const { at } = reader
  reader.take('the?', 'lower|upper|top|bottom|front|back|left|right?')
  if (reader.take(landmarks, 'edge|corner|line|edging?')) return {}
  reader.at = at
  return reader.take('the?', landmarks, 'edge|corner|line?') ? {} : undefined
}
