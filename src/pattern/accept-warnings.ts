import { codes, severityOf, type DiagnosticCode } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { listOf } from '../diagnostics/words.ts'
import type { AcceptedFinding, WorkedPiece } from './checked-pattern.ts'
import { didYouMean } from './did-you-mean.ts'
import type { Acceptance, Pattern } from './pattern.ts'
import { quoted } from './shown.ts'

/** Findings parted into what is still to be looked at and what the designer accepts. */
export interface Parted {
  readonly diagnostics: readonly Diagnostic[]
  readonly accepted: readonly AcceptedFinding[]
}

/** Takes the warnings that the designer accepts out of the findings; an acceptance that takes none is a finding itself. */
export function acceptWarnings({ accepted }: Pick<Pattern, 'accepted'>, pieces: readonly WorkedPiece[], found: readonly Diagnostic[]): Parted {
  const placed = found.map((diagnostic) => ({ diagnostic, ...placeIn(pieces, diagnostic) }))
  const taken = new Map<Diagnostic, Acceptance>()
  const said: Diagnostic[] = []
  for (const acceptance of accepted) {
    const finding = cannotBeAccepted(acceptance)
    if (finding) {
      said.push(finding)
      continue
    }
    const alike = placed.filter(({ diagnostic, piece }) => diagnostic.code === acceptance.code && (acceptance.piece === undefined || same(acceptance.piece, piece)))
    const matching = alike.filter(({ labels }) => (acceptance.row === undefined ? labels.length === 0 : labels.some((label) => namesRow(acceptance.row!, label))))
    const inPieces = [...new Set(matching.map(({ piece }) => piece))]
    if (matching.length === 0 || inPieces.length > 1) said.push(unmatched(acceptance, alike, inPieces))
    else for (const { diagnostic } of matching) taken.set(diagnostic, acceptance)
  }
  return {
    diagnostics: [...found.filter((diagnostic) => !taken.has(diagnostic)), ...said],
    accepted: [...taken].map(([diagnostic, { why, span }]) => ({ diagnostic, why, span })),
  }
}

interface Placed {
  readonly piece?: string
  /** What the row can be called: the labels of all the real rows that it gives, and its written label. Empty outside rows. */
  readonly labels: readonly string[]
}

function placeIn(pieces: readonly WorkedPiece[], { primary: { span } }: Diagnostic): Placed {
  for (const { piece, rows } of pieces) {
    const here = rows.filter(({ written }) => written.span.start <= span.start && span.end <= written.span.end)
    if (here.length > 0) return { piece: piece.name, labels: here.map(({ label }) => label) }
  }
  return { labels: [] }
}

/** `Row 3`, `row 3` and `3` are the same row, and so is `Round 3` where the rows are rounds. */
function namesRow(said: string, label: string): boolean {
  const plain = (words: string): string => words.toLowerCase().replace(/\brnd\b/, 'round').replace(/[.:]$/, '').trim()
  const number = /^\d+$/.exec(said.trim())
  return number ? /\d+$/.exec(label)?.[0] === number[0] : plain(said) === plain(label)
}

function same(name: string, other: string | undefined): boolean {
  return name.toLowerCase() === other?.toLowerCase()
}

const never: readonly string[] = ['key-missing-to-publish', 'acceptance-unmatched'] satisfies readonly DiagnosticCode[]

function cannotBeAccepted({ code, codeSpan }: Acceptance): Diagnostic | undefined {
  if (!isCode(code)) {
    const known = Object.keys(codes)
    return { code: 'acceptance-unmatched', message: `${quoted(code)} is the code of no warning, so there is nothing to accept`, primary: { span: codeSpan, text: 'no such code' }, secondary: [], ...didYouMean(code, known) }
  }
  if (severityOf(code) === 'warning' && !never.includes(code)) return undefined
  const what = severityOf(code) === 'error' ? 'is an error' : code === 'key-missing-to-publish' ? 'keeps a pattern from being published' : 'is about an acceptance itself'
  return {
    code: 'acceptance-not-possible',
    message: `${quoted(code)} ${what} and cannot be accepted`,
    primary: { span: codeSpan, text: severityOf(code) === 'error' ? 'an error' : 'no such acceptance' },
    secondary: [],
  }
}

function isCode(code: string): code is DiagnosticCode {
  return Object.hasOwn(codes, code)
}

function unmatched({ code, row, piece, codeSpan }: Acceptance, alike: readonly (Placed & { readonly diagnostic: Diagnostic })[], inPieces: readonly (string | undefined)[]): Diagnostic {
  const where = row === undefined ? 'outside the rows' : `in ${quoted(row)}${piece === undefined ? '' : ` of ${quoted(piece)}`}`
  const several = inPieces.length > 1
  const places = [...new Set(alike.flatMap(({ labels }) => labels.slice(0, 1)))].slice(0, 4)
  const note = several ? undefined : alike.length === 0 ? undefined
    : places.length === 0 ? 'it stands outside the rows: such an acceptance names no row'
      : `it stands in ${listOf(places.map((label) => quoted(label)))}`
  return {
    code: 'acceptance-unmatched',
    message: several
      ? `${quoted(code)} stands ${where} of ${listOf(inPieces.map((name) => name ?? ''))}, and the acceptance names no piece`
      : `no warning ${quoted(code)} stands ${where}, so there is nothing to accept`,
    primary: { span: codeSpan, text: several ? 'which piece?' : 'nothing to accept' },
    secondary: [],
    ...(note === undefined ? {} : { note }),
  }
}
