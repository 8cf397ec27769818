import { ordinals, tens, units } from './number-words.ts'
import type { Token } from './tokens.ts'

/** `6 st(s)`, `next 5 ch(s)`: one word, in the plural. */
export function pluralsInOne(all: readonly Token[]): readonly Token[] {
  const isPlural = (at: number): boolean => all[at]?.kind === 'word' && all[at + 1]?.text === '(' && /^e?s$/i.test(all[at + 2]?.text ?? '') && all[at + 3]?.text === ')'
    && all[at]!.end === all[at + 1]!.start
  return all.flatMap((token, at) => {
    if (isPlural(at)) return [{ ...token, text: token.text + all[at + 2]!.text, end: all[at + 3]!.end }]
    return [1, 2, 3].some((back) => isPlural(at - back)) ? [] : [token]
  })
}

/** `forty-one`, `seventy two`, `eighty`: one number each. */
export function numbersInWords(all: readonly Token[]): readonly Token[] {
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    const ten = tens[token.text.toLowerCase()]
    if (ten === undefined) {
      out.push(token)
      continue
    }
    const unitAt = /^[-‐‑]$/.test(all[at + 1]?.text ?? '') ? at + 2 : at + 1
    const unit = units[all[unitAt]?.text.toLowerCase() ?? '']
    const last = unit === undefined ? token : all[unitAt]!
    if (unit !== undefined) at = unitAt
    const value = ten + (unit ?? 0)
    out.push({ kind: 'number', text: String(value), value, start: token.start, end: last.end })
  }
  return out
}

/** `first, second and third sc`, `1st and 2nd dc`: the first three. */
export function firstSeveral(all: readonly Token[], isStitch: (word: string) => boolean): readonly Token[] {
  const nth = (at: number): number | undefined => (/^first$/i.test(all[at]?.text ?? '') ? 1 : all[at]?.kind === 'ordinal' ? all[at]!.value : ordinals[all[at]?.text.toLowerCase() ?? ''])
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    let last = nth(at) === 1 ? 1 : 0
    let to = at
    while (last > 0) {
      const link = /^(?:,|and|&)$/i.test(all[to + 1]?.text ?? '') ? (/^and$/i.test(all[to + 2]?.text ?? '') ? 3 : 2) : 0
      if (link === 0 || nth(to + link) !== last + 1) break
      to += link
      last += 1
    }
    const next = all[to + 1]?.text.toLowerCase() ?? ''
    if (last < 2 || !isStitch(next) && !/^(?:sts|stitches|unworked|free|chs?|chains?)$/.test(next)) out.push(token)
    else {
      out.push({ ...token, kind: 'word', text: 'first' }, { kind: 'number', text: String(last), value: last, start: token.start, end: all[to]!.end })
      at = to
    }
  }
  return out
}

/** `first 4 of the 5 sts left unworked`: all but one, which is told apart behind. */
export function allButOne(all: readonly Token[]): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const leads = (at: number): boolean => word(at) === 'of' && /^(?:the|those|these)$/.test(word(at + 1)) && word(at - 2) === 'first' && all[at - 1]?.kind === 'number' && all[at + 2]?.value === (all[at - 1]!.value ?? 0) + 1 && /^(?:sts|stitches)$/.test(word(at + 3))
  return all.filter((_, at) => !leads(at) && !leads(at - 1) && !leads(at - 2))
}

/** `in both lower corners`: in two of them. */
export function bothCorners(all: readonly Token[]): readonly Token[] {
  const leads = (at: number): boolean => /^both$/i.test(all[at]?.text ?? '') && [1, 2, 3, 4].some((ahead) => /^corners$/i.test(all[at + ahead]?.text ?? ''))
  // `in both ch-3 sps`: in each of them.
  const spaces = (at: number): boolean => /^both$/i.test(all[at]?.text ?? '') && /^(?:in|into)$/i.test(all[at - 1]?.text ?? '') && [1, 2, 3, 4, 5].some((ahead) => /^(?:sps|spaces|loops)$/i.test(all[at + ahead]?.text ?? '')) && /^(?:ch|the|of|\d+)$/i.test(all[at + 1]?.text ?? '')
  return all.flatMap((token, at) => {
    if (spaces(at)) return [{ ...token, text: 'each' }]
    if (leads(at)) return [{ ...token, kind: 'number', text: 'two', value: 2 } satisfies Token]
    return leads(at - 1) && /^(?:of|the)$/i.test(token.text) || leads(at - 2) && /^the$/i.test(token.text) && /^of$/i.test(all[at - 1]!.text) ? [] : [token]
  })
}
