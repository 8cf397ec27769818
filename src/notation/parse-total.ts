import { parseItems } from './parse-items.ts'
import { withoutRemark } from './closing-slip.ts'
import { parseCount } from './parse-count.ts'
import { takeSorted } from './parse-sorted.ts'
import { Reader } from './reader.ts'
import { takeReference } from './row-reference.ts'
import type { Total } from './written-count.ts'

/** The counts that stand at a row's end, and the tokens that are left to be read as instructions. */
export function takeTotals(reader: Reader): { readonly totals: readonly Total[]; readonly rest: Reader } {
  const remark = withoutRemark(reader.all, reader)
  const before = remark && totalsAtEnd(remark.before, reader)
  if (!before || before.totals.length === 0) return totalsAtEnd(reader.all, reader)
  const last = before.totals.at(-1)!
  return { ...before, totals: [...before.totals.slice(0, -1), { ...last, ...(last.count && { closing: remark.closing }), end: remark.end }] }
}

function totalsAtEnd(words: Reader['all'], reader: Reader): { readonly totals: readonly Total[]; readonly rest: Reader } {
  const totals: Total[] = []
  let all = [...words]
  for (;;) {
    // A count with more behind it is the row's only where no other stands at the end; `(6 dc) [2 rows] Fasten off.` counts the rows apart.
    const within = (): Found | undefined => (totals.every(countsRows) ? beforeTurn(all, reader) : undefined)
    const found = beforeLeft(all, reader) ?? sentence(all, reader) ?? atEnd(all, reader) ?? within() ?? inAll(all, reader) ?? afterSign(all, reader) ?? (totals.length === 0 || totals[0]!.closing ? beforeQuiet(all, reader) : undefined)
    if (!found || totals.length > 0 && (sortsWhatIsLeft(all, found, reader) || ofLastPart(all, found, totals[0]!))) break
    totals.unshift(found.total)
    all = found.rest
  }
  const rest = new Reader(all, reader.vocabulary)
  return { totals, rest }
}

/** `leave last 5 sts unworked (4 dc and the tch). (20 sc)`: behind what is left, and before the row's own count. */
function sortsWhatIsLeft(all: Reader['all'], { rest }: Found, reader: Reader): boolean {
  const clause = rest.slice(rest.findLastIndex(({ text }) => /^[,;.]$/.test(text)) + 1).map(({ text }) => text.toLowerCase())
  const leaves = clause.some((word) => /^(?:leave|leaving|unworked|ignore|ignoring|stop|stopping|hold|holding|later)$/.test(word)) || clause.join(' ').startsWith('do not work')
  const behind = new Reader(all, reader.vocabulary)
  behind.at = rest.length
  return leaves && takeSorted(behind) !== undefined
}

/** `sc evenly down the other side (12 sc) — 48 sts`: a bracket that follows its stitches without a comma, and says less than the row's own count, is theirs. */
function ofLastPart(all: Reader['all'], { total, rest }: Found, own: Total): boolean {
  const [part, whole] = [total, own].map(({ count, kinds }) => (count ?? (kinds.length === 1 ? kinds[0]!.count : undefined))?.values)
  const follows = all[rest.length]?.text === '(' && !trailing.has(all[rest.length - 1]?.text ?? '.')
  return follows && part?.length === 1 && whole?.length === 1 && part[0]! < whole[0]!
}

const countsRows = ({ rows, count, kinds }: Total): boolean => rows !== undefined && count === undefined && kinds.length === 0

interface Found {
  readonly total: Total
  readonly rest: Reader['all'][number][]
}

const trailing = new Set(['!', '.', ',', ';', ':', '-', '–', '—', '=', '→'])

function withoutTrailing(all: Reader['all']): Reader['all'][number][] {
  let end = all.length
  while (end > 0 && trailing.has(all[end - 1]!.text)) end -= 1
  return all.slice(0, end)
}

const opens: Readonly<Record<string, string>> = { ')': '(', ']': '[', '}': '{', '>': '<' }

