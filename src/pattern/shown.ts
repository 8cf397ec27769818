import type { Entry } from './entry.ts'

/** What stands in a place, as a diagnostic quotes it: the designer's words on one line, cut where they run on. */
export function quoted(text: string): string {
  const line = text.trim().replace(/\s+/g, ' ')
  return `\`${line.length > 40 ? `${line.slice(0, 39).trimEnd()}…` : line}\``
}

/** What an entry is, in a diagnostic. */
export function shown(entry: Entry): string {
  if (entry.kind === 'text') return entry.value.trim() === '' ? 'empty' : quoted(entry.value.slice(0, 200))
  if (entry.kind === 'list') return 'a list'
  return entry.kind === 'keys' ? 'a group of keys' : 'left empty'
}
