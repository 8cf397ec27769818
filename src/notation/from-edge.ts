import type { Reader } from './reader.ts'

/** `from the right-hand edge`, `in from right edge`, `, counting from the right`: from where stitches are told off. Takes it and says so. */
export function takeFromEdge(reader: Reader): boolean {
  const { at } = reader
  if (reader.take(',?', 'counted|counting|when?', 'counted|counting?', 'in?', 'from', 'the?')) {
    const hand = reader.take('right|bottom|beginning|start', '-?', 'hand?', 'side?')
    if (reader.take('edge|end|side|corner|selvedge|selvage|beginning|start') || hand) return true
  }
  reader.at = at
  return false
}

/** `at the right edge`, `from right-hand edge`, `in from the right`: where the stitches lie that come first. */
export function takeAtFirstEdge(reader: Reader): boolean {
  if (takeFromEdge(reader)) return true
  const { at } = reader
  if (reader.take('at|on', 'the?')) {
    const hand = reader.take('right|beginning|start', '-?', 'hand?')
    if (reader.take('edge|end|side') && hand || hand && /^of$/.test(reader.word())) return true
  }
  reader.at = at
  return false
}
