import type { TallyLine } from './diagnostic.ts'
import { plain, type Paint } from './paint.ts'
import { shownText } from './shown-line.ts'

const columns = [['works over', 'worksOver'], ['makes', 'makes'], ['so far', 'soFar']] as const

// The start shows how the row is built and the end how it closes; what lies between stands in the ledger.
const mostLines = 24
const firstLines = 14
const lastLines = 8

/**
 * The row's arithmetic under its heads, numbers to the right:
 *
 *   works over  makes  so far
 *           15     15      15  sc in next 15 sts
 */
export function tallyTable(tally: readonly TallyLine[], paint: Paint = plain): readonly string[] {
  const widths = columns.map(([head, key]) => Math.max(head.length, ...tally.map((line) => String(line[key]).length)))
  const head = columns.map(([words], index) => words.padStart(widths[index] ?? 0)).join('  ')
  const lines = tally.map((line) => {
    const numbers = columns.map(([, key], index) => String(line[key]).padStart(widths[index] ?? 0)).join('  ')
    return `${numbers}  ${shownText(line.text.trim())}`
  })
  const left = lines.length - firstLines - lastLines
  const shown = lines.length <= mostLines
    ? lines
    : [...lines.slice(0, firstLines), `${' '.repeat(head.length)}  … ${left} more steps …`, ...lines.slice(-lastLines)]
  return [paint('strong', head), ...shown]
}
