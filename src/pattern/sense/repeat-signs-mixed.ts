import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { Instruction, Repeat } from '../../notation/syntax.ts'
import { toPublish, type SenseFacts } from './sense-facts.ts'

/** Repeats in round brackets in one row and in square ones in another, none inside the other. Told once, at the first of the rarer sign. */
export function repeatSignsMixed(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts)) return []
  const { source } = facts.pattern
  const bracketed = facts.facts.filter(({ size }) => size === 0)
    .flatMap(({ entries }) => entries.flatMap(({ read }) => outerRepeats(read.items)))
    .filter(({ times, unit }) => times.kind === 'in-all' && /[([]/.test(source.text[unit.start] ?? ''))
  const round = bracketed.filter(({ unit }) => source.text[unit.start] === '(')
  const square = bracketed.filter(({ unit }) => source.text[unit.start] === '[')
  if (round.length === 0 || square.length === 0) return []
  const [rare, usual] = round.length <= square.length ? [round[0]!, square[0]!] : [square[0]!, round[0]!]
  const sign = (repeat: Repeat): string => (source.text[repeat.unit.start] === '(' ? '( )' : '[ ]')
  return [{
    code: 'repeat-signs-mixed',
    message: `repeats stand in ${sign(usual)} in some rows and in ${sign(rare)} in others`,
    primary: { span: { start: rare.unit.start, end: rare.unit.end }, text: `here in ${sign(rare)}` },
    secondary: [{ span: { start: usual.unit.start, end: usual.unit.end }, text: `here in ${sign(usual)}` }],
  }]
}

/** Repeats that stand in no other. */
function outerRepeats(items: readonly Instruction[]): readonly Repeat[] {
  return items.flatMap((item) => (item.node === 'repeat' ? [item] : []))
}
