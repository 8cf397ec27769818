import type { Reader } from './reader.ts'

/** `sc to the stitch before the marker, 2 sc in that one`, `sc to the middle st of the next corner, 3 sc in that st`: the stitches before end short of it. */
export function beforeMarker(reader: Reader): boolean {
  const said = reader.all.slice(0, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
  if (/\b(?:to|until|before) (?:the )?(?:[a-z]+ ){0,6}corner(?: (?:st|stitch|sc|hdc|dc|tr))?,? ?(?:[,;] )?(?:(?:and|then|work) )*\S+ \S+ (?:in|into) (?:that|this) [a-z ]*$/.test(said.replaceAll(' ,', ','))) return true
  return /\bbefore (?:the )?(?:\w+ )?(?:marker|m) [,;] [^,;]*$/.test(said)
}

/** `sc in each sc until 1 remains, 3 sc in it`: the one that was kept back. */
export function behindKept(reader: Reader): boolean {
  const words = Array.from({ length: 9 }, (_, back) => reader.word(-back - 1))
  const clause = words.findIndex((word) => /^[,;.]$/.test(word))
  return clause > 0 && /^(?:remains?|rem|remaining|left)$/.test(words[clause + 1] ?? '')
}
