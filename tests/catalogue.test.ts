import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkBytes } from '../src/build/check-bytes.ts'
import { codes } from '../src/diagnostics/codes.ts'
import { reportText } from '../src/diagnostics/report.ts'
import { escapedBytes } from './support/escaped-bytes.ts'
import { casesOf } from './support/markdown-spec.ts'
import { writeReport } from './support/write-report.ts'

/** What is missing, left over or ill-named between the codes and the pages about them, in words. */
function differences(names: readonly string[], pages: readonly { readonly name: string; readonly code: string; readonly fires: readonly string[] }[]): string[] {
  if (names.length === 0 || pages.length === 0) return ['there are no codes or no pages']
  return [
    ...names.filter((name) => !pages.some((page) => page.name === name)).map((name) => `${name} has no page`),
    ...names.filter((name) => !/^[a-z]+(-[a-z]+)*$/.test(name)).map((name) => `${name} is not in kebab-case`),
    ...names.filter((name) => /(^|-)(must|should|invalid|bad|illegal|error|warning)(-|$)/.test(name)).map((name) => `${name} does not name the bad thing`),
    ...pages.filter(({ name }) => !names.includes(name)).map(({ name }) => `the page ${name} is about no code`),
    ...pages.filter(({ name, code }) => name !== code).map(({ name, code }) => `the page ${name} calls itself ${code}`),
    ...pages.filter(({ name, fires }) => !fires.includes(name)).map(({ name }) => `${name} does not fire in its page`),
  ]
}

const unreadable = 'src/help/file-unreadable.md'

const pages = readdirSync('src/help').filter((file) => file.endsWith('.md')).map((file) => {
  const text = readFileSync(`src/help/${file}`, 'utf8')
  return {
    name: file.slice(0, -'.md'.length),
    code: /^---\ncode: (\S+)\n---\n/.exec(text)?.[1] ?? 'nothing',
    text,
    // What fires is compared with the carets by docs.test.ts; bytes have no carets and are worked below.
    fires: [
      ...casesOf(`src/help/${file}`).flatMap((one) => (one.kind === 'fence' ? one.expected.map(({ code }) => code) : [])),
      ...checkedBytes(text).diagnostics.map(({ code }) => code),
    ],
  }
})

function checkedBytes(text: string) {
  const fence = /^```bytes\n([\s\S]*?)\n```$/m.exec(text)?.[1]
  return fence === undefined ? { source: { path: '', text: '' }, diagnostics: [] } : checkBytes({ path: 'pattern.md', bytes: escapedBytes(fence) })
}

describe('the catalogue', () => {
  test('each code has its page, each page its code, and fires there', () => {
    expect(differences(Object.keys(codes), pages)).toEqual([])
  })

  test('each page shows one whole report, and a way that comes out', () => {
    expect(pages.length).toBeGreaterThan(0)
    for (const { name, text } of pages) {
      expect([...text.matchAll(/^```report$/gm)], name).toHaveLength(1)
      const clean = casesOf(`src/help/${name}.md`).filter((one) => one.kind === 'fence' && one.expected.length === 0)
      expect(clean.length, name).toBeGreaterThan(0)
    }
  })

  test('severities are two and titles are a plain sentence', () => {
    for (const [name, { severity, title }] of Object.entries(codes)) {
      expect(['error', 'warning'], name).toContain(severity)
      expect(title, name).toMatch(/^[A-Z:][^.!]*[^.!\s]$/)
    }
  })

  test('the report on bytes that are no text is what is printed', () => {
    const text = readFileSync(unreadable, 'utf8')
    const { diagnostics, source } = checkedBytes(text)
    const printed = reportText(diagnostics, source)
    const opening = text.slice(0, text.indexOf('```report')).split('\n').length
    if (process.env['UPDATE_REPORTS'] === '1') writeReport(unreadable, opening, printed)
    expect(readFileSync(unreadable, 'utf8')).toContain(`\`\`\`report\n${printed.trimEnd()}\n\`\`\`\n`)
  })
})

describe('the catalogue can fail', () => {
  const page = { name: 'row-overruns', code: 'row-overruns', fires: ['row-overruns'] }

  test.each([
    ['no code at all', [], [page]],
    ['no page at all', ['row-overruns'], []],
    ['a code without a page', ['row-overruns', 'total-mismatch'], [page]],
    ['a page without a code', ['row-overruns'], [page, { ...page, name: 'total-wrong', code: 'total-wrong', fires: ['total-wrong'] }]],
    ['a page that calls itself otherwise', ['row-overruns'], [{ ...page, code: 'row-overrun' }]],
    ['a page in which the code does not fire', ['row-overruns'], [{ ...page, fires: ['total-mismatch'] }]],
    ['a code that names the cure', ['must-count'], [{ name: 'must-count', code: 'must-count', fires: ['must-count'] }]],
    ['a code in other letters', ['badTotal'], [{ name: 'badTotal', code: 'badTotal', fires: ['badTotal'] }]],
  ])('%s', (_, names, about) => {
    expect(differences(names, about)).toHaveLength(1)
  })
})
