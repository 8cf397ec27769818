import { takeAdded } from './parse-added.ts'
import { isOpening, takeOpening } from './parse-held.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { motifWord } from './motif-words.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { takeToEnd } from './parse-reach.ts'
import { takePlaceNoun, takeThing } from './parse-thing.ts'
import { endOfRow } from './parse-end-of-row.ts'
import { takeWholeWay } from './parse-way.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import { rowEnds } from './parse-row-ends.ts'
import type { EdgeName, Target } from './target.ts'

/**
 * Edges, by what they are made of and by where they lie:
 *
 *   evenly along 30 dc row-ends (2 per row)   evenly along the short edge   in each row-end along the side   in the underside of each of next 72 ch
 *   across the bottom   down the left side   evenly around the entire piece   in each free loop of the foundation ch
 */
export function alongEdge(reader: Reader, start: number): Target | undefined {
  const at = reader.at
  const end = endOfRow(reader, start) ?? edgeOfTiles(reader, start) ?? sideOfMotif(reader, start)
  if (end) return end
  const evenly = reader.take('evenly', 'spaced?')
  const opening = takeOpening(reader)
  if (opening) return { walk: 'edge', edge: 'any', held: opening, ...(evenly && { evenly }), start, end: reader.end }
  const along = reader.take('along|across|down|up|around|round|over|on|to|from')
  if (!along) reader.take('in|into|under')
  const { at: edge } = reader
  const found = underside(reader, start) ?? rowEnds(reader, start, evenly)
  if (found) return found
  reader.at = edge
  const name = along && undersideNamed(reader) ? 'underside' : along || evenly ? takeEdgeName(reader) : undefined
  const around = evenly && !name && along && /^(around|round)$/.test(reader.word(-1))
  const across = evenly && !name && !around && along && /^(across|along)$/.test(reader.word(-1))
  if (name || around || across) {
    const late = !evenly && reader.take('evenly')
    if (!around) takeWholeWay(reader)
    return { walk: 'edge', edge: name ?? (around ? 'all' : 'any'), ...((evenly || late) && { evenly: true }), start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `along the edge of each of the next 8 blocks` */
function edgeOfTiles(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  if (reader.take('along|across|on|in', 'the?', 'outer|outside|side?', 'edge|edges|side|sides', 'of', 'each?', 'of?', 'the?', 'next?')) {
    const tiles = takeNumber(reader)
    if (tiles && reader.take('tiles|blocks|tile|block')) return { walk: 'edge', edge: 'any', tiles, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `along the next square`, `evenly across the side of the last hexagon`: one side of one of the motifs that a border goes along. */
function sideOfMotif(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  reader.take('evenly', 'spaced?')
  if (reader.take('along|across|down|up|over', 'the|each|one?', 'free|outer|outside|whole?', 'side|edge?', 'of?', 'the|each?', 'next|last|first|second|third|same|following|corner?')) {
    if (!/^(?:piece|circle|tile|star|flower|triangle)$/.test(reader.word()) && reader.take(motifWord) && !/^(?:side|sides|edge|edges|sp|sps)$/.test(reader.word())) return { walk: 'edge', edge: 'any', motif: true, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

const edgeWord = /^(steps|step|each|the|this|that|first|second|third|fourth|next|other|left|right|side|sides|short|long|narrow|wide|shorter|longer|straight|lower|bottom|base|top|upper|outer|outside|opposite|entire|whole|one|hand|edge|edges|end|all|four|neck|neckline|armhole|slit|slot|keyhole|front|back|center|centre|foundation|remaining|last|final|sloping|slanting|slanted|curved|stepped|slope|stair|stairs|staircase|diagonal|-)$/
const edgeNoun = /^(steps|step|stair|stairs|staircase|slope|diagonal|side|sides|edge|edges|bottom|base|top|neck|neckline|armhole|slit|slot|keyhole)$/
const pieceWord = 'piece|work|blanket|panel|rows|row|square|rectangle|scarf|front|back|body|strip|cloth|mat|rug|motif|half|shawl|cowl|runner|afghan|edge'

/** `Side 2`: a piece of that name, and no edge. Takes nothing. */
function namesNumberedPiece(reader: Reader): boolean {
  const { at } = reader
  const numbered = takePieceName(reader) !== undefined && reader.peek(-1)?.kind === 'number'
  reader.at = at
  return numbered
}

/** Takes `the left side`, `short edge`, `bottom`, `the entire piece`; not `side sp`, `top of ch-3`. */
export function takeEdgeName(reader: Reader): EdgeName | undefined {
  const { at } = reader
  if (namesNumberedPiece(reader)) return undefined
  const words: string[] = []
  while (edgeWord.test(reader.word())) {
    words.push(reader.word())
    reader.at += 1
  }
  if (/^(entire|whole|outer|outside)$/.test(words.at(-1) ?? '') && reader.take(pieceWord)) return 'all'
  const noun = words.some((word) => edgeNoun.test(word)) || words.at(-1) === 'end' && /^(short|long|narrow|wide)$/.test(words.at(-2) ?? '')
  const next = reader.peek()
  const open = next === undefined || reader.done || next.kind === 'number' || next.kind === 'mark' || reader.vocabulary.stitchAt([reader.word()]) !== undefined || /^([,.;:()[\]]|of|evenly|to|toward|towards|from|and|with|at|for|per|work|working|placing|in|make|making|put|putting|place|[–—])$/.test(reader.word())
  if (!noun || !open || isTopOfChain(reader, words) || isEndOfSide(reader, words) || /^(top|bottom|base)$/.test(words.at(-1) ?? '') && reader.word() === 'of' && !/^(the|piece|work|this|first|each)$/.test(reader.word(1)) && !(words.at(-1) === 'bottom' && /^(foundation|beg|beginning|starting|base)$/.test(reader.word(1)))) {
    reader.at = at
    return undefined
  }
  const { at: tail } = reader
  if (!takeOfPiece(reader) && !reader.take('of', 'the|this?', 'first|second|main|foundation?', pieceWord) && !ofNamed(reader) && !reader.take('of', 'the|beg|beginning|foundation|starting?', 'beg|beginning|foundation|starting?', 'ch|chain')) reader.at = tail
  // `to other side of foundation chain`
  const ofChain = /^(?:ch|chain)$/.test(reader.word(-1)) && words.some((word) => /^(?:other|opposite)$/.test(word))
  if (ofChain || words.some((word) => /^(bottom|base|lower|foundation)$/.test(word))) return 'underside'
  // The top of a strip that was closed to a tube is one of its sides.
  if (/^(tube|ring|cuff|circle)$/.test(reader.word(-1))) return 'any'
  if (words.some((word) => /^(top|upper)$/.test(word))) return 'top'
  if (words.some((word) => /^(outer|outside|entire|whole|all|edges|sides)$/.test(word)) && !words.includes('each')) return 'all'
  if (words.some((word) => /^(side|left|right|step|steps|stair|stairs|staircase|slope|sloping|slanting|slanted|diagonal)$/.test(word))) return 'side'
  return words.some((word) => /^(short|long|shorter|longer|next|other|remaining|last|final|second|third|fourth|opposite)$/.test(word)) ? 'next' : 'any'
}

/** `to the top of the ch-3`, `in top of the turning chain`: a place, and no edge. */
function isTopOfChain(reader: Reader, words: readonly string[]): boolean {
  return words.at(-1) === 'top' && reader.word() === 'of' && reader.word(1) === 'the' && (/^(ch|chain|tch|turning|starting)$/.test(reader.word(2)) || /^(beg|beginning|first)$/.test(reader.word(2)) && /^(ch|chain|-)$/.test(reader.word(3)) || numberAhead(reader, 2) !== undefined)
}

/** `to the top of the left-hand side`: an end of a side, and no edge. */
function isEndOfSide(reader: Reader, words: readonly string[]): boolean {
  const side = reader.word() === 'of' ? [1, 2, 3, 4, 5].map((ahead) => reader.word(ahead)).join(' ') : ''
  return /^(?:top|bottom|base|foot|end)$/.test(words.at(-1) ?? '') && /^(?:(?:the|its|this|that|one|first|second|other|left|right|hand|long|short|side|-) )*(?:side|edge)\b/.test(side)
}

/** `down side of bib`, `along edge of the flap`: whatever the piece is called. */
function ofNamed(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('of', 'the?')) {
    for (let words = 0; words < 3 && reader.peek()?.kind === 'word' && !/^(next|each|first|last|same|row|rnd|round|ch|chain|st|sts|beg|foundation)$/.test(reader.word()); words += 1) {
      reader.at += 1
      if (/^([,.;:()–—-]|evenly|to|at|with)?$/.test(reader.word())) return true
    }
  }
  reader.at = at
  return false
}

const firstChain = 'foundation|starting|beginning|beg|initial|original|base'
/** Chains that are made later: at the end of a row, or for a part. */
const laterChain = 'added|extra|additional|new|extension|strap|tab|tie|sleeve|arm|stair|step|thumb|other|second|spare|separate'

/** `of the left arm`, `of Upper half`: a part, by what the designer calls it. */
function takeOfPart(reader: Reader): boolean {
  if (takeOfPiece(reader)) return true
  const { at } = reader
  if (reader.take('of', 'the|its', 'left|right|upper|lower|first|second|other') && reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && reader.vocabulary.stitchAt([reader.word()]) === undefined) {
    reader.at += 1
    return true
  }
  reader.at = at
  return false
}

/** Stitches that are made without a place, each with the chain below it. */
const onNothing = 'fsc|fhdc|fdc|ftr'

/** `the underside of the foundation chain`, `free loops of foundation ch`, `the base of the chain`, `the chain edge`, `the foundation`. */
export function undersideNamed(reader: Reader): boolean {
  const { at } = reader
  reader.take('the|each')
  // `16 sc along underside`
  if (reader.take('underside|undersides') && (reader.done || /^[,.:;()]$/.test(reader.word()))) return true
  reader.at = at
  reader.take('the|each')
  // `across the starting chain`, `along both foundation edges`, `through both foundations`: of two pieces laid on one another.
  if (reader.take('underside|undersides?', 'of?', 'both|the|all', 'of?', 'the?', 'foundations')) return true
  reader.take('both', 'of?', 'the?')
  if (reader.take(firstChain, 'ch|chain|chs|chains|row|edge|edges', 'edge|edges|side?')) return true
  reader.at = at
  reader.take('the|each')
  const { at: bare } = reader
  if (reader.take('underside') && placeEnds(reader, '–', '—')) return true
  reader.at = bare
  if (reader.take('cast', '-?', 'on', 'edge|row|chain') || reader.take('ch|chain', 'edge|side')) return true
  // `the underside of Row 1`, `the lower edge of Row 1`, `the bottom of the fdc`
  const { at: below } = reader
  if (reader.take('underside|underneath|bottom|base|foot|lower', 'edge|side?') && (takeRowNamed(reader, 'of|from', 'the?') === 1 || reader.take('of|from', 'the?', onNothing, 'sts|stitches|row?') && (takeAdded(reader) || true))) return true
  reader.at = below
  // `the underside of the Row 7 chain`: chains that were added there.
  const { at: ofRow } = reader
  if (reader.take('underside', 'of', 'the?') && takeRowNamed(reader) !== undefined && reader.take('ch|chain|chains')) return true
  reader.at = ofRow
  // `along the added ch of Row 4`
  if (reader.take('added|extra|additional', 'ch|chs|chain|chains')) {
    takeAdded(reader)
    return true
  }
  reader.at = ofRow
  // `the underside of the 5 ch added in Row 6`, `the underside of the 6 ch of the left arm`, `the underside of the 3 fsc of Row 9`
  if (reader.take('underside|underneath|base|bottom', 'of', 'the|those?')) {
    const count = takeNumber(reader)
    const added = reader.take('added|extra|additional|new')
    if (count && reader.take(onNothing) && (takeAdded(reader) || true)) return true
    if (reader.take('ch|chs|chain|chains') && (takeAdded(reader) || takeOfPart(reader) || count && added)) return true
  }
  reader.at = ofRow
  if (reader.take('base|bottom|foot|underside|underneath|back', 'of', 'the|this|that|those|these?', `${firstChain}|${laterChain}?`, 'stair|step|thumb|sleeve?', 'ch|chain|chs|chains|row|foundation', 'edge?')) {
    // `the underside of the added ch of Row 8`
    takeAdded(reader)
    return true
  }
  if (reader.take('foundation') && (reader.done || /^[,.:;()]$/.test(reader.word()) || numberAhead(reader) !== undefined || /^(work|working|make|with)$/.test(reader.word()))) return true
  reader.at = at
  reader.take('the|each')
  const loops = reader.take('underside|undersides|underneath', 'loop|loops?') || reader.take('free|unused|unworked|remaining|rem', 'loop|loops|lp|lps') || reader.take('bottom|base', 'loop|loops|lp|lps?')
  if (loops && reader.take('of', 'the?', 'each?', 'of?', 'the?', 'next?')) {
    if (reader.take('foundation|beginning|beg|starting|initial|base|original?', 'ch|chain|chs|chains|fsc|fdc|fhdc|sts|stitches', 'st|sts|ch|edge|row?')) return true
    if (reader.take('foundation|base', 'row|rnd|round|sts|stitches|edge')) return true
  }
  reader.at = at
  return false
}

/** `in the underside of each of next 72 ch`, `in free loops of foundation ch`, `in each of next 24 base loops of the fsc`. */
function underside(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  reader.take('the')
  const beneath = /^(underside|undersides)$/.test(reader.word())
  const loops = reader.take('underside|undersides|bottom|base', 'loop|loops?', 'of') || reader.take('free|unused|remaining|rem', 'loop|loops|lp|lps', 'of')
  const before = loops ? undefined : counted(reader)
  const bare = before && baseLoops(reader, before, start)
  if (bare) return bare
  if (!loops && !reader.take('free|unused|base|bottom|underside', 'loop|loops|lp|lps', 'of', 'the?')) {
    reader.at = at
    return undefined
  }
  if (reader.take('the?', 'same', 'foundation|base?', 'ch|chain')) return { walk: 'same', start, end: reader.end }
  const after = counted(reader)
  const { at: noun } = reader
  const opening = takePlaceNoun(reader)
  reader.at = noun
  const held = opening && isOpening(opening) ? { held: `${opening} ch` } : {}
  reader.take('foundation|beginning|beg|starting|initial|base|original|added|extra|extension|new')
  const base = reader.all.slice(at, reader.at).some(({ text }) => /^(base|bottom|undersides?)$/i.test(text))
  if (base && after.count && reader.take('st|sts|stitch|stitches|sc|hdc|dc|tr')) {
    const named = takeRowNamed(reader, 'of|on|from|in')
    // `of the 47 sts of the neck edge`: the edge that the piece began with.
    const { at: edge } = reader
    if (!reader.take('of|on|along|at', 'the', 'neck|lower|foundation|bottom|beginning|first|waist|front|back', 'edge|row|chain')) reader.at = edge
    const toEnd = takeToEnd(reader)
    return { walk: 'next', count: after.count, thing: { kind: 'chain' }, ...(beneath && { edge: 'underside' }), ...(beneath && named !== undefined && named > 1 && { ofRow: named }), ...(toEnd && { toEnd }), start, end: reader.end }
  }
  if (base && after.each && reader.take('st|sts|stitch|stitches|sc|hdc|dc|tr')) {
    takeRowNamed(reader, 'of|on|from|in')
    takeToEnd(reader)
    return { walk: 'each', edge: 'underside', thing: { kind: 'chain' }, toEnd: true, start, end: reader.end }
  }
  if (!reader.take('fsc|fdc|fhdc|foundation', 'sts|stitches|row|edge?') && takeThing(reader)?.kind !== 'chain') {
    reader.at = at
    return undefined
  }
  const over = takeOpening(reader)
  const ofRow = takeRowNamed(reader, 'of|on|from|in')
  if (ofRow === undefined) takeAdded(reader)
  const { at: piece } = reader
  const sideOf = reader.take('of|on|from') ? takePieceName(reader) : undefined
  if (sideOf === undefined) reader.at = piece
  const toEnd = takeToEnd(reader)
  const count = before?.count ?? after.count
  const each = before?.each || after.each
  return { walk: count ? 'next' : 'each', ...(count && { count }), ...((!count || beneath) && { edge: 'underside' as const }), ...(!count && !each && { across: true }), thing: { kind: 'chain' }, ...held, ...(over && { held: over }), ...(ofRow !== undefined && { ofRow }), ...(sideOf !== undefined && { sideOf }), ...(toEnd && { toEnd }), start, end: reader.end }
}

/** `in each of 18 base loops of Row 1`, `in 18 bottom loops`: those under the stitches of a row that made its own chain. */
function baseLoops(reader: Reader, { each, count }: ReturnType<typeof counted>, start: number): Target | undefined {
  const { at } = reader
  if ((each || count) && reader.take('base|bottom|foundation', 'loop|loops|lp|lps')) {
    takeRowNamed(reader, 'of|on|from|in', 'the?')
    const toEnd = takeToEnd(reader)
    if (toEnd || reader.done || /^([,.;:()]|around|across|and|at|on)$/.test(reader.word())) return { walk: count ? 'next' : 'each', ...(count && { count }), ...(toEnd && { toEnd }), edge: 'underside', ...(!count && !each && { across: true }), thing: { kind: 'chain' }, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `each`, `each of the next 12`, `next 12`, `12`. */
function counted(reader: Reader): { readonly each: boolean; readonly count?: NonNullable<Target['count']> } {
  reader.take('the')
  const each = reader.take('each|ea|every|all')
  reader.take('of')
  reader.take('the|these|those')
  reader.take('rem|remaining|other')
  const { start } = reader
  const next = reader.take('next|following|foll|first|1st|last|final|any')
  const count = takeNumber(reader) ?? (next && !each ? { values: [1], start, end: reader.end } : undefined)
  return { each, ...(count && { count }) }
}
