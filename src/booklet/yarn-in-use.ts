import type { WorkedRow } from '../fabric/worked-row.ts'
import { textOf, type Source } from '../text/source.ts'

/** Words that put a yarn away instead of taking it up: `fasten off A`, `carry A up inside`. */
const putsAway = /^(?:fasten|cut|break|drop|carry|leave|weave)/i

/** The letter of the yarn that each row is worked with from its beginning; `before` is the one in hand when the rows begin. */
export function yarnsInUse(rows: readonly WorkedRow[], source: Source, before?: string): readonly (string | undefined)[] {
  let inHand = before
  return rows.map((row) => {
    const taken = row.yarns.filter(({ span }) => !putsAway.test(textOf(source, span).trim()))
    const first = taken[0]?.yarn ?? inHand
    // What a row of several colours ends with is in hand for the next.
    inHand = taken.at(-1)?.yarn ?? inHand
    return first
  })
}
