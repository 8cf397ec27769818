import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import { changeOfWords, type Change, type Slip } from './change.ts'
import { numbersOf, saysHowOften, timesAround } from './row-numbers.ts'
import { valueIn, withValues, writtenNumbers, type WrittenNumber } from './written-numbers.ts'

/** Numbers of a row that say how often something is worked, one more and one less, `once` and `twice` among them. */
export function timesChanges(slip: Slip): readonly Change[] {
  return [...oneOff(slip, numbersOf(slip).filter((number) => saysHowOften(slip, number))), ...timesInWords(slip)].map(({ fits, ...change }) => ({ ...change, ...(fits && { fits }), carriesTotal: true }))
}

/** `Next 6 rnds: …`: one row more and one less, where a range grows or shrinks with each. */
export function howManyChanges(slip: Slip): readonly Change[] {
  const { label } = slip.row.written
  if (!/^next \d/i.test(textOf(slip.source, label))) return []
  const numbers = writtenNumbers(slip.source, label, slip.sizes).slice(0, 1)
  return numbers.flatMap((number) => [1, -1].flatMap((by) => {
    const edit = withValues(slip.source, number, nextTo(slip, number, by))
    return edit ? [{ ...changeOfWords(slip, label, edit.span, edit.replacement, number.span), fits: true }] : []
  }))
}

/** Every other number of the row: first changed by just what the row is off, then one more and one less. */
export function numberChanges(slip: Slip): readonly Change[] {
  const numbers = numbersOf(slip).filter((number) => !saysHowOften(slip, number))
  const exact = numbers.flatMap((number) => byTheDifference(slip, number))
  // Words that stand in the pattern already are likelier meant than words that stand nowhere.
  const familiar = ({ clause = '' }: Change): number => (slip.source.text.includes(clause) ? 0 : 1)
  const near = [...exact.toSorted((a, b) => familiar(a) - familiar(b)), ...oneOff(slip, numbers), ...impliedOnes(slip)]
  return near
}

function byTheDifference(slip: Slip, number: WrittenNumber): readonly Change[] {
  const off = new Map([...slip.bySize].map(([size, row]) => [size, difference(row)] as const))
  return [...weights(slip, number)].flatMap((weight) => {
    const values = new Map([...off].map(([size, by]) => [size, valueIn(number, size) + by / weight] as const))
    const sound = [...values].every(([size, value]) => Number.isInteger(value) && value > 0 && value !== valueIn(number, size))
    return sound ? made(slip, number, values).map((change) => ({ ...change, carriesTotal: true, fits: true })) : []
  })
}

function oneOff(slip: Slip, numbers: readonly WrittenNumber[]): readonly Change[] {
  return numbers.flatMap((number) => {
    const off = difference(slip.row)
    const divided = slip.row.troubles.find((trouble) => trouble.kind === 'does-not-divide')
    if (divided) return [1, -1].flatMap((by) => made(slip, number, nextTo(slip, number, by)).map((change) => ({ ...change, fits: divides(slip, number, divided, by) })))
    // The last pass of a repeat may end before the words around the number.
    const fits = off === 0 || weights(slip, number).has(Math.abs(off)) || timesAround(slip.row, number.span) - 1 === Math.abs(off)
    // Where the row is off by more or by fewer, the change that goes the other way comes first.
    return (off > 0 ? [1, -1] : [-1, 1]).flatMap((by) =>
      made(slip, number, nextTo(slip, number, by)).map((change) => ({ ...change, fits: fits && (off === 0 || Math.sign(by) === Math.sign(off)) })))
  })
}

function nextTo(slip: Slip, number: WrittenNumber, by: number): ReadonlyMap<number, number> {
  return new Map([...slip.bySize.keys()].map((size) => [size, valueIn(number, size) + by]))
}

/** Whether a repeat would go a whole number of times into what is left for it, if a number in it or beside it were another. */
function divides(slip: Slip, number: WrittenNumber, { span, room, each }: { readonly span: Span; readonly room: number; readonly each: number }, by: number): boolean {
  const inside = span.start <= number.span.start && number.span.end <= span.end
  return [...weights(slip, number)].some((weight) => {
    const once = inside ? Math.max(1, weight / timesAround(slip.row, number.span)) : weight
    return inside ? each + by * once > 0 && room % (each + by * once) === 0 : (room - by * once) % each === 0
  })
}

