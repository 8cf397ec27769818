import { tokens, withoutGaps, type Token } from './tokens.ts'

/** `in 4th, 5th and 6th ch from hook` as `in 4th ch from hook and in next 2 ch`. What stands for it has the place of the whole. */
export function consecutiveChains(all: readonly Token[]): readonly Token[] {
  const from = all.findIndex(({ kind }, at) => kind === 'ordinal' && all[at + 1] !== undefined && /^(,|and)$/i.test(all[at + 1]!.text))
  if (from === -1) return all
  const first = all[from]!.value ?? 0
  let last = first
  let at = from + 1
  for (;;) {
    const before = at
    while (/^(,|and|&)$/i.test(all[at]?.text ?? '')) at += 1
    if (at === before || all[at]?.kind !== 'ordinal' || all[at]!.value !== last + 1) return last > first && at === before ? replaced(all, from, at, first, last) : all
    last += 1
    at += 1
  }
}

function replaced(all: readonly Token[], from: number, at: number, first: number, last: number): readonly Token[] {
  const words = [0, 1, 2].map((ahead) => all[at + ahead]?.text.toLowerCase() ?? '')
  if (!/^(chs?|chains?)$/.test(words[0]!) || words[1] !== 'from' || words[2] !== 'hook' && words[2] !== 'hk') return all
  const span = { start: all[from]!.start, end: all[at + 2]!.end }
  const plain = withoutGaps(tokens(`${first}th ch from hook and in next ${last - first} ch`)).map((token) => ({ ...token, ...span }))
  return [...all.slice(0, from), ...plain, ...consecutiveChains(all.slice(at + 3))]
}
