import type { Element, ElementContent, Root } from 'hast'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { SKIP, visit } from 'unist-util-visit'
import { rowsElement } from './help-rows.ts'

const toHtml = unified().use(remarkParse).use(remarkGfm).use(remarkRehype).use(dressFences).use(rehypeStringify)

/** A help page's Markdown as HTML. Rows stand as rows, with what is wrong underlined; reports stand as they are printed. */
export function helpHtml(markdown: string): string {
  return String(toHtml.processSync(markdown.replace(/^---\r?\n[\s\S]*?\r?\n---\r?\n/, '')))
}

/** Turns fences into what a reader of the page needs. Everything that may be wider than a phone can be reached with the keyboard. */
function dressFences() {
  return (tree: Root): void => {
    visit(tree, 'element', (element, index, parent) => {
      if (element.tagName !== 'pre' || !parent || index === undefined) return undefined
      const { language, text } = fence(element)
      parent.children[index] = language === 'rows' ? rowsElement(text) : frameElement(language, text)
      return SKIP
    })
    visit(tree, 'element', (element, index, parent) => {
      if (element.tagName !== 'table' || !parent || index === undefined) return undefined
      parent.children[index] = { ...scrolling('Table'), children: [element] }
      return SKIP
    })
    // A reader of screens tells regions apart by their names.
    const named = new Map<unknown, number>()
    visit(tree, 'element', ({ properties }) => {
      if (properties.role !== 'region') return
      const before = named.get(properties.ariaLabel) ?? 0
      named.set(properties.ariaLabel, before + 1)
      if (before > 0) properties.ariaLabel = `${String(properties.ariaLabel)} ${before + 1}`
    })
  }
}

function fence(pre: Element): { readonly language: string; readonly text: string } {
  const [code] = pre.children
  if (code?.type !== 'element') return { language: '', text: '' }
  const classes = code.properties.className
  const language = Array.isArray(classes) ? String(classes[0] ?? '').replace('language-', '') : ''
  return { language, text: textIn(code.children).replace(/\n$/, '') }
}

function textIn(children: readonly ElementContent[]): string {
  return children.map((child) => (child.type === 'text' ? child.value : child.type === 'element' ? textIn(child.children) : '')).join('')
}

function frameElement(language: string, text: string): Element {
  const name = language === 'report' ? 'What the report says' : language === 'pattern' ? 'A pattern file' : 'Text to type'
  // Carets must stay under their letters; a file without them runs over like any text.
  if (language === 'pattern' && !/^ *\^/m.test(text)) return { type: 'element', tagName: 'pre', properties: { className: ['wraps'] }, children: text.split('\n').map(line) }
  return { ...scrolling(name, 'pre'), children: [{ type: 'text', value: text }] }
}

const line = (value: string): Element => ({ type: 'element', tagName: 'span', properties: {}, children: [{ type: 'text', value }] })

function scrolling(name: string, tagName = 'div'): Element {
  return { type: 'element', tagName, properties: { className: ['wide'], tabIndex: 0, role: 'region', ariaLabel: name }, children: [] }
}
