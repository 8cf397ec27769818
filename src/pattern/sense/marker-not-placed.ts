import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { Instruction } from '../../notation/syntax.ts'
import type { Target } from '../../notation/target.ts'
import { allWords, toPublish, type SenseFacts } from './sense-facts.ts'

const places = /\b(?:place|put|move|insert|hang|with|using|by)\b[^.]{0,40}\b(?:markers?|m)\b|\bpm\b|\bmark (?:the|this|each|every|first|last|centre|center|it|with|both)\b|\bmarkers? (?:in(?:to)?|at|on|through|up)\b/i

/** A row that works to a marker that nothing has placed. Told once. */
export function markerNotPlaced(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts) || places.test(allWords(facts))) return []
  for (const { entries } of facts.facts) {
    for (const { read } of entries) {
      const target = markedIn(read.items)
      if (!target) continue
      return [{
        code: 'marker-not-placed',
        message: 'a row works to a marker, but nothing says where one is placed',
        primary: { span: { start: target.start, end: target.end }, text: 'no marker is placed' },
        secondary: [],
      }]
    }
  }
  return []
}

function markedIn(items: readonly Instruction[]): Target | undefined {
  for (const item of items) {
    const found = item.node === 'repeat' || item.node === 'group' ? markedIn(item.items) : undefined
    if (found) return found
    if ((item.node === 'work' || item.node === 'group') && item.target && (item.target.walk === 'marked' || item.target.toMarker)) return item.target
  }
  return undefined
}
