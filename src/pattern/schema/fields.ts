import * as z from 'zod'
import { listOf } from '../../diagnostics/words.ts'
import { cmFromInches } from '../../measures/units.ts'

/**
 * The kinds of value that a pattern file holds. Each carries two things: its meaning, shown by editors that know the JSON Schema,
 * and what such a value must be, which ends the sentence of a diagnostic: "`make` is `two`, but must be a whole number from 1".
 */

/** Words. A bare number (`title: 1928`) is words too: YAML cannot know better. */
export function text(meaning: string) {
  const must = 'must be text'
  return z.union([z.string(must).regex(/\S/, must).trim(), z.number(must)], must).transform(String).describe(meaning)
}

/** One word of a few. */
export function choice<const Options extends readonly [string, ...string[]]>(options: Options, meaning: string) {
  return z.enum(options, `must be ${listOf(options, 'or')}`).describe(meaning)
}

/** A whole number: copies, stitches, balls. */
export function whole(meaning: string, { from = 0, to = 10_000 } = {}) {
  const must = `must be a whole number from ${from} to ${to.toLocaleString('en')}`
  return z.preprocess(numberOf, z.number(must).int(must).min(from, must).max(to, must)).describe(meaning)
}

/** A number above nothing, whole or not: stitches and rows of a gauge, grams and metres of a ball. */
export function positive(meaning: string) {
  const must = 'must be a number above 0'
  return z.preprocess(numberOf, z.number(must).positive(must).max(100_000, must)).describe(meaning)
}

/** `true` or `false`. */
export function yesNo(meaning: string) {
  return z.preprocess((value) => (value === 'true' ? true : value === 'false' ? false : value), z.boolean('must be true or false')).describe(meaning)
}

/** A calendar day as `2026-11-02`. */
export function day(meaning: string) {
  return z.iso.date('must be a day such as `2026-11-02`').describe(meaning)
}

/** `1.0.0`; `1.0` and `1` are versions too, though YAML takes them for numbers. */
export function version(meaning: string) {
  const must = 'must be a version such as `1.0.0`'
  return z.union([z.string(must).regex(/^\d{1,6}(\.\d{1,6}){0,2}$/, must), z.number(must)], must).transform(String).describe(meaning)
}

/** A hook by its shaft, `10 mm`. The number of millimetres comes out. */
export function hook(meaning: string) {
  const must = 'must be a hook size in mm such as `5 mm`'
  return z.string(must).regex(/^(?=.*[1-9])\d{1,2}(?:\.\d{1,3})? ?mm$/, must).transform(Number.parseFloat).describe(meaning)
}

/** An amount of yarn, `120 g`. The number of grams comes out. */
export function grams(meaning: string) {
  const must = 'must be grams such as `120 g`'
  return z.string(must).regex(/^\d{1,6}(?:\.\d{1,2})? ?g$/, must).transform(Number.parseFloat).describe(meaning)
}

/** A length, `10 cm`, `4 in`, `19½ in`, `7 3/4 in`. Centimetres come out. */
export function length(meaning: string) {
  const must = 'must be a length such as `10 cm` or `4 in`'
  return z.string(must).regex(lengthForm, must).transform(centimetres).describe(meaning)
}

/** So many by so many, `5 x 7`. Both numbers come out. */
export function grid(meaning: string) {
  const must = 'must be two numbers such as `5 x 7`'
  return z.string(must).regex(/^[1-9]\d{0,2} ?(?:x|×|by) ?[1-9]\d{0,2}$/, must).transform(twoNumbers).describe(meaning)
}

/** One value for every size, or a list with one for each. A list comes out. */
export function perSize<Value extends z.ZodType>(value: Value, meaning: string) {
  return z.union([value.transform((one) => [one]), z.array(value).min(1, 'must hold at least one value')]).describe(meaning)
}

/** One value or a list of them. A list comes out. */
export const oneOrMore = perSize

/** A list of groups of keys: yarns, pieces, seams. */
export function list<Item extends z.ZodType>(item: Item, meaning: string) {
  return z.array(item, 'must be a list, each entry beginning with `- `').describe(meaning)
}

/** A group of keys, none of them unknown. */
export function keys<Shape extends z.ZodRawShape>(shape: Shape, meaning: string) {
  return z.strictObject(shape, `must be a group of keys such as ${exampleOf(shape)}`).describe(meaning)
}

function exampleOf(shape: z.ZodRawShape): string {
  return listOf(Object.keys(shape).slice(0, 3).map((key) => `\`${key}\``))
}

function twoNumbers(written: string): { readonly across: number; readonly down: number } {
  const [across, down] = written.split(/\D+/).map(Number)
  return { across: across!, down: down! }
}

function numberOf(value: unknown): unknown {
  return typeof value === 'string' && /^-?\d{1,9}(\.\d{1,9})?$/.test(value) ? Number(value) : value
}

const vulgar: Readonly<Record<string, number>> = {
  '¼': 1 / 4, '½': 1 / 2, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 1 / 8, '⅜': 3 / 8, '⅝': 5 / 8, '⅞': 7 / 8,
}

// Inches come in halves, quarters and eighths. No length is nothing.
const lengthForm =
  /^(?=.*[1-9¼½¾⅓⅔⅛⅜⅝⅞])(?:\d{1,4}(?:\.\d{1,3})?|(?:\d{1,4} )?[1-9]\d?\/[1-9]\d?|\d{0,4} ?[¼½¾⅓⅔⅛⅜⅝⅞]) ?(?:cm|mm|m|in|inch|inches|")$/

function centimetres(written: string): number {
  const [, whole = '', over = '', under = '', sign = '', unit = ''] =
    /^(\d*\.?\d*)(?: ?\b(\d+)\/(\d+)| ?([¼½¾⅓⅔⅛⅜⅝⅞]))? ?(\D+)$/.exec(fractionAlone(written)) ?? []
  const number = Number(whole || 0) + (over === '' ? 0 : Number(over) / Number(under)) + (vulgar[sign] ?? 0)
  if (unit === 'cm') return number
  if (unit === 'mm') return number / 10
  return unit === 'm' ? number * 100 : cmFromInches(number)
}

// `3/4 in` is read as `0 3/4 in`, so that its 3 is not taken for a whole number.
function fractionAlone(written: string): string {
  return /^\d+\//.test(written) ? `0 ${written}` : written
}
