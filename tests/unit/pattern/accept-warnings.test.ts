import { describe, expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { textOf } from '../../../src/text/source.ts'

// What is a warning, and where it stands, is told by the same pattern without an acceptance; what an acceptance must do is its definition
// in the front-matter's schema: it takes just the warning of that code in that row, of that piece.

function pattern(accepted: readonly string[], sizes = ''): ReturnType<typeof checkPattern> {
  const text = ['---', 'title: Limpet mat', 'terms: US', ...(sizes === '' ? [] : [sizes]),
    ...(accepted.length > 0 ? ['accepted:', ...accepted.map((entry) => `  - { ${entry} }`)] : []),
    'pieces:',
    ...['Mat', 'Lid'].flatMap((name) => [`  - name: ${name}`, '    rows: |', '      Rnd 1: 6 sc in magic ring. (6)', '      Rnd 2: 2 sc in each st around.', '      Rnds 3-4: Sc in each st around. (12)']),
    '---', ''].join('\n')
  return checkPattern({ path: 'mat.md', text })
}

const found = ({ diagnostics }: ReturnType<typeof checkPattern>): readonly string[] => diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')
const accepted = (checked: ReturnType<typeof checkPattern>): readonly string[] => (checked.accepted ?? []).map(({ diagnostic, why }) => `${diagnostic.code} ${checked.source.text.slice(0, diagnostic.primary.span.start).includes('name: Lid') ? 'Lid' : 'Mat'}: ${why}`)

describe('an acceptance', () => {
  test('without one, both pieces have the warning', () => {
    expect(found(pattern([]))).toEqual(['count-missing', 'count-missing'])
    expect(pattern([]).accepted ?? []).toEqual([])
  })

  test.each(['Rnd 2', 'rnd 2', 'Round 2', '2'])('takes the warning of its piece, the row called %s', (row) => {
    const checked = pattern([`code: count-missing, row: ${row}, piece: lid, why: it is drawn`])
    expect(found(checked)).toEqual(['count-missing'])
    expect(accepted(checked)).toEqual(['count-missing Lid: it is drawn'])
  })

  test.each([
    ['in two pieces at once', 'code: count-missing, row: Rnd 2, why: so', ['acceptance-unmatched', 'count-missing', 'count-missing']],
    ['of another row', 'code: count-missing, row: Rnd 12, piece: Mat, why: so', ['acceptance-unmatched', 'count-missing', 'count-missing']],
    ['without its row', 'code: count-missing, why: so', ['acceptance-unmatched', 'count-missing', 'count-missing']],
    ['of a code that is none', 'code: count-mising, row: Rnd 2, why: so', ['acceptance-unmatched', 'count-missing', 'count-missing']],
    ['of an error', 'code: row-overruns, row: Rnd 2, why: so', ['acceptance-not-possible', 'count-missing', 'count-missing']],
    ['of what a published pattern needs', 'code: key-missing-to-publish, why: so', ['acceptance-not-possible', 'count-missing', 'count-missing']],
    ['of an acceptance', 'code: acceptance-unmatched, why: so', ['acceptance-not-possible', 'count-missing', 'count-missing']],
  ])('%s takes none and is a finding itself', (_, entry, codes) => {
    const checked = pattern([entry])
    expect(found(checked)).toEqual(codes)
    expect(accepted(checked)).toEqual([])
    const said = checked.diagnostics.find(({ code }) => code.startsWith('acceptance'))!
    expect(textOf(checked.source, said.primary.span)).toBe(/code: ([\w-]+)/.exec(entry)![1])
  })

  test('a code one letter off is asked after', () => {
    expect(pattern(['code: count-mising, row: Rnd 2, piece: Mat, why: so']).diagnostics.find(({ code }) => code === 'acceptance-unmatched')?.hint?.text).toContain('count-missing')
  })

  test('two of one code, each in its piece', () => {
    const checked = pattern(['code: count-missing, row: Rnd 2, piece: Mat, why: first', 'code: count-missing, row: Rnd 2, piece: Lid, why: second'])
    expect(found(checked)).toEqual([])
    expect(accepted(checked)).toEqual(['count-missing Mat: first', 'count-missing Lid: second'])
  })

  test('without a reason it is not one: the front-matter lacks a key', () => {
    expect(found(pattern(['code: count-missing, row: Rnd 2']))).toContain('key-missing')
  })
})

test('warnings outside the rows are accepted without a row', () => {
  const text = ['---', 'title: Limpet mat', 'terms: US', 'accepted:', '  - { code: yarn-not-used, why: it is for the tag }', 'materials:', '  yarns:', '    - { letter: A }', '    - { letter: B }',
    'pieces:', '  - name: Mat', '    rows: |', '      Rnd 1: With A, 6 sc in magic ring. (6)', '---', ''].join('\n')
  const checked = checkPattern({ path: 'mat.md', text })
  expect((checked.accepted ?? []).map(({ diagnostic: { code }, why }) => `${code}: ${why}`)).toEqual(['yarn-not-used: it is for the tag'])
  expect(found(checked)).not.toContain('yarn-not-used')
})
