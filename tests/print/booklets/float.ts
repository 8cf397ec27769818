import type { Booklet, PartLine, RowLine, Run } from '../../../src/booklet/booklet.ts'

/** `*` to `;` as a repeat, as a booklet gives it. */
export function runs(text: string): readonly Run[] {
  const found = /^(.*?)(\*[^*]*;)(.*)$/s.exec(text)
  if (!found) return [{ text, repeat: false }]
  return [
    { text: found[1] ?? '', repeat: false },
    { text: found[2] ?? '', repeat: true },
    { text: found[3] ?? '', repeat: false },
  ].filter((run) => run.text !== '')
}

type RowGiven = { readonly label: string; readonly text: string; readonly stitches: readonly string[] } & Partial<Omit<RowLine, 'text' | 'label' | 'stitches' | 'kind'>>

/** A row line with the usual left empty. */
export function row(piece: string, given: RowGiven): RowLine {
  return {
    kind: 'row', id: `${piece}-${given.label}`, boxes: [given.label], repeats: '', change: '', spaces: '', progress: 0, ...given,
    text: runs(given.text),
  }
}

const grow = Array.from({ length: 6 }, (_, at) => row('ball', {
  label: String(at + 3),
  text: `*Sc in next ${at === 0 ? 'st' : `${at + 1}\u00a0sts`}, inc; rep from\u00a0* around.`,
  repeats: '6\u00a0×', change: '+6', stitches: [String(18 + 6 * at)],
}))
const shrink = Array.from({ length: 6 }, (_, at) => row('ball', {
  label: String(at + 18),
  text: `*Sc in next ${at === 5 ? 'st' : `${6 - at}\u00a0sts`}, dec; rep from\u00a0* around.`,
  repeats: '6\u00a0×', change: '−6', stitches: [String(42 - 6 * at)],
}))

const ball: readonly PartLine[] = [
  row('ball', { label: '1', text: 'With A, make an adjustable ring; 6\u00a0sc in ring.', stitches: ['6'] }),
  row('ball', { label: '2', text: 'Inc in each st around.', change: '+6', stitches: ['12'] }),
  ...grow,
  row('ball', { label: '9–10', boxes: ['9', '10'], text: 'Sc in each st around.', stitches: ['48'] }),
  row('ball', { label: '11–15', boxes: ['11', '12', '13', '14', '15'], text: 'Change to B. Sc in each st around.', stitches: ['48'] }),
  row('ball', { label: '16–17', boxes: ['16', '17'], text: 'Change to A; fasten off B. Sc in each st around.', stitches: ['48'] }),
  ...shrink.slice(0, 4),
  { kind: 'instruction', text: runs('Stuff firmly before you go on.') },
  ...shrink.slice(4),
  row('ball', { label: '24', text: 'Dec around.', change: '−6', stitches: ['6'] }),
  { kind: 'instruction', text: runs('Fasten off; draw the tail through the last 6\u00a0sts and pull the ring shut.') },
]

const becket: readonly PartLine[] = [
  row('becket', { label: '1', side: 'RS', text: 'Sc in 2nd ch from hook and in each ch across.', stitches: ['24'] }),
  row('becket', { label: '2', side: 'WS', text: 'Ch\u00a01, turn. Sc in each st across.', stitches: ['24'] }),
  row('becket', { label: '3', side: 'RS', text: 'Ch\u00a01, turn. *Sc in next 5\u00a0sts, inc; rep from\u00a0* across.', repeats: '4\u00a0×', change: '+4', stitches: ['28'] }),
  row('becket', { label: '4', side: 'WS', text: 'Ch\u00a01, turn. *Sc in next 5\u00a0sts, dec; rep from\u00a0* across.', repeats: '4\u00a0×', change: '−4', stitches: ['24'] }),
]

