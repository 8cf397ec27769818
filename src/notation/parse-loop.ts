import type { Reader } from './reader.ts'

/** `in the back loop only of`, `BLO`, `in front lps of`. */
export function takeLoop(reader: Reader, draft: { loop?: 'back' | 'front' | 'third' | 'free' }): void {
  const at = reader.at
  reader.take('the')
  const side = reader.take('blo|bl|tbl|blps') ? 'back' : reader.take('flo|fl|tfl') ? 'front'
    : reader.take('back|rear', 'loop|loops|lp|lps') ? 'back' : reader.take('front', 'loop|loops|lp|lps') ? 'front'
    : reader.take('third|3rd', 'loop|loops|lp|lps') ? 'third' : reader.take('back', 'bump|bumps|hump|humps|bar|bars') ? 'third' : undefined
  if (!side) {
    reader.at = at
    return
  }
  reader.take('only')
  draft.loop = side
}