const intro = String.raw`(?:(?:and|now|so) )?(?:(?:at|by) (?:the )?(?:end|this point)(?: of)?(?: the| this)?(?: (?:row|rnd|round))?(?: \d+)? ?,? ?)?`
const has = String.raw`(?:(?:you|we|there) (?:(?:should|will|must|now|still) )*|(?:you|there)[’']ll (?:now |still )?|you[’']ve (?:now )?(?:got )?)(?:have|are|be)?(?: now| still)?(?: a total of)?`
const named = String.raw`(?:count the (?:sts|stitches) ?[:,;–—-]?(?: ${has})?)|(?:the )?(?:(?:total )?(?:stitch|st) count|total|in (?:all|total)|altogether|all told)(?: is| of)? ?[:=]?|(?:sts|stitches) ?:`
const comes = String.raw`(?:that|this|it|which) (?:(?:should|will|now) )*(?:makes?|gives?|comes? to|is|adds up to)(?: you| us)?(?: (?:with|a total of|still))*|(?:that|this|it)[’']s(?: still| now)?|(?:still|again|for|making|giving)(?: you)?(?: a total of)?`
const ends = String.raw`(?:you (?:[a-z]+ )*)?(?:finish|end|end up) with(?: a total of)?`
const rows = String.raw`(?:each|every) (?:row|rnd|round) (?:(?:now|still|should|will) )*(?:has|have|comes to|makes)`
const lead = new RegExp(`^${intro}(?:${has}|${rows}|${named}|for a total of|leaving you with|${ends}|${comes})$`)
/** `You will gain 2 dc in every row and finish with`: by how much each row changes. */
const gains = /^you (?:will |should )?(gain|lose|add|increase by|decrease by) (\d+) (?:[a-z]+ ){0,2}(?:in|on|with|at) (?:every|each) (?:row|rnd|round) (?:and|to) (?:finish|end|end up) with(?: a total of)?$/

/** `At end of Rnd 9 there should be 54 sts.`, `You now have 36 sts.`, `Stitch count: 12.` */
function sentence(all: Reader['all'], reader: Reader): Found | undefined {
  const kept = withoutTrailing(all)
  for (let number = kept.length - 1; number > 0; number -= 1) {
    if (/^[.;]$/.test(kept[number]!.text)) return undefined
    if (kept[number]!.kind !== 'number') continue
    for (let from = Math.max(0, number - 16); from < number; from += 1) {
      if (from > 0 && !/^[.;,!—–]$/.test(kept[from - 1]!.text)) continue
      const words = kept.slice(from, number).map(({ text }) => text.toLowerCase()).join(' ')
      const gain = gains.exec(words)
      if (!gain && !lead.test(words)) continue
      const count = parseCount(kept, number - 1, kept.length, reader)
      const change = gain && count && { values: [Number(gain[2]) * (/^(?:lose|decrease)/.test(gain[1]!) ? -1 : 1)], start: kept[from]!.start, end: kept[number]!.start }
      const total = count && { ...count, ...(change && { change }) }
      if (total) return { total: { ...total, start: kept[number]!.start }, rest: withoutTrailing(kept.slice(0, from)) }
    }
  }
  return undefined
}

/** `… across. (26 sc)` */
function atEnd(all: Reader['all'], reader: Reader): Found | undefined {
  const kept = withoutTrailing(all)
  const open = openOf(kept, kept.length - 1)
  if (open === undefined || endsSizeList(kept, open, reader)) return undefined
  const total = parseCount(kept, open, kept.length - 1, reader)
  return total && { total, rest: withoutTrailing(kept.slice(0, open)) }
}

