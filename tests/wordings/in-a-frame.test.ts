import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'

/** A pattern in which one row is left open, and the ways in which designers write that row. */
interface Frame {
  readonly name: string
  readonly pattern: string
  readonly wordings: readonly string[]
}

const folder = 'tests/wordings/frames'

/** A heading, a `yaml` fence with `{{}}`, and a list of wordings; ` // ` parts two rows. The number in `<>` is one that must be found when it is one more. */
function readFrames(file: string): readonly Frame[] {
  return readFileSync(`${folder}/${file}`, 'utf8').split(/^## /m).slice(1).map((section) => ({
    name: section.slice(0, section.indexOf('\n')),
    pattern: /^```yaml\n([\s\S]*?)\n```$/m.exec(section)?.[1] ?? '',
    wordings: [...section.matchAll(/^- (.+)$/gm)].map(([, words]) => words!),
  }))
}

function findings(pattern: string, row: string): readonly string[] {
  const text = `---\ntitle: A row in many words\n${pattern.replace('{{}}', () => row.replaceAll(' // ', '\n      '))}\n---\n`
  return checkOnce({ path: 'frame.md', text }).diagnostics.filter(({ code }) => code !== 'key-missing-to-publish').map(({ code, message }) => `${code} ${message}`)
}

// Common practice, no source: the words are those of designers, the numbers follow from the frame by hand.
describe.each(readdirSync(folder).flatMap(readFrames))('$name', ({ pattern, wordings }) => {
  test.each(wordings)('%s', (words) => {
    const numbers = [...words.matchAll(/<(\d+)>/g)]
    expect(numbers.length, 'a number that counts').toBeGreaterThan(0)
    expect(findings(pattern, words.replace(/<(\d+)>/g, '$1'))).toEqual([])
    for (const number of numbers) {
      const slip = `${words.slice(0, number.index)}${Number(number[1]) + 1}${words.slice(number.index + number[0].length)}`
      expect(findings(pattern, slip.replace(/<(\d+)>/g, '$1')), `${Number(number[1]) + 1} for ${number[1]}`).not.toEqual([])
    }
  })
})
