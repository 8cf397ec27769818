import type { TallyLine } from './diagnostic.ts'
import { plain, type Paint } from './paint.ts'
import { shownText } from './shown-line.ts'
import { shortened } from './wrap.ts'

const heads = [['works over', 'worksOver'], ['makes', 'makes'], ['so far', 'soFar']] as const
const shortHeads = [['over', 'worksOver'], ['makes', 'makes'], ['so far', 'soFar']] as const
const narrow = 68

// The start shows how the row is built and the end how it closes; what lies between stands in the ledger.
const mostLines = 24
const firstLines = 14
const lastLines = 8

/**
 * The row's arithmetic under its heads, numbers to the right:
 *
 *   works over  makes  so far
 *           15     15      15  sc in next 15 sts
 *
 * Words that would go beyond `width` columns lose their middle.
 */
export function tallyTable(tally: readonly TallyLine[], paint: Paint = plain, width = Infinity): readonly string[] {
  const columns = width < narrow ? shortHeads : heads
  const widths = columns.map(([head, key]) => Math.max(head.length, ...tally.map((line) => String(line[key]).length)))
  const head = columns.map(([words], index) => words.padStart(widths[index] ?? 0)).join('  ')
  const lines = tally.map((line) => {
    const numbers = columns.map(([, key], index) => String(line[key]).padStart(widths[index] ?? 0)).join('  ')
    return `${numbers}  ${shortened(shownText(line.text.trim()), Math.max(20, width - numbers.length - 2))}`
  })
  const left = lines.length - firstLines - lastLines
  const shown = lines.length <= mostLines
    ? lines
    : [...lines.slice(0, firstLines), `${' '.repeat(head.length)}  … ${left} more steps …`, ...lines.slice(-lastLines)]
  return [paint('strong', head), ...shown]
}
