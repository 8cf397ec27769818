import { createConnection, ProposedFeatures, TextDocuments, TextDocumentSyncKind, CodeActionKind, MarkupKind } from 'vscode-languageserver/node'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { checkPattern } from '../pattern/check-pattern.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { findFrontMatter } from '../pattern/find-front-matter.ts'
import { editorFindings, quickFixes } from './editor/editor-findings.ts'
import { formatProse } from './editor/format-prose.ts'
import { rowHover } from './editor/row-hover.ts'

/**
 * The language server: speaks the Language Server Protocol over standard input and output to any editor that knows it. It shows findings
 * while a pattern is typed, offers the changes that were tried, says on a row what it comes to, and formats the prose.
 */

// A hand that types pauses longer than this between words.
const pause = 200

const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout)
const documents = new TextDocuments(TextDocument)
const known = new Map<string, { readonly version: number; readonly checked: CheckedPattern }>()
const waiting = new Map<string, NodeJS.Timeout>()

connection.onInitialize(() => ({
  serverInfo: { name: 'loopledger' },
  capabilities: {
    textDocumentSync: TextDocumentSyncKind.Incremental,
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
    documentFormattingProvider: true,
    hoverProvider: true,
  },
}))

/** Other Markdown is none of ours: a pattern begins with front-matter that has pieces or terms. */
function isPattern(text: string): boolean {
  const front = findFrontMatter(text)
  return front !== undefined && /^(?:pieces|terms):/m.test(text.slice(front.yaml.start, front.yaml.end))
}

function checkedNow(document: TextDocument): CheckedPattern | undefined {
  const before = known.get(document.uri)
  if (before?.version === document.version) return before.checked
  const text = document.getText()
  if (!isPattern(text)) return undefined
  const checked = checkPattern({ path: pathOf(document.uri), text })
  known.set(document.uri, { version: document.version, checked })
  return checked
}

function pathOf(uri: string): string {
  return decodeURIComponent(/[^/]*$/.exec(uri)?.[0] ?? uri)
}

function show(document: TextDocument): void {
  const checked = checkedNow(document)
  const diagnostics = checked ? [...editorFindings(checked, document)] : []
  void connection.sendDiagnostics({ uri: document.uri, version: document.version, diagnostics })
}

documents.onDidChangeContent(({ document }) => {
  clearTimeout(waiting.get(document.uri))
  // What is opened is shown at once; what is typed when the hand rests.
  if (known.has(document.uri)) waiting.set(document.uri, setTimeout(() => show(document), pause))
  else show(document)
})

documents.onDidClose(({ document: { uri } }) => {
  clearTimeout(waiting.get(uri))
  waiting.delete(uri)
  known.delete(uri)
  void connection.sendDiagnostics({ uri, diagnostics: [] })
})

connection.onCodeAction(({ textDocument, range }) => {
  const document = documents.get(textDocument.uri)
  const checked = document && checkedNow(document)
  return document && checked ? [...quickFixes(checked, document, range)] : []
})

connection.onHover(({ textDocument, position }) => {
  const document = documents.get(textDocument.uri)
  const checked = document && checkedNow(document)
  const found = document && checked && rowHover(checked, document.offsetAt(position))
  if (!document || !found) return null
  return {
    contents: { kind: MarkupKind.Markdown, value: found.markdown },
    range: { start: document.positionAt(found.span.start), end: document.positionAt(found.span.end) },
  }
})

connection.onDocumentFormatting(({ textDocument }) => {
  const document = documents.get(textDocument.uri)
  const text = document?.getText() ?? ''
  const edit = document && isPattern(text) ? formatProse(text) : undefined
  if (!document || !edit) return []
  return [{ range: { start: document.positionAt(edit.span.start), end: document.positionAt(edit.span.end) }, newText: edit.replacement }]
})

documents.listen(connection)
connection.listen()
