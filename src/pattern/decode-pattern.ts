/** The text of a pattern file, or why it has none. */
export type Decoded = { readonly text: string } | { readonly reason: string }

// A byte order mark stays in the text, so that offsets are those of the file.
const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })

/** Reads the bytes of a file as UTF-8. Nothing is guessed: a text that is not UTF-8 is refused, with the line where it shows. */
export function decodePattern(bytes: Uint8Array): Decoded {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    return { reason: 'the file is saved as UTF-16, but a pattern is read as UTF-8' }
  }
  const text = decoded(bytes)
  if (text === undefined) {
    return { reason: `line ${firstForeignLine(bytes)} holds bytes that are not UTF-8: the file was saved in another encoding` }
  }
  return { text }
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    return strict.decode(bytes)
  } catch {
    return undefined
  }
}

/** A line end is never part of another letter in UTF-8, so each line can be tried alone. */
function firstForeignLine(bytes: Uint8Array): number {
  let line = 1
  for (let start = 0; start < bytes.length; line += 1) {
    const end = bytes.indexOf(10, start)
    const stop = end === -1 ? bytes.length : end
    if (decoded(bytes.subarray(start, stop)) === undefined) break
    start = stop + 1
  }
  return line
}
