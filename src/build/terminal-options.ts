import type { ReportOptions } from '../diagnostics/report.ts'

interface Stream {
  readonly isTTY?: boolean
  readonly columns?: number
  hasColors?: () => boolean
}

/** How reports are written to a stream: with colour where a person sees it, and no wider than the person's terminal. */
export function terminalOptions(stream: Stream, environment: Readonly<Record<string, string | undefined>>): ReportOptions {
  const { columns } = stream
  return {
    colour: coloursWanted(stream, environment),
    // A line of the source has the line's number and a bar before it. Prose wider than this is hard to read on any screen.
    ...(columns === undefined ? {} : { width: Math.max(40, Math.min(100, columns - 6)), wrap: Math.max(40, Math.min(120, columns)) }),
  }
}

/** FORCE_COLOR and NO_COLOR decide, else whether a person is looking at a terminal that has colours. */
function coloursWanted(stream: Stream, { FORCE_COLOR: forced, NO_COLOR: refused }: Readonly<Record<string, string | undefined>>): boolean {
  if (forced !== undefined) return forced !== '0' && forced !== 'false'
  if (refused !== undefined && refused !== '') return false
  return stream.isTTY === true && stream.hasColors?.() === true
}
