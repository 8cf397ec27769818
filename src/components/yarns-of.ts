import type { PartLine } from '../booklet/booklet.ts'

/** For each line of a part the letter of the yarn that is in hand when it begins to be worked; undefined where yarns have no letters. */
export function yarnsOf(lines: readonly PartLine[]): readonly (string | undefined)[] {
  let inHand: string | undefined
  return lines.map((line) => {
    if (line.kind !== 'row') return undefined
    const letters = (line.real ?? []).map(({ yarn }) => /([A-Z])\.$/.exec(yarn)?.[1])
    const own = letters[0] ?? inHand
    inHand = letters.findLast((letter) => letter !== undefined) ?? inHand
    return own
  })
}
