import { numberAhead, takeNumber } from './numbers.ts'
import { hangingWords, tieWords } from './parse-tie.ts'
import { takeJoins } from './parse-joins.ts'
import { sumFirst } from './sum-first.ts'
import { takeThing } from './parse-thing.ts'
import { rowsByComma, sizesByComma } from './numbers-by-comma.ts'
import { takeRowNamed } from './row-named.ts'
import { Reader } from './reader.ts'
import { ofEachRow, takeCountRemark, takePlaceWords } from './count-remark.ts'
import { onAllSides, withoutSum } from './sums-in-counts.ts'
import { inSize, type Num } from './target.ts'
import { joinedCorner, joinToNeighbour, type Total } from './written-count.ts'

interface Draft {
  count?: Num
  change?: Num
  rows?: Num
  chainsCount?: boolean
  closing?: boolean
  atRow?: number
  byRow?: readonly Num[]
  readonly kinds: { kind: string; count: Num }[]
  readonly spaces: { chains?: number; count: Num }[]
  readonly groups: { name: string; count: Num }[]
  readonly colours: { yarn: string; count: Num }[]
  /** `4 corners`: how many sides there are. */
  corners?: Num
  /** Counts that were said to be those of one side. */
  readonly ofOneSide: Num[]
}

/** Reads what stands between two tokens as a count; undefined when it is anything else. */
export function parseCount(all: Reader['all'], open: number, close: number, outer: Reader): Total | undefined {
  const inner = new Reader(sumFirst(all.slice(open + 1, close)), outer.vocabulary)
  const draft: Draft = { kinds: [], spaces: [], groups: [], colours: [], ofOneSide: [] }
  // `(1 sc per row)` tells how stitches lie along an edge; no row-end holds five (common practice, no source).
  const few = (inner.all.find(({ kind }) => kind === 'number')?.value ?? 0) < 5
  if (inner.done || few && /(?<![,;:] |(?:creased|dec|inc|fewer|more|less) (?:on |over |at )?)\b(?:per|in each|for each|every) (?:\w+ )?row\b/.test(inner.all.map(({ text }) => text.toLowerCase()).join(' '))) return undefined
  // `[= 12 sc]`, `(Total: 12 sc)`, `(RS; 14 sc)`
  inner.take('=') || inner.take('rs|ws', ';|,') || inner.take('total', 'of|:|=?')
  while (!inner.done) {
    // `(–1; 10)` begins with a sign of less, not with a dash.
    const less = inner.at === 0 && inner.word() === '–' && inner.touches(1) && inner.peek(1)?.kind === 'number'
    if (!less && inner.takeOne(new Set([',', ';', ':', '+', '&', 'and', 'plus', '.', '—', '–', 'or']))) {
      const plus = inner.word(-1) === '+' && inner.at === 1
      if (plus) {
        const change = takeNumber(inner)
        if (!change) return undefined
        draft.change = change
        inner.take('st|sts|stitches')
      }
      continue
    }
    // `28 = 7 sl st + 21 hdc`
    if (draft.count && draft.kinds.length === 0 && draft.closing === undefined && inner.take('=')) continue
    if (!part(inner, draft)) return undefined
  }
  onAllSides(draft)
  withoutSum(draft)
  const said = draft.byRow || draft.count || draft.change || draft.rows || draft.chainsCount || draft.kinds.length + draft.spaces.length + draft.groups.length + draft.colours.length > 0
  if (!said) return undefined
  outer.sizeLists.push(...inner.sizeLists)
  const end = all[close]?.end ?? all.at(-1)!.end
  const { corners: _, ofOneSide: __, colours, ...total } = draft
  return { ...total, ...(colours.length > 0 && { colours }), start: all[open]!.start, end }
}

