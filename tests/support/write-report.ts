import { readFileSync, writeFileSync } from 'node:fs'

/** Puts a new text into the `report` fence that opens on a line (1-based) of a Markdown file. Carets stay as a hand wrote them. */
export function writeReport(file: string, openingLine: number, report: string): void {
  const lines = readFileSync(file, 'utf8').split('\n')
  const fence = /^\s*(`{3,}|~{3,})/.exec(lines[openingLine - 1] ?? '')?.[1]
  if (fence === undefined) throw new Error(`${file}:${openingLine}: no fence opens here`)
  const closing = lines.findIndex((line, index) => index >= openingLine && line.trim() === fence)
  lines.splice(openingLine, closing - openingLine, ...report.trimEnd().split('\n'))
  writeFileSync(file, lines.join('\n'))
}
