import { createHash } from 'node:crypto'
import type { Booklet } from '../booklet/booklet.ts'

/**
 * For each row of a booklet, by its name, a digest of all that a maker goes by: words, side, repeats and counts. A row that reads the
 * same has the same digest in every version of the pattern, whatever stands around it.
 */
export function rowDigests({ parts }: Booklet): Readonly<Record<string, string>> {
  const rows = parts.flatMap(({ lines }) => lines.flatMap((line) => (line.kind === 'row' ? [line] : [])))
  return Object.fromEntries(rows.map(({ id, text, side, repeats, stitches, spaces }) => {
    const said = JSON.stringify([text.map((run) => run.text).join(''), side, repeats, stitches, spaces])
    return [id, createHash('sha256').update(said).digest('hex').slice(0, 10)]
  }))
}
