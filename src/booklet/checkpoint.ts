import { ordinal } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { Source } from '../text/source.ts'
import { figure, nbsp, perSize } from './figures.ts'
import type { GatheredLine } from './gather-lines.ts'
import { outerRepeats } from './row-text.ts'

/** A row of fewer stitches is counted sooner than a note is read. */
const leastStitches = 30
/** The most counts on the way. */
const mostCounts = 4

/**
 * What a maker should have on the hook's side of the work in the middle of a long row: after each repeat that more work follows.
 * Empty where the row is short, where nothing follows, or where the rows of a range differ.
 */
export function checkpointOf(line: GatheredLine, source: Source): string {
  const counts = line.rows.filter((rows) => rows.length > 0).map((rows) => countsAfterRepeats(rows, source, line))
  const [first] = counts
  if (!first || first.length === 0 || first.length > mostCounts || counts.some((own) => own.length !== first.length)) return ''
  const said = first.map((_, at) => perSize(counts.map((own) => figure(own[at] ?? 0))))
  if (said.length === 1) return `After the repeat:${nbsp}${said[0]}.`
  return `${said.map((count, at) => `${at === 0 ? 'After the 1st repeat' : `after the ${ordinal(at + 1)}`}:${nbsp}${count}`).join(', ')}.`
}

function countsAfterRepeats(rows: readonly WorkedRow[], source: Source, line: GatheredLine): readonly number[] {
  const [row] = rows
  if (!row || row.verdict !== 'adds-up' || row.makes < leastStitches || rows.some((other) => other.makes !== row.makes)) return []
  return outerRepeats(source, line.written.text, [row]).flatMap(({ span, times: [times = 0] }) => {
    const done = row.tally.filter((step) => step.span.start < span.end).at(-1)
    return done && times > 1 && done.soFar < row.makes ? [done.soFar] : []
  })
}
