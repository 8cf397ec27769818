import { isAlias, isMap, isScalar, isSeq, parseDocument, type Document, type ParsedNode, type Scalar } from 'yaml'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { goesOnBehindComma, withWordsBehind } from './commas-in-braces.ts'
import type { Entry, KeysEntry, Pair, Path } from './entry.ts'
import { quoted } from './shown.ts'
import type { SignTrouble } from './yaml-signs.ts'
import { slipBehind, tabSlip, unread, withoutSlip, withoutTabs, type YamlStop } from './yaml-slips.ts'

/** The front-matter with its places, as far as it is YAML. */
export interface FrontMatterRead {
  readonly root?: KeysEntry
  readonly diagnostics: readonly Diagnostic[]
  /** A slip may have hidden a key: what is not there may have been written after all. */
  readonly losesKeys: boolean
  /** Rows that YAML could not keep together with their piece, to be read from the file all the same. */
  readonly rows: FoundRows
}

export interface FoundRows {
  /** By the offset of the `rows` key. */
  readonly all: ReadonlyMap<number, Span>
  /** Rows below a block that ended too early. */
  readonly stray: readonly Span[]
}

// After so many slips of YAML the file is hardly a pattern; each costs one more reading.
const mostSlips = 20
const mostStops = 1000

/** Reads the YAML of the front-matter. Every slip is one diagnostic; what stands beside it is still read. */
export function readFrontMatter(source: Source, yaml: Span): FrontMatterRead {
  const diagnostics: Diagnostic[] = []
  const all = new Map<number, Span>()
  const stray: Span[] = []
  let losesKeys = false
  let tabbed = false
  let text = source.text.slice(yaml.start, yaml.end)
  const inFile = ({ start, end }: Span): Span => ({ start: yaml.start + start, end: yaml.start + end })
  const say = (code: Diagnostic['code'], trouble: SignTrouble): void => {
    diagnostics.push(diagnosticOf(code, { ...trouble, span: inFile(trouble.span) }))
  }

  for (let slips = 0; slips < mostSlips; slips += 1) {
    const { document, stops } = parse(text)
    const [stop] = stops
    if (!document || !stop) {
      const root = document && entries(document, { base: yaml.start, text, all, say })
      return { ...(root ? { root } : {}), diagnostics, losesKeys, rows: { all, stray } }
    }
    const before = text
    const tabs = stops.filter(({ code }) => code === 'TAB_AS_INDENT').map(({ at }) => at)
    if (tabs.length > 0) {
      tabbed = true
      say('front-matter-broken', tabSlip(text, tabs))
      text = withoutTabs(text, tabs)
    } else {
      const slip = slipBehind(text, document, stop)
      // A space in the place of a tab is a guess. Where it does not come out, what follows is the same slip, said already.
      if (!tabbed) say(slip.code, slip.trouble)
      losesKeys ||= slip.losesKeys || tabbed
      const found = slip.rows?.found
      if (found?.kind === 'all') all.set(yaml.start + found.key, inFile(found.span))
      if (found?.kind === 'stray') stray.push(inFile(found.span))
      text = stop.code === 'RESOURCE_EXHAUSTION' ? text : withoutSlip(text, slip)
    }
    if (text === before || stops.length > mostStops) break
  }
  return { diagnostics, losesKeys: true, rows: { all, stray } }
}

/** Scalars stay words (`failsafe`), and nothing is put in the place of an alias, so a small file cannot grow into a large one. */
function parse(text: string): { readonly document?: Document.Parsed; readonly stops: readonly YamlStop[] } {
  const document = parseDocument(text, { schema: 'failsafe', uniqueKeys: false, prettyErrors: false, logLevel: 'error' })
  const stops = document.errors.map(({ code, pos }) => ({ code, at: pos[0] })).sort((a, b) => a.at - b.at)
  return { document, stops }
}

interface Reading {
  readonly base: number
  readonly text: string
  readonly all: ReadonlyMap<number, Span>
  readonly say: (code: Diagnostic['code'], trouble: SignTrouble) => void
}

function entries(document: Document.Parsed, reading: Reading): KeysEntry | undefined {
  const { contents } = document
  const nothing = contents === null || (isScalar(contents) && contents.source === '')
  const none: KeysEntry = { kind: 'keys', span: { start: reading.base, end: reading.base }, pairs: new Map(), leftOut: new Set() }
  if (nothing) return none
  const root = entryOf(contents as ParsedNode, reading, 'the front-matter', [])
  if (root?.kind === 'keys') return root
  if (root) {
    const span = { start: root.span.start - reading.base, end: root.span.end - reading.base }
    const message = `the front-matter is ${root.kind === 'list' ? 'a list' : 'text'}, but must be keys with values`
    reading.say('front-matter-broken', { message, span, label: 'no keys', note: 'a line is a key, a colon, a space and a value' })
  }
  return undefined
}

