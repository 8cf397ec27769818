import type { Walk } from './walk.ts'

const atSeam = /\b(?:join|attach|begin|start|rejoin|tie)(?:ing|ning)?\b[^,;.]*\b(?:at|in|on|to|beside|near|by|from)\b[^,;.]*\bseam\b/

/** `Join yarn at the heel seam`: a seam, which a remark may tell of, has closed the last row, and the round passes it by. */
export function beginAtSeam(walk: Walk, words: string): void {
  const [top, ...others] = walk.outline?.stretches.filter(({ edge }) => edge === 'top') ?? []
  if (!top || others.length > 0 || !walk.round || walk.at > 0 || !atSeam.test(words)) return
  if (walk.choose('closed-by-seam', ['the last row is an edge of the piece', 'the last row is closed by the seam at which the round begins']) === 0) return
  const closed = new Set(top.places)
  walk.edge = walk.edge.filter((place) => !closed.has(place))
  walk.noneFrom.clear()
}
