import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { coverageTable } from './support/coverage-of-forms.ts'

const guide = 'DEVELOPERS.md'
const pages = readdirSync('tests/spec').filter((file) => /^forms-[a-z]\.md$/.test(file)).sort()
  .map((file) => ({ path: `tests/spec/${file}`, text: readFileSync(`tests/spec/${file}`, 'utf8') }))

/** The first table under the heading about coverage; its lines. */
const section = /(?<=^## Coverage of the row language\n[^|]*)(?:\|.*\|\n)+/m

describe('what the row language covers', () => {
  test('has fifteen groups, A to O', () => {
    expect(pages.map(({ path }) => path.at(-4)!.toUpperCase()).join('')).toBe('ABCDEFGHIJKLMNO')
  })

  test.runIf(existsSync(guide))('stands in DEVELOPERS.md as the spec pages have it', () => {
    const text = readFileSync(guide, 'utf8')
    const table = coverageTable(pages)
    expect(section.test(text), 'the section has no table').toBe(true)
    if (process.env['UPDATE_REPORTS'] === '1') writeFileSync(guide, text.replace(section, () => `${table}\n`))
    expect(section.exec(readFileSync(guide, 'utf8'))?.[0]).toBe(`${table}\n`)
  })
})

describe('the table of coverage', () => {
  const fence = (...rows: readonly string[]): string => ['```rows last=6', ...rows, '```', ''].join('\n')
  const page = (...parts: readonly string[]) => ({ path: 'tests/spec/forms-q.md', text: parts.join('\n') })

  test('counts forms and cases, and tells apart what comes out, what has a slip and what is not counted', () => {
    const made = page('# Group Q: made up', '', '## Form 3: plain', '', fence('2: ch 1, turn, 6 sc. (6)'), '## Form 3 again: wrong', '',
      fence('2: ch 1, turn, 6 sc. (7)', '                     ^^^ total-mismatch'), '## Forms 4 to 5: to taste', '', fence('2: sc to taste.', '   ^^^^^^^^^^^ row-not-checked'))
    expect(coverageTable([made]).split('\n').slice(2)).toEqual([
      '| Q: made up | 3 to 5 | 3 | 1 | 1 | 4 to taste |',
      '| All | 3 | 3 | 1 | 1 | 1 forms |',
    ])
  })

  test('refuses a page without a title or without forms', () => {
    expect(() => coverageTable([page('## Form 3: plain', '', fence('2: 6 sc. (6)'))])).toThrow('forms-q.md')
    expect(() => coverageTable([page('# Group Q: made up')])).toThrow('forms-q.md')
  })
})
