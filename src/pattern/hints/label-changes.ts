import { textOf } from '../../text/source.ts'
import { quoted, rowsOf, type Change, type Slip } from './change.ts'
import { writtenNumbers } from './written-numbers.ts'

/** The number of a row, or of the row before it, made to run on by one. A range moves its first number only. */
export function labelChanges(slip: Slip): readonly Change[] {
  const { source, row } = slip
  const rows = rowsOf(slip)
  const at = rows.findIndex(({ written }) => written.span.start === row.written.span.start)
  const before = rows[at - 1]
  const older = rows.findLast(({ written }, index) => index < at && written.span.start !== before?.written.span.start)
  return [
    ...(before?.written.last === undefined ? [] : numbered(slip, row.written.label, before.written.last + 1)),
    ...(before && older?.written.last !== undefined ? numbered(slip, before.written.label, older.written.last + 1) : []),
  ]

  function numbered({ sizes }: Slip, label: Slip['row']['written']['label'], to: number): readonly Change[] {
    const [number] = writtenNumbers(source, label, sizes)
    if (!number || number.parts.length > 1 || number.values[0] === to) return []
    const stands = textOf(source, label).replace(/[\s:.]+$/, '')
    const instead = stands.replace(/\d+/, `${to}`)
    return [{ span: number.span, replacement: `${to}`, words: `with ${quoted(instead)} for ${quoted(stands)}` }]
  }
}
