import { nearest } from '../diagnostics/nearest.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PieceFacts } from './facts.ts'

/** A row for some sizes only names sizes that the pattern has; else nobody works it, and the count goes on without it. */
export function sizeUnknown({ source, entries, sizes }: PieceFacts): readonly Diagnostic[] {
  const known = new Set(sizes.map((size) => size.toLowerCase()))
  const named = entries.flatMap(({ label }) => (label?.onlySizes ?? []).map((name) => ({ name, from: label?.start ?? 0 })))
  return named.filter(({ name }) => !known.has(name.toLowerCase())).map(({ name, from }): Diagnostic => {
    const start = Math.max(from, source.text.indexOf(name, from))
    const meant = nearest(name, sizes)
    return {
      code: 'size-unknown',
      message: `\`${name}\` is no size of this pattern`,
      primary: { span: { start, end: start + name.length }, text: 'no such size' },
      secondary: [],
      ...(meant && { hint: { text: `did you mean \`${meant}\`?` } }),
      note: sizes.length > 1 ? `the sizes are ${sizes.join(', ')}` : 'the pattern has one size',
    }
  })
}
