import type { Token } from './tokens.ts'

const pairs = new Set(['->', '=>', '||', '//', '>>'])

/** `-> 26 sc`, `|| 6 dc`, `// 3 dc`, `~ 12 dc ~`: whatever sign leads to a count, it is read as an arrow. Each token keeps its place. */
export function countSigns(all: readonly Token[]): readonly Token[] {
  const signs: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    const next = all[at + 1]
    if (next && token.end === next.start && pairs.has(token.text + next.text)) {
      signs.push({ kind: 'sign', text: '→', start: token.start, end: next.end })
      at += 1
    } else signs.push(/^[~•|»]$/.test(token.text) ? { ...token, text: '→' } : token)
  }
  return signs
}
