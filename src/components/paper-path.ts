import type { Booklet } from '../booklet/booklet.ts'

/** What a paper is: the pattern, its checklist, or the pattern in large print. */
export type Edition = 'pattern' | 'checklist' | 'large print'

type Terms = Booklet['terms']

/** What of a pattern decides which papers it has. */
export type Printed = Pick<Booklet, 'slug' | 'version' | 'sizes' | 'terms' | 'alsoIn' | 'eachSize'>

/** A paper of a pattern. Large print of a pattern with sizes is of one size. */
export interface PaperPlace {
  readonly edition: Edition
  readonly terms: Terms
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

/** Folder of a pattern's page in the given terms: its own page stands in its folder, the page in the other terms below it. */
export function termsFolder(slug: string, terms: Terms, written: Terms): string {
  return `${patternFolder(slug)}${terms === written ? '' : `${terms.toLowerCase()}-terms/`}`
}

/**
 * Where a pattern's papers stand: `patterns/skiff-cushion/skiff-cushion-1.0.0.pdf`, `…-1.0.0-checklist.pdf`, `…-1.0.0-large-print-adult.pdf`,
 * in the other terms `…-1.0.0-checklist-uk-terms.pdf`. The version is in the name, so that two printings on one computer are never confused.
 */
export function papersOf(printed: Printed): readonly PaperPlace[] {
  const { terms, alsoIn } = printed
  return [...papersIn(printed, terms), ...(alsoIn === undefined ? [] : papersIn(printed, alsoIn))]
}

function papersIn({ slug, version, sizes, terms: own, eachSize }: Printed, terms: Terms): readonly PaperPlace[] {
  const path = (...more: readonly string[]) =>
    `${patternFolder(slug)}${[slug, inFileName(version), ...more, ...(terms === own ? [] : [`${terms.toLowerCase()}-terms`])].join('-')}.pdf`
  const bySize = (edition: Edition, ...words: readonly string[]) =>
    sizes.map((sizeName, size): PaperPlace => ({ edition, terms, size, sizeName, path: path(...words, sizeInFileName(sizes, size)) }))
  const large: readonly PaperPlace[] = sizes.length > 1 ? bySize('large print', 'large-print') : [{ edition: 'large print', terms, path: path('large-print') }]
  return [
    { edition: 'pattern', terms, path: path() },
    { edition: 'checklist', terms, path: path('checklist') },
    ...(eachSize === true ? [...bySize('pattern', 'in'), ...bySize('checklist', 'checklist')] : []),
    ...large,
  ]
}

/** Where the pattern stands as one file to keep: `patterns/skiff-cushion/skiff-cushion-1.0.0.html`, in the other terms `…-1.0.0-uk-terms.html`. */
export function companionPath({ slug, version, terms: own }: Pick<Booklet, 'slug' | 'version' | 'terms'>, terms: Terms): string {
  return `${patternFolder(slug)}${[slug, inFileName(version), ...(terms === own ? [] : [`${terms.toLowerCase()}-terms`])].join('-')}.html`
}

/** Where the picture stands that a link to a pattern is shown with. */
export function picturePath(slug: string): string {
  return `${patternFolder(slug)}${slug}.png`
}

/** A link to a paper, with its name and what it leads to. */
export interface PaperLink {
  readonly name: string
  readonly path: string
  readonly what: string
}

/** One link for each edition; where large print has a file for each size, the pattern's page has them side by side. */
export function linkedPapers(booklet: Printed): readonly PaperLink[] {
  const papers = papersIn(booklet, booklet.terms)
  const whole = papers.filter(({ size }) => size === undefined).map(({ edition, path }): PaperLink => ({ name: edition.replace(/^./, (letter) => letter.toUpperCase()), path, what: 'PDF' }))
  return booklet.sizes.length < 2 ? whole : [...whole, { name: 'Large print', path: `${patternFolder(booklet.slug)}#on-paper`, what: 'choose a size' }]
}

const inFileName = (text: string) => text.replaceAll(/[^\w.-]+/g, '-')

/** A size's name as files may be called; its number where two would be called the same. */
function sizeInFileName(sizes: readonly string[], size: number): string {
  const names = sizes.map((name) => name.toLowerCase().normalize('NFD').replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, ''))
  const own = names[size] ?? ''
  return own === '' || names.filter((name) => name === own).length > 1 ? `size-${size + 1}` : own
}
