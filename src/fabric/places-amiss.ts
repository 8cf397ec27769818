import type { Trouble } from './worked-row.ts'

interface Tried {
  readonly troubles: readonly Trouble[]
}

/** Whether of two tries of a row the first is off by fewer places, all its troubles together. */
export function lessAmiss(one: Tried, other: Tried): boolean {
  return placesAmiss(one) < placesAmiss(other)
}

/** Words that fit no edge at all weigh more than any slip of the pen. */
function placesAmiss({ troubles }: Tried): number {
  return troubles.reduce((sum, trouble) => sum + amiss(trouble), 0)
}

/** A number that is so far off is no slip of the pen. */
const farOff = 100

function amiss(trouble: Trouble): number {
  switch (trouble.kind) {
    case 'overrun': return trouble.wants > trouble.offers ? trouble.wants - trouble.offers : farOff
    case 'left-over': return Math.abs(trouble.count - (trouble.said ?? 0))
    case 'row-ends-passed': return trouble.count
    case 'no-such-place': case 'other-edge': case 'does-not-divide': return farOff
    default: return 0
  }
}