/** `Ch 70 (80, 90)`, `71 (81, 91, 101)[111, 121]`: the bracket gives the other sizes of the number before it, and is no total. */
function endsSizeList(all: Reader['all'], open: number, reader: Reader): boolean {
  const { sizes } = reader.vocabulary
  const here = numbersIn(all.slice(open + 1, -1))
  if (here === undefined) return false
  let before = 0
  let at = open - 1
  // Brackets of sizes before this one belong to the same number.
  for (let from = openOf(all, at); from !== undefined; from = openOf(all, at)) {
    const numbers = numbersIn(all.slice(from + 1, at))
    if (numbers === undefined) return false
    before += numbers
    at = from - 1
  }
  if (all[at]?.kind !== 'number' || before > 0 && before + 1 >= sizes) return false
  return here > 1 || before + here + 1 === sizes
}

/** Whether a number stands before a bracket, or another bracket of its sizes. */
function followsNumber(all: Reader['all'], open: number): boolean {
  const before = all[open - 1]
  return before?.kind === 'number' || before !== undefined && before.text in opens && openOf(all, open - 1) !== undefined
}

/** How many numbers these are, when they are nothing but a list of numbers. A dash in a number's place stands for a size. */
function numbersIn(inside: Reader['all']): number | undefined {
  if (!inside.every(({ kind, text }) => kind === 'number' || /^[,:;/–—−-]$/.test(text))) return undefined
  return inside.filter(({ kind, text }, at) => kind === 'number' || /^[–—−-]$/.test(text) && (at === 0 || inside[at - 1]!.text === ',')).length
}

/** `(26 sc) Turn.`: only words that change no count follow the total. */
function beforeTurn(all: Reader['all'], reader: Reader): Found | undefined {
  for (let close = all.length - 1; close > 0; close -= 1) {
    if (!(all[close]!.text in opens)) continue
    const open = openOf(all, close)
    if (open === undefined) return undefined
    const total = endsSizeList(all.slice(0, close + 1), open, reader) ? undefined : parseCount(all, open, close, reader)
    if (!total || !worksBefore(all.slice(0, open), reader) && takeReference(new Reader(all.slice(0, open), reader.vocabulary)) === undefined) return undefined
    // `(19 dc); close with 1 ss in first dc = 82 dc`: the row's own total stands behind.
    if (all.some(({ text }, at) => at > close && /^[=→]$/.test(text) && all[at + 1]?.kind === 'number')) return undefined
    const after = new Reader(all.slice(close + 1), reader.vocabulary)
    const items = parseItems(after, () => false)
    const quiet = items.every((item) => item.node === 'turn' || item.node === 'join' || item.node === 'aside' || item.node === 'leave' || item.node === 'chain' || item.node === 'start' || item.node === 'work' && item.stitch === 'sl st')
    return quiet ? { total, rest: [...all.slice(0, open), ...all.slice(close + 1)] } : undefined
  }
  return undefined
}

/** `48 sts. Fasten off.`, `8 ss. Turn the tube, do not fasten off.`, `52 dc and 4 2-ch sps (Back)`: words that change no count follow the total. */
function beforeQuiet(all: Reader['all'], reader: Reader): Found | undefined {
  const end = withoutTrailing(all).length
  let numbers = false
  let depth = 0
  for (let stop = end - 1; stop > 0; stop -= 1) {
    // `Do not fasten off after Row 17.`
    if (all[stop]!.kind === 'number' && !/^(?:rows?|rnds?|rounds?)$/i.test(all[stop - 1]!.text)) numbers = true
    // `… – 28 sc FO`
    const bracket = all[stop]!.text === '(' || /^fo$/i.test(all[stop]!.text) && !trailing.has(all[stop - 1]!.text)
    if (all[stop]!.text === ')') depth += 1
    if (all[stop]!.text === '(') depth -= 1
    if ((all[stop]!.text !== '.' || depth > 0) && !bracket) continue
    const items = parseItems(new Reader(all.slice(bracket ? stop : stop + 1, end), reader.vocabulary), () => false)
    // `(Picot: ch 3, sl st in last sc made.)`
    const defines = bracket && /^[:=]$/.test(all[stop + 2]?.text ?? '')
    if (!items.every(({ node }) => node === 'turn' || node === 'join' || node === 'aside' || node === 'leave') || numbers && !defines && !items.some((item) => item.node === 'leave' && item.count || item.node === 'aside' && item.stated)) return undefined
    const found = sentence(all.slice(0, stop), reader) ?? atEnd(all.slice(0, stop), reader) ?? afterSign(all.slice(0, stop), reader)
    if (found) return { ...found, rest: [...found.rest, ...all.slice(stop)] }
  }
  return undefined
}

