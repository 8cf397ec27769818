import type { Booklet } from '../booklet/booklet.ts'

/** Folder of a pattern below the site's root: `patterns/skiff-cushion/`. */
export function patternFolder(slug: string): string {
  return `patterns/${slug}/`
}

/**
 * Where the printed pattern stands below the site's root: `patterns/skiff-cushion/skiff-cushion-1.0.0.pdf`.
 * The version is in the name, so that two printings on one computer are never confused.
 */
export function paperPath({ slug, version }: Pick<Booklet, 'slug' | 'version'>): string {
  return `${patternFolder(slug)}${slug}-${version.replaceAll(/[^\w.-]+/g, '-')}.pdf`
}
