import type { Nodes, Root } from 'mdast'
import remarkGfm from 'remark-gfm'
import remarkStringify from 'remark-stringify'
import { unified } from 'unified'
import { visit } from 'unist-util-visit'
import { readBody } from '../../pattern/body.ts'
import { findFrontMatter } from '../../pattern/find-front-matter.ts'
import type { Span } from '../../text/span.ts'

/**
 * The prose of a pattern in one form of Markdown: bullets, headings, empty lines. The front-matter, rows and all, is not part of what is
 * replaced. Undefined where there is nothing to change, and where the prose would not be the same prose afterwards.
 */
export function formatProse(text: string): { readonly span: Span; readonly replacement: string } | undefined {
  const front = findFrontMatter(text)
  if (!front?.closed || text.slice(front.body).trim() === '') return undefined
  const body = readBody({ path: '', text }, front.body)
  if (!body) return undefined
  mergeTexts(body)
  const written = `\n${inForm(body, text)}`
  const span = { start: front.body, end: text.length }
  const again = readBody({ path: '', text: written }, 0)
  if (written === text.slice(span.start) || !again) return undefined
  mergeTexts(again)
  return shape(again) === shape(body) ? { span, replacement: written } : undefined
}

/** `:count[…]` and its like stand as they are written; all else is put in the form. */
function inForm(body: Root, text: string): string {
  const asWritten = (node: Nodes): string => text.slice(node.position?.start.offset, node.position?.end.offset)
  return unified()
    .use(remarkGfm)
    .use(remarkStringify, { bullet: '-', emphasis: '_', rule: '-', listItemIndent: 'one', fences: true, handlers: { textDirective: asWritten } })
    .stringify(body)
}

/** Texts beside one another as one, so that no sign at a seam is taken for a beginning. */
function mergeTexts(tree: Root): void {
  visit(tree, (node) => {
    if (!('children' in node)) return
    for (let at = node.children.length - 1; at > 0; at -= 1) {
      const [before, here] = [node.children[at - 1], node.children[at]]
      if (before?.type !== 'text' || here?.type !== 'text') continue
      before.value += here.value
      node.children.splice(at, 1)
    }
  })
}

/** A tree without the places of its parts and the air between them. */
function shape(tree: Root): string {
  return JSON.stringify(tree, (key, value: unknown) => (key === 'position' || key === 'spread' ? undefined : value))
}
