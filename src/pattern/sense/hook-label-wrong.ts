import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { hookSizes } from '../../measures/hooks.ts'
import { spanOf } from './passages.ts'
import { plainNumber, type SenseFacts } from './sense-facts.ts'

const label = String.raw`(?:US(?:\s+size)?\s+)?([A-Z]-\d{1,2}½?)(?![\p{L}\d])`
const mm = String.raw`(\d{1,2}(?:\.\d{1,2})?)\s?mm\b`
const forms = [
  { form: new RegExp(String.raw`(?<![\p{L}\d/-])${label}\s*(?:hook\s*)?[(/]\s*${mm}`, 'gu'), labelFirst: true },
  { form: new RegExp(String.raw`(?<![\d.])${mm}\s*(?:hook\s*)?[(/]\s*${label}`, 'gu'), labelFirst: false },
]

/** A hook whose letter and number are those of another size: `H-8 (4 mm)`. Only labels that published charts agree on are compared. */
export function hookLabelWrong({ rows, prose }: SenseFacts): readonly Diagnostic[] {
  return [...prose, ...rows].flatMap((passage) => forms.flatMap(({ form, labelFirst }) => [...passage.text.matchAll(form)].flatMap((match): readonly Diagnostic[] => {
    const [said, size] = labelFirst ? [match[1]!, Number(match[2])] : [match[2]!, Number(match[1])]
    const hook = hookSizes.find(({ us }) => us === said)
    if (!hook || hook.mm === size) return []
    return [{
      code: 'hook-label-wrong',
      message: `${said} is a hook of ${plainNumber(hook.mm, 3)} mm, but the text says ${plainNumber(size, 3)} mm`,
      primary: { span: spanOf(passage, match), text: `${said}: ${plainNumber(hook.mm, 3)} mm` },
      secondary: [],
      note: 'letters and numbers are those of the US trade council; millimetres are the same for every maker',
    }]
  })))
}
