import { visit } from 'unist-util-visit'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { textOf } from '../../text/source.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A repeat in the prose whose stars Markdown takes for its own: the words lean, or become a list, and the stars are gone. */
export function starReadAsMark({ pattern }: SenseFacts): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  visit(pattern.body, ['emphasis', 'strong', 'listItem'], (node) => {
    const start = node.position?.start.offset
    const end = node.position?.end.offset
    if (start === undefined || end === undefined) return
    const text = textOf(pattern.source, { start, end })
    const eaten = node.type === 'listItem' ? /^\*\s.*\brep(?:eat)?\s+from\s+\*/is.test(text) : text.startsWith('*') && /^[;,:.)\s]*(?:rep(?:eat)?|twice|\d+ times)\b/i.test(pattern.source.text.slice(end, end + 24))
    if (!eaten) return
    const line = text.split('\n')[0]!
    found.push({
      code: 'star-read-as-mark',
      message: `the star of a repeat is read as a mark of ${node.type === 'listItem' ? 'a list' : 'stress'}, and is not printed`,
      primary: { span: { start, end: start + line.length }, text: node.type === 'listItem' ? 'becomes an item of a list' : 'is set leaning, without its stars' },
      secondary: [],
      note: 'a backslash before it, `\\*`, makes it a star again',
    })
  })
  return found
}
