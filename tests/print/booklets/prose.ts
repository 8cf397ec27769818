import type { Block, Booklet, Inline } from '../../../src/booklet/booklet.ts'
import { float } from './float.ts'

const plain = (text: string): Inline => ({ text, strong: false, emphasis: false })
const paragraph = (...inlines: readonly Inline[]): Block => ({ kind: 'paragraph', inlines })
const long = 'Tie the ends of the net to the headline with a clove hitch, four meshes apart, and pull each knot down before you go on to the next. '

/** The float with prose of every kind: heads, lists in lists, links, words longer than a page has lines for. */
export const prose: Booklet = {
  ...float,
  after: [
    {
      heading: 'Finishing',
      blocks: [
        paragraph(plain('Ask the '), { ...plain('harbour office'), href: 'https://saltmarsh.example/office?a=1&b=2' }, plain(' or write to '), { ...plain('ropes@saltmarsh.example'), href: 'mailto:ropes@saltmarsh.example' }, plain('. See also '), { ...plain('the help page'), href: '/help/' }, plain('.')),
        { kind: 'subheading', inlines: [plain('The headline')] },
        { kind: 'list', ordered: true, items: [
          [paragraph(plain(long)), { kind: 'list', ordered: false, items: [[paragraph(plain('left side first,'))], [paragraph(plain('then the right.'))]] }],
          [paragraph(plain('Rest.'))],
          [],
        ] },
        { kind: 'subheading', inlines: [plain('The '), { ...plain('whole'), emphasis: true }, plain(' net')] },
        ...Array.from({ length: 14 }, () => paragraph(plain(long.repeat(4).trim()))),
      ],
    },
  ],
}
