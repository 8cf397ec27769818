/** A text in which `\xE9` stands for the byte E9, as bytes. Everything else is UTF-8. */
export function escapedBytes(text: string): Uint8Array {
  const encoder = new TextEncoder()
  const parts = text.split(/\\x([0-9A-Fa-f]{2})/)
  return Uint8Array.from(parts.flatMap((part, index) => (index % 2 === 1 ? [Number.parseInt(part, 16)] : [...encoder.encode(part)])))
}
