/** Names for places on a page, made from headings: `Front border` gives `front-border`, and a second one `front-border-2`. */
export function anchors(headings: readonly string[], taken: readonly string[] = []): readonly string[] {
  const used = new Set(taken)
  return headings.map((heading) => {
    const name = heading.normalize('NFKD').toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-|-$/g, '') || 'part'
    let free = name
    for (let at = 2; used.has(free); at += 1) free = `${name}-${at}`
    used.add(free)
    return free
  })
}
