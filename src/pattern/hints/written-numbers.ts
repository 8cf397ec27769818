import { textOf, type Source } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'

/** A number as it is written: one for every size, or a list with one for each, `34 (40, 46)`. */
export interface WrittenNumber {
  /** The number, or the list from its first number to the bracket that closes it. */
  readonly span: Span
  /** One value, or one for each size. */
  readonly values: readonly number[]
  /** Where each value stands. */
  readonly parts: readonly Span[]
}

/** Every whole number in a stretch of the file; lists of as many as there are sizes are one number. */
export function writtenNumbers(source: Source, within: Span, sizes: number): readonly WrittenNumber[] {
  const text = textOf(source, within)
  const lists = sizes < 2 ? [] : [...text.matchAll(/\d{1,4}\s*[([]\s*\d{1,4}(?:\s*[,;:]\s*\d{1,4})*\s*[)\]]/g)].flatMap((match) => {
    const parts = numbersIn(match[0], within.start + match.index)
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    return parts.length === sizes ? [{ ...numberOf(source, parts), span }] : []
  })
  const single = numbersIn(text, within.start)
    .filter(({ start }) => !lists.some(({ span }) => span.start <= start && start < span.end))
    .map((part) => numberOf(source, [part]))
  return [...lists, ...single].sort((a, b) => a.span.start - b.span.start)
}

function numbersIn(text: string, base: number): readonly Span[] {
  return [...text.matchAll(/\d{1,4}/g)].map(({ 0: digits, index }) => ({ start: base + index, end: base + index + digits.length }))
}

function numberOf(source: Source, parts: readonly Span[]): WrittenNumber {
  const values = parts.map((part) => Number(textOf(source, part)))
  return { span: { start: parts[0]!.start, end: parts.at(-1)!.end }, values, parts }
}

/** The value that a written number has in a size. */
export function valueIn({ values }: WrittenNumber, size: number): number {
  return values.length === 1 ? values[0]! : (values[size] ?? values.at(-1)!)
}

/**
 * A written number with other values in some sizes, as a replacement of the least that must be replaced: in a list the one number of
 * that size. Undefined where nothing changes, or where one number for all sizes would have to become several.
 */
export function withValues(source: Source, number: WrittenNumber, values: ReadonlyMap<number, number>): { readonly span: Span; readonly replacement: string } | undefined {
  const changed = [...values].filter(([size, value]) => valueIn(number, size) !== value)
  if (changed.length === 0 || changed.some(([, value]) => value < 0)) return undefined
  if (number.parts.length === 1) {
    const all = new Set(values.values())
    return all.size === 1 ? { span: number.span, replacement: `${[...all][0]}` } : undefined
  }
  const indices = changed.map(([size]) => size)
  const [first, last] = [Math.min(...indices), Math.max(...indices)]
  const span = { start: number.parts[first]!.start, end: number.parts[last]!.end }
  let replacement = ''
  let at = span.start
  for (let size = first; size <= last; size += 1) {
    const part = number.parts[size]!
    replacement += source.text.slice(at, part.start) + `${values.get(size) ?? valueIn(number, size)}`
    at = part.end
  }
  return { span, replacement }
}
