import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { labelAt, placeOfKey, type SenseFacts } from './sense-facts.ts'

/** The version on the cover, its day, and the newest change are one thing: a buyer compares them to know which file she has. */
export function versionNotInChanges(facts: SenseFacts): readonly Diagnostic[] {
  const { version, date, changes } = facts.pattern
  if (version === undefined || changes.length === 0) return []
  const index = changes.findIndex((change) => sameVersion(change.version, version))
  if (index === -1) {
    return [{
      code: 'version-not-in-changes',
      message: `the pattern is version ${version}, but no change is told of it`,
      primary: { span: placeOfKey(facts, 'version'), text: 'not among the changes' },
      secondary: labelAt(facts, 'changes.0.version', 'the newest told'),
    }]
  }
  const there = changes[index]!.date
  if (date === undefined || there === date) return []
  return [{
    code: 'version-not-in-changes',
    message: `version ${version} is of ${date}, but its change is of ${there}`,
    primary: { span: placeOfKey(facts, 'date'), text: date },
    secondary: labelAt(facts, `changes.${index}.date`, there),
  }]
}

/** `1.0` and `1.0.0` are the same version. */
function sameVersion(a: string, b: string): boolean {
  const parts = (version: string): string => version.replace(/(?:\.0+)+$/, '')
  return parts(a) === parts(b)
}
