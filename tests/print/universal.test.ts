import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { draw } from '../../src/print/draw.ts'
import { layOut } from '../../src/print/layout.ts'
import { printChecklist, printLargePrint, printPattern } from '../../src/print/print-pattern.ts'
import { isTag, type Tag } from '../../src/print/sheet/placed.ts'
import { fromCollection, inOtherTerms, inSize } from './booklets/collection.ts'
import { hostileTitles, titled } from './booklets/hostile.ts'
import { prose } from './booklets/prose.ts'
import { pageObjects, readPdfObjects } from './pdf-objects.ts'
import { failuresOf, universalFailures } from './universal.ts'

const patterns = readdirSync('patterns').map((name) => name.replace(/\.md$/, ''))

describe.each(patterns)('every edition of %s keeps to PDF/UA-1 as far as a machine can tell', (name) => {
  test('the pattern', async () => {
    expect(universalFailures(await printPattern(fromCollection(name)))).toEqual([])
  })

  test('the pattern in the other terms', async () => {
    expect(universalFailures(await printPattern(inOtherTerms(name)))).toEqual([])
  })

  test('the checklist', async () => {
    expect(universalFailures(await printChecklist(fromCollection(name)))).toEqual([])
  })

  test('large print', async () => {
    expect(universalFailures(await printLargePrint(inSize(name, 0)))).toEqual([])
  })
})

test.each(Object.entries({ ...hostileTitles }))('with the title %s', async (_, title) => {
  expect(universalFailures(await printPattern(titled(title)))).toEqual([])
})

test('with prose of every kind', async () => {
  expect(universalFailures(await printPattern(prose))).toEqual([])
})

// A check that cannot fail checks nothing: one thing in the file is spoilt, byte for byte.
describe('what is wrong is found', () => {
  const spoilt = async (from: string, to: string) => universalFailures(Buffer.from(Buffer.from(await printPattern(prose)).toString('latin1').replaceAll(from, to), 'latin1'))

  test.each([
    ['06-002', '<pdfuaid:part>1<', '<pdfuaid:part>2<'], ['11-006', '/Lang (', '/Lung ('],
  ])('%s', async (condition, from, to) => {
    expect((await spoilt(from, to)).some((failure) => failure.startsWith(condition))).toBe(true)
  })

  test('28-008', async () => {
    const file = readPdfObjects(await printPattern(prose))
    for (const { id, dict } of pageObjects(file)) file.objects.set(id, { dict: new Map([...dict.dict, ['Tabs', '/R']]) })
    expect(failuresOf(file).some((failure) => failure.startsWith('28-008'))).toBe(true)
  })

  const described = { title: 'Spoilt', author: '', subject: '', keywords: '', date: '2026-11-25', language: 'en-US' as const }
  /** The float with its structure changed before it is drawn. */
  const changed = (change: (tag: Tag) => Tag) => {
    const whole = (tag: Tag): Tag => change({ ...tag, children: tag.children.map((child) => (isTag(child) ? whole(child) : child)) })
    const laidOut = layOut(fromCollection('float'))
    return universalFailures(draw({ ...laidOut, root: whole(laidOut.root) }, described))
  }

  test.each<[string, (tag: Tag) => Tag]>([
    ['13-004', (tag) => (tag.type === 'Figure' ? { ...tag, alt: ' ' } : tag)],
    ['14-002', (tag) => (tag.type === 'H1' ? { ...tag, type: 'H2' } : tag)],
    ['14-003', (tag) => (tag.type === 'H2' ? { ...tag, type: 'H3' } : tag)],
    ['09-005', (tag) => (tag.type === 'TBody' ? { ...tag, type: 'P' } : tag)],
    ['15-005', (tag) => (tag.type === 'TR' ? { ...tag, children: tag.children.slice(0, tag.children.length - (tag.children.length % 3)) } : tag)],
    ['28-010', (tag) => (tag.type === 'Form' ? { ...tag, type: 'Span' } : tag)],
  ])('%s', (condition, change) => {
    expect(changed((tag) => tag)).toEqual([])
    expect(changed(change).some((failure) => failure.startsWith(condition))).toBe(true)
  })
})
