import { readFileSync } from 'node:fs'

/** A worked example of a printed book (or one of our own), with what its header says must come out. */
export interface HandbookCase {
  readonly file: string
  readonly source: string
  /** Rows, as they are worked. */
  readonly rows: string
  /** Stitches that a row makes, by its label; worked by hand, not by the engine. */
  readonly makes: readonly { readonly label: string; readonly count: number }[]
  /** Chain spaces that a row makes, by kind. */
  readonly spaces: readonly { readonly label: string; readonly kind: string; readonly count: number }[]
  /** The one count that is printed wrong, or was planted; undefined when all counts are true. */
  readonly error?: { readonly label: string; readonly says: number; readonly makes: number }
}

/** Reads a case: header lines begin with `#` and say `key: value`, the rows stand below. */
export function readHandbookCase(file: string): HandbookCase {
  const lines = readFileSync(file, 'utf8').trimEnd().split('\n')
  const header = lines.filter((line) => line.startsWith('#')).map((line) => {
    const found = /^# ([a-z ]+): (.+)$/.exec(line)
    if (!found) throw new Error(`${file}: not a header line: ${line}`)
    return { key: found[1]!, value: found[2]! }
  })
  const valuesOf = (key: string): string[] => header.filter((entry) => entry.key === key).map(({ value }) => value)
  const source = valuesOf('source')[0]
  if (source === undefined || valuesOf('expect').length !== 1) throw new Error(`${file}: a source and one expectation are needed`)
  const [error] = valuesOf('error').map((value) => {
    const found = /^(R(?:ow|nd) \d+): says (\d+), makes (\d+)$/.exec(value)
    if (!found) throw new Error(`${file}: not an error: ${value}`)
    return { label: found[1]!, says: Number(found[2]), makes: Number(found[3]) }
  })
  return {
    file,
    source,
    rows: lines.filter((line) => !line.startsWith('#')).join('\n').trim(),
    makes: valuesOf('makes').flatMap((value) => value.split(', ')).map((entry) => {
      const found = /^(R(?:ow|nd) \d+) (\d+)$/.exec(entry)
      if (!found) throw new Error(`${file}: not a count: ${entry}`)
      return { label: found[1]!, count: Number(found[2]) }
    }),
    spaces: valuesOf('spaces').flatMap((value) => {
      const [label = '', counts = ''] = value.split(': ')
      return counts.split(', ').map((entry) => {
        const found = /^(\d+) (ch-\d+)$/.exec(entry)
        if (!found) throw new Error(`${file}: not a count of spaces: ${entry}`)
        return { label, count: Number(found[1]), kind: found[2]! }
      })
    }),
    ...(error ? { error } : {}),
  }
}
