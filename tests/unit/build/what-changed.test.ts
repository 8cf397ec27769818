import { expect, test } from 'vitest'
import { changedText } from '../../../src/build/watch-patterns.ts'
import { whatChanged } from '../../../src/build/what-changed.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// What a person must see after a save follows from the two versions of the file, which the test itself writes.

const lines = ['---', 'title: Mat', 'terms: US', 'pieces:', '  - name: Mat', '    rows: |', '      Rnd 1: 6 sc in magic ring. (6)', '      Rnd 2: 2 sc in each st around. (13)', '      Rnd 3: Sc in each st around. (12)', '      Rnd 4: 2 sc in each st around. (25)', '---', '']
const check = (edit: (text: string) => string) => checkPattern({ path: 'mat.md', text: edit(lines.join('\n')) })
const before = check((text) => text)
const codes = (found: ReturnType<typeof whatChanged>) => ({ fresh: found.fresh.map(({ message }) => message), gone: found.gone.map(({ message }) => message) })

test('the same file has nothing new and nothing gone', () => {
  expect(codes(whatChanged(before, before))).toEqual({ fresh: [], gone: [] })
})

test('a finding that only moved to another line is not new', () => {
  expect(codes(whatChanged(before, check((text) => text.replace('terms:', '# two\n# lines more\nterms:'))))).toEqual({ fresh: [], gone: [] })
})

test('a total mended is gone, and the other finding is as it was', () => {
  expect(codes(whatChanged(before, check((text) => text.replace('(13)', '(12)'))))).toEqual({ fresh: [], gone: ['round 2 makes 12 stitches, but its total says 13'] })
})

test('a total made wrong in another way is one gone and one new', () => {
  expect(codes(whatChanged(before, check((text) => text.replace('(25)', '(23)'))))).toEqual({
    fresh: ['round 4 makes 24 stitches, but its total says 23'], gone: ['round 4 makes 24 stitches, but its total says 25'],
  })
})

test('of a file that is new everything is', () => {
  expect(whatChanged(undefined, before).fresh).toHaveLength(before.diagnostics.length)
})

test('what is printed: what is mended in a line, what is new in full, how it comes out', () => {
  const text = changedText(before, check((old) => old.replace('(13)', '(12)').replace('(25)', '(23)')), 'report', {})
  expect(text.split('\n').filter((line) => line.startsWith('mended'))).toEqual([
    'mended: error[total-mismatch]: round 2 makes 12 stitches, but its total says 13',
    'mended: error[total-mismatch]: round 4 makes 24 stitches, but its total says 25',
  ])
  expect(text).toContain('error[total-mismatch]: round 4 makes 24 stitches, but its total says 23\n  --> mat.md:10:')
  expect(text).toMatch(/\nmat\.md: 1 piece, 4 rows: 1 row does not add up, 1 error, 1 warning\n$/)
})
