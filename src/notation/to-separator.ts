import type { Reader } from './reader.ts'

/** As far as the clause goes. */
export function toSeparator(reader: Reader): void {
  while (!reader.done && reader.peek()?.kind !== 'mark' && !/^[,;.:()[\]{}]$/.test(reader.word())) reader.at += 1
}
