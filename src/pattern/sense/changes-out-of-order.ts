import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** Changes stand newest first, by version and by day. Told once, at the first that does not. */
export function changesOutOfOrder(facts: SenseFacts): readonly Diagnostic[] {
  const { changes } = facts.pattern
  for (const [index, { version, date }] of changes.entries()) {
    const above = changes[index - 1]
    if (!above) continue
    const newer = newerThan(version, above.version)
    if (newer < 0 && date <= above.date) continue
    const span = placeOfKey(facts, newer < 0 ? `changes.${index}.date` : `changes.${index}.version`)
    return [{
      code: 'changes-out-of-order',
      message: newer < 0 ? `version ${version} is of ${date}, a later day than version ${above.version} above it` : newer === 0 ? `two changes are told of version ${version}` : `version ${version} stands below version ${above.version}, which is older`,
      primary: { span, text: newer < 0 ? `after ${above.date}` : 'the changes stand newest first' },
      secondary: [{ span: placeOfKey(facts, newer < 0 ? `changes.${index - 1}.date` : `changes.${index - 1}.version`), text: newer < 0 ? above.date : above.version }],
    }]
  }
  return []
}

/** Above 0 when the first is the newer version, 0 when they are the same. */
function newerThan(a: string, b: string): number {
  const [first, second] = [a, b].map((version) => version.split('.').map(Number))
  for (let part = 0; part < 3; part += 1) {
    const difference = (first?.[part] ?? 0) - (second?.[part] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
