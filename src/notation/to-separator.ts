import type { Reader } from './reader.ts'

/** As far as the clause goes, and no farther than `– 28 sc`: a number behind a dash may be what the row comes to. */
export function toSeparator(reader: Reader): void {
  while (!reader.done && reader.peek()?.kind !== 'mark' && !/^[,;.:()[\]{}]$/.test(reader.word()) && !/^fo$/i.test(reader.word()) && !isDashed(reader)) reader.at += 1
}

const isDashed = (reader: Reader): boolean => /^[–—]$/.test(reader.word()) && reader.peek(1)?.kind === 'number'
