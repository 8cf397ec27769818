import type { List, Nodes, PhrasingContent, RootContent, Table } from 'mdast'
import { toString } from 'mdast-util-to-string'
import { referredCount, type CountedPiece } from '../measures/count-references.ts'
import type { Block, Inline } from './booklet.ts'
import { figure, perSize } from './figures.ts'
import { typeset } from './typeset.ts'

/** What the prose is read with: the file it stands in, and the pieces whose counts it may name. */
export interface ProseSetting {
  readonly source: string
  readonly pieces: readonly CountedPiece[]
}

interface Style {
  readonly strong: boolean
  readonly emphasis: boolean
  readonly href?: string
}

const plain: Style = { strong: false, emphasis: false }

/** A Markdown node as the blocks that print and page can set. What has no words is left out. */
export function blocksOf(node: RootContent, setting: ProseSetting): readonly Block[] {
  switch (node.type) {
    case 'paragraph': return paragraph('paragraph', node.children, setting)
    case 'heading': return paragraph('subheading', node.children, setting)
    case 'list': return [list(node, setting)]
    case 'blockquote': return node.children.flatMap((child) => blocksOf(child, setting))
    case 'table': return [table(node, setting)]
    case 'code': return [{ kind: 'paragraph', inlines: [{ text: node.value, strong: false, emphasis: false }] }]
    default: return []
  }
}

function paragraph(kind: 'paragraph' | 'subheading', children: readonly PhrasingContent[], setting: ProseSetting): readonly Block[] {
  const inlines = merged(children.flatMap((child) => inlinesOf(child, plain, setting)))
  return inlines.length === 0 ? [] : [{ kind, inlines }]
}

function list(node: List, setting: ProseSetting): Block {
  const items = node.children.map((item) => item.children.flatMap((child) => blocksOf(child, setting)))
  return { kind: 'list', ordered: node.ordered === true, items }
}

/** A table reads as a list, each row with the heads of its columns: so it reads in one column, and aloud, as well. */
function table({ children: [head, ...rows] }: Table, setting: ProseSetting): Block {
  const heads = (head?.children ?? []).map((cell) => toString(cell))
  const items = rows.map((row) => paragraph('paragraph', row.children.flatMap((cell, column): PhrasingContent[] => [
    { type: 'text', value: `${column === 0 ? '' : '; '}${heads[column] ?? ''}${heads[column] ? ': ' : ''}` }, ...cell.children,
  ]), setting))
  return { kind: 'list', ordered: false, items }
}

function inlinesOf(node: Nodes, style: Style, setting: ProseSetting): readonly Inline[] {
  switch (node.type) {
    case 'text':
    case 'inlineCode': return [words(node.value, style, setting)]
    case 'break': return [{ text: ' ', ...style }]
    case 'strong': return within(node, { ...style, strong: true }, setting)
    case 'emphasis': return within(node, { ...style, emphasis: true }, setting)
    case 'link': return within(node, { ...style, href: node.url }, setting)
    case 'image': return [words(node.alt ?? '', style, setting)]
    case 'html': return []
    default: return isDirective(node) ? directive(node, style, setting) : within(node, style, setting)
  }
}

function within(node: Nodes, style: Style, setting: ProseSetting): readonly Inline[] {
  return 'children' in node ? node.children.flatMap((child) => inlinesOf(child, style, setting)) : []
}

type Directive = Nodes & { readonly name: string }

function isDirective(node: Nodes): node is Directive {
  return (node.type as string).endsWith('Directive') && 'name' in node
}

/** `:count[…]` is the only directive that a pattern has; what else looks like one was meant as text. */
function directive(node: Directive, style: Style, setting: ProseSetting): readonly Inline[] {
  if (node.name === 'count') return [{ text: count(toString(node), setting), ...style }]
  const written = setting.source.slice(node.position?.start.offset ?? 0, node.position?.end.offset ?? 0)
  return [{ text: typeset(written), ...style }]
}

function words(value: string, style: Style, setting: ProseSetting): Inline {
  const counted = value.replace(/:count\[([^\]]*)\]/g, (_, reference: string) => count(reference, setting))
  return { text: typeset(counted.replace(/\s+/g, ' ')), ...style }
}

/** A reference that leads nowhere is a diagnostic of the check; should one be printed all the same, it does not pass for a number. */
function count(reference: string, { pieces }: ProseSetting): string {
  const is = referredCount(reference, pieces)
  return 'counts' in is ? perSize(is.counts.map(figure)) : '?'
}

/** Neighbours that look the same become one, so that a number and the word after it stay together. */
function merged(inlines: readonly Inline[]): readonly Inline[] {
  const runs: Inline[] = []
  for (const inline of inlines) {
    const last = runs.at(-1)
    if (last && last.strong === inline.strong && last.emphasis === inline.emphasis && last.href === inline.href) {
      runs[runs.length - 1] = { ...last, text: typeset(last.text + inline.text) }
    } else if (inline.text !== '') runs.push(inline)
  }
  return runs
}