function part(reader: Reader, draft: Draft): boolean {
  if (/^[-−–]$/.test(reader.word()) && reader.at === 0 && reader.touches(1)) {
    reader.at += 1
    const change = takeNumber(reader)
    if (!change) return false
    draft.change = { ...change, values: change.values.map((value) => -value) }
    reader.take('st|sts|stitches')
    return true
  }
  if (reader.take('total', 'of?', ':?') || reader.take('=') || reader.take('makes|make')) {
    const count = takeNumber(reader)
    if (!count) return false
    draft.count = count
    reader.take('st|sts|stitches')
    return true
  }
  if (changeWord(reader, draft)) return true
  if (takeCountRemark(reader, draft)) return true
  const rows = rowsByComma(reader)
  if (rows) {
    draft.byRow = rows
    draft.count = rows[0]!
    return true
  }
  const sizes = sizesByComma(reader)
  const count = sizes ?? takeNumber(reader) ?? takeArticle(reader)
  if (count) return counted(reader, draft, count)
  const thing = takeThing(reader)
  if (thing?.kind === 'space' && (draft.kinds.length > 0 || draft.count)) {
    draft.spaces.push(spaceOf(thing.chains, { values: [1], start: reader.end, end: reader.end }))
    return true
  }
  return false
}

/** `6 sc and a ch-4 buttonhole`: one of it. */
function takeArticle(reader: Reader): Num | undefined {
  const { start } = reader
  return reader.at > 0 && reader.take('a|an') ? { values: [1], start, end: reader.end } : undefined
}

/** One or two words: `handles`, `thumb opening`. */
function takeNames(reader: Reader): void {
  const { at } = reader
  while (/^[a-z]{4,}$/.test(reader.word()) && reader.word() !== 'each' && reader.at - at < 2) reader.at += 1
  if (!reader.done && !/^[,;.+&]$|^and$/.test(reader.word())) reader.at = at
}

function counted(reader: Reader, draft: Draft, count: Num): boolean {
  if (reader.take('row|rows|rnd|rnds|round|rounds')) {
    draft.rows = count
    return true
  }
  if (colour(reader, draft, count)) return true
  const plain = reader.take('st|sts|stitch|stitches')
  if (plain && colour(reader, draft, count)) return true
  if (plain || reader.done || /^[,;:.=]$/.test(reader.word()) || spacesFollow(reader) || /^(in|at|from|total|per|each|altogether)$/.test(reader.word()) || /^(to|on|along|for)$/.test(reader.word()) && /^(a|each|every)$/.test(reader.word(1))) {
    if (changed(reader, draft, count)) return true
    if (reader.take('from')) takeNumber(reader)
    takeManner(reader, draft, count)
    if (draft.count === undefined) draft.count = count
    return true
  }
  if (changed(reader, draft, count)) return true
  return kind(reader, draft, count)
}

/** `10 + ch-2 sp`, `24 and 3 ch-1 sps`: a bare count of stitches, and spaces beside them. */
function spacesFollow(reader: Reader): boolean {
  const chain = numberAhead(reader, 1) === undefined ? 1 : 2
  return /^(?:[+&]|and|plus)$/.test(reader.word()) && /^(?:ch|chain)$/.test(reader.word(chain)) && /^[-–]$/.test(reader.word(chain + 1))
}

/** Blocks that are counted: tiles from corner to corner, squares of filet. */
const blockNames: Readonly<Record<string, string>> = { tiles: 'tile', block: 'tile', blocks: 'tile', squares: 'square' }

