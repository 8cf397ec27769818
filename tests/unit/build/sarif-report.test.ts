import { readFileSync } from 'node:fs'
import * as z from 'zod'
import { describe, expect, test } from 'vitest'
import { sarifReport } from '../../../src/build/sarif-report.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { finding, madeUpChecked } from './made-up-checked.ts'

// The oracle is the JSON Schema of SARIF 2.1.0, as published for the OASIS standard (its text lies beside this file), read by a general
// library. What no schema says (regions, suppressions) is from the standard's own words: 3.30.5 to 3.30.8 count lines and columns from 1
// and the end column behind the last character; 3.35 suppressions; 3.55 fixes, 3.57 replacements.

// The library takes a `uri-reference` (RFC 3986, 4.1) for a whole URL; references are resolved below instead.
const lenient = (_: string, value: unknown): unknown => (value === 'uri-reference' ? undefined : value)
const schema = z.fromJSONSchema(JSON.parse(readFileSync('tests/unit/build/sarif-2.1.0.json', 'utf8'), lenient) as Parameters<typeof z.fromJSONSchema>[0])

const text = `---
title: Limpet mat
terms: US
accepted:
  - { code: count-missing, row: Rnd 4, why: it is drawn }
pieces:
  - name: Mat
    rows: |
      Rnd 1: 6 sc in magic ring. (6)
      Rnd 2: 2 sc in each st around. (13)
      Rnd 3: Sc in each st around. (12)
      Rnd 4: 2 sc in each st around.
---
`
const checked = checkPattern({ path: 'patterns/limpet mat.md', text })
const log = sarifReport([checked])
const [run] = log.runs
const results = run?.results ?? []

describe('a log', () => {
  test('is valid by the schema, with findings and without', () => {
    const written = JSON.parse(JSON.stringify(log)) as unknown
    expect(z.treeifyError(schema.safeParse(written).error ?? new z.ZodError([]))).toEqual({ errors: [] })
    expect(schema.safeParse(JSON.parse(JSON.stringify(sarifReport([])))).success).toBe(true)
  })

  test('the schema can say no', () => {
    expect(schema.safeParse({ ...log, version: '2.1' }).success).toBe(false)
    expect(schema.safeParse({ ...log, runs: [{ ...run, results: [{ ruleId: 'a' }] }] }).success).toBe(false)
    expect(schema.safeParse({ ...log, runs: [{ ...run, results: [{ message: { text: 'a' }, level: 'bad' }] }] }).success).toBe(false)
  })

  test('every result names its rule, and every rule has a result', () => {
    const rules = run?.tool.driver.rules ?? []
    expect(results.length).toBeGreaterThan(2)
    for (const { ruleId, ruleIndex } of results) expect(rules[ruleIndex ?? -1]?.id).toBe(ruleId)
    expect(rules.filter(({ id }) => !results.some(({ ruleId }) => ruleId === id))).toEqual([])
  })
})

describe('a finding', () => {
  const wrong = results.find(({ ruleId }) => ruleId === 'total-mismatch')

  test('stands in its line and columns, in a file whose name is a URI', () => {
    // `(13)` in line 10: six spaces and `Rnd 2: 2 sc in each st around. ` before it, 37 signs.
    expect(wrong?.locations?.[0]?.physicalLocation).toEqual({ artifactLocation: { uri: 'patterns/limpet%20mat.md' }, region: { startLine: 10, startColumn: 38, endLine: 10, endColumn: 42 } })
    expect(new URL(wrong?.locations?.[0]?.physicalLocation?.artifactLocation?.uri ?? '', 'file:///srv/').pathname).toBe('/srv/patterns/limpet%20mat.md')
    expect(wrong?.level).toBe('error')
  })

  test('has the change that was tried as a fix, which makes the pattern come out', () => {
    const replacement = wrong?.fixes?.[0]?.artifactChanges[0]?.replacements[0]
    const { startLine = 0, startColumn = 0, endColumn = 0 } = replacement?.deletedRegion ?? {}
    const lines = text.split('\n')
    const line = lines[startLine - 1] ?? ''
    lines[startLine - 1] = line.slice(0, startColumn - 1) + (replacement?.insertedContent?.text ?? '') + line.slice(endColumn - 1)
    expect(lines[startLine - 1]).toContain('Rnd 2: 2 sc in each st around. (12)')
    expect(checkPattern({ path: 'a.md', text: lines.join('\n') }).diagnostics.map(({ code }) => code)).not.toContain('total-mismatch')
  })

  test('that the designer accepts is suppressed in the source, with the reason', () => {
    const suppressed = results.filter(({ suppressions }) => suppressions !== undefined)
    expect(suppressed.map(({ ruleId, suppressions }) => [ruleId, suppressions])).toEqual([['count-missing', [{ kind: 'inSource', status: 'accepted', justification: 'it is drawn' }]]])
  })

  test('says what it has to do with, and for which sizes it holds', () => {
    const source = { path: '/tmp/skiff.md', text: 'Row 1: sc.\nRow 2: dc.' }
    const two = { ...finding(source, 'Row 2', 'row-overruns', { sizes: ['S', 'L'], note: 'a fact' }), secondary: [{ span: { start: 0, end: 5 }, text: 'row 1 makes 1' }] }
    const [result] = sarifReport([madeUpChecked(source, [], [two])]).runs[0]?.results ?? []
    expect(result?.message.text).toBe('about Row 2 (in S, L)\na fact')
    expect(result?.relatedLocations?.[0]).toMatchObject({ message: { text: 'row 1 makes 1' }, physicalLocation: { artifactLocation: { uri: 'file:///tmp/skiff.md' }, region: { startLine: 1, startColumn: 1, endColumn: 6 } } })
  })
})
