import { takeOtherKinds } from './kinds-together.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { takeBesideJoin, takeJoinName } from './parse-joins.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Thing } from './target.ts'
import { takeWhichCorner } from './which-corner.ts'

const stitchWords = new Set(['st', 'sts', 'stitch', 'stitches', 'sitch', 'places'])
const spaceWords = new Set(['sp', 'sps', 'space', 'spaces', 'lp', 'lps', 'loop', 'loops', 'arch', 'arches', 'arc', 'arcs'])
export const chainWords = new Set(['ch', 'chs', 'chain', 'chains'])
const turningWords = new Set(['tch', 't-ch', 'tch’s'])
const groupWords: Readonly<Record<string, string>> = {
  shell: 'sh', shells: 'sh', sh: 'sh', cl: 'cl', cls: 'cl', cluster: 'cl', clusters: 'cl', tile: 'tile', tiles: 'tile', block: 'tile', blocks: 'tile', square: 'square',
}

/** Takes the name of what is worked into: `st`, `dc`, `ch-2 sp`, `corner`, `shell`, `tch`. */
export function takeThing(reader: Reader): Thing | undefined {
  const at = reader.at
  // Corners that were joined lie between the motifs as places like the others.
  if (takeJoinName(reader)) return { kind: 'join' }
  const some = takeHand(reader) === 'some'
  takePlaceNoun(reader)
  const outermost = outermostStitch(reader)
  if (outermost) return outermost
  // `each of the 10 pairs of stitches`, of two layers: a pair is one place.
  reader.take('pair|pairs', 'of', 'the?')
  const adjective = takeAdjectives(reader)
  const found = thingHere(reader)
  if (found?.kind === 'space' && takeBesideJoin(reader)) return { kind: 'join' }
  if (found) return adjective ? { ...found, where: adjective, ...(some && { some }) } : found
  if (adjective) return { kind: 'space', where: adjective, ...(some && { some }) }
  reader.at = at
  return undefined
}

/** `top right-hand corner sp`, `outer corner st`, `lower corners`: which of the corners. */
function takeHand(reader: Reader): ReturnType<typeof takeWhichCorner> {
  const { at } = reader
  const ofOther = reader.word(2) === 'of' && reader.word(3) === 'the' && reader.word(4) === 'row'
  const which = takeWhichCorner(reader)
  const place = spaceWords.has(reader.word(1)) || stitchWords.has(reader.word(1)) || reader.vocabulary.stitchAt([reader.word(1)]) !== undefined
  if (reader.word() === 'corners' || reader.word() === 'corner' && (place || which === 'outer' && !ofOther)) return which
  reader.at = at
  return undefined
}

const placeNouns = new Set(['neck', 'neckline', 'strap', 'handle', 'underarm', 'sleeve', 'thumb', 'armhole', 'brim', 'body', 'collar', 'shoulder', 'waist', 'hem', 'cuff', 'toe', 'heel', 'crown', 'yoke', 'flap', 'buttonhole', 'bridge', 'gap', 'leg', 'arm', 'tail', 'rim', 'band', 'seam', 'crotch', 'slot', 'slit', 'opening'])

/** \`38 neck ch\`, \`24 strap chs\`, \`20 skipped sleeve dc\`: where the stitches or chains lie. Gives the noun. */
export function takePlaceNoun(reader: Reader): string | undefined {
  const noun = reader.word()
  if (!placeNouns.has(noun) || !stitchWords.has(reader.word(1)) && !spaceWords.has(reader.word(1)) && !chainWords.has(reader.word(1)) && !reader.vocabulary.stitchAt([reader.word(1)]) || reader.word(2) === '-') return undefined
  reader.at += 1
  return noun
}

const adjectives = new Set(['corner', 'corners', 'side', 'beg', 'beginning', 'center', 'centre', 'middle', 'rem', 'remaining', 'unworked', 'instep', 'heel', 'foundation', 'starting', 'base', 'previous', 'prev', 'made'])

function takeAdjectives(reader: Reader): 'corner' | 'side' | undefined {
  let where: 'corner' | 'side' | undefined
  for (let word = reader.takeOne(adjectives); word; word = reader.takeOne(adjectives)) {
    if (word.startsWith('corner')) where = 'corner'
    if (/^(?:center|centre|middle)$/.test(word)) takeBackOrFront(reader)
    if (word === 'side') where = 'side'
  }
  return where
}

