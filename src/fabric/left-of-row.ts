import type { Instruction } from '../notation/syntax.ts'
import { joinsInLeft, rejoinsFartherOn } from './joined-above.ts'
import type { OlderRow } from './older-row.ts'
import { rowsNamed } from './part-starts.ts'
import type { RealRow, WrittenEntry } from './real-rows.ts'

/**
 * `Second side: skip next 12 unworked sts, join yarn in next st`: without a row's number what is meant is what the newest row that left any has left;
 * where the numbers begin again, the row under that number (common practice, no source).
 */
export function onRowThatLeft(items: readonly Instruction[], { anew, number }: Pick<RealRow, 'anew' | 'number'>, { entry, rowsBefore }: { readonly entry?: WrittenEntry | undefined; readonly rowsBefore: ReadonlyMap<number, OlderRow> }): readonly Instruction[] {
  // A piece's first row begins on what others left by other rules.
  if (entry === undefined) return items
  const works = items.findIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  const lead = items.slice(0, works)
  const skips = rejoinsFartherOn(lead) ? lead.find(({ node }) => node === 'skip') : undefined
  if (works < 0 || rowsNamed(items).length > 0 || !(skips?.node === 'skip' && (skips.unworked || anew)) && !joinsInLeft(lead)) return items
  const under = anew && number !== undefined && (rowsBefore.get(number - 1)?.left.length ?? 0) > 0 ? number - 1 : undefined
  const ofRow = under ?? Math.max(...[...rowsBefore].filter(([, { left }]) => left.length > 0).map(([number]) => number))
  if (!Number.isFinite(ofRow)) return items
  const goes = skips ?? lead.find(({ node }) => node === 'start')
  return items.map((item) => {
    if (item !== goes) return item
    if (item.node === 'skip') return { ...item, ofRow }
    return item.node === 'start' ? { ...item, target: { ...item.target, ofRow } } : item
  })
}
