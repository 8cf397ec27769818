import { codes } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { lineText, placeOf } from '../text/source.ts'

/** What a save brought to a pattern's findings. */
export interface Changed {
  readonly fresh: readonly Diagnostic[]
  readonly gone: readonly Diagnostic[]
}

/** Findings of now that were not there before, and those that are no more. A finding that only moved with its line is the same. */
export function whatChanged(before: CheckedPattern | undefined, now: CheckedPattern): Changed {
  const left = new Map<string, Diagnostic[]>()
  for (const diagnostic of before?.diagnostics ?? []) {
    const key = keyOf(diagnostic, before!)
    left.set(key, [...(left.get(key) ?? []), diagnostic])
  }
  const fresh = now.diagnostics.filter((diagnostic) => left.get(keyOf(diagnostic, now))?.shift() === undefined)
  const order = Object.keys(codes)
  const gone = [...left.values()].flat().toSorted((a, b) => a.primary.span.start - b.primary.span.start || order.indexOf(a.code) - order.indexOf(b.code))
  return { fresh, gone }
}

function keyOf({ code, message, primary }: Diagnostic, { source }: CheckedPattern): string {
  return `${code}\n${message}\n${lineText(source, placeOf(source, primary.span.start).line).trim()}`
}
