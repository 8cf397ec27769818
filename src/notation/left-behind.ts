import { takeBetween } from './between-parts.ts'
import type { Draft } from './parse-tail.ts'
import { takeWhereabouts } from './parse-where.ts'
import type { Reader } from './reader.ts'

/** `12 sts left unworked at the front neck`, `the st that was skipped at center back`, `the stitch left between the two halves`: how it came to lie there, and where. */
export function takeLeftBehind(reader: Reader, draft: Draft): void {
  if (draft.thing?.kind !== 'stitch') return
  const { at } = reader
  reader.take('that|which', 'was|were|is|are|you')
  const clause = /^(?:was|were|is|are|you)$/.test(reader.word(-1))
  if (!reader.take('left|skipped|missed')) {
    reader.at = at
    return
  }
  const skipped = reader.word(-1) !== 'left'
  const free = !skipped && reader.take('unworked|free|unused|open')
  const where = takeBetween(reader) || takeWhereabouts(reader) !== undefined
  if (!clause && !free && !where || !endsHere(reader)) reader.at = at
  else if (skipped && draft.walk === 'next') draft.walk = 'skipped'
}

const endsHere = (reader: Reader): boolean => reader.done || /^(?:[,.;:()\]]|and|then)$/.test(reader.word())
