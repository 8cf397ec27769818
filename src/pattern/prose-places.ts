import type { Span } from '../text/span.ts'
import type { Pattern } from './pattern.ts'

/** Where the pattern's prose stands: its sentences in the front-matter, and the body cut at its headings. */
export function prosePlaces({ places, body }: Pattern): readonly Span[] {
  const said = [...places].filter(([path]) => /^summary$|^stitches\.\d+\.how$|^pieces\.\d+\.note$/.test(path)).map(([, span]) => span)
  const sections: Span[] = []
  for (const node of body.children) {
    const start = node.position?.start.offset
    const end = node.position?.end.offset
    if (start === undefined || end === undefined) continue
    const last = sections.at(-1)
    if (last && node.type !== 'heading') sections[sections.length - 1] = { start: last.start, end }
    else sections.push({ start, end })
  }
  return [...said, ...sections]
}
