import { readdirSync, readFileSync } from 'node:fs'
import stringWidth from 'string-width'
import { describe, expect, test } from 'vitest'
import { reportText } from '../../../src/diagnostics/report.ts'
import { shortened, wrapped } from '../../../src/diagnostics/wrap.ts'
import { terminalOptions } from '../../../src/build/terminal-options.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { readCases } from '../../support/read-cases.ts'

// What a person sees on a narrow screen. The oracle is the width itself, and that no word of a sentence is lost.

const checked = readdirSync('tests/patterns').filter((file) => file.endsWith('.md')).flatMap((file) =>
  readCases(readFileSync(`tests/patterns/${file}`, 'utf8'), file).flatMap((one) => (one.kind === 'fence' && one.expected.length > 0 ? [checkPattern(one.wrapped.source)] : [])))

describe.each([60, 80, 100])('on a screen of %d columns', (columns) => {
  const options = terminalOptions({ columns }, {})
  const reports = checked.map(({ diagnostics, source }) => reportText(diagnostics, source, options))

  test('no sentence, label or tally goes beyond it', () => {
    expect(reports.length).toBeGreaterThan(30)
    const beyond = reports.flatMap((report) => report.split('\n')).filter((line) => stringWidth(line) > columns)
    // A line of the writer's own is never broken: its labelled words and the signs under them stay whole.
    expect(beyond.filter((line) => !/^ *\d* \| /.test(line))).toEqual([])
    expect(beyond.filter((line) => !/^ *\d+ \| |^ *\| [ ^-]+$/.test(line))).toEqual([])
  })

  test('every sentence still stands there, word for word', () => {
    for (const [at, { diagnostics }] of checked.entries()) {
      const flat = reports[at]!.replace(/\n\s+/g, ' ')
      for (const { message, hint } of diagnostics) {
        expect(flat).toContain(message)
        if (hint) expect(flat).toContain(hint.text)
      }
    }
  })
})

test('without a terminal nothing is wrapped: programs and files want a finding on a line', () => {
  expect(terminalOptions({}, {})).toEqual({ colour: false })
})

test('colour is for a terminal that has it, and NO_COLOR and FORCE_COLOR decide', () => {
  // no-color.org: set and not empty, whatever the value. FORCE_COLOR is Node's own.
  const terminal = { isTTY: true, columns: 80, hasColors: () => true }
  expect(terminalOptions(terminal, {}).colour).toBe(true)
  expect(terminalOptions(terminal, { NO_COLOR: '1' }).colour).toBe(false)
  expect(terminalOptions(terminal, { NO_COLOR: '' }).colour).toBe(true)
  expect(terminalOptions({}, { FORCE_COLOR: '1' }).colour).toBe(true)
  expect(terminalOptions({ ...terminal, hasColors: () => false }, {}).colour).toBe(false)
})

test('words are parted at spaces, and a word too wide has a line of its own', () => {
  expect(wrapped('one two three', 7)).toEqual(['one two', 'three'])
  expect(wrapped('one two three', 9, 3)).toEqual(['one', 'two three'])
  expect(wrapped('a mountainous b', 5)).toEqual(['a', 'mountainous', 'b'])
  expect(wrapped('', 5)).toEqual([''])
})

test('what is shortened keeps both its ends and the width', () => {
  expect(shortened('sc in next st', 20)).toBe('sc in next st')
  const cut = shortened('[ch 2, skip next 2 sts, dc in next 3 sts] 6 times', 30)
  expect(stringWidth(cut)).toBeLessThanOrEqual(30)
  expect(cut).toMatch(/^\[ch 2.* … .*6 times$/)
})
