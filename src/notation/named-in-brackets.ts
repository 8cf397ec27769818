import type { Token } from './tokens.ts'

const amount = /^(?:\d+|an?)$/
const separator = /^[,;.:*()[\]]$/

const inOnePlace = /^(?:in|into) (?:the )?(?:same|next|one|each) (?:st|stitch|sc|dc|hdc|tr)$/

/** `inc (3 sc in same st)`, which is no inc as others: how many tokens the name and its bracket have. */
function ownIncrease(word: (at: number) => string, at: number): number | undefined {
  if (!/^inc(?:rease)?$/.test(word(at)) || word(at + 1) !== '(' || !/^(?:[3-9]|three|four|five)$/.test(word(at + 2))) return undefined
  const place = [7, 8].find((close) => word(at + close) === ')' && inOnePlace.test(Array.from({ length: close - 4 }, (_, index) => word(at + 4 + index)).join(' ')))
  return place === undefined ? undefined : place + 1
}

/** What stands in one place, by a name that is a stitch's too. */
const groups = /^(?:shell|fan|scallop)$/

/** `)` or `in one st)` before the place that all of it goes into: where the bracket closes. */
function bracketEnds(word: (at: number) => string, at: number): number | undefined {
  const close = [at, at + 3, at + 4].find((end) => word(end) === ')' && /^(?:in|into)$/.test(word(end + 1)))
  return close === undefined || close > at && !inOnePlace.test(Array.from({ length: close - at }, (_, index) => word(at + index)).join(' ')) ? undefined : close
}

/**
 * Names that the row gives itself: `corner (3 sc) in next sc, sc in next 12 sc, corner in next sc`, or `3 sc in next sc (corner made), …, corner
 * in next sc`, or `inc (3 sc in same st), 12 sc, inc`, or `shell (5 dc in one st) in next st`. Behind that the name is read as its stitches.
 */
export function namedInBrackets(all: readonly Token[], isStitch: (word: string) => boolean): readonly Token[] {
  return named(withoutDefinition(all), isStitch)
}

/** `Corner = (sc, ch 2, sc) in one place. …, corner in first st`, `Corner: (sc, ch 2, sc) in ch-2 sp. Top: 20 sc. Corner.`: the word is read as what it stands for. */
function withoutDefinition(all: readonly Token[]): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const at = all.findIndex((_, index) => word(index) === 'corner' && (index === 0 || word(index - 1) === '.') && /^[=:]$/.test(word(index + 1)) && (word(index + 1) === '=' || word(index + 2) === '('))
  const stop = all.findIndex((_, index) => index > at && word(index) === '.')
  const into = all.findIndex((_, index) => index > at && /^(?:in|into)$/.test(word(index)))
  if (at < 0 || into < 0 || stop < into) return all
  const defined = word(at + 1) === '='
  if (defined && !/^(?:in|into) (?:one|the same|same|a single|1) (?:place|st|stitch)$/.test(all.slice(into, stop).map(({ text }) => text.toLowerCase()).join(' '))) return all
  const meant = all.slice(at + 2, defined ? into : stop)
  const rest = all.slice(stop + 1).flatMap((token, index) => {
    const here = stop + 1 + index
    const isMeant = word(here) === 'corner' && (defined ? /^(?:in|into)$/.test(word(here + 1)) : /^[.,;]$/.test(word(here - 1)) && /^[.,;]$/.test(word(here + 1)))
    return isMeant ? meant.map((part) => ({ ...part, start: token.start, end: token.end })) : [token]
  })
  return [...all.slice(0, at), ...(defined ? [] : all.slice(at + 2, stop + 1)), ...rest]
}

function named(all: readonly Token[], isStitch: (word: string) => boolean): readonly Token[] {
  const word = (at: number): string => all[at]?.text.toLowerCase() ?? ''
  const stitchAt = (at: number): boolean => amount.test(word(at)) && isStitch(word(at + 1))
  const names = new Map<string, readonly Token[]>()
  const out: Token[] = []
  for (let at = 0; at < all.length; at += 1) {
    const token = all[at]!
    const name = word(at)
    const begins = token.kind === 'word' && (!isStitch(name) || groups.test(name)) && (at === 0 || separator.test(word(at - 1)) || /^(?:and|then|work|make)$/.test(word(at - 1)))
    const told = names.get(name)
    const increase = ownIncrease(word, at)
    const alone = /^inc/.test(name) && /^[,;.)]?$/.test(word(at + 1))
    if (increase !== undefined) {
      names.set(name, [...all.slice(at + 2, at + 5), { ...token, text: 'next' }, { ...token, text: 'st' }])
      out.push(...names.get(name)!)
      at += increase - 1
    } else if (told && alone) out.push(...told.map((part) => ({ ...part, start: token.start, end: token.end })))
    else if (begins && word(at + 1) === '(' && stitchAt(at + 2) && bracketEnds(word, at + 4) !== undefined) {
      names.set(name, all.slice(at + 2, at + 4))
      out.push(...all.slice(at + 2, at + 4))
      at = bracketEnds(word, at + 4)!
    } else if (begins && told && /^(?:in|into)$/.test(word(at + 1))) out.push(...told.map((part) => ({ ...part, start: token.start, end: token.end })))
    else out.push(token)
    if (name === '(' && word(at + 2) === 'made' && word(at + 3) === ')') {
      const from = all.findLastIndex((_, index) => index < at && (separator.test(word(index)) || index === 0))
      const first = separator.test(word(from)) ? from + 1 : from
      if (stitchAt(first) && /^(?:in|into)$/.test(word(first + 2)) && !names.has(word(at + 1))) names.set(word(at + 1), all.slice(first, first + 2))
    }
  }
  return out
}
