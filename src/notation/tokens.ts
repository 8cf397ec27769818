import type { Span } from '../text/span.ts'

/** A piece of row text. Joined again, all tokens are the text. */
export interface Token extends Span {
  readonly kind: 'word' | 'number' | 'ordinal' | 'mark' | 'sign' | 'gap'
  readonly text: string
  /** Of numbers and ordinals: the value. `2nd` is 2, `1½` is 1.5. */
  readonly value?: number
  /** Of a number of some: how many there are of them all. */
  readonly outOf?: Span & { readonly values: readonly number[] }
}

const fractions: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 0.125 }

// A word may hold digits between letters (`sc2tog`) or before `tog` (`2dctog`); `sc8` is a word and a number that touch.
const pattern = new RegExp(
  [
    String.raw`(?<gap>[\s\u00a0\u202f\u200b\ufeff]+)`,
    String.raw`(?<ordinal>\d+(?:st|nd|rd|th)(?![a-z]))`,
    String.raw`(?<together>\d{1,2}\p{L}+tog(?!\p{L}))`,
    String.raw`(?<number>\d+(?:\.\d+)?[½¼¾⅓⅔⅛]?|[½¼¾⅓⅔⅛])`,
    String.raw`(?<word>\p{L}+(?:['’]\p{L}+)*(?:\d+\p{L}+)?)`,
    String.raw`(?<mark>\*+|†+|‡+|◊+|§+|¤+|#+)`,
    String.raw`(?<sign>.)`,
  ].join('|'),
  'giuys',
)

/** Cuts `text` from `start` to `end` into tokens that together are exactly that stretch. Never fails. */
export function tokens(text: string, start = 0, end = text.length): readonly Token[] {
  const out: Token[] = []
  let at = start
  while (at < end) {
    pattern.lastIndex = at
    const groups = pattern.exec(text)?.groups ?? {}
    const group = (['gap', 'ordinal', 'together', 'number', 'word', 'mark', 'sign'] as const).find((name) => groups[name] !== undefined) ?? 'sign'
    const kind = group === 'together' ? 'word' : group
    const found = groups[group] ?? text[at] ?? ''
    const cut = found.slice(0, end - at)
    out.push({ kind, text: cut, start: at, end: at + cut.length, ...valueOf(kind, cut) })
    at += cut.length
  }
  return out
}

function valueOf(kind: Token['kind'], text: string): { value?: number } {
  if (kind === 'ordinal') return { value: Number.parseInt(text, 10) }
  if (kind !== 'number') return {}
  const fraction = fractions[text.at(-1) ?? '']
  return { value: fraction === undefined ? Number(text) : Number(text.slice(0, -1) || '0') + fraction }
}

/** The tokens that carry meaning. */
export function withoutGaps(all: readonly Token[]): readonly Token[] {
  return all.filter((token) => token.kind !== 'gap')
}
