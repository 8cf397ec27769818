import { chainBeforeGroup } from './chain-before-group.ts'
import { consecutiveChains } from './consecutive-chains.ts'
import { countSigns } from './count-signs.ts'
import { handInBrackets } from './hand-in-brackets.ts'
import { namedInBrackets } from './named-in-brackets.ts'
import { withoutLeadOfBorder } from './lead-of-border.ts'
import { overTheFirst } from './over-the-first.ts'
import { parseItems } from './parse-items.ts'
import { spelledOut } from './abbreviations.ts'
import { someOfSoMany } from './some-of-so-many.ts'
import { loopSaid, takeLoop, takeLoopLead } from './parse-loop.ts'
import { takeTotals } from './parse-total.ts'
import { intoEnglish } from './phrases.ts'
import { readSchedule } from './parse-schedule.ts'
import { allButOne, bothCorners, firstSeveral, numbersInWords, pluralsInOne } from './plain-numbers.ts'
import { withoutPoliteWords } from './polite-words.ts'
import { Reader, type Vocabulary } from './reader.ts'
import { takeHeading } from './row-heading.ts'
import { firstAtEnd, withOpeningFirst } from './row-opening.ts'
import { takeReference, type RowReference } from './row-reference.ts'
import { chainAtFarEnd } from './separate-chain.ts'
import { stripesIn } from './stripes.ts'
import type { RowText } from './row-text.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'
import type { Total } from './written-count.ts'
import { withoutSummary } from './summary-first.ts'
import { nextByTheOneBefore } from './that-one.ts'
import { tokens, withoutGaps, type Token } from './tokens.ts'
import { untwisted } from './untwisted.ts'
import type { Span } from '../text/span.ts'

/** A row's text, read, and the rows it points at when it is told by pointing. */
export interface ReadRow extends RowText {
  readonly reference?: RowReference
  /** Its words are those of a round: `Base round of 24 sc`, `sc in each st around`. */
  readonly round?: boolean
  /** Rows that its stripes come to: `2 rows A, 2 rows B, 4 rows A`. */
  readonly stripes?: Num
  /** Rows that are named by another number in each size; the instructions have that of the first size. */
  readonly rowLists?: readonly Num[]
}

/** Reads a row's text from `start` to `end` of the source; a count in its label is one behind it. Never fails; what cannot be read is kept as such. */
export function parseRow(text: string, start: number, end: number, vocabulary: Vocabulary, counted: Span = { start, end: start }): ReadRow {
  const isStitch = (word: string): boolean => vocabulary.stitchAt([word]) !== undefined
  const written = withoutSummary(namedInBrackets(firstSeveral(consecutiveChains(countSigns(slipStitches(handInBrackets(bothCorners(allButOne(someOfSoMany(numbersInWords(nextByTheOneBefore(withoutPoliteWords(untwisted(pluralsInOne(spelledOut(withoutGaps([...tokens(text, start, end), ...tokens(text, counted.start, counted.end)]), vocabulary))))))))))))), isStitch), isStitch), isStitch)
  const all = new Reader(vocabulary.phrases ? intoEnglish(written, vocabulary.phrases) : written, vocabulary)
  const { totals: behind, rest } = takeTotals(all)
  rest.tiles = vocabulary.tiles === true || behind.some(({ groups }) => groups.some(({ name }) => name === 'tile'))
  const stripes = stripesIn(rest)
  const round = rest.take('base|foundation', 'round|rnd', 'of') || goesAround(rest)
  rest.take('base|foundation', 'row', 'of')
  const heading = takeHeading(rest)
  const totals = heading ? [heading, ...behind] : behind
  const loop = takeRowLoop(rest)
  const both = rest.all.findIndex(({ text }, index) => index > 0 && /^at$/i.test(text) && /^same$/i.test(rest.all[index + 2]?.text ?? '') && /^[,;.]$/.test(rest.all[index - 1]!.text))
  if (both !== -1) {
    // Two schedules in one row: which rows they meet in, the words do not tell.
    const last = rest.all.findLast(({ text: token }) => token !== '.') ?? rest.all.at(-1)!
    const item: Instruction = { node: 'unreadable', why: 'cannot', reason: 'two instructions run at the same time', start: rest.all[0]!.start, end: last.end }
    return { items: [item], totals, sizeLists: [...all.sizeLists, ...rest.sizeLists], start, end }
  }
  const schedule = rest.done ? undefined : readSchedule(text, rest.start, rest.all.at(-1)!.end)
  const reference = schedule ?? takeReference(rest) ?? referenceBehind(rest)
  if (schedule) return { items: [], totals, reference: schedule, sizeLists: [...all.sizeLists, ...rest.sizeLists], start, end }
  const own = chainBeforeGroup(overTheFirst(withoutLeadOfBorder(firstAtEnd(withOpeningFirst(chainAtFarEnd(reference && !/^(but|except|with)$/.test(rest.word()) && rest.word(1) !== 'but' ? afterReference(rest) : withChange(rest)))))))
  const held = loop ?? loopSaid(own)
  const { items, total } = trailingCount(rest.tiles ? own.map(onLoop) : own, totals, text)
  const joins = reference !== undefined || items.some(({ node }) => node === 'join')
  return { items, totals: total ? [...totals, total] : totals.map(joins ? withClosing(items) : withoutClosing), ...(round && { round }), ...(stripes && { stripes }), ...(held && { loop: held }), ...(reference && { reference }), ...(rest.rowLists.length > 0 && { rowLists: rest.rowLists }), sizeLists: [...all.sizeLists, ...rest.sizeLists], start, end }
}

