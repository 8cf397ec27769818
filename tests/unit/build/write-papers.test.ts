import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { bookletsInBothTerms } from '../../../src/booklet/booklet-in-terms.ts'
import { bookletFor, printEdition, type ToPrint } from '../../../src/build/print-paper.ts'
import { writePapers } from '../../../src/build/write-papers.ts'
import { papersOf } from '../../../src/components/paper-path.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

const folders: string[] = []
const folder = () => {
  const made = mkdtempSync(join(tmpdir(), 'papers-'))
  folders.push(made)
  return made
}
afterAll(() => folders.forEach((one) => rmSync(one, { recursive: true })))

function toPrint(name: string): ToPrint {
  const { own, other } = bookletsInBothTerms(checkPattern({ path: `${name}.md`, text: readFileSync(`patterns/${name}.md`, 'utf8') }))
  return { booklet: own.booklet, inSize: own.inSize, ...(other ? { other } : {}) }
}

describe('papers on several cores', () => {
  const patterns = ['float', 'shingle-cloth'].map(toPrint)

  test('are the same files as on one, in the order of the patterns', async () => {
    const [one, three] = [folder(), folder()]
    const alone = await writePapers(patterns, one, 1)
    const together = await writePapers(patterns, three, 3)
    expect(together).toEqual(alone)
    expect(together.map(({ path }) => path)).toEqual(patterns.flatMap(({ booklet }) => papersOf(booklet).map(({ path }) => path)))
    // Three editions of two patterns in two terms.
    expect(readdirSync(three, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.pdf'))).toHaveLength(12)
    for (const { path } of together) expect(Buffer.compare(readFileSync(join(one, path)), readFileSync(join(three, path))), path).toBe(0)
  })

  test('are what is printed here, each in its terms', async () => {
    const [pattern] = patterns
    const place = papersOf(pattern!.booklet).at(-1)!
    expect(place.terms).toBe('UK')
    const there = folder()
    await writePapers([pattern!], there, 1)
    expect(Buffer.compare(readFileSync(join(there, place.path)), Buffer.from(await printEdition(bookletFor(pattern!, place), place.edition)))).toBe(0)
  })

  test('that cannot be printed end the build with their reason', async () => {
    const broken: ToPrint = { ...patterns[0]!, booklet: { ...patterns[0]!.booklet, parts: [{}] as never } }
    await expect(writePapers([broken], folder(), 1)).rejects.toThrow()
  })
})