/** `center back st`, `centre-front dc`: at the middle of the back or front, and no loop. */
export function takeBackOrFront(reader: Reader): void {
  const { at } = reader
  const named = reader.take('-?', 'back|front', 'neck?')
  if (named && !stitchWords.has(reader.word()) && reader.vocabulary.stitchAt([reader.word()]) === undefined) reader.at = at
}

export function thingHere(reader: Reader): Thing | undefined {
  if (reader.take('st|sts|stitch', 'and|or|&', 'in?', 'each?', 'join|joins')) return { kind: 'stitch' }
  const mixed = severalKinds(reader)
  if (mixed) return mixed
  if (reader.takeOne(stitchWords)) return reader.take(',|and', 'in?', 'each?', 'row', '-?', 'end|ends', ',?', 'and', 'each?', 'foundation|beg|base?', 'ch|chain') || reader.take('and|or|&', 'in?', 'each?', 'row', '-?', 'end|ends') || reader.take('and', 'end', 'of', 'each?', 'row|rows') ? { kind: 'edge' } : { kind: 'stitch' }
  const loops = chainLoop(reader)
  if (loops) return loops
  if (reader.takeOne(turningWords) || reader.take('t', '-', 'ch') || reader.take('turning', 'ch|chain')) {
    // `turning ch-3`
    if (numberAhead(reader, reader.word() === '-' ? 1 : 0) !== undefined) reader.at += reader.word() === '-' ? 2 : 1
    return { kind: 'turning-chain' }
  }
  if (reader.take('row', '-?', 'end|ends') || reader.take('end|ends', 'of', 'row|rows')) return andStitchesAround(reader) ? { kind: 'edge' } : { kind: 'row-end' }
  if (reader.take('sp|sps|space|spaces|gap|gaps', 'between')) {
    reader.take('each?', 'the?', 'next?')
    if (numberAhead(reader) !== undefined) reader.at += 1
    if (/^(groups|grps|shells|clusters)$/.test(reader.word())) {
      reader.at += 1
      return { kind: 'gap', where: 'corner' }
    }
    takeThing(reader)
    return { kind: 'gap' }
  }
  if (beforeGroup(reader)) return { kind: 'gap', where: 'corner' }
  if (/^(lp|lps|loop|loops)$/.test(reader.word()) && reader.all.some(({ text }) => text === 'held')) {
    reader.at += 1
    return { kind: 'stitch', stitch: 'lp' }
  }
  if (reader.takeOne(spaceWords)) return { kind: 'space' }
  const stitch = takeStitchName(reader)
  if (stitch) {
    const space = reader.takeOne(spaceWords)
    return space ? { kind: 'space' } : { kind: 'stitch', stitch }
  }
  const group = takeGroupName(reader)
  if (group) return { kind: 'group', stitch: group }
  if (reader.take('ring') || reader.take('circle')) return { kind: 'ring' }
  // `through each of the 10 pairs`: of two layers a pair is one place.
  return reader.take('pair|pairs') ? { kind: 'stitch' } : undefined
}

/** `sp before next 3-dc group`, `space after the last group`: between two groups. */
function beforeGroup(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('sp|space|gap', 'before|after', 'the?', 'next|first|last|following|this?')) {
    if (takeNumber(reader)) reader.take('-?', 'sc|hdc|dc|htr|tr')
    if (reader.take('group|grp|shell|cluster|cl', 'of?', 'this?', 'square?')) return true
  }
  reader.at = at
  return false
}

/** `st, foundation ch and row-end`, `ch or sts` */
function severalKinds(reader: Reader): Thing | undefined {
  const { at } = reader
  const first = reader.take('row', '-?', 'end|ends') ? 'row-end' as const : reader.take('st|sts|stitch|stitches') ? 'stitch' as const : reader.take('foundation?', 'ch|chs|chain|chains') ? 'chain' as const : undefined
  const kind = first && takeOtherKinds(reader, first)
  if (!kind) reader.at = at
  return kind && { kind }
}

