import type { Booklet } from '../booklet/booklet.ts'

/** A pattern's line in the index of all patterns. */
export interface ShelfLine {
  readonly number: string
  readonly title: string
  readonly slug: string
  readonly kind: string
  readonly size: string
  readonly hook: string
  readonly yarn: string
  /** `Medium (4)`; empty where the yarn has no weight category. */
  readonly weight: string
  /** Real rows to work, a range of five counted as five. */
  readonly rows: string
  readonly version: string
}

/** What the index says of a pattern, all of it from what the pattern's own page says. */
export function shelfLine(booklet: Booklet): ShelfLine {
  const fact = (label: string) => booklet.facts.find((one) => one.label === label)?.value ?? ''
  const { rows } = rowsIn(booklet)
  return {
    number: booklet.number === undefined ? '' : String(booklet.number),
    title: booklet.title,
    slug: booklet.slug,
    kind: [fact('Level'), fact('Worked')].filter((part) => part !== '').join(', ').toLowerCase(),
    size: metric(fact('Size')).replace(/^[^:]*\):\s/, ''),
    hook: metric(fact('Hook')),
    yarn: yarnInAll(booklet) ?? fact('Yarn'),
    weight: /^[^:(,]*\(\d\)/.exec(fact('Yarn'))?.[0] ?? '',
    rows: rows > 0 ? String(rows) : '',
    version: booklet.version,
  }
}

/** Real rows to work, a range of five counted as five, and how many of them no count could be made of. */
export function rowsIn({ parts }: Booklet): { readonly rows: number; readonly uncounted: number } {
  const lines = parts.flatMap(({ lines }) => lines).filter((line) => line.kind === 'row')
  const sum = (of: typeof lines) => of.reduce((total, { boxes }) => total + boxes.length, 0)
  return { rows: sum(lines), uncounted: sum(lines.filter(({ stitches }) => stitches.includes('?'))) }
}

/** Metres of all yarns together, when they are known. */
function yarnInAll({ materials }: Booklet): string | undefined {
  const [yarn, ...others] = materials.filter(({ kind }) => kind === 'yarn')
  return others.length > 0 ? materials.find(({ kind }) => kind === 'total')?.amount[0] : yarn?.amount[0]
}

/** The metric figures alone, without inches and letters of hooks: the pattern's page has both. */
function metric(text: string): string {
  return text.replaceAll(/\s*\((?:[^()]*\sin|US\s[^()]*)\)/g, '').replaceAll(/(\scm), [^;]*?\sin\b/g, '$1')
}

/** Patterns in the order of the index: by the studio's own numbers, then by title. */
export function shelfOrder<T extends { readonly number?: number; readonly title: string }>(patterns: readonly T[]): readonly T[] {
  const number = (pattern: T) => pattern.number ?? Number.POSITIVE_INFINITY
  return [...patterns].sort((a, b) => number(a) - number(b) || a.title.localeCompare(b.title, 'en'))
}

/** Whose site it is: the designer of most of its patterns. */
export function publisherOf(patterns: readonly { readonly publisher: string }[]): string {
  const counts = new Map<string, number>()
  for (const { publisher } of patterns) counts.set(publisher, (counts.get(publisher) ?? 0) + 1)
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'Patterns'
}
