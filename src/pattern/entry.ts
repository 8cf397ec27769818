import type { Span } from '../text/span.ts'

/**
 * What stands in the front-matter, with every place kept: words, lists and groups of keys. Numbers are still words here: only
 * the schema knows where a number belongs, so `version: 1.10` loses nothing. Spans are offsets in the whole file.
 */
export type Entry = TextEntry | ListEntry | KeysEntry | EmptyEntry

export interface TextEntry {
  readonly kind: 'text'
  readonly span: Span
  readonly value: string
  /** `literal` is a `|` block, `folded` a `>` block. */
  readonly style: 'plain' | 'quoted' | 'literal' | 'folded'
}

export interface ListEntry {
  readonly kind: 'list'
  readonly span: Span
  items: readonly Entry[]
  /** An item was left out, by the reading of YAML or later. */
  lacks: boolean
  /** Items that are left out and still stand among the others, so that the places of those do not change under way. */
  readonly leaving: Set<Entry>
}

export interface KeysEntry {
  readonly kind: 'keys'
  readonly span: Span
  readonly pairs: Map<string, Pair>
  /** Keys that the designer wrote and that were left out, so that nobody calls them missing. */
  readonly leftOut: Set<string>
}

export interface Pair {
  readonly key: Span
  readonly value: Entry
}

/** A key with nothing behind it. */
export interface EmptyEntry {
  readonly kind: 'empty'
  readonly span: Span
}

/** A way to an entry: `['pieces', 0, 'rows']`. */
export type Path = readonly (string | number)[]

/** The entry at the end of a path, if there is one. */
export function entryAt(root: Entry, path: Path): Entry | undefined {
  let entry: Entry | undefined = root
  for (const step of path) {
    if (entry?.kind === 'keys') entry = entry.pairs.get(String(step))?.value
    else if (entry?.kind === 'list' && typeof step === 'number') entry = entry.items[step]
    else return undefined
  }
  return entry
}

/** The words of an entry, for names that are looked at before the schema has passed them. */
export function textAt(root: Entry, path: Path): string | undefined {
  const entry = entryAt(root, path)
  return entry?.kind === 'text' ? entry.value.trim() : undefined
}

/** Plain values, for the schema. Objects have no prototype, so that no key of a file can mean anything but itself. */
export function plainValue(entry: Entry): unknown {
  if (entry.kind === 'text') return entry.value
  if (entry.kind === 'list') return entry.items.map(plainValue)
  if (entry.kind === 'empty') return null
  const values: Record<string, unknown> = Object.create(null)
  for (const [key, { value }] of entry.pairs) values[key] = plainValue(value)
  return values
}

/** Every value's span by its path, `materials.yarns.1.letter`. */
export function placesOf(root: KeysEntry): ReadonlyMap<string, Span> {
  const places = new Map<string, Span>()
  const visit = (entry: Entry, path: string): void => {
    if (path !== '') places.set(path, entry.span)
    const under = (step: string | number) => (path === '' ? `${step}` : `${path}.${step}`)
    if (entry.kind === 'list') entry.items.forEach((item, index) => visit(item, under(index)))
    else if (entry.kind === 'keys') for (const [key, { value }] of entry.pairs) visit(value, under(key))
  }
  visit(root, '')
  return places
}

/** Takes a value out of the group or list that holds it, and remembers that it was there. */
export function leaveOut(holder: Entry | undefined, step: string | number | undefined, value: Entry | undefined): void {
  if (holder?.kind === 'keys') {
    holder.pairs.delete(String(step))
    holder.leftOut.add(String(step))
  } else if (holder?.kind === 'list' && value) {
    holder.leaving.add(value)
    holder.lacks = true
  }
}

/** Closes up the lists that items were left out of. */
export function closeUp(entry: Entry): void {
  if (entry.kind === 'list') {
    if (entry.leaving.size > 0) entry.items = entry.items.filter((item) => !entry.leaving.has(item))
    entry.leaving.clear()
    entry.items.forEach(closeUp)
  } else if (entry.kind === 'keys') for (const { value } of entry.pairs.values()) closeUp(value)
}

/** Puts a text where a value was wrong or missing. */
export function putText(holder: Entry | undefined, step: string | number, value: string, at: Span): void {
  const text: TextEntry = { kind: 'text', span: at, value, style: 'plain' }
  if (holder?.kind === 'keys') holder.pairs.set(String(step), { key: holder.pairs.get(String(step))?.key ?? at, value: text })
  else if (holder?.kind === 'list' && typeof step === 'number') holder.items = holder.items.with(step, text)
}
