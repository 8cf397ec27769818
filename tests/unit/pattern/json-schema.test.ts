import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { patternJsonSchema } from '../../../src/pattern/json-schema.ts'
import { found, full, smallWith } from './made-up-files.ts'

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json }
type Schema = { readonly [key: string]: Json }

const schema = patternJsonSchema() as Schema

/**
 * Whether a document fits a schema, by the keywords of JSON Schema draft 2020-12 (Validation, sections 6 and 9; Applicator,
 * section 10) that the schema uses. A keyword that is not here fails the test: nothing may pass for not being known.
 */
function fits(doc: Json, by: Schema): boolean {
  return Object.entries(by).every(([keyword, value]) => {
    const check = keywords[keyword]
    if (!check) throw new Error(`the keyword ${keyword} is not known to this test`)
    return check(doc, value, by)
  })
}

const isObject = (doc: Json): doc is { readonly [key: string]: Json } => typeof doc === 'object' && doc !== null && !Array.isArray(doc)

const typeOf = (doc: Json): string => (doc === null ? 'null' : Array.isArray(doc) ? 'array' : typeof doc)

const keywords: Readonly<Record<string, (doc: Json, value: Json, by: Schema) => boolean>> = {
  $schema: () => true, title: () => true, description: () => true, default: () => true, format: () => true,
  type: (doc, type) => typeOf(doc) === type || (type === 'integer' && Number.isInteger(doc)),
  enum: (doc, options) => (options as readonly Json[]).includes(doc),
  pattern: (doc, pattern) => typeof doc !== 'string' || new RegExp(pattern as string, 'u').test(doc),
  minimum: (doc, least) => typeof doc !== 'number' || doc >= (least as number),
  maximum: (doc, most) => typeof doc !== 'number' || doc <= (most as number),
  exclusiveMinimum: (doc, below) => typeof doc !== 'number' || doc > (below as number),
  minItems: (doc, least) => !Array.isArray(doc) || doc.length >= (least as number),
  items: (doc, by) => !Array.isArray(doc) || doc.every((item) => fits(item, by as Schema)),
  anyOf: (doc, forms) => (forms as readonly Schema[]).some((form) => fits(doc, form)),
  required: (doc, keys) => !isObject(doc) || (keys as readonly string[]).every((key) => key in doc),
  properties: (doc, shapes) => !isObject(doc) || Object.entries(doc).every(([key, value]) => !(key in (shapes as Schema)) || fits(value, (shapes as Schema)[key] as Schema)),
  additionalProperties: (doc, rest, by) => !isObject(doc) || Object.entries(doc).every(([key, value]) =>
    key in ((by['properties'] ?? {}) as Schema) || (rest !== false && fits(value, rest as Schema))),
  propertyNames: (doc, by) => !isObject(doc) || Object.keys(doc).every((key) => fits(key, by as Schema)),
}

/** The front-matter as an editor sees it: YAML 1.2 with its own numbers and truth values (core schema). */
function asEditorsSee(text: string): Json {
  return parse(text.split(/^---$/m)[1] ?? '') as Json
}

describe('the JSON Schema', () => {
  test('is of draft 2020-12', () => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema')
    expect(schema['required']).toEqual(['title', 'terms', 'pieces'])
  })

  test('describes every key, in whole sentences or in words', () => {
    const undescribed: string[] = []
    let described = 0
    const visit = (by: Schema, path: string): void => {
      for (const [key, shape] of Object.entries((by['properties'] ?? {}) as Schema)) {
        const { description } = shape as Schema
        if (typeof description === 'string' && /^[A-Z].*\.$/s.test(description)) described += 1
        else undescribed.push(`${path}${key}`)
        visit(shape as Schema, `${path}${key}.`)
      }
      for (const form of (by['anyOf'] ?? []) as readonly Schema[]) visit(form, path)
      if (isObject(by['items'] ?? null)) visit(by['items'] as Schema, path)
    }
    visit(schema, '')
    expect(undescribed).toEqual([])
    // Counted in the format: 25 keys of a pattern, 6 of a gauge, 3 conventions, 3 of materials, 9 of a yarn, 2 of a ball,
    // 4 of a notion, 6 of a stitch, 8 of a piece, 7 of a seam, 3 of a measurement, 3 of a change, 4 of an acceptance, 2 of a credit.
    expect(described).toBe(25 + 6 + 3 + 3 + 9 + 2 + 4 + 6 + 8 + 7 + 3 + 3 + 4 + 2)
  })

  test.each([
    ['the file with every key', full.join('\n')],
    ['the smallest file', smallWith()],
    ['words that YAML takes for numbers', smallWith('summary: 1928', 'version: 1.0', 'sizes: [1, 2]')],
    ['one value in the place of a list', smallWith('materials: { hooks: 5 mm, yarns: [{ needs: 120 g }] }')],
  ])('accepts %s, as the reader does', (_, text) => {
    expect(found(text)).toEqual([])
    expect(fits(asEditorsSee(text), schema)).toBe(true)
  })

  test.each([
    ['level: hard'], ['summary: [A]'], ['summary: ""'], ['level: null'], ['number: nine'], ['number: 0'], ['number: 1.5'], ['version: first'],
    ['date: 2026-02-29'], ['sizes: Small'], ['gauge: { sts: 8, over: 10 cm }'], ['gauge: { sts: 0, rows: 6, over: 10 cm }'],
    ['gauge: { sts: 8, rows: 6, over: 10 }'], ['gauge: { sts: 8, rows: 6, over: 0 cm }'], ['conventions: { chains: true }'],
    ['conventions: { turning-chains: { dc: yes } }'], ['materials: { hooks: [5] }'], ['materials: { hooks: [] }'],
    ['materials: { yarns: [{ weight: 8 }] }'], ['materials: { yarns: [{ needs: 120 }] }'], ['stitches: [{ name: bobble }]'],
    ['seams: [{ join: [] }]'], ['seams: [{ join: [Disc], ease: maybe }]'], ['colour: Kelp'], ['finished: [{ what: width, is: wide }]'],
    ['changes: [{ version: 1.0.0, what: First }]'],
  ])('refuses %s, as the reader does', (line) => {
    expect(found(smallWith(line)).length).toBeGreaterThan(0)
    expect(fits(asEditorsSee(smallWith(line)), schema)).toBe(false)
  })
})
