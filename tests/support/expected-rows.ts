/** A table after a fence, as text: one record a line, keyed by the header's words. */
export interface ExpectedTable {
  readonly line: number
  readonly header: readonly string[]
  readonly rows: readonly ReadonlyMap<string, string>[]
}

const compared = ['offers', 'works over', 'leaves', 'makes', 'kinds', 'spaces', 'verdict', 'assumed', 'side', 'says']
const chosenBy = ['row', 'size', 'piece']

/** Is this the header of a table that the runner compares with worked rows? A `row` beside an unknown word throws. */
export function comparesRows(header: readonly string[]): boolean {
  if (!header.includes('row') || header.includes('last row')) return false
  const strange = header.filter((word) => !compared.includes(word) && !chosenBy.includes(word))
  if (strange.length > 0) throw new Error(`a table of worked rows has no column \`${strange.join('`, `')}\``)
  if (!header.some((word) => compared.includes(word))) throw new Error('a table of worked rows compares nothing')
  return true
}

/** Is this the header of a table of single rows, each worked on so many sc? */
export function worksSingleRows(header: readonly string[]): boolean {
  if (!header.includes('last row')) return false
  const strange = header.filter((word) => !['last row', 'row', 'works over', 'makes', 'leaves'].includes(word))
  if (strange.length > 0 || !header.includes('row')) throw new Error(`a table of single rows cannot have the header ${header.join(' | ')}`)
  return true
}

/** The cells of one line of a Markdown table, raw but for escapes and code marks: `\*` is `*`, `\|` is `|`. */
export function cellsOf(line: string): string[] {
  const inner = line.trim().replace(/^\|/, '').replace(/\|$/, '')
  return inner.split(/(?<!\\)\|/).map((cell) => cell.trim().replace(/^`(.*)`$/, '$1').replace(/\\([*|_~[\]])/g, '$1'))
}

/** Reads the lines of a table: header, rule, then one record a line. */
export function tableOf(lines: readonly string[], line: number): ExpectedTable {
  const [header = '', , ...rest] = lines
  const words = cellsOf(header).map((word) => word.toLowerCase())
  return {
    line,
    header: words,
    rows: rest.map((text) => {
      const cells = cellsOf(text)
      if (cells.length !== words.length) throw new Error(`a table line has ${cells.length} cells under ${words.length}: ${text}`)
      return new Map(words.map((word, index) => [word, cells[index] ?? '']))
    }),
  }
}
