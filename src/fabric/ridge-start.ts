import { namePattern } from '../text/name-pattern.ts'
import type { Instruction } from '../notation/syntax.ts'
import type { RealRow } from './real-rows.ts'

const layers = (item: Instruction): boolean => item.node === 'start' && item.target.walk === 'layers' || item.node === 'work' && item.layers === true

/**
 * `left side of Blue flag against right side of White flag, working through both layers, join with sl st in the end of Row 1`: of which side that end is the
 * words tell before. `at the foundation end` is the end of the first row.
 */
export function withRidgeStart(row: RealRow, standsOn: string | undefined): RealRow {
  if (standsOn === undefined || !row.items.some(layers)) return row
  const said = row.items.map((item) => (item.node === 'aside' ? (item.words ?? '') : '')).join(' ')
  const hand = new RegExp(String.raw`\b(left|right)(?: - hand)? (?:side|edge) of (?:the )?${namePattern(standsOn)}(?!\p{L})`, 'iu').exec(said)?.[1]?.toLowerCase()
  if (hand !== 'left' && hand !== 'right') return row
  const start = row.items.findIndex((item) => item.node === 'start' && item.target.walk === 'edge' && item.target.ofRow !== undefined && item.target.hand === undefined)
  if (start >= 0) return { ...row, items: row.items.map((item, index) => (index === start && item.node === 'start' ? { ...item, target: { ...item.target, hand } } : item)) }
  const end = row.items.findIndex((item) => item.node === 'aside' && /\b(?:at|from) the (?:foundation|lower|bottom) (?:end|edge|corner)$/.test(item.words ?? ''))
  const span = row.items[end]
  if (!span || row.items.some((item) => item.node === 'start' && item.target.walk !== 'layers')) return row
  const atFoundation: Instruction = { node: 'start', target: { walk: 'edge', ofRow: 1, hand, start: span.start, end: span.end }, start: span.start, end: span.end }
  return { ...row, items: [...row.items.slice(0, end + 1), atFoundation, ...row.items.slice(end + 1)] }
}
