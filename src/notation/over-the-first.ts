import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

const said = /^(?:work|working) (?:over|on|across|along|in) (?:the )?first (\d+) (?:sts|stitches|sc|dc|hdc|htr|tr)( only)?$/

/** `Working over the first 14 sts only, ch 1, sc in each st`: each of so many, and with `only` the others are left. */
export function overTheFirst(items: readonly Instruction[]): readonly Instruction[] {
  const lead = items.findIndex((item) => item.node === 'aside' && said.test(item.words ?? ''))
  const at = items.findIndex((item, index) => index > lead && item.node !== 'aside' && item.node !== 'chain' && item.node !== 'turn')
  const [aside, work] = [items[lead], items[at]]
  // `…; turn, 6 sts unworked` keeps back what is left.
  const leaves = (kept: Num): boolean => items.some((item) => item.node === 'leave' && item.count?.values.join() === kept.values.join())
  if (aside?.node !== 'aside' || work?.node !== 'work' || work.target?.walk !== 'each' || work.target.until || work.target.keepBack && !leaves(work.target.keepBack) || work.target.every || work.target.count) return items
  const [, count, only] = said.exec(aside.words ?? '') ?? []
  const { toEnd: _, keepBack: __, ...target } = work.target
  const worked = items.with(at, { ...work, target: { ...target, walk: 'next', eachOf: true, count: { values: [Number(count)], start: aside.start, end: aside.end } } })
  return only && !items.some(({ node }) => node === 'leave') ? [...worked, { node: 'leave', start: aside.start, end: aside.end }] : worked
}
