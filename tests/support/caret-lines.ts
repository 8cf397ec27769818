import { codes, type DiagnosticCode } from '../../src/diagnostics/codes.ts'

/** A diagnostic that a fence asks for. Line and columns are 1-based and count in the fence without its caret lines. */
export interface ExpectedDiagnostic {
  readonly line: number
  readonly column: number
  /** The first column after the carets. */
  readonly endColumn: number
  readonly code: DiagnosticCode
  /** `total-mismatch (M, L)`: the sizes that it must hold for. Left out: not compared. */
  readonly sizes?: readonly string[]
}

const mark = /(\^+) +([a-z][a-z-]*)(?: \(([^)]*)\))?/g
const caretLine = /^ *\^+ +[a-z][a-z-]*(?: \([^)]*\))?(?: +\^+ +[a-z][a-z-]*(?: \([^)]*\))?)* *$/

/**
 * Takes the caret lines out of a fence.
 *
 *   3: sc in next 15 sts, 2 sc in next st, sc in next 18 sts. (34 sc)
 *                                                             ^^^^^^^ total-mismatch
 */
export function withoutCaretLines(fence: string): { readonly text: string; readonly expected: readonly ExpectedDiagnostic[] } {
  const kept: string[] = []
  const expected: ExpectedDiagnostic[] = []
  for (const line of fence.split('\n')) {
    if (!/^ *\^/.test(line)) {
      kept.push(line)
      continue
    }
    if (!caretLine.test(line)) throw new Error(`not a caret line, though it begins with a caret: \`${line}\``)
    if (kept.length === 0) throw new Error(`a caret line without a line above it: \`${line}\``)
    for (const found of line.matchAll(mark)) {
      const [, carets = '', code = '', sizes] = found
      if (!(code in codes)) throw new Error(`no diagnostic has the code \`${code}\``)
      const column = found.index + 1
      expected.push({
        line: kept.length,
        column,
        endColumn: column + carets.length,
        code: code as DiagnosticCode,
        ...(sizes === undefined ? {} : { sizes: sizes.split(',').map((size) => size.trim()) }),
      })
    }
  }
  return { text: kept.join('\n'), expected }
}