/** A net float in rounds with a becket in rows: 6 + 12 + 18 + … is what its rows make, worked by hand. */
export const float: Booklet = {
  slug: 'float',
  title: 'Float',
  number: 14,
  summary: 'A net float in two colours, worked in rounds, with a becket to hang it by',
  publisher: 'Saltmarsh Yarnworks',
  version: '1.2',
  date: '2027-03-14',
  dateText: '14\u00a0March 2027',
  terms: 'US',
  sizes: [],
  facts: [
    { label: 'Makes', value: 'One ball and one becket' },
    { label: 'Size', value: '9.5\u00a0cm (3¾\u00a0in) across; becket 7.5\u00a0cm (3\u00a0in) long' },
    { label: 'Yarn', value: 'Worsted, two colours: A\u00a025\u00a0m, B\u00a015\u00a0m' },
    { label: 'Hook', value: '4\u00a0mm (US G-6)' },
    { label: 'Gauge', value: '16\u00a0sts and 16\u00a0rounds = 10\u00a0cm (4\u00a0in)' },
    { label: 'Worked', value: 'In a spiral, right side out; becket in rows' },
    { label: 'You need', value: 'Sc, inc, dec, adjustable ring' },
    { label: 'Length', value: '24\u00a0rounds and 4\u00a0rows; 916\u00a0stitches' },
  ],
  materials: [
    { kind: 'yarn', item: 'Yarn A, rust', make: 'Worsted, 100\u00a0g = 200\u00a0m', for: 'Ball, Rounds 1–10 and 16–24', amount: ['25\u00a0m'], weight: '13\u00a0g' },
    { kind: 'yarn', item: 'Yarn B, chalk', make: 'Worsted, 100\u00a0g = 200\u00a0m', for: 'Ball, Rounds 11–15, and the becket', amount: ['15\u00a0m'], weight: '8\u00a0g' },
    { kind: 'total', item: 'Yarn in all', for: 'With one tenth to spare', amount: ['40\u00a0m'], weight: '21\u00a0g' },
    { kind: 'tool', item: 'Hook, 4\u00a0mm (US G-6)', for: 'Or the size that gives the gauge', amount: ['1'], weight: '' },
    { kind: 'tool', item: 'Toy stuffing', for: 'Ball', amount: [], weight: '45\u00a0g' },
    { kind: 'tool', item: 'Stitch marker', for: 'First stitch of the round', amount: ['1'], weight: '' },
    { kind: 'tool', item: 'Yarn needle', for: 'Ends, and the closing ring', amount: ['1'], weight: '' },
  ],
  gauge: {
    paragraphs: [
      '16\u00a0sc and 16\u00a0rounds = 10\u00a0cm (4\u00a0in). The cloth should be firm enough that no stuffing shows.',
      'Lay your swatch on the window. Eight stitches and eight rounds fill it when your print is full size and your gauge is right. More than eight: take a larger hook. Fewer: a smaller one.',
    ],
    window: { stitches: 8, rows: 8, label: '5\u00a0cm, 8\u00a0stitches' },
  },
  abbreviations: [
    { kind: 'stitch', us: 'ch', uk: 'ch', meaning: 'chain' },
    { kind: 'stitch', us: 'sc', uk: 'dc', meaning: 'hook in, draw up a loop, yarn over, draw through both loops' },
    { kind: 'stitch', us: 'inc', uk: 'inc', meaning: '2\u00a0sc (UK 2\u00a0dc) in one stitch' },
    { kind: 'stitch', us: 'dec', uk: 'dec', meaning: 'the next 2\u00a0sts worked together as one' },
    { kind: 'word', us: 'st, sts', uk: 'st, sts', meaning: 'stitch, stitches' },
    { kind: 'word', us: 'rep', uk: 'rep', meaning: 'repeat' },
    { kind: 'word', us: 'RS', uk: 'RS', meaning: 'right side, the side you show' },
    { kind: 'word', us: 'WS', uk: 'WS', meaning: 'wrong side' },
    { kind: 'sign', us: '* … ;', uk: '* … ;', meaning: 'the part to repeat; it is underlined' },
  ],
  specialStitches: [],
  cautions: ['The ball is an ornament, not a toy. Keep it from children under three.'],
  key: grow[3] as RowLine,
  parts: [
    { number: 1, name: 'The ball', line: 'Make 1. In a spiral; move the marker up each round.', counting: 'Round', sides: false, lines: ball },
    { number: 2, name: 'The becket', line: 'Make 1. In rows, with B. Ch\u00a025.', counting: 'Row', sides: true, lines: becket },
  ],
  before: [],
  after: [
    {
      heading: 'Finishing',
      blocks: [
        { kind: 'paragraph', inlines: [{ text: 'Fold the becket in half along its length and whip it shut. Sew both ends over ', strong: false, emphasis: false }, { text: 'Round 1', strong: true, emphasis: false }, { text: ' so that the ring does not show.', strong: false, emphasis: false }] },
        { kind: 'list', ordered: true, items: [
          [{ kind: 'paragraph', inlines: [{ text: 'Weave in the ends.', strong: false, emphasis: false }] }],
          [{ kind: 'paragraph', inlines: [{ text: 'Hang the float where it is seen, ', strong: false, emphasis: false }, { text: 'not', strong: false, emphasis: true }, { text: ' where it is stepped on.', strong: false, emphasis: false }] }],
        ] },
      ],
    },
  ],
  credits: ['Hook sizes: the table of the yarn trade council, 2024.'],
}
