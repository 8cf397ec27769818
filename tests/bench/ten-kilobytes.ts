import type { Source } from '../../src/text/source.ts'

/** A pattern file of ten thousand bytes, as a studio writes one: five pieces of different wordings, and prose. Every count comes out. */
export function tenKilobytes(): Source {
  const front = [...head, 'pieces:', ...pieces.flatMap(({ name, lines }) => [`  - name: ${name}`, '    rows: |', ...lines.map((line) => `      ${line}`)])]
  const text = ['---', ...front, '---', '', ...pieces.flatMap(({ name }) => about(name))].join('\n')
  return { path: 'patterns/ropewalk.md', text: text.padEnd(10_000, 'The last of the rope is kept for next year. ') }
}

const head = [
  'title: Ropewalk', 'number: 40', 'summary: A cushion, a float, a mat and a net for a long window seat', 'designer: Saltmarsh Yarnworks',
  'version: 1.0.0', 'date: 2026-11-09', 'access: free', 'terms: US', 'level: intermediate', 'made-for: home',
  'gauge: { stitch: sc, sts: 16, rows: 18, over: 10 cm, hook: 4 mm, after: as worked }',
  'conventions:', '  turning-chains: { sc: not counted, hdc: not counted, dc: counted }',
  'materials:', '  yarns:',
  '    - { weight: 4, fibre: 100% cotton, ball: { grams: 100, metres: 170 }, colour: Tar, for: all pieces, needs: [165 g] }',
  '  hooks: [4 mm]', '  notions:', '    - { what: yarn needle, count: 1 }',
  'finished:', '  - { what: length, of: Cushion, is: [45 cm] }',
  'changes:', '  - { version: 1.0.0, date: 2026-11-09, what: First release. }',
]

const numbers = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, at) => from + at)
const stitches = (count: number) => (count === 1 ? 'next st' : `next ${count} sts`)

/** Six more stitches in each round, and later six fewer: a flat disc grows by a constant, whatever the constant is. */
const float = [
  'Rnd 1: Make an adjustable ring; 6 sc in ring. (6)',
  'Rnd 2: Inc in each st around. (12)',
  ...numbers(3, 12).map((round) => `Rnd ${round}: *Sc in ${stitches(round - 2)}, inc; rep from * around. (${6 * round})`),
  'Rnds 13-20: Sc in each st around. (72)',
  ...numbers(21, 30).map((round) => `Rnd ${round}: *Sc in ${stitches(31 - round)}, dec; rep from * around. (${6 * (32 - round)})`),
  'Rnd 31: Dec around. (6)',
  'Fasten off, leaving a 20 cm tail.',
]

const cushion = [
  'Foundation: Ch 73.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (72 sc)',
  ...numbers(1, 5).flatMap((turn) => [
    `Row ${4 * turn - 2}: Ch 1, turn, sc in first st, *dc in next st, sc in next st; rep from * to last st, sc in last st. (37 sc, 35 dc)`,
    `Row ${4 * turn - 1}: Ch 1, turn, sc in each st across. (72 sc)`,
    `Row ${4 * turn}: Ch 3 (counts as dc), turn, skip first st, dc in next st, *ch 1, skip next st, dc in next st; rep from * across. (37 dc, 35 ch-1 sps)`,
    `Row ${4 * turn + 1}: Ch 1, turn, sc in first st, *sc in next ch-1 sp, sc in next st; rep from * to last st, sc in last st. (72 sc)`,
  ]),
  'Fasten off.',
]

/** A flat octagon: eight increases a round. */
const mat = [
  'Rnd 1: Ch 4, join with sl st in first ch to form a ring; ch 3 (counts as dc), 15 dc in ring, join with sl st in top of beg ch-3. (16 dc)',
  ...numbers(2, 9).map((round) =>
    `Rnd ${round}: Ch 1, [sc in ${stitches(round - 1)}, 2 sc in next st] 8 times, join with sl st in first sc. (${8 * round + 8} sc)`),
]

const becket = [
  'Foundation: Ch 25.',
  'Row 1: Hdc in 3rd ch from hook and in each ch across. (23 hdc)',
  'Row 2: Ch 2, turn, hdc in next 21 sts, hdc2tog. (22)',
]

const strap = [
  'Foundation: Ch 13.',
  'Row 1: Sc in 2nd ch from hook, sc in next 10 ch, 3 sc in last ch; working along the other side of the foundation chain, sc in next 10 ch, 2 sc in last ch. (26)',
]

const pieces = [{ name: 'Float', lines: float }, { name: 'Cushion', lines: cushion }, { name: 'Mat', lines: mat }, { name: 'Becket', lines: becket }, { name: 'Strap', lines: strap }]

const about = (name: string): readonly string[] => [
  `## ${name}`,
  '',
  `The walk is long, and the rope is laid at one end of it and coiled at the other. *${name}* is worked **firmly**, so that nothing shows through.`,
  '',
  '- The ch 1 at the start of a row does not count as a stitch.',
  `- Weave in the ends along the last row, each through at least three stitches and back again.`,
  '',
  '1. Wash it at the heat that the ball band allows.',
  '2. Pull it square, and dry it flat.',
  '',
]
