import type { Reader } from './reader.ts'

/** Takes the name of one of the pattern's pieces, with or without `the`. */
export function takePieceName(reader: Reader): string | undefined {
  const at = reader.at
  reader.take('the')
  for (const name of reader.vocabulary.pieces) {
    if (reader.take(...name.toLowerCase().split(/\s+/).map((word) => word.replaceAll('|', '')))) return name
  }
  reader.at = at
  return undefined
}