/** An entry, or undefined for one that was left out because it could not be read. */
function entryOf(node: ParsedNode, reading: Reading, name: string, path: Path): Entry | undefined {
  const span = spanOf(node, reading)
  if (isAlias(node)) {
    const sign = `*${node.source}`
    reading.say('front-matter-broken', signOfYaml(name, sign, { start: node.range[0], end: node.range[1] }))
    return undefined
  }
  if (node.anchor !== undefined || node.tag !== undefined) {
    const sign = node.anchor === undefined ? '!' : '&'
    const start = Math.max(0, reading.text.lastIndexOf(sign, node.range[0]))
    const end = isScalar(node) ? Math.max(node.range[1], start + 1) : start + 1 + (node.anchor ?? '').length
    reading.say('front-matter-broken', signOfYaml(name, reading.text.slice(start, end), { start, end }))
    return undefined
  }
  if (isMap(node)) return keysOf({ items: node.items as readonly YamlPair[], flow: node.flow === true }, span, reading, path)
  if (isSeq(node)) {
    const items = node.items.map((item, index) => entryOf(item as ParsedNode, reading, name, [...path, index]))
    const read = items.filter((item) => item !== undefined)
    return { kind: 'list', span, items: read, lacks: read.length < items.length, leaving: new Set() }
  }
  if (node.source === unread) return undefined
  if (node.source === '' && node.type === 'PLAIN') return { kind: 'empty', span }
  return { kind: 'text', span, value: String(node.value), style: styleOf(node) }
}

interface YamlPair {
  readonly key: ParsedNode | null
  readonly value: ParsedNode | null
}

function keysOf({ items, flow }: { readonly items: readonly YamlPair[]; readonly flow: boolean }, span: Span, reading: Reading, path: Path): KeysEntry {
  const pairs = new Map<string, Pair>()
  const leftOut = new Set<string>()
  let last = ''
  for (const { key, value } of items) {
    const name = isScalar(key) ? String(key.value) : ''
    if (!key || name === '' || name === unread) {
      const [start, end] = key?.range ?? value?.range ?? [0, 0]
      if (name !== unread) reading.say('front-matter-broken', { message: 'a value has no key before it', span: { start, end }, label: 'no key' })
      continue
    }
    const before = pairs.get(last)
    if (flow && !value && isScalar(key) && key.type === 'PLAIN' && before?.value.kind === 'text' && before.value.style === 'plain' && goesOnBehindComma(name, path)) {
      const { start, end } = spanOf(key, reading)
      const between = reading.text.slice(before.value.span.end - reading.base, start - reading.base)
      pairs.set(last, withWordsBehind({ key: before.key, value: before.value }, { words: name, end, between }))
      continue
    }
    last = name
    const known = pairs.get(name)
    if (known) {
      const at = { start: key.range[0], end: key.range[1] }
      reading.say('front-matter-broken', { message: `${quoted(name)} stands twice`, span: at, label: 'the second time', note: 'the first one is taken' })
      continue
    }
    const keySpan = spanOf(key, reading)
    const rows = reading.all.get(keySpan.start)
    const entry = rows ? { kind: 'text', span: rows, value: 'rows', style: 'literal' } as const
      : value ? entryOf(value, reading, `\`${name}\``, [...path, name]) : { kind: 'empty', span: { start: keySpan.end, end: keySpan.end } } as const
    if (entry) pairs.set(name, { key: keySpan, value: entry })
    else leftOut.add(name)
  }
  return { kind: 'keys', span, pairs, leftOut }
}

function signOfYaml(name: string, written: string, span: Span): SignTrouble {
  const sign = written.slice(0, 1)
  const key = /^`(.*)`$/.exec(name)?.[1]?.concat(': ') ?? ''
  return {
    message: `${name} begins with \`${sign}\`, which has a meaning of its own in YAML`,
    span,
    label: `begins with \`${sign}\``,
    note: `a value that begins with \`${sign}\` needs quotes: \`${key}"${written.slice(0, 60)}"\``,
  }
}

function styleOf(node: Scalar.Parsed): 'plain' | 'quoted' | 'literal' | 'folded' {
  if (node.type === 'BLOCK_LITERAL') return 'literal'
  if (node.type === 'BLOCK_FOLDED') return 'folded'
  return node.type === 'PLAIN' ? 'plain' : 'quoted'
}

/** The range of a node without the line breaks after it. */
function spanOf(node: ParsedNode, { base, text }: Reading): Span {
  const [start, valueEnd] = node.range
  let end = valueEnd
  while (end > start && /\s/.test(text[end - 1] ?? '')) end -= 1
  return { start: base + start, end: base + end }
}

/** A diagnostic of reading: one place, no counts. */
export function diagnosticOf(code: Diagnostic['code'], { message, span, label, note }: SignTrouble): Diagnostic {
  return { code, message, primary: { span, text: label }, secondary: [], ...(note === undefined ? {} : { note }) }
}
