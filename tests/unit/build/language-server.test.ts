import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { formatProse } from '../../../src/build/editor/format-prose.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { rpcClient, type RpcClient } from '../../support/rpc-client.ts'

// The server as an editor drives it. The oracle is the Language Server Protocol 3.17: lines and characters from 0, characters in UTF-16
// units, ranges without their end. Counts are by hand: 6, then two in each is 12.

interface Position { readonly line: number; readonly character: number }
interface Range { readonly start: Position; readonly end: Position }
interface TextEdit { readonly range: Range; readonly newText: string }
interface Finding { readonly range: Range; readonly severity: number; readonly code: string; readonly source: string; readonly message: string }
interface Published { readonly uri: string; readonly version?: number; readonly diagnostics: readonly Finding[] }
interface Action { readonly title: string; readonly kind: string; readonly isPreferred?: boolean; readonly diagnostics: readonly Finding[]; readonly edit: { readonly changes: Readonly<Record<string, readonly TextEdit[]>> } }

const uri = 'file:///srv/patterns/mat.md'
const lines = [
  '---', 'title: Mat 🧶', 'terms: US', 'pieces:', '  - name: Mat', '    rows: |',
  '      Rnd 1: 6 sc in magic ring. (6)',
  '      Rnd 2: 2 sc in each st around. (13)',
  '      Rnd 3: Sc in each st around. (12)',
  '      Rnd 4: 2 sc in each st around.',
  '---', '', 'A mat.', '',
]
const text = lines.join('\n')
let server: RpcClient
let capabilities: Record<string, unknown>

beforeAll(async () => {
  server = rpcClient(process.execPath, ['src/build/language-server.ts'])
  capabilities = (await server.request<{ capabilities: Record<string, unknown> }>('initialize', { processId: null, rootUri: null, capabilities: {} })).capabilities
  server.notify('initialized', {})
})

afterAll(async () => {
  await server.request('shutdown', null)
  server.notify('exit', null)
  // "exits with 0 if the shutdown request has been received before": LSP, exit.
  expect(await server.exit()).toBe(0)
  expect(server.trouble()).toBe('')
})

const open = (name: string, words: string) => server.notify('textDocument/didOpen', { textDocument: { uri: name, languageId: 'markdown', version: 1, text: words } })
const published = (version: number, name = uri) => server.heard<Published>('textDocument/publishDiagnostics', (params) => params.uri === name && params.version === version)

/** The text with edits made, last first, as the protocol asks. */
function made(before: string, edits: readonly TextEdit[]): string {
  const starts = before.split('\n').reduce<number[]>((all, line) => [...all, all.at(-1)! + line.length + 1], [0])
  const offset = ({ line, character }: Position) => starts[line]! + character
  return edits.toSorted((a, b) => offset(b.range.start) - offset(a.range.start))
    .reduce((all, { range, newText }) => all.slice(0, offset(range.start)) + newText + all.slice(offset(range.end)), before)
}

