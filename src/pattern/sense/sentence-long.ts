import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { sentencesOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A sentence of more words than this is read twice. */
const most = 60

/** A sentence of a note that holds more than one thought, told by its length alone. */
export function sentenceLong({ prose }: SenseFacts): readonly Diagnostic[] {
  return prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence): readonly Diagnostic[] => {
    const words = sentence.text.match(/\S*[\p{L}\d]\S*/gu)?.length ?? 0
    if (words <= most) return []
    const firstLine = sentence.text.split('\n')[0]!
    return [{
      code: 'sentence-long',
      message: `a sentence has ${words} words`,
      primary: { span: { start: sentence.start, end: sentence.start + firstLine.length }, text: 'begins here' },
      secondary: [],
      note: `up to ${most} words nothing is said; makers read notes with yarn in their hands`,
    }]
  })
}