/** `turn: 14 sc, 6 sts unworked.`: what is left stands behind the count. */
function beforeLeft(all: Reader['all'], reader: Reader): Found | undefined {
  const kept = withoutTrailing(all)
  const at = kept.findLastIndex(({ text }) => text === ',')
  if (at < 0 || kept[at + 1]?.kind !== 'number' || !/^(?:unworked|unused|free)$/i.test(kept.at(-1)!.text)) return undefined
  const found = afterSign(kept.slice(0, at), reader)
  return found && { ...found, rest: [...found.rest, ...kept.slice(at)] }
}

/** `…; 32 sc in all.`, `…, 20 sts altogether`: behind whatever sign, it is what the row comes to. */
function inAll(all: Reader['all'], reader: Reader): Found | undefined {
  const kept = withoutTrailing(all)
  const [before, last] = kept.slice(-2).map(({ text }) => text.toLowerCase())
  if (last !== 'altogether' && !(before === 'in' && (last === 'all' || last === 'total'))) return undefined
  const at = kept.findLastIndex(({ text }) => /^[,;.:–—→=]$/.test(text))
  const total = at > 0 ? parseCount(kept, at, kept.length, reader) : undefined
  if (!total || total.count === undefined && total.kinds.length === 0) return undefined
  return { total: { ...total, start: kept[at + 1]!.start }, rest: withoutTrailing(kept.slice(0, at)) }
}

/** `… around = 36`, `… across — 30 sts`, `… around: 30 sc`, `… turn. 26 sts.`, `… across → 30` */
function afterSign(all: Reader['all'], reader: Reader): Found | undefined {
  const kept = withoutTrailing(all)
  for (let at = kept.length - 1; at > 0; at -= 1) {
    const { text } = kept[at]!
    if (text in opens) {
      // `… across. 20 (24, 28) sc`: the sizes of the count are part of it.
      const open = openOf(kept, at)
      if (open === undefined || numbersIn(kept.slice(open + 1, at)) === undefined || !followsNumber(kept, open)) return undefined
      at = open
      continue
    }
    // `As for Front border, 52 dc`: behind a row that only points at others.
    const pointed = /^[,;]$/.test(text) && kept.length - at <= longestCount && (saysStitches(kept.slice(at + 1)) || pointsAtRows(kept.slice(0, at), reader))
    if (!/^[=—–:;.→•·-]$/.test(text) && !pointed) continue
    // Within `ch-2 sps` the hyphen touches on both sides, and so does the dash of a range (`Rep Rows 1–2`).
    if (withinList(kept, at)) continue
    const touches = kept[at - 1]!.end === kept[at]!.start && kept[at - 1]!.text !== '-'
    const afterRow = text === '—' && saysStitches(kept.slice(at + 1)) && /^(?:rows?|rnds?|rounds?)$/i.test(kept[at - 2]?.text ?? '')
    if (touches && !afterRow && (text === '-' || /^[—–]$/.test(text) && kept[at - 1]!.kind === 'number' && kept[at + 1]?.kind === 'number')) continue
    const total = parseCount(kept, at, kept.length, reader)
    const picots = total?.groups.some(({ name }) => name === 'picots')
    if (text === ';' && !pointed && !picots && total?.change === undefined && total?.closing === undefined && (total?.kinds.length ?? 0) + (total?.spaces.length ?? 0) < 2) continue
    // `sc in each sc to end: 1 st fewer`
    const changes = total?.change !== undefined && kept.slice(at).some((token) => /^(st|sts|stitch|stitches)$/i.test(token.text)) && worksBefore(kept.slice(0, at), reader)
    if (!total || !/^[=→]$/.test(text) && total.count === undefined && total.kinds.length + total.groups.length === 0 && !changes) return undefined
    // A bare number may be anything; one number for each size can only be a count.
    const bySize = total.count !== undefined && total.count.values.length > 1 && total.count.values.length === reader.vocabulary.sizes
    // `… across. - 30`: a hyphen with room on both sides is a dash.
    const dash = text === '-' && kept[at - 1]!.end < kept[at]!.start && kept[at]!.end < (kept[at + 1]?.start ?? 0)
    if (/^[.:,-]$/.test(text) && !dash && !kept.slice(at).some((token) => /^(st|sts|stitches)$/i.test(token.text)) && total.kinds.length + total.groups.length === 0 && !bySize && !total.byRow) return undefined
    if (/^[.:;]$/.test(text) && total.kinds.length + total.groups.length > 0 && !worksBefore(kept.slice(0, at), reader) && !pointsAtRows(kept.slice(0, at), reader)) return undefined
    return { total, rest: withoutSum(withoutTrailing(kept.slice(0, at)), total) }
  }
  return undefined
}

