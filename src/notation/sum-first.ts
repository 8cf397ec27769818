import type { Token } from './tokens.ts'

/** `10 + 3 + 12 = 25 sc` as `25 sc`: the parts that a total is the sum of. Where they come to another number both are told, so that it is found. */
export function sumFirst(all: readonly Token[]): readonly Token[] {
  let sum = 0
  let at = 0
  for (; all[at]?.kind === 'number'; at += 2) {
    sum += all[at]!.value ?? 0
    if (all[at + 1]?.text !== '+') break
  }
  const total = all[at + 2]
  if (at < 2 || all[at + 1]?.text !== '=' || total?.kind !== 'number') return all
  return total.value === sum ? all.slice(at + 2) : [{ ...total, text: String(sum), value: sum }, ...all.slice(at + 1)]
}
