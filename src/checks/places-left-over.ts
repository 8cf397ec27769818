import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { edgesNote } from './edge-words.ts'
import { belowName, rowName, tallyOf } from './row-words.ts'

/** A row that ends before the row below does must say that it leaves the rest. */
export function placesLeftOver({ source, row, below }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'left-over')
  if (!trouble || row.troubles.some(({ kind }) => kind === 'overrun' || kind === 'does-not-divide')) return undefined
  const left = counted(trouble.count, 'stitch')
  const { said, named } = trouble
  if (named) {
    const all = named.count + trouble.count
    return {
      code: 'places-left-over',
      message: `${rowName(row)} names ${counted(named.count, named.what)} of ${belowName(below)}, but there are ${all}`,
      primary: { span: trouble.span, text: `names ${named.count} of ${all}` },
      secondary: [],
      tally: tallyOf(source, row),
    }
  }
  if (said !== undefined) {
    return {
      code: 'places-left-over',
      message: `${rowName(row)} says that ${said} ${said === 1 ? 'is' : 'are'} left, but ${trouble.count} ${trouble.count === 1 ? 'is' : 'are'}`,
      primary: { span: trouble.span, text: `says ${said}, leaves ${trouble.count}` },
      secondary: [],
      tally: tallyOf(source, row),
    }
  }
  return {
    code: 'places-left-over',
    message: row.along ? leavesOfEdge(row, trouble.count) : `${rowName(row)} works over ${row.worksOver} of the ${counted(row.offers, 'stitch')} of ${belowName(below)} and says nothing of the ${trouble.count === 1 ? 'one' : trouble.count} left`,
    primary: { span: trouble.span, text: `${left} left over` },
    secondary: below?.says && !row.along ? [{ span: below.says.span, text: `${rowName(below)} makes ${below.makes}` }] : [],
    tally: tallyOf(source, row),
    ...edgesNote(row),
  }
}

function leavesOfEdge(row: WorkedRow, count: number): string {
  return `${rowName(row)} leaves ${count === 1 ? 'a stitch' : counted(count, 'stitch')} of the edge unworked and says nothing of ${count === 1 ? 'it' : 'them'}`
}
