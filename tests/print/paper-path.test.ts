import { expect, test } from 'vitest'
import { linkedPapers, papersOf } from '../../src/components/paper-path.ts'
import { layOutChecklist } from '../../src/print/checklist/lay-out-checklist.ts'
import { layOut } from '../../src/print/layout.ts'
import { inSize } from './booklets/collection.ts'

const hat = { slug: 'bollard-hat', version: '1.0.0', terms: 'US' as const, sizes: ['Baby', 'Adult Ä/L', '大', 'adult ä l'] }

test('every pattern has three papers, each with the version in its name', () => {
  expect(papersOf({ slug: 'float', version: '1.2 (draft)', terms: 'US', sizes: [] }).map(({ path }) => path)).toEqual([
    'patterns/float/float-1.2-draft-.pdf', 'patterns/float/float-1.2-draft--checklist.pdf', 'patterns/float/float-1.2-draft--large-print.pdf',
  ])
})

test('a size gives its name to its file, or its number where the name is no file name or another\'s', () => {
  const papers = papersOf(hat)
  expect(papers.map(({ edition }) => edition)).toEqual(['pattern', 'checklist', 'large print', 'large print', 'large print', 'large print'])
  expect(papers.slice(2).map(({ path }) => path.replace('patterns/bollard-hat/bollard-hat-1.0.0-large-print-', ''))).toEqual(['baby.pdf', 'size-2.pdf', 'size-3.pdf', 'size-4.pdf'])
  expect(new Set(papers.map(({ path }) => path)).size).toBe(papers.length)
})

test('a line of the index leads to the sizes rather than to one of them', () => {
  expect(linkedPapers(hat).map(({ name, path }) => [name, path])).toEqual([
    ['Pattern', 'patterns/bollard-hat/bollard-hat-1.0.0.pdf'], ['Checklist', 'patterns/bollard-hat/bollard-hat-1.0.0-checklist.pdf'],
    ['Large print', 'patterns/bollard-hat/#on-paper'],
  ])
})

test('each paper stands in the other terms as well, and says so in its name', () => {
  const papers = papersOf({ slug: 'float', version: '1.0.0', terms: 'UK', alsoIn: 'US', sizes: [] })
  expect(papers.map(({ terms, path }) => [terms, path.replace('patterns/float/float-1.0.0', '')])).toEqual([
    ['UK', '.pdf'], ['UK', '-checklist.pdf'], ['UK', '-large-print.pdf'],
    ['US', '-us-terms.pdf'], ['US', '-checklist-us-terms.pdf'], ['US', '-large-print-us-terms.pdf'],
  ])
})

test('pattern and checklist of each size where the pattern asks for them', () => {
  const papers = papersOf({ slug: 'hat', version: '1.0.0', terms: 'US', sizes: ['S', 'M'], eachSize: true })
  expect(papers.map(({ edition, sizeName, path }) => [edition, sizeName, path.replace('patterns/hat/hat-1.0.0', '')])).toEqual([
    ['pattern', undefined, '.pdf'], ['checklist', undefined, '-checklist.pdf'], ['pattern', 'S', '-in-s.pdf'], ['pattern', 'M', '-in-m.pdf'],
    ['checklist', 'S', '-checklist-s.pdf'], ['checklist', 'M', '-checklist-m.pdf'], ['large print', 'S', '-large-print-s.pdf'], ['large print', 'M', '-large-print-m.pdf'],
  ])
})

test('a paper of one size says on every page which it is', () => {
  const adult = inSize('bollard-hat', 3)
  for (const laidOut of [layOut(adult), layOutChecklist(adult)]) {
    for (const { pagination } of laidOut.pages) expect(pagination.map((one) => (one.kind === 'text' ? one.text : '')).join('')).toMatch(/size Adult/i)
  }
  expect(adult.facts.find(({ label }) => label === 'Size')?.value).toMatch(/^Adult: /)
})
