import { visit } from 'unist-util-visit'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A picture that says nothing to those who do not see it. */
export function pictureWithoutWords({ pattern }: SenseFacts): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  visit(pattern.body, ['image', 'imageReference'], (node) => {
    const start = node.position?.start.offset
    const end = node.position?.end.offset
    if (start === undefined || end === undefined || ('alt' in node && typeof node.alt === 'string' && node.alt.trim() !== '')) return
    found.push({ code: 'picture-without-words', message: 'a picture has no words for those who do not see it', primary: { span: { start, end }, text: 'nothing between [ and ]' }, secondary: [] })
  })
  return found
}
