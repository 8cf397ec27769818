import type { Instruction } from '../notation/syntax.ts'
import type { WrittenEntry } from './real-rows.ts'

/** The side that faces the maker while a row is worked: by its label, or by words before the yarn is joined: `With RS facing, join yarn …`. */
export function sideFacing({ label, read, headed, heading = '' }: WrittenEntry): 'RS' | 'WS' | undefined {
  if (label?.side) return label.side
  const first = read.items.findIndex(({ node }) => node !== 'aside' && node !== 'start' && node !== 'skip')
  const before = read.items.slice(0, first < 0 ? undefined : first).flatMap((item) => wordsOf(item))
  return faced(before.join(' ; ')) ?? (headed ? faced(heading) : undefined)
}

const wordsOf = (item: Instruction): readonly string[] => (item.node === 'aside' && item.words !== undefined ? [item.words] : [])

function faced(words: string): 'RS' | 'WS' | undefined {
  const side = /\b(rs|ws|right side|wrong side)\b(?: of (?:the )?\w+| of (?:the )?\w+ \w+)? (?:is |now )?(?:facing|towards? you|uppermost|outermost)\b/.exec(words)?.[1]
  return side === undefined ? undefined : /^[rR]/.test(side) ? 'RS' : 'WS'
}
