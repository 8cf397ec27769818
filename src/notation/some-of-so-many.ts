import type { Token } from './tokens.ts'

/** `sc in first 3 of the 4 slip-stitched sts`: the first 3, and the number of all is kept with theirs. What is left of them the row tells behind. */
export function someOfSoMany(all: readonly Token[]): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const told = (at: number): boolean => /^(?:first|last)$/.test(word(at - 2)) && all[at - 1]?.kind === 'number' && word(at) === 'of' && /^(?:the|these|those)$/.test(word(at + 1)) && all[at + 2]?.kind === 'number' && all[at + 2]!.value! > all[at - 1]!.value!
  return all.flatMap((token, at) => {
    if (told(at) || told(at - 1) || told(at - 2)) return []
    const number = told(at + 1) ? all[at + 3]! : undefined
    return number ? [{ ...token, outOf: { values: [number.value!], start: number.start, end: number.end } }] : [token]
  })
}
