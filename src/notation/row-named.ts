import { takeNumber } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

/** Words before the number of a row. */
const rowWord = 'rows|row|rnds|rnd|rounds|round|rs|r'

/** Takes the words before it and a row by its number: with `of|on` the `of Row 4` of `sts of Row 4`. Nothing is taken where no number stands. */
export function takeRowNamed(reader: Reader, ...before: readonly string[]): number | undefined {
  const { at } = reader
  if (reader.take(...before, 'row|rnd|round|r') && (reader.word(-1) !== 'r' || reader.touches(0)) && reader.peek()?.kind === 'number') return numbered(reader)
  reader.at = at
  // `of Front Row 3`
  if (reader.take(...before) && takePieceName(reader) !== undefined && reader.take('row|rnd|round|r') && reader.peek()?.kind === 'number') return numbered(reader)
  reader.at = at
  // `of the 14th round`
  if (reader.take(...before, 'the?') && reader.peek()?.kind === 'ordinal' && /^(row|rnd|round)$/.test(reader.word(1))) {
    reader.at += 2
    return reader.peek(-2)?.value
  }
  reader.at = at
  return undefined
}

/** The number, in every size (`Row 12 (16)`), and `edge` behind it: `first sc of Row 6 edge`. */
function numbered(reader: Reader): number | undefined {
  const number = takeNumber(reader)
  if (number && number.values.length > 1) reader.rowLists.push(number)
  const { at } = reader
  if (reader.take('edge') && !reader.done && !/^(?:[,;.:()]|and)$/.test(reader.word())) reader.at = at
  return number?.values[0]
}

/** `of Rows 1 to 6`, `of each of Rows 18 to 2`, `from Rows 18–13`, `(Rows 1, 2 and 3)`, `down Rows 12–7`, `of Row 7 through Row 12`, `of the 1st to 6th rows`: rows in the order in which they are come to. */
export function takeOfRows(reader: Reader): { readonly first: Num; readonly last: Num } | undefined {
  const { at } = reader
  const bracket = reader.take('(')
  if (bracket || reader.take(',', 'from') || reader.take('of|from|on|along|at|for|down|up|across|over', 'each|every|all?', 'of?', 'the?')) {
    const named = reader.take(rowWord)
    const first = rowNumber(reader)
    const last = first && rangeEnd(reader, first)
    if (first && last && (named || reader.take('rows')) && (!bracket || reader.take(')'))) return { first, last }
  }
  reader.at = at
  return undefined
}

/** `Rows 1-4`, `Rows 8 to 5`, `R1 to R6`: named with no word before them. */
export function takeRowNumbers(reader: Reader): { readonly first: Num; readonly last: Num } | undefined {
  const { at } = reader
  const first = reader.take('rows|rnds|rounds') || reader.peek(1)?.kind === 'number' && reader.touches(1) && reader.take('r') ? rowNumber(reader) : undefined
  const last = first && rangeEnd(reader, first)
  if (last) return { first: first!, last }
  reader.at = at
  return undefined
}

/** `to 6`, `down to Row 1`, `, 2 and 3`: the last row. Rows that are listed follow one another. */
function rangeEnd(reader: Reader, first: Num): Num | undefined {
  if (reader.take('down|up|back?', '-|–|—|to|thru|through', `${rowWord}?`)) return rowNumber(reader)
  let last = first
  for (let ended = false; !ended;) {
    const { at } = reader
    ended = reader.take(',?', 'and|&')
    const next = (ended || reader.take(',')) && reader.take(`${rowWord}?`) ? rowNumber(reader) : undefined
    // `of Rows 9 and 8, 2 sc in each dc row-end`: the number of what is worked next.
    if (!next || Math.abs(next.values[0]! - last.values[0]!) !== 1 || !ended && reader.vocabulary.stitchAt([reader.word(), reader.word(1), reader.word(2)])) {
      reader.at = at
      break
    }
    last = next
  }
  return last === first ? undefined : last
}

function rowNumber(reader: Reader): Num | undefined {
  const token = reader.peek()
  if (token?.kind !== 'ordinal') return takeNumber(reader)
  reader.at += 1
  return { values: [token.value ?? 0], start: token.start, end: token.end }
}
