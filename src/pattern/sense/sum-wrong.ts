import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { sentencesOf, spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Sums that stand in a sentence whole: two numbers and what they come to. */
const sums: readonly RegExp[] = [
  /\b(\d{1,4})\s*(?:×|x|\*|times)\s*(\d{1,4})\s*(?:=|is|are|makes?)\s*(\d{1,6})(?![.,]?\d|[½¼¾]|\s*(?:cm|in\b|mm))/gi,
  /\b(\d{1,3}) (?:balls?|skeins?|hanks?) of (\d{2,4}) ?m\b[^.;]{0,24}?\b(\d{2,6}) ?m (?:in all|altogether|in total|together)\b/gi,
  /\b(\d{1,3}) (?:by|×|x) (\d{1,3}) (?:blocks?|squares?|motifs?|hexagons?|tiles|granny squares)\s+(?:takes|makes|needs|is|are|comes to|=)\s+(\d{1,5})(?=\s*(?:[:.,;]|blocks?|squares?|motifs?|hexagons?|tiles|in all|of them))/gi,
]

/** A product in the text that does not come out: 6 by 8 blocks are 48. */
export function sumWrong({ prose }: SenseFacts): readonly Diagnostic[] {
  return prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence) => sums.flatMap((form) => [...sentence.text.matchAll(form)].flatMap((match): readonly Diagnostic[] => {
    const [a, b, said] = [Number(match[1]), Number(match[2]), Number(match[3])]
    if (a * b === said) return []
    return [{ code: 'sum-wrong', message: `${a} times ${b} is ${a * b}, but the text says ${said}`, primary: { span: spanOf(sentence, match), text: `${a} × ${b} = ${a * b}` }, secondary: [] }]
  })))
}