/** `12 sts, the closing sl st being one of them`: where nothing is joined, it is one of the row's own stitches. */
const withoutClosing = ({ closing: _, ...total }: Total): Total => total

/** `(66 dc, 1 ss)`, `(8 sc, 1 sl st: 9 sts)` of a round that works no slip stitches: the one that closes it is told. */
const withClosing = (items: readonly Instruction[]) => (total: Total): Total => {
  const slip = total.kinds.find(({ kind }) => kind === 'sl st')
  if (slip?.count.values.join() !== '1' || total.kinds.length + (total.count ? 1 : 0) < 2 || items.some((item) => item.node === 'work' && item.stitch === 'sl st')) return total
  return { ...total, kinds: total.kinds.filter((kind) => kind !== slip), closing: true }
}

/** `slip stitch` and `slip stitches` are read as `sl st` and `sl sts`, each word in its own place. */
function slipStitches(all: readonly Token[]): readonly Token[] {
  const isSlip = (token: Token | undefined): boolean => token !== undefined && /^slip$/i.test(token.text)
  const isStitch = (token: Token | undefined): boolean => token !== undefined && /^stitch(?:es)?$/i.test(token.text)
  return all.map((token, at) => {
    if (isSlip(token) && isStitch(all[at + 1])) return { ...token, text: 'sl' }
    return isStitch(token) && isSlip(all[at - 1]) ? { ...token, text: /es$/i.test(token.text) ? 'sts' : 'st' } : token
  })
}

/** `around` that names nothing to go round: not `FPdc around next st`. */
function goesAround({ all }: Reader): boolean {
  return all.some(({ text }, at) => /^around$/i.test(text) && /^[,;.)\]]?$/.test(all[at + 1]?.text ?? ''))
}

/** `Put the telly on and repeat Rnd 7 five more times`: words before it that are no instruction. */
function referenceBehind(reader: Reader): RowReference | undefined {
  const { at } = reader
  const rep = reader.all.findIndex(({ text }) => /^rep(?:eat)?$/i.test(text))
  if (rep <= 0 || !/^(?:and|then|,|;|\.|:|now)$/i.test(reader.all[rep - 1]!.text)) return undefined
  const before = parseItems(new Reader(reader.all.slice(0, /^(?:and|then)$/i.test(reader.all[rep - 1]!.text) ? rep - 1 : rep), reader.vocabulary), () => false)
  if (before.some(({ node }) => node !== 'aside')) return undefined
  reader.at = rep
  const found = takeReference(reader)
  if (!found) reader.at = at
  return found
}