function kind(reader: Reader, draft: Draft, count: Num): boolean {
  if (colour(reader, draft, count)) return true
  // `6 x 1-ch sp`, `2 underarm ch-sps`
  reader.take('x|×')
  if (reader.peek(1) && reader.word(1) !== 'of') reader.take('underarm|sleeve|thumb|neck|armhole|buttonhole|handle|chin|waist|long')
  // `2 free ch-2 sps` beside joined ones
  if (/^(?:ch|chain|corner)$/.test(reader.word(1)) || /^\d/.test(reader.word(1))) reader.take('free|unjoined|open|plain')
  const half = !/^(doubles?|trebles?|-)$/.test(reader.word(1)) && reader.take('half')
  while (reader.take('full|whole|complete|little|small|tiny|big|large')) continue
  if (reader.take('joined', 'corner|corners', 'sp|sps|space|spaces?')) {
    draft.groups.push({ name: joinedCorner, count })
    return true
  }
  if (takeJoins(reader)) {
    draft.groups.push({ name: joinToNeighbour, count })
    return true
  }
  const thing = takeThing(reader)
  if (!thing && reader.take('buttonhole|buttonholes|opening|openings|slit|slits|underarm|underarms')) {
    // `1 buttonhole of 4 ch`: it is the space of its chains.
    const chains = chainsOf(reader)
    draft.spaces.push(spaceOf(chains, count))
    reader.take('each')
    return true
  }
  if (!thing) {
    const name = new RegExp(`^(corners?|sides?|picots?|petals?|v|points?|spokes?|ripples?|blocks?|squares?|leaves|groups?|bobbles?|loops?|handles?|arches|tiles?|${tieWords}|${hangingWords})$`, 'i').exec(reader.word())
    if (!name) return false
    reader.at += 1
    draft.groups.push({ name: blockNames[name[0].toLowerCase()] ?? name[0], count })
    if (/^(corners?|sides?)$/i.test(name[0])) draft.corners = count
    chainsOf(reader)
    takeManner(reader, draft, count)
    return true
  }
  // `8 sc increased`
  if (thing.kind === 'stitch' && changed(reader, draft, count)) return true
  if (thing.kind === 'space' && thing.where === 'corner' && !thing.chains && draft.spaces.length > 0) draft.corners = count
  // `14 ch-3 picots`
  // `2 ch-30 ties`
  else if (thing.kind === 'space' && reader.take(tieWords)) draft.groups.push({ name: 'ties', count })
  else if (thing.kind === 'space' && reader.take('picot|picots')) draft.groups.push({ name: 'picots', count })
  else if (thing.kind === 'space') {
    // `2 loops of 8 ch`
    draft.spaces.push(spaceOf(thing.chains ?? chainsOf(reader), count))
    // `2 ch-20 handles`, `2 ch-6 underarms`: a space by what it is for.
    if (thing.chains) takeNames(reader)
  }
  else if (thing.kind === 'stitch' && thing.stitch === 'sh') draft.groups.push({ name: half ? 'half' : 'sh', count })
  else if (thing.kind === 'stitch' && thing.stitch) draft.kinds.push({ kind: thing.stitch, count })
  else if (thing.kind === 'stitch') draft.count ??= count
  else if (thing.kind === 'chain') {
    // `2 underarm chains of 3`
    const of = chainsOf(reader)
    draft.spaces.push(of ? spaceOf(of, count) : { chains: -1, count })
  }
  else draft.groups.push({ name: half ? 'half' : (thing.stitch ?? thing.kind), count })
  if (thing.where === 'corner') {
    draft.corners = count
    chainsOf(reader)
    return true
  }
  if (changed(reader, draft, count)) return true
  // `23 shells of 7 dc`
  if (thing.stitch === 'sh' && reader.take('of') && takeNumber(reader)) takeThing(reader)
  if (/^(in|with|of)$/.test(reader.word())) {
    reader.at += 1
    if (!colour(reader, draft, count)) reader.at -= 1
  }
  takeManner(reader, draft, count)
  return true
}

/** `of 4 ch`, `of ch 4`, `of 3` */
function chainsOf(reader: Reader): Num | undefined {
  const { at } = reader
  if (reader.take('of', 'ch|chain?')) {
    const chains = takeNumber(reader)
    reader.take('ch|chs|chain|chains')
    if (chains) return chains
  }
  reader.at = at
  return undefined
}

