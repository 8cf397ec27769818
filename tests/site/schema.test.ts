import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { patternJsonSchema } from '../../src/pattern/json-schema.ts'

test('the schema that editors read is the one that the reader of patterns checks by; `npm run schema` writes it anew', () => {
  const kept: unknown = JSON.parse(readFileSync('public/schema/pattern.json', 'utf8'))
  expect(kept).toEqual(JSON.parse(JSON.stringify(patternJsonSchema())))
})
