import type { Reader } from './reader.ts'

/** `sc to the stitch before the marker, 2 sc in that one`, `sc to the middle st of the next corner, 3 sc in that st`: the stitches before end short of it. */
export function beforeMarker(reader: Reader): boolean {
  const said = reader.all.slice(0, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
  if (/\b(?:to|until|before) (?:the )?(?:[a-z]+ ){0,6}corner(?: (?:st|stitch|sc|hdc|dc|tr))?,? ?(?:[,;] )?(?:(?:and|then|work) )*\S+ \S+ (?:in|into) (?:that|this) [a-z ]*$/.test(said.replaceAll(' ,', ','))) return true
  return /\bbefore (?:the )?(?:\w+ )?(?:marker|m) [,;] [^,;]*$/.test(said)
}
