import { spawn, spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { Log } from 'sarif'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import type { JsonReport } from '../../src/build/json-report.ts'

// The command as a person or another program runs it. The oracle is its published contract: what goes to which stream,
// and how it ends (0 no error, 1 some error, 2 called wrongly or a file that cannot be read).

const program = resolve('src/build/check.ts')
let folder = ''

// The six spaces of the block and the 31 columns of `Rnd 2: 2 sc in each st around. ` stand before the total.
const totalColumn = 38

const right = `---
title: Pebble Coaster
terms: US
pieces:
  - name: Coaster
    rows: |
      Rnd 1: 6 sc in magic ring. (6)
      Rnd 2: 2 sc in each st around. (12)
---
`

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'check-'))
  mkdirSync(join(folder, 'patterns'))
  mkdirSync(join(folder, 'empty', 'patterns'), { recursive: true })
  writeFileSync(join(folder, 'right.md'), right)
  writeFileSync(join(folder, 'wrong.md'), right.replace('(12)', '(13)'))
  writeFileSync(join(folder, 'patterns', 'coaster.md'), right)
  writeFileSync(join(folder, 'patterns', '.#coaster.md'), 'an editor is at work')
  writeFileSync(join(folder, 'patterns', 'list.txt'), 'not a pattern')
  // ISO 8859-1: é is the one byte E9, which UTF-8 never has alone.
  writeFileSync(join(folder, 'latin.md'), Buffer.from(right.replace('Pebble', 'Caf\u00E9'), 'latin1'))
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

function check(words: readonly string[], { cwd = folder, env = {} }: { cwd?: string; env?: Record<string, string> } = {}) {
  const { NO_COLOR, FORCE_COLOR, INIT_CWD, ...rest } = process.env
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], { cwd, encoding: 'utf8', env: { ...rest, ...env } })
  return { status, stdout, stderr }
}

function json(words: readonly string[]) {
  const { status, stdout } = check(['--json', ...words])
  return { status, report: JSON.parse(stdout) as JsonReport }
}

describe('without an error', () => {
  test('it ends with 0 and one calm line', () => {
    expect(check(['right.md'])).toEqual({ status: 0, stdout: expect.stringMatching(/^right\.md: 1 piece, 2 rows: all add up/m), stderr: '' })
  })

  test('without a file it checks the patterns of the working folder, and only those', () => {
    expect(json([])).toMatchObject({ status: 0, report: { files: [{ path: 'patterns/coaster.md', errors: 0 }] } })
  })
})

describe('with an error', () => {
  test('it ends with 1 and shows the row', () => {
    const { status, stdout, stderr } = check(['wrong.md'])
    expect({ status, stderr }).toEqual({ status: 1, stderr: '' })
    expect(stdout).toMatch(/^error\[total-mismatch\]: /)
    expect(stdout).toContain(`\n --> wrong.md:8:${totalColumn}\n`)
    expect(stdout).toContain('\n8 |       Rnd 2: 2 sc in each st around. (13)\n')
  })

  test('the short form is one line a finding', () => {
    expect(check(['--short', 'wrong.md']).stdout.split('\n')[0]).toMatch(/^wrong\.md:8:38: error\[total-mismatch\]: [^\n]*$/)
  })

  test('one wrong file among right ones is enough', () => {
    const { status, report } = json(['right.md', 'wrong.md', join(folder, 'right.md')])
    expect(status).toBe(1)
    expect(report.files.map(({ path, errors }) => [path, errors])).toEqual([['right.md', 0], ['wrong.md', 1], [join(folder, 'right.md'), 0]])
  })

  test('the JSON document has the row, the place and the total as it stands', () => {
    const { report } = json(['wrong.md'])
    expect(report.files[0]?.pieces[0]).toMatchObject({ name: 'Coaster', size: null })
    // Two in each of six are twelve.
    expect(report.files[0]?.pieces[0]?.rows[1]).toMatchObject({ label: 'Rnd 2', line: 8, offers: 6, worksOver: 6, leaves: 0, makes: 12, says: 13, verdict: 'does-not' })
    expect(report.files[0]?.diagnostics.find(({ severity }) => severity === 'error')).toMatchObject({
      code: 'total-mismatch', size: null, line: 8, column: totalColumn, endLine: 8, endColumn: totalColumn + '(13)'.length,
    })
  })

  test('a file that is not UTF-8 is a finding about that file', () => {
    const { status, report } = json(['latin.md', 'right.md'])
    expect(status).toBe(1)
    expect(report.files[0]).toMatchObject({ path: 'latin.md', errors: 1, warnings: 0, pieces: [], diagnostics: [{ code: 'file-unreadable', line: 2, column: 11 }] })
    expect(report.files[1]?.errors).toBe(0)
  })
})

