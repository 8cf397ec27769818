import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { allWords, placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/** Where several hooks are listed, the text says where each is used. The first is the one that the work begins with. */
export function hookNotUsed(facts: SenseFacts): readonly Diagnostic[] {
  const { materials, gauge, pieces } = facts.pattern
  const hooks = materials?.hooks ?? []
  if (hooks.length < 2) return []
  // Notions may say what a hook is for, and a piece may be named for it.
  const words = `${allWords(facts)}\n${(materials?.notions ?? []).map(({ what, for: use }) => `${what} ${use ?? ''}`).join('\n')}\n${pieces.map(({ note }) => note ?? '').join('\n')}`
  if (/\b(?:larger|smaller|bigger|finer|thicker|other|second|first)(?:-size| size)? hook\b|\bhook (?:one|a|two|1|2) (?:sizes? )?(?:larger|smaller)/i.test(words)) return []
  const begun = gauge?.hook ?? hooks[0]
  return hooks.flatMap((hook, index): readonly Diagnostic[] => {
    if (hook === begun || new RegExp(String.raw`(?<![\d.])${plainNumber(hook, 3).replace('.', String.raw`\.`)} ?mm`).test(words)) return []
    const span = placeOfKey(facts, `materials.hooks.${index}`, 'materials.hooks')
    return [{
      code: 'hook-not-used',
      message: `a hook of ${plainNumber(hook, 3)} mm is listed, but nothing says where it is used`,
      primary: { span, text: 'in no row and no note' },
      secondary: [],
    }]
  })
}
