import type { OtherEdge } from './after-slip.ts'
import { isOfThePattern, otherReadings } from './other-readings.ts'
import type { RowSetting } from './row-setting.ts'
import type { RowToWork, RowTry } from './work-row.ts'

/** Where the row states no total, its other readings are kept for the next row to decide. */
export function lookBack(toWork: RowToWork, setting: RowSetting, tried: RowTry): readonly OtherEdge[] {
  if (tried.comparison.says?.count !== undefined || Object.keys(tried.comparison.says?.kinds ?? {}).length > 0) return []
  const open = tried.points.some((point) => !isOfThePattern(point.name) && point.taken === 0)
  if (!open || toWork.edge.places.length > 5_000) return []
  return otherReadings(toWork, setting, tried, 8).map((other) => ({ edge: other.next, words: `${other.assumed.at(-1) ?? 'another reading'} (the next row decides)` }))
}
