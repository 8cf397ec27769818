import type { Reader } from './reader.ts'

/** Nothing more is said of a place: the row, a clause or a bracket ends, or other work begins. `also` are further words that may follow it. */
export function placeEnds(reader: Reader, ...also: readonly string[]): boolean {
  return reader.done || /^(?:[,.;:()[\]]|\*+|and|then)$/.test(reader.word()) || also.includes(reader.word())
}
