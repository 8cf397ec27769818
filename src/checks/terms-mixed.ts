import { listOf } from '../diagnostics/words.ts'
import type { Diagnostic, Label } from '../diagnostics/diagnostic.ts'
import { textOf } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import type { PatternFacts } from './facts.ts'

type Terms = 'US' | 'UK'

/** Words that one kind of terms has and the other has not. `dc`, `tr` and `dtr` stand in both, one step apart, and tell nothing. */
const own: Readonly<Record<Terms, RegExp>> = {
  US: /(?<!\p{L})\d*(?:fp|bp|e|f)?(?:sc|hdc)(?:\d*tog)?(?!\p{L})|(?<!\p{L})half double(?!\p{L})/giu,
  UK: /(?<!\p{L})\d*(?:fp|bp|e)?htr(?:\d*tog)?(?!\p{L})|(?<!\p{L})(?:ttr|qtr|quadtr|half treble)(?!\p{L})/giu,
}

/** UK words that print in US terms has at times, Canadian print above all: one of them alone tells nothing. */
const weakUk = /(?<!\p{L})(?:ss|miss|yrh)(?!\p{L})/giu
/** Words that only US print has, beside its stitches. */
const plainUs = /(?<!\p{L})(?:sk|skip|sl st|yo)(?!\p{L})/iu

/** How a text names the terms that are not its own: there their words are explained, not used. */
const naming: Readonly<Record<Terms, RegExp>> = {
  US: /(?<!\p{L})(?:US|USA|U\.S\.A?\.?|American?|Canadian?)(?!\p{L})/u,
  UK: /(?<!\p{L})(?:UK|U\.K\.|GB|British|Britain|Australian?)(?!\p{L})/u,
}

/** A word that gave the other terms away, and the row it stands in; outside the rows there is none. */
interface Found {
  readonly word: string
  readonly span: Span
  readonly row?: string
  /** The row is told as not understood already. */
  readonly told: boolean
}

/** Words of US terms in a UK pattern, or the reverse: half of the stitches may be meant one step taller. Told once. */
export function termsMixed(facts: PatternFacts): readonly Diagnostic[] {
  const { terms } = facts.lexicon
  const other: Terms = terms === 'US' ? 'UK' : 'US'
  const found = [...inRows(facts, other, own[other]), ...inProse(facts, other)]
  const rows = new Set(found.flatMap(({ row }) => row ?? []))
  // One row that is told as not understood is one slip, and that is told there.
  if (rows.size > 1 || found.some(({ told }) => !told)) return [told(facts, other, found)]
  const weak = terms === 'US' ? inRows(facts, other, weakUk) : []
  return found.length === 0 && new Set(weak.map(({ word }) => word.toLowerCase())).size > 1 && !speaksUs(facts) ? [told(facts, other, weak)] : []
}

/** Every written row once, whatever the number of sizes. */
function writtenRows({ pieces }: PatternFacts): readonly { readonly name: string; readonly span: Span; readonly told: boolean }[] {
  const troubled = new Set(pieces.flatMap(({ rows }) => rows).filter(({ troubles }) => troubles.some(({ kind }) => kind === 'unknown-stitch' || kind === 'unreadable')).map(({ written }) => written.span.start))
  const first = pieces.filter(({ size }) => size === 0)
  return first.flatMap(({ name, entries }) => entries.map(({ label, span }) => {
    const number = label?.numbers[0]
    const shown = number === undefined ? (label?.name.toLowerCase() ?? 'a row') : `${label?.word === 'round' ? 'round' : 'row'} ${number}`
    return { name: first.length > 1 ? `${name} ${shown}` : shown, span, told: troubled.has(span.start) }
  }))
}

function inRows(facts: PatternFacts, other: Terms, words: RegExp): readonly Found[] {
  return writtenRows(facts).flatMap(({ name, span, told }) => wordsIn(facts, span, other, words).map((word) => ({ ...word, row: name, told })))
}

/** In prose a word all in capitals may be the initials of anything. */
function inProse(facts: PatternFacts, other: Terms): readonly Found[] {
  return facts.prose.flatMap((span) => wordsIn(facts, span, other, own[other])).filter(({ word }) => word !== word.toUpperCase()).map((word) => ({ ...word, told: false }))
}

function wordsIn({ source, defined }: PatternFacts, within: Span, other: Terms, words: RegExp): readonly { readonly word: string; readonly span: Span }[] {
  const text = textOf(source, within)
  if (naming[other].test(text)) return []
  return [...text.matchAll(words)].flatMap(({ 0: match, index }) => {
    const word = match.replace(/^\d+(?!\p{L}*tog)/u, '')
    const end = within.start + index + match.length
    return [...defined].some((abbr) => abbr.toLowerCase() === word.toLowerCase()) ? [] : [{ word, span: { start: end - word.length, end } }]
  })
}

function speaksUs(facts: PatternFacts): boolean {
  const text = writtenRows(facts).map(({ span }) => textOf(facts.source, span)).join('\n')
  return plainUs.test(text) || text.search(own.US) !== -1
}

/** Other rows that are shown beside the first one. */
const mostShown = 3

function told({ lexicon: { terms }, termsSpan }: PatternFacts, other: Terms, found: readonly Found[]): Diagnostic {
  const first = found[0]!
  const words = [...new Set(found.map(({ word }) => word.toLowerCase()))]
  const rows = [...new Set(found.map(({ row }) => row ?? ''))]
  const beside = rows.slice(1, mostShown + 1).map((row): Label => {
    const { span } = found.find((one) => (one.row ?? '') === row)!
    return { span, text: `${other} word` }
  })
  const named = rows.filter((row) => row !== '')
  const places = [...named.slice(0, 6), ...(named.length > 6 ? [`${named.length - 6} more rows`] : []), ...(named.length < rows.length ? ['the text'] : [])]
  return {
    code: 'terms-mixed',
    message: `the pattern is in ${terms} terms, but ${listOf(words.slice(0, 4).map((word) => `\`${word}\``))} ${words.length === 1 ? 'is a word' : 'are words'} of ${other} terms`,
    primary: { span: first.span, text: `${other} word` },
    secondary: [...(termsSpan ? [{ span: termsSpan, text: `says ${terms}` }] : []), ...beside],
    note: `found in ${listOf(places)}; \`dc\` and \`tr\` are words of both terms for different stitches, so counts can come out while the stitches are wrong`,
  }
}
