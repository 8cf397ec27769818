import type { Source } from '../../src/text/source.ts'
import type { FenceAttributes } from './fence-attributes.ts'

/** A fence as a file for the engine, and where the fence's own first line and column stand in it. */
export interface WrappedFence {
  readonly source: Source
  /** Lines before the fence's first line. */
  readonly linesBefore: number
  /** Columns before the fence's first column. */
  readonly columnsBefore: number
}

const rowIndent = '      '

/** A whole file, as it stands. */
export function wholeFile(text: string): WrappedFence {
  return { source: { path: 'pattern.md', text: `${text}\n` }, linesBefore: 0, columnsBefore: 0 }
}

/** The rows of one piece as the smallest pattern file that can be checked. */
export function wrapRows(rows: string, attributes: FenceAttributes): WrappedFence {
  const head = [
    '---',
    'title: Case',
    `terms: ${attributes.terms}`,
    ...(attributes.sizes.length > 0 ? [`sizes: [${attributes.sizes.join(', ')}]`] : []),
    ...conventions(attributes),
    ...materials(attributes),
    ...stitches(attributes),
    'pieces:',
    '  - name: Case',
    '    rows: |',
    ...base(attributes),
  ]
  const body = rows.split('\n').map((line) => (line === '' ? '' : rowIndent + line))
  return {
    source: { path: 'pattern.md', text: [...head, ...body, '---', ''].join('\n') },
    linesBefore: head.length,
    columnsBefore: rowIndent.length,
  }
}

/** A base in sc; a UK pattern has its own word for the same stitch. */
function base({ last, lastround, terms }: FenceAttributes): string[] {
  const stitch = terms === 'UK' ? 'dc' : 'sc'
  if (last !== undefined) return [`${rowIndent}Base row of ${last} ${stitch}.`]
  if (lastround !== undefined) return [`${rowIndent}Base round of ${lastround} ${stitch}.`]
  return []
}

function conventions({ turning, slip, chains }: FenceAttributes): string[] {
  const lines = [
    ...(turning.size > 0 ? [`  turning-chains: { ${[...turning].map(([stitch, says]) => `${stitch}: ${says}`).join(', ')} }`] : []),
    ...(slip === undefined ? [] : [`  slip-stitches: ${slip}`]),
    ...(chains === undefined ? [] : [`  chains: ${chains}`]),
  ]
  return lines.length > 0 ? ['conventions:', ...lines] : []
}

function stitches({ stitches }: FenceAttributes): string[] {
  if (stitches.length === 0) return []
  return ['stitches:', ...stitches.map(({ abbr, worksOver, makes }) => `  - { abbr: ${abbr}, works-over: ${worksOver}, makes: ${makes} }`)]
}

function materials({ yarns }: FenceAttributes): string[] {
  if (yarns.length === 0) return []
  const yarn = 'weight: 4, fibre: 100% wool, ball: { grams: 50, metres: 100 }, needs: [50 g]'
  return ['materials:', '  yarns:', ...yarns.map((letter) => `    - { letter: ${letter}, ${yarn} }`)]
}
