import type { DiagnosticCode } from '../../diagnostics/codes.ts'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { textOf } from '../../text/source.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import type { Edit } from './work-again.ts'

/** The one change that a finding outside the counts asks for, and how a hint says it. It is tried before it is offered. */
export interface PlainChange {
  readonly edit: Edit
  readonly text: string
}

interface Asked {
  readonly checked: CheckedPattern
  readonly diagnostic: Diagnostic
  /** What stands at the place of the finding. */
  readonly stands: string
}

/** The change for a finding whose right form follows from the finding itself; undefined for one that is a person's to decide. */
export function plainChange(checked: CheckedPattern, diagnostic: Diagnostic): PlainChange | undefined {
  return table[diagnostic.code]?.({ checked, diagnostic, stands: textOf(checked.source, diagnostic.primary.span) })
}

const table: Partial<Record<DiagnosticCode, (asked: Asked) => PlainChange | undefined>> = {
  'side-mismatch': ({ diagnostic, stands }) => {
    const side = /\b(?:RS|WS)\b/.exec(stands)
    return side ? inside(diagnostic, side.index, side[0], side[0] === 'RS' ? 'WS' : 'RS', (word) => `by its turns it is a ${word} row: write \`${word}\``) : undefined
  },
  'sum-wrong': ({ diagnostic, stands }) => {
    const [, right = '', said = ''] = /is (\d+), but the text says (\d+)/.exec(diagnostic.message) ?? []
    const at = stands.lastIndexOf(said)
    return right === '' || at === -1 ? undefined : inside(diagnostic, at, said, right, (word) => `if both numbers before it are right, write \`${word}\``)
  },
  'prose-count-mismatch': ({ diagnostic, stands }) => {
    const makes = /^makes (\d+)$/.exec(diagnostic.primary.text)?.[1]
    const said = /^\d+(?=\s+\p{L})/u.exec(stands)?.[0]
    return makes === undefined || said === undefined ? undefined : inside(diagnostic, 0, said, makes, (word) => `the row comes out as it stands: write \`${word}\` in the text`)
  },
  'conversion-wrong': ({ diagnostic, stands }) => {
    const [, said = '', unit = '', is = ''] = /^(\S+) (\S+) is not the same .* which is (\S+) /.exec(diagnostic.message) ?? []
    const at = new RegExp(String.raw`(?<![\d.,])${said.replace('.', '[.,]')}(?=\s?${unit})`).exec(stands)?.index
    // Centimetres as leaflets print them, to the half; the others whole.
    const right = unit === 'cm' ? String(Math.round(Number(is) * 2) / 2) : String(Math.round(Number(is)))
    return said === '' || at === undefined ? undefined : inside(diagnostic, at, said, right, (word) => `if the other is right, write \`${word} ${unit}\``)
  },
  'word-doubled': ({ diagnostic, stands }) => inside(diagnostic, 0, stands, stands.split(/\s+/)[0] ?? '', (word) => `write \`${word}\` once`),
  'hook-not-listed': ({ checked, stands }) => {
    const hook = /\d+(?:\.\d+)? ?mm/.exec(stands)?.[0]
    const span = checked.pattern?.places.get('materials.hooks')
    const list = span ? textOf(checked.source, span) : ''
    if (!span || hook === undefined || !/^\[.+\]$/.test(list)) return undefined
    return { edit: { span, replacement: `${list.slice(0, -1)}, ${hook}]` }, text: `if the text is right, list it: \`hooks: ${list.slice(0, -1)}, ${hook}]\`` }
  },
}

function inside({ primary: { span } }: Diagnostic, at: number, stands: string, replacement: string, text: (word: string) => string): PlainChange {
  return { edit: { span: { start: span.start + at, end: span.start + at + stands.length }, replacement }, text: text(replacement) }
}
