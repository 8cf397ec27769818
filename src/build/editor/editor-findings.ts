import { CodeActionKind, DiagnosticSeverity, type CodeAction, type Diagnostic as EditorDiagnostic, type Range } from 'vscode-languageserver/node'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { severityOf } from '../../diagnostics/codes.ts'
import type { Diagnostic, Hint } from '../../diagnostics/diagnostic.ts'
import { errorsFirst } from '../../diagnostics/report.ts'
import type { CheckedPattern } from '../../pattern/checked-pattern.ts'
import type { Span } from '../../text/span.ts'

/** Findings as an editor shows them: a line under the place, the message and the facts at a glance, related places to jump to. */
export function editorFindings({ diagnostics }: CheckedPattern, document: TextDocument): readonly EditorDiagnostic[] {
  return errorsFirst(diagnostics).map((diagnostic) => editorFinding(diagnostic, document))
}

function editorFinding({ code, message, primary, secondary, note, hint, sizes }: Diagnostic, document: TextDocument): EditorDiagnostic {
  const facts = [
    ...(sizes && sizes.length > 0 ? [`sizes: ${sizes.join(', ')} only`] : []),
    ...(note === undefined ? [] : [note]),
    ...(hint === undefined ? [] : [`hint: ${hint.text}`]),
  ]
  return {
    range: rangeOf(primary.span, document),
    severity: severityOf(code) === 'error' ? DiagnosticSeverity.Error : DiagnosticSeverity.Warning,
    code,
    source: 'loopledger',
    message: [message, ...facts].join('\n'),
    ...(secondary.length > 0 && {
      relatedInformation: secondary.map(({ span, text }) => ({ location: { uri: document.uri, range: rangeOf(span, document) }, message: text })),
    }),
  }
}

/** Quick fixes for the findings that a range touches: the changes that were tried, and for a warning its acceptance. */
export function quickFixes({ diagnostics, pattern }: CheckedPattern, document: TextDocument, range: Range): readonly CodeAction[] {
  const [from, to] = [document.offsetAt(range.start), document.offsetAt(range.end)]
  const here = errorsFirst(diagnostics).filter(({ primary: { span } }) => span.start <= to && from <= span.end)
  return here.flatMap((diagnostic) => {
    const finding = editorFinding(diagnostic, document)
    const changes = [...(diagnostic.hint ? [diagnostic.hint] : []), ...(diagnostic.otherHints ?? [])]
    const tried = changes.flatMap((hint, at) => triedFix(hint, document, finding, at === 0 && changes.length === 1))
    return pattern ? [...tried, ...acceptance(diagnostic, finding, document, pattern.places)] : tried
  })
}

function triedFix({ text, edit }: Hint, document: TextDocument, finding: EditorDiagnostic, only: boolean): readonly CodeAction[] {
  if (!edit) return []
  return [{
    title: titleOf(text), kind: CodeActionKind.QuickFix, diagnostics: [finding], ...(only && { isPreferred: true }),
    edit: { changes: { [document.uri]: [{ range: rangeOf(edit.span, document), newText: edit.replacement }] } },
  }]
}

/** The words of a hint, beginning with a capital. A menu shows what is changed; the rest is worth its width. */
function titleOf(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}

/** An entry of `accepted`, with the reason left for the person: an acceptance without one is a finding. */
function acceptance({ code, primary }: Diagnostic, finding: EditorDiagnostic, document: TextDocument, places: ReadonlyMap<string, Span>): readonly CodeAction[] {
  if (severityOf(code) === 'error' || code === 'key-missing-to-publish' || code === 'acceptance-unmatched') return []
  const text = document.getText()
  const rows = [...places].find(([path, span]) => /^pieces\.\d+\.rows$/.test(path) && span.start <= primary.span.start && primary.span.end <= span.end)
  const label = rows && labelBefore(text, rows[1].start, primary.span.start)
  if (rows && label === undefined) return []
  const index = rows?.[0].split('.')[1]
  const name = places.get(`pieces.${index}.name`)
  const piece = name && places.has('pieces.1.name') ? `, piece: ${text.slice(name.start, name.end)}` : ''
  const entry = `- { code: ${code}${label === undefined ? '' : `, row: ${label}${piece}`}, why: }`
  const list = places.get('accepted')
  const at = list ? list.start : lineStartOf(text, /^pieces:/m)
  if (at === undefined || list && text[list.start] === '[') return []
  const indent = list ? list.start - (text.lastIndexOf('\n', list.start - 1) + 1) : 2
  const newText = list ? `${entry}\n${' '.repeat(indent)}` : `accepted:\n  ${entry}\n`
  const place = document.positionAt(at)
  return [{
    title: `Accept this ${code} with a reason`, kind: CodeActionKind.QuickFix, diagnostics: [finding],
    edit: { changes: { [document.uri]: [{ range: { start: place, end: place }, newText }] } },
  }]
}

/** The label of the row that an offset stands in: `Rnd 2`. */
function labelBefore(text: string, from: number, at: number): string | undefined {
  const lines = text.slice(from, text.indexOf('\n', at) === -1 ? text.length : text.indexOf('\n', at)).split('\n')
  const label = lines.findLast((line) => /^\s*[A-Z][a-z]+ \d+/.test(line))
  return label && /^\s*([A-Z][a-z]+ \d+)/.exec(label)?.[1]
}

function lineStartOf(text: string, line: RegExp): number | undefined {
  return line.exec(text)?.index
}

function rangeOf({ start, end }: Span, document: TextDocument): Range {
  return { start: document.positionAt(start), end: document.positionAt(Math.max(start, end)) }
}
