import { createConnection, ProposedFeatures, TextDocuments, TextDocumentSyncKind, CodeActionKind, MarkupKind } from 'vscode-languageserver/node'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { checkOnce, checkPattern } from '../pattern/check-pattern.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { findFrontMatter } from '../pattern/find-front-matter.ts'
import { editorFindings, quickFixes } from './editor/editor-findings.ts'
import { formatProse } from './editor/format-prose.ts'
import { rowHover } from './editor/row-hover.ts'

/**
 * The language server: speaks the Language Server Protocol over standard input and output to any editor that knows it. It shows findings
 * while a pattern is typed, offers the changes that were tried, says on a row what it comes to, and formats the prose.
 */

// A hand that types pauses longer than this between words, in milliseconds; trying changes takes longer than checking, so it waits again.
const pause = 150
const longerPause = 250

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

function show(document: TextDocument, checked: CheckedPattern | undefined): void {
  const diagnostics = checked ? [...editorFindings(checked, document)] : []
  void connection.sendDiagnostics({ uri: document.uri, version: document.version, diagnostics })
}

/** The findings as soon as the hand rests, and the same with hints when it rests longer. */
function showSoon(document: TextDocument): void {
  const { uri, version } = document
  const later = (wait: number, work: () => void): void => {
    clearTimeout(waiting.get(uri))
    waiting.set(uri, setTimeout(() => {
      if (documents.get(uri)?.version === version) work()
    }, wait))
  }
  later(pause, () => {
    const text = document.getText()
    show(document, isPattern(text) ? checkOnce({ path: pathOf(uri), text }) : undefined)
    later(longerPause, () => show(document, checkedNow(document)))
  })
}

documents.onDidChangeContent(({ document }) => {
  // What is opened is shown at once.
  if (known.has(document.uri)) showSoon(document)
  else show(document, checkedNow(document))
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