function made(slip: Slip, number: WrittenNumber, values: ReadonlyMap<number, number>): readonly Change[] {
  if ([...values.values()].some((value) => value < 1)) return []
  const edit = withValues(slip.source, number, values)
  if (!edit) return []
  const { span, replacement } = withoutOne(slip.source.text, edit, number)
  const change = changeOfWords(slip, slip.row.written.text, span, replacement, number.parts.length > 1 ? number.span : span)
  return [number.parts.length > 2 ? { ...change, steadier: Math.sign(unevenness(number.values) - unevenness(number.values.map((value, size) => values.get(size) ?? value))) } : change]
}

/** How far a list of sizes is from growing by the same step each time: the sum of the changes of its steps. */
function unevenness(values: readonly number[]): number {
  const steps = values.slice(1).map((value, at) => value - values[at]!)
  return steps.slice(1).reduce((sum, step, at) => sum + Math.abs(step - steps[at]!), 0)
}

/** Nobody writes `1 sc in next st` or `next 1 sts`. */
function withoutOne(text: string, edit: { readonly span: Span; readonly replacement: string }, { parts }: WrittenNumber): { readonly span: Span; readonly replacement: string } {
  if (edit.replacement !== '1' || parts.length > 1) return edit
  const { start, end } = edit.span
  const stitch = /^ (?=(?:sc|hdc|dc|tr|htr|dtr)\b(?! \d))/.exec(text.slice(end, end + 8))
  // Some designers do write the 1: then it stands in other rows as well.
  if (stitch) return /\b1 (?:sc|hdc|dc|tr|htr|dtr) in /i.test(text) ? edit : { span: { start, end: end + 1 }, replacement: '' }
  const many = /^ (st|sp|stitche|dc|sc)s?\b/.exec(text.slice(end, end + 10))
  return many ? { span: { start, end: end + many[0].length }, replacement: many[1] === 'stitche' ? 'stitch' : many[1]! } : edit
}

/** `sc in next st` is a number as well: one. */
function impliedOnes(slip: Slip): readonly Change[] {
  const { text: within } = slip.row.written
  return [...textOf(slip.source, within).matchAll(/\b(next|last) (st|sc|hdc|dc|tr)\b(?!s)/gi)].slice(0, 3).map((match) => {
    const start = within.start + match.index
    return changeOfWords(slip, within, { start, end: start + match[0].length }, `${match[1]} 2 ${match[2]!.toLowerCase() === 'st' ? 'sts' : match[2]}`)
  })
}

function timesInWords(slip: Slip): readonly Change[] {
  const { text: within } = slip.row.written
  return [...textOf(slip.source, within).matchAll(/\b(once|twice)( more)?\b/gi)].flatMap((match) => {
    const start = within.start + match.index
    const span = { start, end: start + match[0].length }
    const more = match[2] === undefined ? '' : ' more'
    const instead = match[1]!.toLowerCase() === 'once' ? [`twice${more}`] : [`3${more} times`, `once${more}`]
    return instead.map((words) => changeOfWords(slip, within, span, words))
  })
}

/** By how much the row is off: what it would have to make more, or may work over less. */
function difference(row: WorkedRow): number {
  const { says, troubles } = row
  for (const trouble of troubles) {
    if (trouble.kind === 'overrun') return trouble.offers - trouble.wants
    if (trouble.kind === 'row-ends-passed') return trouble.count
    if (trouble.kind === 'left-over') return trouble.count - (trouble.said ?? 0)
  }
  if (row.agreement.kindSlip && row.agreement.total) return row.agreement.kindSlip.says - row.agreement.kindSlip.makes
  const said = says?.count ?? Object.values(says?.kinds ?? {}).reduce((sum, count) => sum + count, 0)
  return said > 0 ? said - row.makes : 0
}

/**
 * By how many stitches the row may change when a number becomes one more: what the words around it are worked, and in `2 sc in each of
 * next 10 sts` ten times that for the 2 and twice that for the 10. A number that says how often counts for one pass.
 */
function weights(slip: Slip, number: WrittenNumber): ReadonlySet<number> {
  const { source: { text }, row } = slip
  const { span } = number
  const times = timesAround(row, span)
  const step = row.tally.find(({ span: { start, end } }) => start <= span.start && span.end <= end)
  const found = new Set([times])
  const behind = /^ [a-z]+ in each of (?:the )?next (\d+)/i.exec(text.slice(span.end, span.end + 40))?.[1]
  const ahead = /(\d+) [a-z]+ in (?:each of (?:the )?)?next $/i.exec(text.slice(Math.max(row.written.text.start, span.start - 40), span.start))?.[1]
  for (const factor of [behind, ahead]) if (factor !== undefined) found.add(times * Number(factor))
  if (step && saysHowOften(slip, number)) found.add(step.makes / step.times).add(step.worksOver / step.times)
  return found
}
