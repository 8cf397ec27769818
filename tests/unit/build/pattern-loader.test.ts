import { mkdtempSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { EventEmitter } from 'node:events'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { PatternEntry } from '../../../src/components/pattern-entry.ts'
import { patternLoader } from '../../../src/build/pattern-loader.ts'

const cap = readFileSync('tests/site/patterns/tarpaulin-cap.md', 'utf8')
// Round 2 works 2 dc into each of 10 (10, 11, 11, 12) stitches, so it makes twice as many: worked by hand.
const wrong = cap.replace('(20 (20, 22, 22, 24))', '(19 (20, 22, 22, 24))')
let root: string

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'loopledger-loader-'))
  mkdirSync(join(root, 'patterns'))
  mkdirSync(join(root, 'src'))
  writeFileSync(join(root, 'package-lock.json'), '{}')
  write('cap.md', cap)
})
afterEach(() => rmSync(root, { recursive: true }))

test('a pattern is stored as its booklet, and an unchanged one is not worked again', async () => {
  const store = new MadeUpStore()
  await load(store)
  expect(store.data('patterns/cap.md').booklet?.title).toBe('Tarpaulin Cap')
  expect(store.written).toBe(1)
  await load(store)
  expect(store.written).toBe(1)
  write('cap.md', cap.replace('A flat crown', 'A round crown'))
  await load(store)
  expect(store.data('patterns/cap.md').booklet?.summary).toContain('round crown')
  expect(store.written).toBe(2)
})

test('a changed engine works every pattern again', async () => {
  const store = new MadeUpStore()
  await load(store)
  writeFileSync(join(root, 'src', 'count.ts'), '// another engine\n')
  await load(store)
  expect(store.written).toBe(2)
})

test('a pattern that went away goes from the store', async () => {
  const store = new MadeUpStore()
  write('other.md', cap)
  await load(store)
  expect(store.keys()).toHaveLength(2)
  rmSync(join(root, 'patterns', 'other.md'))
  await load(store)
  expect(store.keys()).toEqual(['patterns/cap.md'])
})

test('in a build an error ends it each time, with every place, and nothing wrong is kept', async () => {
  const store = new MadeUpStore()
  write('cap.md', wrong)
  write('other.md', wrong)
  for (const _time of ['first', 'second']) {
    const error = await load(store).then(() => undefined, (thrown: Error & { loc?: object }) => thrown)
    expect(error?.message).toContain('error[total-mismatch]')
    expect(error?.message).toMatch(/patterns\/cap\.md:28:\d+[\s\S]*patterns\/other\.md:28:\d+/)
    expect(error?.loc).toMatchObject({ file: 'patterns/cap.md', line: 28 })
    expect(error?.stack).toBe('')
  }
  expect(store.keys()).toEqual([])
})

test('while patterns are written, what is wrong is stored beside the rows, and follows the file', async () => {
  const store = new MadeUpStore()
  const watcher = new EventEmitter()
  write('cap.md', wrong)
  await load(store, watcher)
  await load(store, watcher)
  expect(watcher.listenerCount('change')).toBe(1)
  expect(store.data('patterns/cap.md').remarks).toMatchObject([{ code: 'total-mismatch', severity: 'error' }])
  expect(store.data('patterns/cap.md').booklet?.parts[0]?.lines).toHaveLength(4)
  write('cap.md', cap)
  watcher.emit('change', join(root, 'patterns', 'cap.md'))
  await expect.poll(() => store.data('patterns/cap.md').remarks).toEqual([])
  watcher.emit('unlink', join(root, 'patterns', 'cap.md'))
  expect(store.keys()).toEqual([])
})

test('a pattern that is sold is stored without its rows, its notes and its special stitches', async () => {
  const store = new MadeUpStore()
  write('cap.md', cap.replace('access: free', 'access: sold'))
  await load(store)
  const { booklet, sold } = store.data('patterns/cap.md')
  expect(sold).toBe(true)
  expect(booklet?.parts.map(({ lines }) => lines)).toEqual([[]])
  expect(JSON.stringify(booklet)).not.toMatch(/Work in joined rounds|in next st/)
})

/** The part of a content store that a loader uses. */
class MadeUpStore {
  written = 0
  readonly #entries = new Map<string, { readonly id: string; readonly digest?: string | number; readonly data: Record<string, unknown> }>()
  keys = () => [...this.#entries.keys()]
  get = (id: string) => this.#entries.get(id)
  delete = (id: string) => void this.#entries.delete(id)
  set = (entry: { readonly id: string; readonly digest?: string | number; readonly data: Record<string, unknown> }) => {
    this.#entries.set(entry.id, entry)
    this.written += 1
    return true
  }
  data(id: string): PatternEntry {
    const entry = this.#entries.get(id)
    if (!entry) throw new Error(`${id} is not stored`)
    return entry.data as unknown as PatternEntry
  }
}

function load(store: MadeUpStore, watcher?: EventEmitter): Promise<void> {
  const context = {
    store, watcher, config: { root: pathToFileURL(`${root}/`) }, logger: { error: () => undefined },
    generateDigest: (value: unknown) => JSON.stringify(value),
  }
  return patternLoader('patterns').load(context as unknown as LoaderContext)
}

function write(name: string, text: string): void {
  writeFileSync(join(root, 'patterns', name), text)
}
