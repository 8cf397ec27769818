import type { Reader } from './reader.ts'
import type { Target } from './target.ts'

/** `In the side of the hole`, `in the gap at the end of the slit`: the place between what was skipped and the chain over it, at either end. */
export function endOfOpening(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  if (reader.take('in|into|at', 'the', 'other|next|second|opposite|far?', 'side|end|corner', 'of|at', 'the', 'thumb|hand|neck?', 'hole|opening|slit|slot|gap|thumbhole|buttonhole|keyhole')
    || reader.take('in|into', 'the', 'gap|corner', 'at', 'the', 'other|next|second|opposite|far?', 'side|end', 'of', 'the', 'thumb|hand|neck?', 'hole|opening|slit|slot|thumbhole|buttonhole|keyhole')) {
    return { walk: 'next', thing: { kind: 'space', where: 'corner' }, start, end: reader.end }
  }
  reader.at = at
  return undefined
}
