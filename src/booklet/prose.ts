import { toString } from 'mdast-util-to-string'
import type { CountedPiece } from '../measures/count-references.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { Block, Section } from './booklet.ts'
import { blocksOf } from './prose-blocks.ts'
import { typeset } from './typeset.ts'

/** The prose of a pattern, before and after its parts. */
export interface Prose {
  readonly before: readonly Section[]
  readonly after: readonly Section[]
}

/** The heading that prose has when it begins without one. */
const opening = 'About this pattern'

/** What is done once the pieces are made: from the first of these headings on, prose follows the parts. */
const afterwards = /^(?:assembly|finishing|making up|joining|sewing up|blocking|care|to finish|to make up|layout)\b/i

/** The Markdown body as sections, cut at the first heading that speaks of finishing. */
export function proseOf(pattern: Pattern, pieces: readonly CountedPiece[]): Prose {
  const setting = { source: pattern.source.text, pieces }
  const sections: { readonly heading: string; readonly blocks: Block[] }[] = []
  for (const node of pattern.body.children) {
    if (node.type === 'heading' && node.depth <= 2) {
      sections.push({ heading: typeset(toString(node)), blocks: [] })
      continue
    }
    const blocks = blocksOf(node, setting)
    if (blocks.length > 0 && sections.length === 0) sections.push({ heading: opening, blocks: [] })
    sections.at(-1)?.blocks.push(...blocks)
  }
  const cut = sections.findIndex(({ heading }) => afterwards.test(heading))
  return cut === -1 ? { before: sections, after: [] } : { before: sections.slice(0, cut), after: sections.slice(cut) }
}

/** All words of the sections in one string, for those who look for words in them. */
export function proseText({ before, after }: Prose): string {
  return [...before, ...after].flatMap(({ heading, blocks }) => [heading, ...blocks.map(blockText)]).join('\n')
}

function blockText(block: Block): string {
  return block.kind === 'list'
    ? block.items.flatMap((blocks) => blocks.map(blockText)).join('\n')
    : block.inlines.map(({ text }) => text).join('')
}
