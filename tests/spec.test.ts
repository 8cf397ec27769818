import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { casesOf, runMarkdown } from './support/markdown-spec.ts'

/** Forms in which rows are written, numbered in the order of the spec pages: starts, row ends, plain working, …, dialects, prose. */
const lastForm = 267

const files = readdirSync('tests/spec').filter((file) => file.endsWith('.md')).map((file) => `tests/spec/${file}`).sort()

const counts = files.map((file) => ({ file, cases: runMarkdown(file) }))

/** Form numbers that a heading speaks of: `Form 27: …`, `Form 27 again: …`, `Forms 196 to 198: …`. */
export function formsOf(heading: string): number[] {
  const found = /^Forms? (\d+)(?:(?: to |-)(\d+))?(?: again)?\b/.exec(heading)
  if (!found) return []
  const first = Number(found[1])
  const last = Number(found[2] ?? first)
  return Array.from({ length: last - first + 1 }, (_, step) => first + step)
}

describe('the spec pages', () => {
  test('there are pages, and each has cases', () => {
    expect(files.length).toBeGreaterThan(0)
    expect(counts.filter(({ cases }) => cases === 0)).toEqual([])
  })

  test('no two headings with cases are the same', () => {
    const headings = files.flatMap((file) => [...new Set(casesOf(file).map(({ name }) => name))].map((name) => ({ file, name })))
    const twice = headings.filter(({ name }, index) => headings.findIndex((other) => other.name === name) !== index)
    expect(headings.length).toBeGreaterThan(0)
    expect(twice).toEqual([])
  })

  test(`every form from 1 to ${lastForm} has at least two cases`, () => {
    const worked = files.flatMap((file) => casesOf(file).flatMap(({ name }) => formsOf(name)))
    const all = Array.from({ length: lastForm }, (_, index) => index + 1)
    expect(all.filter((form) => worked.filter((other) => other === form).length < 2)).toEqual([])
  })

  test('form numbers are read out of headings', () => {
    expect(formsOf('Form 27 again: a counted chain')).toEqual([27])
    expect(formsOf('Forms 196 to 198: totals')).toEqual([196, 197, 198])
    expect(formsOf('A total that is one short')).toEqual([])
  })
})
