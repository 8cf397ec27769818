import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { belowName, rowName } from './row-words.ts'

/** A repeat that goes to the end must fit a whole number of times into what is left for it. */
export function repeatDoesNotDivide({ row, below }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'does-not-divide')
  if (!trouble || row.troubles.some(({ kind }) => kind === 'overrun')) return undefined
  const { room, each } = trouble
  const times = each > 0 ? Math.floor(room / each) : 0
  const kept = [trouble.before > 0 ? `${trouble.before} before it` : '', trouble.after > 0 ? `${trouble.after} after it` : ''].filter(Boolean).join(' and ')
  return {
    code: 'repeat-does-not-divide',
    message: `the repeat in ${rowName(row)} works over ${counted(each, 'stitch')} at a time, but ${room} ${room === 1 ? 'is' : 'are'} left for it`,
    primary: { span: trouble.span, text: `works over ${each} each time` },
    secondary: below?.says ? [{ span: below.says.span, text: `${belowName(below)} makes ${below.makes}` }] : [],
    note: `${kept ? `${row.offers} less ${kept} is ${room}: ` : ''}${counted(times, 'repeat')} work${times === 1 ? 's' : ''} over ${times * each}, and ${counted(room - times * each, 'stitch')} ${room - times * each === 1 ? 'is' : 'are'} left over`,
  }
}