describe('the server', () => {
  test('says what it can do', () => {
    expect(capabilities).toMatchObject({ codeActionProvider: { codeActionKinds: ['quickfix'] }, documentFormattingProvider: true, hoverProvider: true })
  })

  test('shows a finding under its words when a pattern is opened', async () => {
    open(uri, text)
    const { diagnostics } = await published(1)
    const wrong = diagnostics.find(({ code }) => code === 'total-mismatch')
    // `(13)` is in the eighth line behind six spaces and 31 signs.
    expect(wrong).toMatchObject({ severity: 1, source: 'loopledger', range: { start: { line: 7, character: 37 }, end: { line: 7, character: 41 } } })
    expect(wrong?.message).toContain('round 2 makes 12 stitches, but its total says 13')
    expect(diagnostics.find(({ code }) => code === 'count-missing')?.severity).toBe(2)
  })

  test('offers the change that was tried, and made it takes the finding away', async () => {
    const range = { start: { line: 7, character: 39 }, end: { line: 7, character: 39 } }
    const actions = await server.request<readonly Action[]>('textDocument/codeAction', { textDocument: { uri }, range, context: { diagnostics: [] } })
    expect(actions.map(({ kind, isPreferred, diagnostics: [about] }) => [kind, isPreferred, about?.code])).toEqual([['quickfix', true, 'total-mismatch']])
    const mended = made(text, actions[0]?.edit.changes[uri] ?? [])
    expect(mended.split('\n')[7]).toBe('      Rnd 2: 2 sc in each st around. (12)')
  })

  test('where no finding is, there is nothing to offer', async () => {
    const range = { start: { line: 1, character: 3 }, end: { line: 1, character: 3 } }
    expect(await server.request('textDocument/codeAction', { textDocument: { uri }, range, context: { diagnostics: [] } })).toEqual([])
  })

  test('a warning can be accepted: an entry is put in, and the reason is left to the person', async () => {
    const range = { start: { line: 9, character: 8 }, end: { line: 9, character: 8 } }
    const actions = await server.request<readonly Action[]>('textDocument/codeAction', { textDocument: { uri }, range, context: { diagnostics: [] } })
    const accept = actions.find(({ title }) => title.startsWith('Accept'))
    const after = made(text, accept?.edit.changes[uri] ?? [])
    expect(after).toContain('\naccepted:\n  - { code: count-missing, row: Rnd 4, why: }\npieces:')
    expect(checkPattern({ path: 'mat.md', text: after }).diagnostics.map(({ code }) => code)).toContain('value-wrong')
    const said = checkPattern({ path: 'mat.md', text: after.replace('why: }', 'why: it is drawn }') })
    expect(said.diagnostics.map(({ code }) => code)).not.toContain('count-missing')
    expect(said.accepted?.map(({ why }) => why)).toEqual(['it is drawn'])
  })

  test('says on a row what it comes to', async () => {
    const hover = await server.request<{ contents: { value: string }; range: Range } | null>('textDocument/hover', { textDocument: { uri }, position: { line: 7, character: 20 } })
    expect(hover?.contents.value.split('\n').slice(0, 3)).toEqual(['| row | offers | works over | leaves | makes | says |', '| --- | --- | --- | --- | --- | --- |', '| Rnd 2 | 6 | 6 | 0 | 12 | 13: does not add up |'])
    expect(hover?.range.start).toEqual({ line: 7, character: 6 })
    expect(await server.request('textDocument/hover', { textDocument: { uri }, position: { line: 1, character: 1 } })).toBeNull()
  })

  test('follows the typing', async () => {
    server.notify('textDocument/didChange', { textDocument: { uri, version: 2 }, contentChanges: [{ range: { start: { line: 7, character: 39 }, end: { line: 7, character: 40 } }, text: '2' }] })
    const { diagnostics } = await published(2)
    expect(diagnostics.map(({ code }) => code)).not.toContain('total-mismatch')
    expect(diagnostics.map(({ code }) => code)).toContain('count-missing')
    server.notify('textDocument/didChange', { textDocument: { uri, version: 3 }, contentChanges: [{ range: { start: { line: 7, character: 38 }, end: { line: 7, character: 40 } }, text: '15' }] })
    // First what is wrong, then, when the hand has rested longer, what would mend it.
    const about = ({ diagnostics: found }: Published) => found.find(({ code }) => code === 'total-mismatch')?.message
    expect(about(await published(3))).toBe('round 2 makes 12 stitches, but its total says 15')
    expect(about(await published(3))).toMatch(/^round 2 makes 12 stitches, but its total says 15\nhint: .*write `\(12\)`$/)
  })

  test('formats the prose and leaves the front-matter as it is typed', async () => {
    const name = 'file:///srv/patterns/prose.md'
    const front = '---\ntitle:   Mat\nterms: US\npieces:\n  - name:    Mat\n    rows: |\n      Rnd 1:  6 sc in magic ring.   (6)\n---\n'
    const prose = '\n\n\nA mat with :count[Mat row 1]\tsts, _soft_.\n* one\n* two (14:30)\n\nNotes\n=====\n'
    open(name, front + prose)
    await published(1, name)
    const edits = await server.request<readonly TextEdit[]>('textDocument/formatting', { textDocument: { uri: name }, options: { tabSize: 2, insertSpaces: true } })
    const after = made(front + prose, edits)
    expect(after.startsWith(front)).toBe(true)
    expect(after.slice(front.length)).toBe('\nA mat with :count[Mat row 1]\tsts, _soft_.\n\n- one\n- two (14:30)\n\n# Notes\n')
    expect(formatProse(after)).toBeUndefined()
  })

  test('other Markdown is none of its business', async () => {
    const name = 'file:///srv/README.md'
    open(name, '---\ntitle: Notes\n---\n\n* Rnd 2: 2 sc in each st. (13)\n')
    expect((await published(1, name)).diagnostics).toEqual([])
    expect(await server.request('textDocument/formatting', { textDocument: { uri: name }, options: {} })).toEqual([])
  })

  test('takes its lines back when a file is closed', async () => {
    server.notify('textDocument/didClose', { textDocument: { uri } })
    const { diagnostics } = await server.heard<Published>('textDocument/publishDiagnostics', (params) => params.uri === uri && params.version === undefined)
    expect(diagnostics).toEqual([])
  })
})

test('as an npm script it answers as well', async () => {
  const other = rpcClient('npm', ['run', '--silent', 'language-server'])
  const { serverInfo } = await other.request<{ serverInfo: { name: string } }>('initialize', { processId: null, rootUri: null, capabilities: {} })
  expect(serverInfo.name).toBe('loopledger')
  await other.request('shutdown', null)
  other.notify('exit', null)
  expect(await other.exit()).toBe(0)
})
