import type { Label } from '../../../src/diagnostics/diagnostic.ts'
import type { Source } from '../../../src/text/source.ts'

/** A source whose given lines begin at a line number (1-based); the lines before them are empty. */
export function sourceFrom(path: string, firstLine: number, lines: readonly string[]): Source {
  return { path, text: '\n'.repeat(firstLine - 1) + lines.join('\n') }
}

/** A label on the first place where these words stand, or on the first one after another text. */
export function labelOn(source: Source, words: string, text: string, after = ''): Label {
  const from = source.text.indexOf(after)
  const start = source.text.indexOf(words, from + after.length)
  if (from === -1 || start === -1) throw new Error(`the source has no \`${words}\``)
  return { span: { start, end: start + words.length }, text }
}
