import type { Nodes } from 'mdast'
import { visit } from 'unist-util-visit'
import { describe, expect, test } from 'vitest'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { placeOf } from '../../../src/text/source.ts'
import { found, smallWith, sourceOf } from './made-up-files.ts'

/** The body of a small file whose front-matter ends in line 8, so that its own first line is line 9. */
function bodyOf(prose: string, from = smallWith()) {
  const source = sourceOf(from + prose)
  const body = readPattern(source).pattern!.body
  const nodes: Nodes[] = []
  visit(body, (node) => void nodes.push(node))
  return { source, nodes, body }
}

describe('prose', () => {
  const prose = 'Work *loosely*.\n\n## Notes\n\n- one\n- two :count[Disc row 1] sts\n\n| a | b |\n| - | - |\n| 1 | 2 |\n'

  test.each([['as it is', smallWith(), prose], ['with line ends of Windows', smallWith().replaceAll('\n', '\r\n'), prose.replaceAll('\n', '\r\n')]])('%s has the places of the file', (_, front, written) => {
    const { source, nodes } = bodyOf(written, front)
    for (const { position } of nodes) {
      expect(placeOf(source, position!.start.offset!)).toEqual({ line: position!.start.line, column: position!.start.column })
      expect(placeOf(source, position!.end.offset!)).toEqual({ line: position!.end.line, column: position!.end.column })
    }
    const texts = nodes.filter((node) => node.type === 'text').map(({ value, position }) => [value, source.text.slice(position!.start.offset, position!.end.offset)])
    expect(texts.map(([value]) => value)).toEqual(texts.map(([, written]) => written))
    expect(nodes.find(({ type }) => type === 'heading')?.position?.start).toMatchObject({ line: 11, column: 1 })
  })

  test('keeps :count[…] as a directive in its place', () => {
    const { source, nodes } = bodyOf(prose)
    const counts = nodes.filter((node) => node.type === 'textDirective')
    expect(counts.map(({ name, position }) => [name, position!.start.line, position!.start.column, source.text.slice(position!.start.offset, position!.end.offset)]))
      .toEqual([['count', 14, 7, ':count[Disc row 1]']])
  })

  test('has tables', () => {
    expect(bodyOf(prose).nodes.filter(({ type }) => type === 'tableCell')).toHaveLength(4)
  })

  // Words with a colon are prose: `Row 4:dc`, `10:30`, a line of colons.
  test('with other colons stays prose, word for word', () => {
    const { source, nodes } = bodyOf('Row 4:dc at 10:30, :see[this] and :that{x=y}.\n\n::leaf\n\n:::fence\nwords\n:::\n')
    expect(nodes.filter(({ type }) => /directive/i.test(type))).toEqual([])
    const texts = nodes.filter((node) => node.type === 'text')
    expect(texts.map(({ value }) => value).join('')).toBe('Row 4:dc at 10:30, :see[this] and :that{x=y}.::leaf:::fence\nwords\n:::')
    for (const { value, position } of texts) expect(source.text.slice(position!.start.offset, position!.end.offset)).toBe(value)
  })

  test('nested deeper than any prose is told, and the pattern is still there', () => {
    expect(found(smallWith() + '>'.repeat(20_000))).toEqual(['file-unreadable 9:1-1'])
    expect(found(smallWith() + '1. '.repeat(20_000))).toEqual(['file-unreadable 9:1-1'])
    expect(found(`${smallWith()}> > > deep\n\n${'-'.repeat(300)}\n`)).toEqual([])
    expect(bodyOf('>'.repeat(20_000)).body.children).toEqual([])
  })

  test('may be missing', () => {
    expect(bodyOf('').body.children).toEqual([])
  })
})
