import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { replaceFolder } from '../../../src/build/replace-folder.ts'

let root: string
let dist: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'loopledger-replace-'))
  dist = join(root, 'dist')
})
afterEach(() => rmSync(root, { recursive: true }))

const fill = (words: string) => async (folder: string) => writeFileSync(join(folder, 'index.html'), words)
const shown = () => readFileSync(join(dist, 'index.html'), 'utf8')

test('the new takes the place of the old, and nothing is left beside it', async () => {
  await replaceFolder(dist, fill('first'))
  await replaceFolder(dist, fill('second'))
  expect(shown()).toBe('second')
  expect(readdirSync(root)).toEqual(['dist'])
})

test('what does not come out leaves the old as it was', async () => {
  await replaceFolder(dist, fill('first'))
  await expect(replaceFolder(dist, async (folder) => {
    await fill('half')(folder)
    throw new Error('made to fail')
  })).rejects.toThrow('made to fail')
  expect(shown()).toBe('first')
  expect(readdirSync(root)).toEqual(['dist'])
})

test('two at once: the second is refused and harms nothing', async () => {
  await replaceFolder(dist, async (folder) => {
    await fill('first')(folder)
    await expect(replaceFolder(dist, fill('second'))).rejects.toThrow('dist.lock.tmp')
  })
  expect(shown()).toBe('first')
})

test('leavings of a build that was killed are cleared, and the older folder is found again', async () => {
  // A process number above what Linux gives out (2^22, proc(5)): it runs nowhere.
  writeFileSync(`${dist}.lock.tmp`, '4194305')
  mkdirSync(`${dist}.old.tmp`)
  writeFileSync(join(`${dist}.old.tmp`, 'index.html'), 'older')
  mkdirSync(`${dist}.new.tmp`)
  writeFileSync(join(`${dist}.new.tmp`, 'stray.html'), 'stray')
  await expect(replaceFolder(dist, async () => {
    throw new Error('made to fail')
  })).rejects.toThrow('made to fail')
  expect(shown()).toBe('older')
  await replaceFolder(dist, fill('new'))
  expect(existsSync(join(dist, 'stray.html'))).toBe(false)
  expect(readdirSync(root)).toEqual(['dist'])
})
