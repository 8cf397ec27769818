import type { Reader } from './reader.ts'

/** `sc to the stitch before the marker, 2 sc in that one`: the stitches before end short of it. */
export function beforeMarker(reader: Reader): boolean {
  const said = reader.all.slice(0, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
  return /\bbefore (?:the )?(?:\w+ )?(?:marker|m) [,;] [^,;]*$/.test(said)
}
