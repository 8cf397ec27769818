import { expect, test } from 'vitest'
import { linkedPapers, papersOf } from '../../src/components/paper-path.ts'

const hat = { slug: 'bollard-hat', version: '1.0.0', sizes: ['Baby', 'Adult Ä/L', '大', 'adult ä l'] }

test('every pattern has three papers, each with the version in its name', () => {
  expect(papersOf({ slug: 'float', version: '1.2 (draft)', sizes: [] }).map(({ path }) => path)).toEqual([
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
