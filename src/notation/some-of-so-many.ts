import type { Token } from './tokens.ts'

/** `sc in first 3 of the 4 slip-stitched sts`: the first 3 of them, as if the number of all stood not there. What is left of them the row tells behind. */
export function someOfSoMany(all: readonly Token[]): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const told = (at: number): boolean => /^(?:first|last)$/.test(word(at - 2)) && all[at - 1]?.kind === 'number' && word(at) === 'of' && /^(?:the|these|those)$/.test(word(at + 1)) && all[at + 2]?.kind === 'number' && all[at + 2]!.value! > all[at - 1]!.value!
  const gone = new Set(all.flatMap((_, at) => (told(at) ? [at, at + 1, at + 2] : [])))
  return gone.size === 0 ? all : all.filter((_, at) => !gone.has(at))
}