describe('what cannot be done ends with 2, says why on the error stream and prints nothing else', () => {
  test.each([
    ['a file that is not there', ['nowhere.md'], 'nowhere.md'],
    ['a file that is not there, among right ones', ['right.md', 'nowhere.md', 'wrong.md'], 'nowhere.md'],
    ['the same as JSON', ['--json', 'right.md', 'nowhere.md'], 'nowhere.md'],
    ['a folder', ['patterns'], 'patterns'],
    ['a path through a file', ['right.md/deeper.md'], 'right.md/deeper.md'],
    ['a device', ['/dev/zero'], '/dev/zero'],
    ['an option that there is not', ['--jsn', 'right.md'], '--jsn'],
    ['two forms at once', ['--json', '--short', 'right.md'], '--short'],
    ['a form that is not for a person, watching', ['--watch', '--sarif', 'right.md'], '--watch'],
    ['an empty name', [''], 'name'],
  ])('%s', (_, words, named) => {
    const { status, stdout, stderr } = check(words)
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr).toContain(named)
    expect(stderr).not.toMatch(/^\s+at /m)
  })

  test('no file and no patterns, or a folder of patterns without any', () => {
    for (const cwd of [join(folder, 'empty'), join(folder, 'patterns')]) {
      expect(check([], { cwd })).toMatchObject({ status: 2, stdout: '', stderr: expect.stringContaining('patterns/') })
    }
  })
})

test('a file that begins with a dash can be named behind --', () => {
  writeFileSync(join(folder, '--odd.md'), right)
  expect(json(['--', '--odd.md'])).toMatchObject({ status: 0, report: { files: [{ path: '--odd.md' }] } })
})

test('help is asked for and given', () => {
  expect(check(['--help'])).toMatchObject({ status: 0, stderr: '', stdout: expect.stringContaining('--json') })
})

describe('colour', () => {
  // ECMA-48: a control sequence begins with ESC [.
  const escape = '\u001B['

  test('is not in what is not a terminal, unless it is forced', () => {
    expect(check(['wrong.md']).stdout).not.toContain(escape)
    expect(check(['wrong.md'], { env: { FORCE_COLOR: '1' } }).stdout).toContain(escape)
    expect(check(['wrong.md'], { env: { FORCE_COLOR: '0' } }).stdout).not.toContain(escape)
    expect(check(['wrong.md'], { env: { NO_COLOR: '1' } }).stdout).not.toContain(escape)
  })

  test('is never in JSON', () => {
    expect(check(['--json', 'wrong.md'], { env: { FORCE_COLOR: '1' } }).stdout).not.toContain(escape)
  })
})

test('as an npm script it prints the document and nothing else, from a file anywhere', () => {
  const { status, stdout } = spawnSync('npm', ['run', '--silent', 'check', '--', '--json', join(folder, 'wrong.md')], { encoding: 'utf8' })
  expect(status).toBe(1)
  expect((JSON.parse(stdout) as JsonReport).files[0]?.path).toBe(join(folder, 'wrong.md'))
})

test('as an npm script it finds a file from where the person stands', () => {
  const { status } = spawnSync('npm', ['run', '--silent', '--prefix', process.cwd(), 'check', '--', 'right.md'], { cwd: folder, encoding: 'utf8' })
  expect(status).toBe(0)
})

