import type { Token } from './tokens.ts'

const pairs = new Set(['->', '=>', '||', '//', '>>'])

/** `-> 26 sc`, `|| 6 dc`, `// 3 dc`, `~ 12 dc ~`, ` / 8 dc`: whatever sign leads to a count, it is read as an arrow. Each token keeps its place. */
export function countSigns(all: readonly Token[]): readonly Token[] {
  const signs: Token[] = []
  const slashed = lastSlash(all)
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    const next = all[at + 1]
    if (next && token.end === next.start && pairs.has(token.text + next.text)) {
      signs.push({ kind: 'sign', text: '→', start: token.start, end: next.end })
      at += 1
    } else signs.push(/^[~•|»]$/.test(token.text) || slashed === at ? { ...token, text: '→' } : token)
  }
  return signs
}

/** ` / 8 dc` at the end of a row: one stroke that stands free, behind a word. `20 / 24 / 28 sc` are sizes, `(5/6/7)` touch. */
function lastSlash(all: readonly Token[]): number {
  const free = all.flatMap(({ text, start, end }, at) => (text === '/' && at > 0 && all[at - 1]!.end < start && (all[at + 1]?.start ?? end) > end ? [at] : []))
  const at = free.at(-1) ?? -1
  return at > 0 && all[at - 1]!.kind !== 'number' && all[at + 1]?.kind === 'number' && free.every((one) => one === at || all[one + 1]?.kind !== 'number') ? at : -1
}