/** `Ch 6, dc in 4th, 5th and 6th ch from hook` in a row of tiles: the 3 chains that are skipped are the tile's loop. */
function onLoop(item: Instruction): Instruction {
  // `Sl st in ch-3 sp, ch 3, 3 dc in same sp`: the chain that begins the row is a tile's loop like the others.
  if (item.node === 'chain' && !item.counts && !item.notCounted) return { ...item, counts: { chains: item.count } }
  if (item.node !== 'work' || item.counts || item.target?.walk !== 'from-hook' || !item.target.count) return item
  const { count } = item.target
  return { ...item, counts: { chains: { ...count, values: count.values.map((nth) => nth - 1) } } }
}

/** What follows a reference (`, ending with a WS row`) is kept only as far as it turns or joins. */
function afterReference(reader: Reader): readonly Instruction[] {
  return parseItems(reader, () => false).filter((item) => item.node === 'turn' || item.node === 'join' || item.node === 'unreadable' && item.why === 'cannot')
}

/** `As Rnd 7, but (5 sc, inc) x 6`: the text after `but` is worked. */
function withChange(reader: Reader): readonly Instruction[] {
  reader.take(',')
  reader.take('but|except')
  return parseItems(reader, () => false)
}

/** `Working in back loops only,` or `In BLO throughout:` said for the whole row. */
function takeRowLoop(reader: Reader): 'back' | 'front' | 'third' | undefined {
  const at = reader.at
  takeLoopLead(reader)
  const draft: { loop?: 'back' | 'front' | 'third' } = {}
  takeLoop(reader, draft)
  if (draft.loop) {
    reader.take('of', 'each|every?', 'st|sts?', 'throughout?')
    reader.take('throughout')
    if (reader.take(',') || reader.take(':') || reader.take(';')) return draft.loop
  }
  reader.at = at
  return undefined
}

/**
 * `Sc in each st around; 35 sc`, `…, join; 12 dc`: a bare number of stitches where the row is at its end already is its total. Only where
 * no other total is written. Behind a semicolon or full stop the fabric tells: `rep from * 5 times more; 66 sc. Break off.`
 */
function trailingCount(items: readonly Instruction[], totals: readonly Total[], text: string): { readonly items: readonly Instruction[]; readonly total?: Total } {
  // `; 42 sc. Do not turn.`
  const at = items.findLastIndex(({ node }) => node !== 'aside' && node !== 'turn')
  const last = items[at] && alone(items[at])
  // `; 10 sc around the thumb`, where the piece is called Thumb.
  const round = last?.node === 'work' && last.target?.ofPiece !== undefined && last.target.walk === 'each' && last.target.toEnd
  if (totals.length > 0 || last?.node !== 'work' || !last.count || last.target && !round || last.numberLast || last.stitch === 'inc' || last.stitch === 'dec') return { items }
  const before = items.slice(0, at)
  const worked = before.findIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  const joined = worked !== -1 && before.some(({ node }, index) => node === 'join' && index > worked)
  if (joined || before.some(endsRow)) return { items: items.toSpliced(at, 1), total: { kinds: [{ kind: last.stitch, count: last.count }], spaces: [], groups: [], start: last.start, end: last.end } }
  const apart = worked !== -1 && before.at(-1)!.node !== 'start' && /[;.:—–]\s*$/.test(text.slice(0, items[at]!.start))
  return { items: apart ? items.with(at, { ...last, maybeTotal: true }) : items }
}

/** `(58 dc, so that it meets the Front)`: of a bracket that tells nothing else the stitches. */
function alone(item: Instruction): Instruction {
  const told = item.node === 'repeat' && item.times.kind === 'once' ? item.items.filter(({ node }) => node !== 'aside') : []
  return told.length === 1 ? told[0]! : item
}

/** Whether nothing is left of the row below after it, or the row says that it stops. */
function endsRow(item: Instruction): boolean {
  if (item.node === 'leave') return true
  if (item.node === 'work' || item.node === 'group') return item.target?.walk === 'last' || item.target?.walk === 'each' && item.target.toEnd === true && item.target.keepBack === undefined
  return item.node === 'repeat' && item.times.kind === 'to-end' && item.times.keepBack === undefined
}