test('a reader that has seen enough does not crash it', async () => {
  const many = Array.from({ length: 400 }, () => 'wrong.md')
  const child = spawn(process.execPath, [program, ...many], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] })
  let trouble = ''
  child.stderr.on('data', (text: Buffer) => (trouble += text.toString()))
  child.stdout.once('data', () => child.stdout.destroy())
  const status = await new Promise((ended) => child.on('close', ended))
  expect({ status, trouble }).toEqual({ status: 1, trouble: '' })
})

test('as SARIF it is one document, with the findings that the report has', () => {
  const { status, stdout } = check(['--sarif', 'right.md', 'wrong.md'])
  const log = JSON.parse(stdout) as Log
  expect({ status, version: log.version, files: log.runs[0]?.artifacts?.map(({ location }) => location?.uri) }).toEqual({ status: 1, version: '2.1.0', files: ['right.md', 'wrong.md'] })
  expect(log.runs[0]?.results?.filter(({ level }) => level === 'error').map(({ ruleId }) => ruleId)).toEqual(['total-mismatch'])
})

test('what the designer accepts is no warning any more, and is named with the reason', () => {
  const silent = right.replace('around. (12)', 'around.')
  writeFileSync(join(folder, 'silent.md'), silent)
  writeFileSync(join(folder, 'accepted.md'), silent.replace('pieces:', 'accepted:\n  - { code: count-missing, row: Rnd 2, why: it is drawn }\npieces:'))
  expect(check(['--short', 'silent.md']).stdout).toContain('warning[count-missing]')
  const { stdout } = check(['accepted.md'])
  expect(stdout).not.toContain('warning[count-missing]')
  expect(stdout).toContain('\naccepted by the designer: accepted.md:10:7: count-missing: it is drawn\n')
  expect(stdout).toMatch(/^accepted\.md: .*, 1 accepted$/m)
})

test('watching, it shows what a save changed, and ends when it is told to', async () => {
  const file = join(folder, 'watched.md')
  writeFileSync(file, right.replace('(12)', '(13)'))
  const child = spawn(process.execPath, [program, '--watch', 'watched.md'], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] })
  let seen = ''
  child.stdout.on('data', (text: Buffer) => (seen += text.toString()))
  child.stderr.on('data', (text: Buffer) => (seen += text.toString()))
  const until = (words: RegExp) => vi.waitFor(() => expect(seen).toMatch(words), { timeout: 20_000, interval: 50 })
  await until(/makes 12 stitches, but its total says 13[^]*watching/)
  seen = ''
  // As many editors save: another file is put in the place of the one that was there.
  writeFileSync(`${file}.part`, right)
  renameSync(`${file}.part`, file)
  await until(/all add up/)
  expect(seen).toMatch(/^\nmended: error\[total-mismatch\]: round 2 makes 12 stitches, but its total says 13\nwatched\.md: 1 piece, 2 rows: all add up/)
  seen = ''
  writeFileSync(file, right.replace('(6)', '(7)'))
  await until(/round 1 makes 6 stitches, but its total says 7[^]*1 error/)
  child.kill('SIGINT')
  expect(await new Promise((ended) => child.on('close', ended))).toBe(1)
})

test('a pattern may come through a pipe', () => {
  const { status, stdout } = spawnSync('sh', ['-c', `cat right.md | "${process.execPath}" "${program}" --json /dev/stdin`], { cwd: folder, encoding: 'utf8' })
  expect(status).toBe(0)
  expect((JSON.parse(stdout) as JsonReport).files[0]?.path).toBe('/dev/stdin')
})

test('what is printed for the same file is the same', () => {
  expect(check(['--json', 'wrong.md']).stdout).toBe(check(['--json', 'wrong.md']).stdout)
  expect(readFileSync(join(folder, 'wrong.md'), 'utf8')).toContain('(13)')
})
