/** Words for a file name and an address, from the name of a pattern's file: `patterns/Skiff Cushion.md` gives `skiff-cushion`. */
export function slugOf(path: string): string {
  const name = path.split(/[\\/]/).at(-1) ?? ''
  const words = name.replace(/\.(?:md|markdown)$/i, '').normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  return words.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'pattern'
}

/** A title for a pattern that has none, from its slug: `skiff-cushion` gives `Skiff cushion`. */
export function titleFromSlug(slug: string): string {
  const words = slug.replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
