import type { Booklet, PartLine } from '../../../src/booklet/booklet.ts'
import { float, row } from './float.ts'

/** Titles that break what is made carelessly: markup, signs no font here has, right to left, words without end. */
export const hostileTitles = {
  markup: 'Hook & <Line> "Sinker" \'26',
  emoji: 'Buoy 🛟 and Bell 🔔',
  rightToLeft: 'מצוף Float עוגן',
  combined: 'E\u0301toile de mer, n\u0303o, a\u030a, q\u0303\u0323',
  controls: 'Tab\tand\u0000null\u202eturned\u200b\ufeff end',
  greek: 'Σχοινί · Канат · Łódź',
  longWord: 'Haul'.repeat(75),
  longTitle: 'A very long name for a small thing, '.repeat(9).trim(),
  halfPair: 'Broken \ud83d pair',
} as const

/** The float under another title, with that title wherever a designer could put it. */
export function titled(title: string): Booklet {
  return {
    ...float, title, summary: title, publisher: 'Saltmarsh Yarnworks',
    facts: [...float.facts, { label: 'Makes', value: title }],
    parts: float.parts.map((part) => ({ ...part, name: title, line: title })),
    after: [{ heading: title, blocks: [{ kind: 'paragraph', inlines: [{ text: title, strong: false, emphasis: true }] }] }],
  }
}

/** A piece of so many rows, each a row of its own. Every seventh says so much that it takes three lines. */
export function longPiece(count: number): Booklet {
  const lines = Array.from({ length: count }, (_, at): PartLine => row('net', {
    label: String(at + 1), side: at % 2 === 0 ? 'RS' : 'WS', stitches: [String(100 + at)],
    text: at % 7 === 6 ? 'Ch\u00a01, turn. *Sc in next 4\u00a0sts, dc in next 2\u00a0sts, picot in next st; rep from\u00a0* across to last 5\u00a0sts, sc in each of last 5\u00a0sts, taking care to keep the edge straight.' : 'Ch\u00a01, turn. Sc in each st across.',
  }))
  return { ...float, key: lines[0] as Extract<PartLine, { kind: 'row' }>, parts: [{ number: 1, name: 'The net', line: 'Make 1. In rows.', counting: 'Row', sides: true, lines }] }
}

/** One range of so many rows: its tally grid may be taller than a page. */
export function longRange(count: number): Booklet {
  const boxes = Array.from({ length: count }, (_, at) => String(at + 1))
  const lines = [row('net', { label: `1–${count}`, boxes, text: 'Sc in each st around.', stitches: ['60'] })]
  return { ...float, parts: [{ number: 1, name: 'The net', line: 'Make 1.', counting: 'Round', sides: false, lines }] }
}

/** A pattern with little to say and fields left empty. */
export const bare: Booklet = {
  slug: 'knot', title: 'Knot', publisher: '', version: '', date: '', dateText: '', terms: 'UK', sizes: [], facts: [], materials: [], abbreviations: [],
  specialStitches: [], cautions: [], parts: [], before: [], after: [], credits: [],
}
