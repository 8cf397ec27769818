import { namePattern } from '../../text/name-pattern.ts'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { inSizeAt, type SenseFacts } from './sense-facts.ts'

const eyes = /\b(?:safety|plastic|toy) (?:eyes?|noses?)\b/i
/** A hole of so many stitches lets no hand and no washer through. */
const closed = 8

/** Safety eyes that are told after the piece is closed: their washers are pressed on from within. Told once. */
export function eyesAfterClosing(facts: SenseFacts): readonly Diagnostic[] {
  const pieces = inSizeAt(facts).filter(({ rows }) => {
    const last = rows.at(-1)
    return last?.word === 'round' && last.makes <= closed && last.verdict === 'adds-up' && rows.some(({ makes }) => makes > closed)
  })
  const toldInTime = facts.prose.some(({ kind, text, under }) => eyes.test(text) && (kind === 'note' || kind === 'body' && !isFinishing(under)))
    || facts.rows.some(({ text }) => eyes.test(text))
  if (pieces.length === 0 || toldInTime) return []
  for (const { piece, rows, between } of pieces) {
    if (between.some(({ text, afterRow }) => eyes.test(text) && afterRow < rows.length - 1)) return []
    const name = piece.name.replace(/^the /i, '')
    for (const passage of facts.prose.filter(({ kind, piece: of }) => kind === 'remark' && of === piece.name || kind === 'body')) {
      for (const sentence of sentencesOf(passage)) {
        const match = eyes.exec(sentence.text)
        if (!match || denies(sentence.text, match.index) || passage.kind === 'body' && !new RegExp(String.raw`\b${namePattern(name)}\b`, 'i').test(sentence.text)) continue
        const last = rows.at(-1)!
        return [{
          code: 'eyes-after-closing',
          message: `\`${match[0]}\` ${/s$/.test(match[0]) ? 'are' : 'is'} told after ${piece.name} is closed with ${last.makes} stitches`,
          primary: { span: spanOf(sentence, match), text: 'the washer goes on from within' },
          secondary: [{ span: last.written.label, text: `closed to ${last.makes}` }],
        }]
      }
    }
  }
  return []
}

function isFinishing(under: string | undefined): boolean {
  return /\b(?:assembl|finish|making up|make up|sewing|joining|face)/i.test(under ?? '')
}
