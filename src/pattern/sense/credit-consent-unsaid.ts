import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { sentencesOf, spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

const credit = /\b(?:[Tt]ech(?:nical)?(?:ly)?[- ]edit(?:ed|or|ing)(?: by|:)?|[Tt]est(?:ed|ers|[- ]crocheted)(?: by|:)|[Pp]hoto(?:s|graphs|graphy)?(?: by|:)) (?:of )?[A-Z]\p{Ll}+/u

/** Somebody is named as editor, tester or photographer, and nothing says that they agreed. Whoever has asked accepts this with the day. */
export function creditConsentUnsaid({ prose }: SenseFacts): readonly Diagnostic[] {
  return prose.flatMap((passage) => sentencesOf(passage).flatMap((sentence): readonly Diagnostic[] => {
    const match = credit.exec(sentence.text)
    if (!match || /\b(?:permission|consent|agreed|kindly)\b/i.test(passage.text)) return []
    return [{ code: 'credit-consent-unsaid', message: 'somebody is credited by name, and nothing says that they agreed to it', primary: { span: spanOf(sentence, match), text: 'named here' }, secondary: [] }]
  }))
}
