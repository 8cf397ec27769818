import type { ReadingPoint } from './noted.ts'
import { lessAmiss } from './places-amiss.ts'
import type { RowSetting } from './row-setting.ts'
import { workRow, type RowToWork, type RowTry } from './work-row.ts'

/** Every reading of a row that comes out, the usual one first; when none does, the usual one alone. */
export function workRowInEveryReading(row: RowToWork, setting: RowSetting, patience = 48): { readonly usual: RowTry; readonly others: readonly RowTry[] } {
  const usual = inTheNearestWay(row, setting, workRow(row, setting))
  const tries = row.edge.places.length > 20_000 ? 6 : patience
  return { usual, others: usual.comesOut || usual.undecided !== undefined ? [] : otherReadings(row, setting, usual, tries) }
}

/** Questions that the words of a row leave open more often than not. */
const nearest: ReadonlySet<string> = new Set(['corner-meant', 'layers', 'last-meant'])

/**
 * Which corner of a border a row begins at the border does not tell, and often not whether one piece is folded or two lie on one another. Where
 * the row comes out in no way, that one is meant in which the least is amiss.
 */
function inTheNearestWay(row: RowToWork, setting: RowSetting, first: RowTry): RowTry {
  const open = first.comesOut ? undefined : first.points.find(({ name }) => nearest.has(name))
  if (!open || setting.readings.has(open.name)) return first
  const others = Array.from({ length: open.ways - 1 }, (_, way) => workRow(row, { ...setting, readings: new Map(setting.readings).set(open.name, way + 1) }))
  return others.reduce((best, other) => (lessAmiss(other, best) ? other : best), first)
}

/** Readings other than the usual one that come out, fewest changes first. */
export function otherReadings(row: RowToWork, setting: RowSetting, usual: RowTry, tries: number): readonly RowTry[] {
  const seen = new Set<string>()
  const queue: { readings: ReadonlyMap<string, number>; points: readonly ReadingPoint[] }[] = [{ readings: setting.readings, points: usual.points }]
  const found: RowTry[] = []
  let left = tries
  for (let head = 0; head < queue.length && left > 0; head += 1) {
    const { readings, points } = queue[head]!
    for (const point of points) {
      if (isOfThePattern(point.name) || readings.has(point.name)) continue
      for (let way = 1; way < point.ways && left > 0; way += 1) {
        const next = new Map(readings).set(point.name, way)
        const key = [...next].map(([name, value]) => `${name}=${value}`).sort().join('|')
        if (seen.has(key)) continue
        seen.add(key)
        left -= 1
        const attempt = workRow(row, { ...setting, readings: next })
        if (attempt.comesOut) found.push({ ...attempt, assumed: [...attempt.assumed, ...wordsOf(attempt.points, next)] })
        else queue.push({ readings: next, points: attempt.points })
      }
    }
  }
  return found
}

/** Conventions hold for a whole pattern; a single row does not choose them. */
export function isOfThePattern(name: string): boolean {
  return name.startsWith('turning-chain ') || name === 'slip-stitches' || name === 'chain-on-slip'
}

function wordsOf(points: readonly ReadingPoint[], readings: ReadonlyMap<string, number>): readonly string[] {
  return points.filter(({ name, taken }) => taken > 0 && readings.has(name) && !isOfThePattern(name)).map(({ words, taken }) => words[taken]!)
}
