import type { Booklet, PartLine } from '../../../src/booklet/booklet.ts'
import { float, row } from './float.ts'

const say = (sizes: readonly number[]) => `${sizes[0]}${sizes.length > 1 ? ` (${sizes.slice(1).join(', ')})` : ''}`
const names = ['Narrow', 'Wide', 'Wider', 'Widest', 'Quay']

/** A runner in rows whose width grows with the size: 48, 64, 80 … stitches, ribs of 8; a range of 114 rows; decreases of 2. */
export function gangway(count: number): Booklet {
  const sts = Array.from({ length: count }, (_, at) => 48 + 16 * at)
  const stitches = sts.map(String)
  const ribs = `${say(sts.map((n) => n / 8))}\u00a0×`
  const rows: readonly PartLine[] = [
    row('runner', { label: '1', side: 'RS', text: 'Sc in 2nd ch from hook and in each ch across.', stitches }),
    row('runner', { label: '2', side: 'WS', text: 'Ch\u00a01, turn. Sc in each st across.', stitches }),
    row('runner', { label: '3', side: 'RS', text: 'Ch\u00a01, turn. *Sc in next 6\u00a0sts, dc in next 2\u00a0sts; rep from\u00a0* across.', repeats: ribs, stitches }),
    row('runner', { label: '4', side: 'WS', text: 'Ch\u00a01, turn. Sc in each st across.', stitches }),
    row('runner', { label: '5', side: 'RS', text: 'Ch\u00a01, turn. *Sc in next 6\u00a0sts, fpdc in next 2\u00a0sts; rep from\u00a0* across.', repeats: ribs, stitches }),
    row('runner', { label: '6', side: 'WS', text: 'Ch\u00a01, turn. Sc in each st across.', stitches }),
    row('runner', { label: '7–120', boxes: Array.from({ length: 114 }, (_, at) => String(at + 7)), text: 'Rep Rows\u00a05 and 6, 57 times.', repeats: '57\u00a0×', stitches }),
    ...Array.from({ length: 12 }, (_, at) => {
      const now = sts.map((n) => String(n - 2 * Math.floor(at / 2 + 1)))
      return at % 2 === 0
        ? row('runner', { label: String(121 + at), side: 'RS', text: 'Ch\u00a01, turn. Dec, sc in each st to last 2\u00a0sts, dec.', change: '−2', stitches: now })
        : row('runner', { label: String(121 + at), side: 'WS', text: 'Ch\u00a01, turn. Sc in each st across.', stitches: now })
    }),
    row('runner', { label: '133', side: 'RS', text: 'Ch\u00a04, *skip next st, dc in next st, ch\u00a01; rep from\u00a0* across.', change: `+${say(sts.map((_, at) => at))}`, spaces: `${say(sts.map((n) => n / 2 - 7))} ch-1\u00a0sps`, stitches: stitches.map(() => '36') }),
  ]
  return {
    ...float,
    slug: 'gangway-runner', title: 'Gangway Runner', number: 11, summary: 'A table runner in rows, with six standing ribs and a pointed end',
    version: '1.1', date: '2027-05-02', dateText: '2\u00a0May 2027',
    sizes: count === 1 ? [] : names.slice(0, count),
    facts: [
      { label: 'Makes', value: `One runner, ${names[0]} (${names.slice(1, count).join(', ')})` },
      { label: 'Size', value: '30 (40) × 82\u00a0cm; 11¾ (15¾) × 32¼\u00a0in' },
      { label: 'Yarn', value: 'Worsted: 290 (385)\u00a0m' },
      { label: 'Worked', value: 'Flat, in rows; RS and WS are marked' },
    ],
    materials: [
      { kind: 'yarn', item: 'Yarn A, kelp', make: 'Super bulky (6), 100% polyester, 100\u00a0g = 68\u00a0m (74\u00a0yd)', for: 'The runner', amount: [`${say([164, 328, 410, 500, 612].slice(0, count))}\u00a0m`, `${say([179, 359, 448, 547, 669].slice(0, count))}\u00a0yd`, `${say([2, 3, 4, 5, 6].slice(0, count))}\u00a0balls`], weight: `${say([240, 480, 600, 735, 900].slice(0, count))}\u00a0g` },
      { kind: 'tool', item: 'Hook, 4\u00a0mm (US G-6)', for: 'Or the size that gives the gauge', amount: ['1'], weight: '' },
    ],
    cautions: [],
    specialStitches: [
      { abbr: 'fpdc', name: 'front post double crochet', how: 'Yarn over, hook in from front to back to front around the post of the st below, draw up a loop, (yarn over, draw through 2\u00a0loops) twice.' },
      { abbr: 'fpdc2tog', name: 'two front posts together', how: 'Leave the last loop of each fpdc on the hook; yarn over, draw through all 3\u00a0loops.' },
    ],
    key: rows[2] as Extract<PartLine, { kind: 'row' }>,
    parts: [{ number: 1, name: 'The runner', line: `Make 1. In rows. Ch ${say(sts.map((n) => n + 1))}. Ring your size at the head of its column.`, counting: 'Row', sides: true, lines: rows }],
    before: [{ heading: 'Notes', blocks: [{ kind: 'paragraph', inlines: [{ text: 'The ribs stand up on the right side. A turning chain is never a stitch here, and every row begins in the first stitch.', strong: false, emphasis: false }] }] }],
  }
}