/** `12 A`, `12 in A`, `12 of MC`: stitches by the letter of their yarn. */
function colour(reader: Reader, draft: Draft, count: Num): boolean {
  const { at } = reader
  reader.take('in|with|of')
  const text = reader.peek()?.text ?? ''
  if (!reader.vocabulary.yarns.includes(text) && !(/^([A-H]|MC|CC)$/.test(text) && /^([,;).]|and)?$/.test(reader.word(1)))) {
    reader.at = at
    return false
  }
  reader.at += 1
  draft.colours.push({ yarn: text, count })
  return true
}

/** A count of chains themselves (`16 ch`) is marked by -1 chains. */
function spaceOf(chains: Num | undefined, count: Num): { chains?: number; chainsBySize?: Num; count: Num } {
  const of = chains?.values[0]
  return { count, ...(of !== undefined && { chains: of }), ...(chains && chains.values.length > 1 && { chainsBySize: chains }) }
}

/** `5 tiles at end of Row 5`: the row that the count speaks of. */
function atRow(reader: Reader, draft: Draft): true {
  const number = takeNumber(reader)
  if (number) draft.atRow = number.values[0]!
  return true
}

function takeManner(reader: Reader, draft: Draft, count: Num): void {
  if (ofEachRow(reader)) return
  // `12 sc remain after Row 6`
  if (/^(?:at|after|on|in)$/.test(reader.word(1))) reader.take('remain|remains|remaining|left')
  takePlaceWords(reader)
  if (reader.take('on|for|along|to|at?', 'each|per|every|a', 'side|edge')) {
    draft.ofOneSide.push(count)
    return
  }
  const { at } = reader
  const ofRow = reader.take('at|after|on|in', 'the?', 'end?', 'of?') ? takeRowNamed(reader, 'the?') : undefined
  if (ofRow !== undefined) {
    draft.atRow = ofRow
    return
  }
  reader.at = at
  reader.take('at', 'the?', 'end|ends', 'of?', 'the|every|each?', 'last|final?', 'row|rnd|round?') && atRow(reader, draft) || reader.take('after|by|on|in', 'the?', 'last|final?', 'row|rnd|round') && atRow(reader, draft) || reader.take('once', 'more') || reader.take('again') || reader.take('as', 'before') || reader.take('in', 'all|total') || reader.take('total') || reader.take('each') || reader.take('around|altogether|across|remaining|rem|remain|remains|left|now|made|worked|unworked') || reader.take('on|for|along', 'each', 'end')
    || reader.take('each|per', 'corner') || reader.take('in', 'the?', 'ring')
}

/** `2 sts decreased per row` */
const takePerRow = (reader: Reader): boolean => reader.take('in|on|at|over?', 'each|every|per', 'row|rnd|round')

/** `6 sts inc'd`, `4 dec`, `(increase of 6)`; `10 increased, 1 decreased` are 9 more. */
function changed(reader: Reader, draft: Draft, count: Num): boolean {
  const grows = reader.take('inc|incs|inc’d|inc\'d|increased|more|inced')
  if (!grows && !reader.take('dec|decs|dec’d|dec\'d|decreased|fewer|less')) return false
  const before = draft.change
  draft.change = { ...count, values: count.values.map((value, size) => (grows ? value : -value) + (before ? inSize(before, size) : 0)) }
  if (reader.take('at|on', 'each|either', 'side|end|edge')) draft.change = { ...draft.change, values: draft.change.values.map((value) => 2 * value) }
  takePerRow(reader)
  return true
}

function changeWord(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  const grows = reader.take('inc|inc’d|inc\'d|increased|increase|increases', 'by|of?')
  const shrinks = !grows && reader.take('dec|dec’d|dec\'d|decreased|decrease|decreases', 'by|of?')
  const count = grows || shrinks ? takeNumber(reader) : undefined
  if (!count) return (reader.at = at) < 0
  reader.take('st|sts')
  draft.change = grows ? count : { ...count, values: count.values.map((value) => -value) }
  return true
}
