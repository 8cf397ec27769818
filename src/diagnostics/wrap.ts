import stringWidth from 'string-width'

/** Words on lines of at most so many columns, parted at spaces; a word that is wider has a line of its own. The first line may be shorter. */
export function wrapped(text: string, width: number, first = width): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    const room = lines.length === 0 ? first : width
    if (line !== '' && stringWidth(line) + 1 + stringWidth(word) > room) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}

/** Words cut in their middle to at most so many columns. */
export function shortened(text: string, width: number): string {
  if (stringWidth(text) <= width) return text
  const half = Math.max(4, Math.floor((width - 3) / 2))
  return `${text.slice(0, half).replace(/\s+\S{0,6}$/, '').trimEnd()} … ${text.slice(-half).replace(/^\S{0,6}\s+/, '').trimStart()}`
}
