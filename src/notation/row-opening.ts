import { isEndOfRow } from './end-of-row.ts'
import type { Instruction, Skip } from './syntax.ts'

/**
 * What is said before the yarn is joined of stitches that the row does not work: they are skipped. `8 sc of Row 6 are left unworked; join
 * yarn in following sc`, `Return to Row 6. Sk 8 sc, join yarn in next sc`. Where nothing is joined, they are those at the row's end: `Leaving
 * last 6 sts unworked, ch 1, sc in next 14 sc`.
 */
export function withOpeningFirst(all: readonly Instruction[]): readonly Instruction[] {
  const items = withJoinFirst(all)
  const worked = items.findIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  const begins = items.findIndex(({ node }) => node === 'start' || node === 'skip' || node === 'leave')
  if (begins < 0 || worked <= begins) return items
  const [first, ...rest] = items.slice(begins, worked)
  const joins = rest.findIndex(({ node }) => node === 'start')
  if (first!.node === 'leave' && joins >= 0 && first!.count && !first!.last) return items.with(begins, skipped(first!))
  if (first!.node === 'leave' && joins < 0) return leftAtEnd(items, begins)
  // `sk 8 sc, join yarn in next sc of Row 6`: they are of that row too.
  const join = rest[joins]
  const ofRow = join?.node === 'start' && join.target.walk !== 'last' ? (join.target.ofRow ?? rowInWords(items.slice(0, begins))) : undefined
  if (first!.node === 'skip' && first!.from === 'next' && first!.ofRow === undefined && !first!.list && !first!.after && ofRow !== undefined) return items.with(begins, { ...first!, ofRow })
  const next = rest.find(({ node }) => node !== 'aside')
  if (first!.node !== 'start' || first!.target.ofRow === undefined || first!.target.passing || next?.node !== 'skip' || next.ofRow !== undefined || joins < 0) return items
  return items.map((item) => (item === next ? { ...next, ofRow: first!.target.ofRow! } : item)).toSpliced(begins, 1)
}

/** `Join yarn at the right-hand end of Row 9, ch 1, 3 sc in first sc`: the row begins in that stitch of Row 9, not in the row-end beside it. */
export function firstAtEnd(items: readonly Instruction[]): readonly Instruction[] {
  const begins = items.findIndex(({ node }) => node === 'start')
  const start = items[begins]
  const first = items.slice(begins + 1).find(({ node }) => node !== 'aside' && node !== 'chain')
  if (start?.node !== 'start' || !isEndOfRow(start.target) || first?.node !== 'work' && first?.node !== 'group') return items
  const { thing, walk } = first.target ?? {}
  if (walk !== 'first' || thing?.kind !== 'stitch') return items
  return items.with(begins, { ...start, target: { ...start.target, walk: 'next', thing } })
}

/** `Ch 1 after joining yarn in first ch`: the chain is made there. */
function withJoinFirst(items: readonly Instruction[]): readonly Instruction[] {
  const chain = items.findIndex(({ node }) => node !== 'aside')
  const joined = items.findIndex((item) => item.node === 'aside' && /^after (?:re)?(?:join|attach)ing\b/.test(item.words ?? ''))
  const start = items[joined + 1]?.node === 'start' ? joined + 1 : joined
  return joined > chain && items[chain]?.node === 'chain' ? [...items.slice(0, chain), ...items.slice(chain + 1, start + 1), items[chain]!, ...items.slice(start + 1)] : items
}

/** `Working in Row 6,` before what is skipped of it. */
function rowInWords(before: readonly Instruction[]): number | undefined {
  const said = before.flatMap((item) => (item.node === 'aside' ? (/^(?:now )?working (?:in|into|on|along) (?:row|rnd|round) (\d+)$/.exec(item.words ?? '')?.[1] ?? []) : []))
  return said.length === 1 ? Number(said[0]) : undefined
}

const skipped = ({ count, ofRow, start, end }: Extract<Instruction, { node: 'leave' }>): Skip => ({ node: 'skip', count: count!, thing: { kind: 'stitch' }, ...(ofRow !== undefined && { ofRow }), unworked: true, from: 'next', start, end })

/** A fill to the end keeps back what is left. */
function leftAtEnd(items: readonly Instruction[], at: number): readonly Instruction[] {
  const left = items[at]!
  const last = items.findLastIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  if (left.node !== 'leave' || items.slice(at + 1).some(({ node }) => node === 'leave')) return items
  const work = items[last]!
  const fills = work.node === 'work' && work.target?.walk === 'each' && !work.target.keepBack && left.count
  const kept = fills ? { ...work, target: { ...work.target!, keepBack: left.count! } } : work
  return [...items.slice(0, at), ...items.slice(at + 1, last), kept, left, ...items.slice(last + 1)]
}
