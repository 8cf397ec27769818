import { rowName } from '../../checks/row-words.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import type { Change, Slip } from './change.ts'
import { slipOf } from './slip-of.ts'
import { totalChanges } from './total-changes.ts'
import { compare } from './work-again.ts'

/**
 * A change and the total that was reckoned with the same slip: where the pattern, worked with the change, has lost the finding and gained
 * nothing but one total that now is off, both are one change. `worked` is the pattern as it was worked with the change alone.
 */
export function withTotal(slip: Slip, change: Change, worked: CheckedPattern): Change | undefined {
  if (!change.carriesTotal || change.ofTotal) return undefined
  const { gone, gained } = compare(slip.checked, [change], [slip.diagnostic], worked)
  const [only] = gained
  if (!gone || gained.length !== 1 || !only || !/^(?:total|kind)-mismatch$/.test(only.code)) return undefined
  const after = slipOf(worked, only)
  const [total] = after ? totalChanges(after) : []
  if (!after || !total) return undefined
  const moved = change.replacement.length - (change.span.end - change.span.start)
  const [start, end] = [total.span.start - moved, total.span.end - moved]
  if (start < change.span.end) return undefined
  const whole = total.words.replace(/^write /, '')
  const of = after.row.label === slip.row.label ? 'its total' : `the total of ${rowName(after.row)}`
  return {
    span: { start: change.span.start, end },
    replacement: change.replacement + slip.source.text.slice(change.span.end, start) + total.replacement,
    words: `${change.words}, and ${whole} for ${of},`,
    withTotal: of === 'its total',
  }
}

/** A change is shown once: two that touch the same words and come to the same are one to the designer. */
export function sameOutcome(one: { readonly change: Change; readonly text: string }, other: { readonly change: Change; readonly text: string }): boolean {
  const [a, b] = [one.change, other.change]
  return a.span.start <= b.span.end && b.span.start <= a.span.end && one.text.slice(a.words.length) === other.text.slice(b.words.length)
}