/** `outermost st of Row 3`, `outer sl st`, `edge st of the step`: where a step juts out. */
function outermostStitch(reader: Reader): Thing | undefined {
  const { at } = reader
  const outer = reader.take('outer|outermost')
  const farthest = outer && reader.word(-1) === 'outermost'
  // `3 sc in outermost`, `3 sc in the outer one`
  if (outer && (reader.take('one') || true) && placeEnds(reader)) return { kind: 'stitch', where: 'corner' }
  const thing = outer || reader.take('edge|end') ? thingHere(reader) : undefined
  const ofStep = /^(of|on)$/.test(reader.word()) && [1, 2].some((ahead) => /^(step|row|rnd|round)$/.test(reader.word(ahead)))
  const stepTold = farthest && thing?.kind === 'stitch' && (placeEnds(reader) || reader.take('of|on', 'the|each', 'other|first|second|left|right|same?', 'shoulder|step|arm|side|ledge|wing'))
  if (thing?.kind === 'stitch' && (ofStep || stepTold || outer && thing.stitch === 'sl st')) return { ...thing, where: 'corner' }
  reader.at = at
  return undefined
}

/** `row-end and each st around`, `row end, st and ch all round`: whatever the outline offers. */
export function andStitchesAround(reader: Reader): boolean {
  const { at } = reader
  const stitches = reader.take(',|and|&', 'in|into?', 'each|every|all?', 'st|sts|stitch|stitches|ch|chain', ',|and|&?', 'in|into?', 'each|every?', 'st|sts|stitch|stitches|ch|chain?')
  const { at: around } = reader
  if (stitches && reader.take('all|right|evenly?', 'the?', 'way?', 'around|round')) {
    reader.at = around
    return true
  }
  reader.at = at
  return false
}

/** `shell`, `clusters`: a group by its name. */
export function takeGroupName(reader: Reader): string | undefined {
  const group = Object.hasOwn(groupWords, reader.word()) ? groupWords[reader.word()] : undefined
  if (group) reader.at += 1
  return group
}

/** `ch-2 sp`, `2-ch sp`, `ch sp`, `ch-5 lp`, `next ch-3`, `top of 3-ch`, `ch`. */
function chainLoop(reader: Reader): Thing | undefined {
  const before = numberAhead(reader) !== undefined && (reader.word(1) === '-' ? chainWords.has(reader.word(2)) && reader.touches(1) : chainWords.has(reader.word(1)) && reader.touches(1))
  if (before) {
    // `3-ch` is the space of 3 chains, with or without the word, as `ch-3` is.
    const chains = takeNumber(reader)
    reader.take('-')
    reader.at += 1
    if (reader.word() === '-' && spaceWords.has(reader.word(1))) reader.at += 1
    const corner = reader.take('corner')
    reader.takeOne(spaceWords)
    return { kind: 'space', ...(chains && { chains }), ...(corner && { where: 'corner' }) }
  }
  if (!chainWords.has(reader.word())) return undefined
  reader.at += 1
  if ((reader.word() === '-' || reader.word() === '–') && numberAhead(reader, 1) !== undefined) {
    reader.at += 1
    const chains = takeNumber(reader)
    reader.take('-')
    const corner = reader.take('corner')
    reader.takeOne(spaceWords)
    return { kind: 'space', ...(chains && { chains }), ...(corner && { where: 'corner' }) }
  }
  reader.take('-')
  if (numberAhead(reader) !== undefined && spaceWords.has(reader.word(1))) {
    const chains = takeNumber(reader)
    reader.at += 1
    return { kind: 'space', ...(chains && { chains }) }
  }
  if (reader.takeOne(spaceWords)) return { kind: 'space' }
  return { kind: 'chain' }
}

/** `2ch-sp`, `2ch sp`: one space of 2 chains; `2ch sps` are two spaces. */
export function gluedSpace(reader: Reader): boolean {
  if (reader.peek()?.kind !== 'number' || !chainWords.has(reader.word(1)) || !reader.touches(1)) return false
  return /^(sp|space|lp|loop|arch)$/.test(reader.word(2)) || reader.word(2) === '-' && spaceWords.has(reader.word(3))
}

/** Takes a stitch's name and gives its US word. Plurals are read (`dcs`), and a name with its short form behind it: `single crochet (sc)`. */
export function takeStitchName(reader: Reader): string | undefined {
  const stitch = stitchNamed(reader)
  const { at } = reader
  const again = stitch !== undefined && reader.take('(') && stitchNamed(reader) === stitch && reader.take(')')
  if (!again) reader.at = at
  return stitch
}

function stitchNamed(reader: Reader): string | undefined {
  const words: string[] = []
  for (let ahead = 0; ahead < 6; ahead += 1) {
    const token = reader.peek(ahead)
    if (!token) break
    words.push(token.text.toLowerCase())
  }
  const found = reader.vocabulary.stitchAt(words)
  if (!found) return undefined
  reader.at += found.words
  return found.stitch
}
