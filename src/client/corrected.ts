import { button, element } from './element.ts'
import type { Progress } from './progress.ts'
import type { Part, Row } from './rows-on-page.ts'

/** A row that was ticked and reads differently now. */
export interface Corrected {
  readonly row: Row
  /** Keys of its ticked boxes. */
  readonly keys: readonly string[]
}

/** What a newer version of the pattern changed of that which was ticked. */
export interface Changed {
  readonly corrected: readonly Corrected[]
  /** Ticked boxes of rows that are no longer there. */
  readonly gone: readonly string[]
}

/** Compares what was ticked with the rows as they are now, by the digests of both. */
export function changedSince(parts: readonly Part[], { ticks }: Progress): Changed {
  const rows = parts.flatMap((part) => part.rows)
  const rowOf = new Map(rows.flatMap((row) => row.boxes.map((box) => [box.key, row] as const)))
  const keys = new Map<Row, string[]>()
  const gone: string[] = []
  for (const [key, digest] of Object.entries(ticks)) {
    const row = rowOf.get(key.replace(/~\d+$/, ''))
    if (!row) gone.push(key)
    else if (row.digest !== digest) keys.set(row, [...(keys.get(row) ?? []), key])
  }
  return { corrected: rows.flatMap((row) => (keys.has(row) ? [{ row, keys: keys.get(row) ?? [] }] : [])), gone }
}

const notes = new Map<Row, HTMLElement>()

/** Marks the corrected rows with a bar and says so under each, until somebody has seen it. */
export function showCorrected({ corrected }: Changed, version: string, since: string, seen: (keys: readonly string[]) => void): void {
  const still = new Set(corrected.map(({ row }) => row))
  for (const [row, note] of notes) {
    if (still.has(row)) continue
    note.remove()
    row.element.classList.remove('changed')
    notes.delete(row)
  }
  for (const { row, keys } of corrected) {
    if (notes.has(row)) continue
    const one = row.boxes.length === 1
    const name = one ? `${row.part.word} ${row.boxes[0]?.label ?? ''}` : `${row.part.word}s ${row.element.querySelector('.number')?.textContent ?? ''}`
    const when = since === version ? (one ? 'was changed' : 'were changed') : `${one ? 'was' : 'were'} corrected in ${version}`
    const note = element('p', { class: 'correction' }, `${name} ${when}; you had ticked ${one ? 'it' : 'some of them'}. `, button('Seen', () => seen(keys)))
    row.work.append(note)
    row.element.classList.add('changed')
    notes.set(row, note)
  }
}
