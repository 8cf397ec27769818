import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { sentencesOf, spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A sum that stands in a sentence whole: its words, its numbers, and what it is said to come to. */
interface Sum {
  readonly words: string
  readonly terms: string
  readonly comes: number
  readonly said: number
  readonly match: RegExpExecArray
}

/** Two numbers and what they come to. A product behind `+` is part of a longer sum. */
const products: readonly RegExp[] = [
  /(?<![-+−–×x*÷/(]\s*)\b(\d{1,4})\s*(?:×|x|\*|times)\s*(\d{1,4})\s*(?:=|is|are|makes?)\s*(\d{1,6})(?![.,]?\d|[½¼¾]|\s*(?:cm|in\b|mm))/gi,
  /\b(\d{1,3}) (?:balls?|skeins?|hanks?) of (\d{2,4}) ?m\b[^.;]{0,24}?\b(\d{2,6}) ?m (?:in all|altogether|in total|together)\b/gi,
  /\b(\d{1,3}) (?:by|×|x) (\d{1,3}) (?:blocks?|squares?|motifs?|hexagons?|tiles|granny squares)\s+(?:takes|makes|needs|is|are|comes to|=)\s+(\d{1,5})(?=\s*(?:[:.,;]|blocks?|squares?|motifs?|hexagons?|tiles|in all|of them))/gi,
]

/** Products that are added up: `5 × 11 + 4 × 2 = 63`. What stands in brackets, or with a unit, is let pass. */
const added = /(?<![\d.,½¼¾(]|[-+−–×x*÷/(]\s*)(\d{1,4}(?:\s*[×x*+−]\s*\d{1,4}){2,})\s*=\s*(\d{1,6})(?![.,]?\d|[½¼¾]|\s*(?:cm|in\b|mm|[-+−–×x*÷/]))/gi

/** A sum in the text that does not come out: 6 by 8 blocks are 48. */
export function sumWrong({ prose }: SenseFacts): readonly Diagnostic[] {
  return prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence) => sumsIn(sentence.text).filter(({ comes, said }) => comes !== said).map(({ words, terms, comes, said, match }): Diagnostic => (
    { code: 'sum-wrong', message: `${words} is ${comes}, but the text says ${said}`, primary: { span: spanOf(sentence, match), text: `${terms} = ${comes}` }, secondary: [] })))
}

function sumsIn(text: string): readonly Sum[] {
  const two = products.flatMap((form) => [...text.matchAll(form)].map((match): Sum => {
    const [a, b] = [Number(match[1]), Number(match[2])]
    return { words: `${a} times ${b}`, terms: `${a} × ${b}`, comes: a * b, said: Number(match[3]), match }
  }))
  const many = [...text.matchAll(added)].filter(([, terms]) => /[×x*]/i.test(terms!)).map((match): Sum => {
    const terms = match[1]!.replace(/\s*[x*]\s*/gi, ' × ')
    return { words: terms, terms, comes: valueOf(terms), said: Number(match[2]), match }
  })
  return [...two, ...many]
}

/** Products first, then what is added and taken away, from left to right. */
function valueOf(terms: string): number {
  return [...terms.matchAll(/([+−]?)\s*(\d+(?:\s*×\s*\d+)*)/g)].reduce((sum, [, sign, product]) => sum + (sign === '−' ? -1 : 1) * product!.split('×').reduce((value, factor) => value * Number(factor), 1), 0)
}
