import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { Instruction } from '../../notation/syntax.ts'
import { allWords, type SenseFacts } from './sense-facts.ts'
import { joins } from './written-rows.ts'

/** What says once for all rounds that they are joined. */
const saidOnce = /\bjoin(?:ing)? (?:each|every|all)\b|\b(?:each|every|all) (?:round|rnd)s?\b[^.]*\bjoin|\b(?:rounds|rnds) are joined\b/i

/** A round that ends without a join, and a next one that begins with a chain as joined rounds do. Told once a piece. */
export function joinMissing(facts: SenseFacts): readonly Diagnostic[] {
  if (saidOnce.test(allWords(facts).replace(/^(?:Rnd|Round|Row) .*$/gim, ''))) return []
  return facts.facts.filter(({ size }) => size === 0).flatMap(({ entries, source, rows }) => {
    const rounds = new Set(rows.filter(({ word, uncounted }) => word === 'round' && !uncounted).map(({ written }) => written.span.start))
    const written = entries.filter(({ label, span }) => rounds.has(span.start) && label !== undefined && label.numbers.length > 0)
    // One join is enough to tell that its rounds are joined ones.
    if (!written.some(({ read }) => joins(read.items))) return []
    for (const [index, { read, span, text }] of written.entries()) {
      const next = written[index + 1]
      if (!next || joins(read.items) || read.reference || read.items.length === 0 || firstChain(next.read.items) < 2 || firstChain(next.read.items) > 6) continue
      if (/\b(?:fasten off|cut|turn|spiral|do not join|don[’']t join|ss|sl st)\b/i.test(source.text.slice(span.start, next.text.start))) continue
      const words = source.text.slice(text.start, text.end).replace(/[\s.,;]+$/, '')
      return [{
        code: 'join-missing',
        message: `the round ends without a join, but the next one begins with a chain of ${firstChain(next.read.items)}`,
        primary: { span: { start: text.start, end: text.start + words.length }, text: 'not joined' },
        secondary: [{ span: chainSpan(next.read.items), text: 'begins as after a join' }],
      } satisfies Diagnostic]
    }
    return []
  })
}

function firstChain(items: readonly Instruction[]): number {
  const first = items.find((item) => item.node !== 'aside' && item.node !== 'turn')
  return first?.node === 'chain' ? (first.count.values[0] ?? 0) : 0
}

function chainSpan(items: readonly Instruction[]): { readonly start: number; readonly end: number } {
  const first = items.find((item) => item.node === 'chain')
  return { start: first?.start ?? 0, end: first?.end ?? 0 }
}
