import type { Booklet } from '../booklet/booklet.ts'

/** What a paper is: the pattern, its checklist, or the pattern in large print. */
export type Edition = 'pattern' | 'checklist' | 'large print'

/** A paper of a pattern. Large print of a pattern with sizes is of one size. */
export interface PaperPlace {
  readonly edition: Edition
  /** Which of the sizes, from 0; and its name. */
  readonly size?: number
  readonly sizeName?: string
  /** Below the site's root. */
  readonly path: string
}

/** Folder of a pattern below the site's root: `patterns/skiff-cushion/`. */
export function patternFolder(slug: string): string {
  return `patterns/${slug}/`
}

/**
 * Where a pattern's papers stand: `patterns/skiff-cushion/skiff-cushion-1.0.0.pdf`, `…-1.0.0-checklist.pdf`, `…-1.0.0-large-print-adult.pdf`.
 * The version is in the name, so that two printings on one computer are never confused.
 */
export function papersOf({ slug, version, sizes }: Pick<Booklet, 'slug' | 'version' | 'sizes'>): readonly PaperPlace[] {
  const path = (...more: readonly string[]) => `${patternFolder(slug)}${[slug, inFileName(version), ...more].join('-')}.pdf`
  const large = sizes.length > 1
    ? sizes.map((sizeName, size): PaperPlace => ({ edition: 'large print', size, sizeName, path: path('large-print', sizeInFileName(sizes, size)) }))
    : [{ edition: 'large print', path: path('large-print') } as const]
  return [{ edition: 'pattern', path: path() }, { edition: 'checklist', path: path('checklist') }, ...large]
}

/** A link to a paper, with its name and what it leads to. */
export interface PaperLink {
  readonly name: string
  readonly path: string
  readonly what: string
}

/** One link for each edition; where large print has a file for each size, the pattern's page has them side by side. */
export function linkedPapers(booklet: Pick<Booklet, 'slug' | 'version' | 'sizes'>): readonly PaperLink[] {
  const papers = papersOf(booklet)
  const whole = papers.filter(({ size }) => size === undefined).map(({ edition, path }): PaperLink => ({ name: edition.replace(/^./, (letter) => letter.toUpperCase()), path, what: 'PDF' }))
  return papers.length === whole.length ? whole : [...whole, { name: 'Large print', path: `${patternFolder(booklet.slug)}#on-paper`, what: 'choose a size' }]
}

const inFileName = (text: string) => text.replaceAll(/[^\w.-]+/g, '-')

/** A size's name as files may be called; its number where two would be called the same. */
function sizeInFileName(sizes: readonly string[], size: number): string {
  const names = sizes.map((name) => name.toLowerCase().normalize('NFD').replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, ''))
  const own = names[size] ?? ''
  return own === '' || names.filter((name) => name === own).length > 1 ? `size-${size + 1}` : own
}
