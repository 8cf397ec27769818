import type { Instruction, Work } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'

/** A piece of a mirrored row's words: words of ours, the place of words in the source, or a stitch to be named in the pattern's terms. */
export type MirroredPart = string | { readonly words: Span } | { readonly stitch: 'sl st' }

interface Body {
  readonly work: Work
  readonly uses: number
  readonly fill: boolean
}

/**
 * The words of a row whose shaping is reversed, in one size: what it does at its start stands at its end. Undefined where its words are
 * not simple enough to be turned round; then they are read from the end by whoever works it.
 */
export function mirroredWords(items: readonly Instruction[], size: number): readonly MirroredPart[] | undefined {
  const [first, last] = [items[0], items.at(-1)]
  if (first && last && isAlikeFromBothEnds(items)) return [{ words: { start: first.start, end: last.end } }]
  const works = items.filter((item) => item.node === 'work')
  const others = items.filter((item) => item.node !== 'work' && item.node !== 'aside')
  const chain = others.find((item) => item.node === 'chain')
  if (!others.every(({ node }) => node === 'chain' || node === 'turn' || node === 'leave') || others.filter(({ node }) => node === 'chain').length > 1 || chain?.node === 'chain' && chain.counts) return undefined
  const slips = works.findIndex(({ stitch }) => stitch !== 'sl st')
  const body = works.slice(Math.max(0, slips)).map((work) => bodyOf(work, size))
  if (slips < 0 || body.some((part) => part === undefined) || body.filter((part) => part?.fill).length > 1) return undefined
  const [lead, left] = [works.slice(0, slips).reduce((sum, work) => sum + usesOf(work, size), 0), leftOf(items, size)]
  // A slip stitch that the first stitch stands on is no step of its own; the words of such a row are left to the maker.
  if (left === undefined || works[slips]?.target?.walk === 'same') return undefined
  const turned = (body as readonly Body[]).toReversed()
  const head = chain?.node === 'chain' ? `ch ${valueIn(chain.count.values, size)}` : ''
  const start: MirroredPart[] = left > 0 ? ['turn, ', { stitch: 'sl st' }, ` in first ${left} ${left === 1 ? 'st' : 'sts'}${head === '' ? '' : `, ${head}`}`] : [head === '' ? 'turn' : `${head}, turn`]
  const end = lead > 0 ? [`, leave last ${lead} ${lead === 1 ? 'st' : 'sts'} unworked`] : []
  return [...start, ...turned.flatMap((part, index) => [', ', ...wordsOf(part, usesAfter(turned, index) + lead, index === turned.length - 1 && lead === 0, size)]), ...end]
}

/** `Sc in 2nd ch from hook and in each ch across`: there is nothing in it to turn round. */
function isAlikeFromBothEnds(items: readonly Instruction[]): boolean {
  return items.every((item) => item.node === 'chain' || item.node === 'turn' || item.node === 'aside'
    || item.node === 'work' && !item.count && (item.target?.walk === 'from-hook' || item.target?.walk === 'each' && !item.target.keepBack && !/tog$/.test(item.stitch)))
}

function bodyOf(work: Work, size: number): Body | undefined {
  const { target, count, loop, legs, over, counts } = work
  const together = /tog$/.test(work.stitch)
  if (loop || legs || over || counts || !work.name || target && (target.loop || target.every || target.until || target.ofRow !== undefined)) return undefined
  if (target?.walk === 'each' && (target.toEnd || target.keepBack) && !count && !together) return { work, uses: 0, fill: true }
  if (target && !['next', 'first', 'last'].includes(target.walk)) return undefined
  return { work, uses: usesOf(work, size), fill: false }
}

function usesOf({ stitch, target, count }: Work, size: number): number {
  const together = Number(/(\d)tog$/.exec(stitch)?.[1] ?? 1)
  const places = target?.count ? valueIn(target.count.values, size) : undefined
  return together > 1 ? (places ?? together) : (places ?? (target ? 1 : count ? valueIn(count.values, size) : 1))
}

function leftOf(items: readonly Instruction[], size: number): number | undefined {
  const leave = items.find((item) => item.node === 'leave')
  if (leave?.node === 'leave') return leave.count && valueIn(leave.count.values, size)
  return 0
}

function usesAfter(parts: readonly Body[], index: number): number {
  return parts.slice(index + 1).reduce((sum, { uses }) => sum + uses, 0)
}

function wordsOf({ work, uses, fill }: Body, after: number, last: boolean, size: number): readonly MirroredPart[] {
  const name: MirroredPart = { words: work.name! }
  if (fill) return [name, after > 0 ? ` in each st to last ${after === 1 ? 'st' : `${after} sts`}` : ' in each st across']
  const together = /tog$/.test(work.stitch)
  const each = work.count && work.target ? valueIn(work.count.values, size) : 1
  if (together) return [name]
  const place = uses === 1 ? `${last ? 'last' : 'next'} st` : `next ${uses} sts`
  return [...(each > 1 ? [`${each} `] : []), name, ` in ${each > 1 && uses > 1 ? 'each of ' : ''}${place}`]
}

const valueIn = (values: readonly number[], size: number): number => values[size] ?? values.at(-1) ?? 1