/** `Join. 24 + 12 + 24 + 12 = 72 sc.`: the parts that the total is the sum of. Those that come to another are left to be blamed. */
function withoutSum(before: Found['rest'], { count, kinds }: Total): Found['rest'] {
  let from = before.length
  let sum = 0
  while (before[from - 1]?.kind === 'number') {
    sum += before[from - 1]!.value ?? 0
    from -= 1
    if (before[from - 1]?.text !== '+') break
    from -= 1
  }
  const says = (count ?? kinds[0]?.count)?.values
  const apart = /^[.;:–—-]$/.test(before[from - 1]?.text ?? '')
  return apart && before.length - from > 2 && says?.length === 1 && says[0] === sum ? withoutTrailing(before.slice(0, from)) : before
}

/** `: 18 – 16 – 14 – 12 sc`: a dash between the counts of several rows. */
function withinList(all: Reader['all'], at: number): boolean {
  let from = at
  while (/^[–—→]$/.test(all[from]?.text ?? '') && all[from - 1]?.kind === 'number') from -= 2
  return from < at && all[from]?.text === ':'
}

/** No count that a person writes, in whatever sizes, has more words and signs. */
const longestCount = 60

/** `…, 40 sts`, `…; 56 (60) stitches`: no stitch has that name, so that nothing is worked. */
const saysStitches = (all: Reader['all']): boolean => all[0]?.kind === 'number' && /^(?:sts|stitches)$/i.test(all.at(-1)!.text) && numbersIn(all.slice(1, -1).filter(({ text }) => !(text in opens) && !Object.values(opens).includes(text))) !== undefined

function pointsAtRows(all: Reader['all'], reader: Reader): boolean {
  const row = new Reader(all, reader.vocabulary)
  return takeReference(row) !== undefined && row.done
}

/** Whether instructions that make stitches stand before: then `30 hdc` at the end can only be a total. */
function worksBefore(all: Reader['all'], reader: Reader): boolean {
  // `Rep Row 3: 37 sc`: the rows that are repeated make them.
  if (/^(?:rep|repeat|as|work)$/i.test(all[0]?.text ?? '') && takeReference(new Reader(all, reader.vocabulary))) return true
  const items = parseItems(new Reader(all, reader.vocabulary), () => false)
  return items.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')
}

function openOf(all: Reader['all'], close: number): number | undefined {
  const last = all[close]?.text ?? ''
  if (!(last in opens)) return undefined
  let depth = 0
  for (let at = close; at >= 0; at -= 1) {
    const text = all[at]!.text
    if (text in opens) depth += 1
    else if (Object.values(opens).includes(text)) {
      depth -= 1
      if (depth === 0) return at
    }
  }
  return undefined
}
