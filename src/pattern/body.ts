import type { Root } from 'mdast'
import remarkDirective from 'remark-directive'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import { unified, type Processor } from 'unified'
import { visit } from 'unist-util-visit'
import { placeOf, type Source } from '../text/source.ts'

/**
 * Reads the Markdown body. Its places are those of the whole file, and `:count[Front row 4]` is a directive of its own, for the
 * booklet to fill. Undefined when the prose is nested too deep to be read.
 */
export function readBody(source: Source, start: number): Root | undefined {
  const text = source.text.slice(start)
  if (deep.test(text)) return undefined
  try {
    const body = markdown.parse(text)
    moveTo(body, { source, start })
    return body
  } catch (error) {
    // Reading goes as deep as the quotes and lists are nested, and the stack has an end.
    if (error instanceof RangeError) return undefined
    throw error
  }
}

// A hundred quotes or lists inside one another: reading them takes longer with each, and no prose has them.
const deep = /^[ \t]*(?:(?:>[ \t]*|(?:[-*+]|\d{1,9}[.)])[ \t]+)){100}/m

const markdown = unified().use(remarkParse).use(remarkGfm).use(countDirectives).freeze()

/** The parts of a Markdown extension that say where it can begin. */
interface Extension {
  readonly text?: unknown
}

/** Directives within a line only: a line of colons is prose, and fences of colons inside one another take very long to read. */
function countDirectives(this: Processor): void {
  remarkDirective.call(this)
  const extensions: Extension[] = (this.data() as { micromarkExtensions?: Extension[] }).micromarkExtensions ?? []
  extensions.push({ text: extensions.pop()?.text })
}

function moveTo(body: Root, { source, start }: { readonly source: Source; readonly start: number }): void {
  const { line: firstLine, column: firstColumn } = placeOf(source, start)
  const move = (point: { line: number; column: number; offset?: number | undefined }): void => {
    if (point.line === 1) point.column += firstColumn - 1
    point.line += firstLine - 1
    if (point.offset !== undefined) point.offset += start
  }
  const moved = new Set<object>()
  visit(body, (node, index, parent) => {
    if (!node.position) return
    // Nodes may share a point, which moves once.
    for (const point of [node.position.start, node.position.end]) {
      if (!moved.has(point)) move(point)
      moved.add(point)
    }
    if (node.type === 'textDirective' && node.name !== 'count' && parent && index !== undefined) {
      const value = source.text.slice(node.position.start.offset, node.position.end.offset)
      parent.children[index] = { type: 'text', value, position: node.position }
    }
  })
}

