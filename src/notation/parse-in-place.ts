import { numberAhead } from './numbers.ts'
import { isLayersBetween } from './parse-again.ts'
import { isMirrored } from './parse-all-in.ts'
import { parseItems } from './parse-items.ts'
import { takeToEnd } from './parse-reach.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/**
 * The place before what is worked there:
 *
 *   In each ch-2 sp (3 dc, ch 2, 3 dc)   in next st work 3 dc   in same sp: 2 dc, ch 2, 2 dc
 */
export function inPlace(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  // `Attach yarn, RS facing, at the outermost of the 6 sts left in Row 3`
  const told = before.findLast((item) => !(item.node === 'start' && item.target.walk === 'layers') && (item.node !== 'aside' || !/\bfacing\b/.test(item.words ?? '')))
  const joins = told?.node === 'aside' && /\b(?:re)?(?:join|attach)/.test(told.words ?? '')
  if (!/^(in|into|working)$/.test(reader.word()) && !(joins && /^(?:at|to)$/.test(reader.word()))) return undefined
  if (isLayersBetween(reader, before)) return undefined
  const target = takeTarget(reader)
  // `Join yarn at the opposite corner, in the end of the edging;`: where the row begins, told once more.
  if (target && joins && (reader.done || /^[;.,]$/.test(reader.word()))) return [{ node: 'start', target, start, end: reader.end }]
  // `join yarn in next tr, 3 ch (counts as 1 tr) in the same place,`: the chain stands where the yarn was joined.
  if (target?.walk === 'same' && before.at(-1)?.node === 'chain' && /^[,;]$/.test(reader.word())) return [{ node: 'aside', words: 'in the same place', start, end: reader.end }]
  if (/^(?:at|to)$/.test(reader.all[at]!.text.toLowerCase())) {
    reader.at = at
    return undefined
  }
  const placed = before.at(-1)?.node === 'work' || before.at(-1)?.node === 'group'
  // `sc in first sc and in each of next 2 sc: 11 sc;` is the same stitch again.
  const again = placed && reader.all[at - 1]?.text === 'and'
  const colon = !again && reader.take(placed ? ':' : ':|,')
  const worked = reader.take('work|make')
  if (!target || target.thing === undefined && target.walk === 'next' || placed && !colon && !worked && reader.word() !== '(' && reader.word() !== '[') {
    reader.at = at
    return undefined
  }
  const open = reader.word() === '(' ? ')' : reader.word() === '[' ? ']' : undefined
  if (open) {
    reader.at += 1
    const items = parseItems(reader, (inner) => inner.word() === open)
    reader.take(open)
    // `and in each of next 5 sts (4 sts left unworked)`, `and in each of next 2 ch (eave)`: nothing is worked in the bracket.
    const stitch = before.at(-1)
    const quiet = items.filter((item) => item.node === 'unreadable' && item.why === 'quiet')
    if (stitch?.node === 'work' && items.every((item) => item.node === 'leave' || item.node === 'aside' || item.node === 'turn' || quiet.includes(item))) {
      const { counts: _, over: __, joins: ___, ...same } = stitch
      return [{ ...same, target, start, end: reader.end }, ...items.map((item): Instruction => (quiet.includes(item) ? { node: 'aside', start: item.start, end: item.end } : item))]
    }
    takeToEnd(reader)
    return [{ node: 'group', items, target, start, end: reader.end }]
  }
  if (!colon && !worked && numberAhead(reader) === undefined) {
    reader.at = at
    return undefined
  }
  const first = parseItems(reader, (inner) => inner.word() === ',' && !colon || inner.word() === ';' || inner.word() === '.')
  const items = [...first, ...listBehind(reader, first)]
  if (items.length === 0) {
    reader.at = at
    return undefined
  }
  return [{ node: 'group', items, target, start, end: reader.end }]
}

/** `in next loop make dc, ch 2 and 2 dc`, `in the first st work 1 sc, ch 2, 1 sc`: a list that its last `and` closes, or its first stitches again, all of it in the one place. */
function listBehind(reader: Reader, first: readonly Instruction[]): readonly Instruction[] {
  const { at } = reader
  const items: Instruction[] = []
  while (reader.take(',')) {
    const { at: from } = reader
    const found = parseItems(reader, (inner) => /^[,;.()[\]]$/.test(inner.word()))
    items.push(...found)
    if (isMirrored([...first, ...items]) && !/^(?:in|into)$/.test(reader.word())) return items
    if (found.length === 0 || !found.every((item) => item.node === 'chain' || item.node === 'work' && item.target === undefined)) break
    if (found.at(-1)?.node === 'work' && reader.all.slice(from, reader.at).some(({ text }) => text === 'and')) return items
  }
  reader.at = at
  return []
}
