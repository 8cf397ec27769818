import { readFileSync, writeFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { digests, npm } from '../support/project-copy.ts'
import type { BuiltSite } from './site.test.ts'

/** A build with an error in it fails, says where, and leaves the site that was there before as it was. */
export function brokenPatternsStopTheBuild(site: () => BuiltSite): void {
  const file = () => join(site().copy.folder, 'patterns/tarpaulin-cap.md')
  const build = () => npm(site().copy.folder, 'run', '--silent', 'build')
  // Round 3 of the file works 20 (20, 22, 22, 24) stitches in pairs and makes 3 of each 2: 30 (30, 33, 33, 36), worked by hand.
  const right = '(30 (30, 33, 33, 36))\n      Rnd 4'
  const wrong = '(31 (30, 33, 33, 36))\n      Rnd 4'

  test('a wrong total: exit code 1, the report with its place, the older site byte for byte', async () => {
    const before = await digests(site().dist)
    const text = readFileSync(file(), 'utf8')
    expect(text.split(right)).toHaveLength(2)
    writeFileSync(file(), text.replace(right, wrong))
    const lines = text.slice(0, text.indexOf(right)).split('\n')
    const failed = await build()
    expect(failed.code).toBe(1)
    expect(failed.err).toContain('error[total-mismatch]')
    expect(failed.err).toContain(`patterns/tarpaulin-cap.md:${lines.length}:${(lines.at(-1) ?? '').length + 1}`)
    expect(failed.err).toContain('dist/ is as it was')
    expect(failed.out).toBe('')
    expect(await digests(site().dist)).toEqual(before)
  })

  test('the same through Astro alone: its own command fails with the report', async () => {
    const before = await digests(site().dist)
    const failed = await npm(site().copy.folder, 'exec', '--', 'astro', 'build')
    expect(failed.code).not.toBe(0)
    expect(`${failed.out}${failed.err}`).toContain('error[total-mismatch]')
    expect(`${failed.out}${failed.err}`).toMatch(/patterns\/tarpaulin-cap\.md:\d+:\d+/)
    expect(await digests(site().dist)).toEqual(before)
  })

  test('a key that only a published pattern needs', async () => {
    const before = await digests(site().dist)
    const text = readFileSync(file(), 'utf8').replace(wrong, right)
    writeFileSync(file(), text.replace('version: 1.1.0\n', ''))
    const failed = await build()
    expect(failed.code).toBe(1)
    expect(failed.err).toContain('key-missing-to-publish')
    expect(failed.err).toMatch(/patterns\/tarpaulin-cap\.md:\d+:\d+/)
    expect(await digests(site().dist)).toEqual(before)
    writeFileSync(file(), text)
  })

  test('a page of ours that breaks while the patterns are right', async () => {
    const before = await digests(site().dist)
    const broken = join(site().copy.folder, 'src/pages/broken.astro')
    writeFileSync(broken, "---\nthrow new Error('made to break')\n---\n")
    const failed = await build()
    rmSync(broken)
    expect(failed.code).toBe(1)
    expect(failed.err).toContain('made to break')
    expect(await digests(site().dist)).toEqual(before)
  })

  test('mended, the build comes out again, and what it makes is the same to the byte', async () => {
    const before = await digests(site().dist)
    const mended = await build()
    expect(mended.err).toBe('')
    expect(mended.code).toBe(0)
    expect(await digests(site().dist)).toEqual(before)
  }, 120_000)

  test('an edit of one pattern makes that pattern anew and takes the others over, to the same bytes as a build of everything', async () => {
    const before = await digests(site().dist)
    const small = join(site().copy.folder, 'patterns/cleat-pair.md')
    const text = readFileSync(small, 'utf8')
    writeFileSync(small, text.replace(/^summary: .*$/m, 'summary: Two small mats with another summary'))
    const edited = await build()
    expect(edited.err).toBe('')
    expect(edited.out).toMatch(/^\d+ patterns are as before; only the other 2 were made anew\.$/m)
    const after = await digests(site().dist)
    const changed = Object.keys(after).filter((name) => after[name] !== before[name])
    expect(changed).toContain('patterns/cleat-pair/index.html')
    expect(changed.filter((name) => name.startsWith('patterns/') && !name.startsWith('patterns/cleat-pair/'))).toEqual([])
    expect(Object.keys(after)).toEqual(Object.keys(before))
    writeFileSync(small, text)
    expect((await build()).code).toBe(0)
    expect(await digests(site().dist)).toEqual(before)
  }, 120_000)
}
