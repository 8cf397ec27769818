import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { FileBytes } from '../../../src/build/read-files.ts'
import { workPattern } from '../../../src/build/work-pattern.ts'
import { Hindrance, threadsFor, workPatterns } from '../../../src/build/work-patterns.ts'

// On threads or not, what comes of a pattern must be the same: what is compared is worked here.

const mat = readFileSync('tests/site/patterns/cleat-pair.md', 'utf8')
const shown = { colour: false, width: 100 }
const files = Array.from({ length: 40 }, (_, at): FileBytes => ({ path: `patterns/mat-${at}.md`, bytes: new TextEncoder().encode(mat.replace('title: Cleat Pair', `title: Mat ${at}`)) }))

test('many patterns worked on threads come out as here, in the order of their files', async () => {
  expect(threadsFor(files.length)).toBe(0)
  const worked = await workPatterns(files, shown, 2)
  expect(worked.map(({ file }) => file.path)).toEqual(files.map(({ path }) => path))
  for (const at of [0, 17, 39]) expect(worked[at]).toEqual(workPattern(files[at]!, shown))
})

test.each([0, 2])('one that cannot be published ends it with its report alone, on %i threads', async (threads) => {
  // Round 4 works 18 stitches in threes, each of them 4 stitches: 24. Worked by hand.
  const wrong = { path: 'patterns/wrong.md', bytes: new TextEncoder().encode(mat.replace('around, join with sl st in first sc. (24)', 'around, join with sl st in first sc. (25)')) }
  const error = await workPatterns([...files.slice(0, 20), wrong], shown, threads).then(() => undefined, (thrown: unknown) => thrown)
  expect(error).toBeInstanceOf(Hindrance)
  expect((error as Error).message).toMatch(/^error\[total-mismatch\][\s\S]*patterns\/wrong\.md:\d+:\d+/)
  expect((error as Error).message).not.toContain('patterns/mat-')
})
