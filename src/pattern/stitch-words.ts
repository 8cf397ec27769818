import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { allSpellings, stitchNamed, type Terms } from '../stitches/terms.ts'
import type { Span } from '../text/span.ts'
import { didYouMean } from './did-you-mean.ts'
import { entryAt, leaveOut, type KeysEntry, type Path } from './entry.ts'
import { quoted } from './shown.ts'
import type { PatternValues } from './schema/pattern.ts'

/** The US word of a stitch as the pattern writes it; the word itself for one that the pattern defines. Undefined for no stitch. */
export function usWord(written: string, terms: Terms, own: readonly string[]): string | undefined {
  const word = written.trim()
  return own.find((abbr) => abbr === word) ?? stitchNamed(word.toLowerCase(), terms)?.us
}

/** Stitches that the front-matter names outside the rows: those of turning chains, and those whose height a special stitch has. */
export function stitchWordFindings(root: KeysEntry, values: PatternValues): readonly Diagnostic[] {
  const own = (values.stitches ?? []).map(({ abbr }) => abbr)
  const diagnostics: Diagnostic[] = []
  const chains = ['conventions', 'turning-chains']
  for (const written of Object.keys(values.conventions?.['turning-chains'] ?? {})) {
    if (usWord(written, values.terms, own) !== undefined) continue
    const group = entryAt(root, chains)
    const pair = group?.kind === 'keys' ? group.pairs.get(written) : undefined
    if (pair) diagnostics.push(noStitch('key-unknown', { written, span: pair.key, terms: values.terms, own }))
    leaveOut(group, written, pair?.value)
  }
  values.stitches?.forEach(({ height }, index) => {
    const path: Path = ['stitches', index, 'height']
    const entry = entryAt(root, path)
    if (height === undefined || !entry || usWord(height, values.terms, own) !== undefined) return
    diagnostics.push(noStitch('value-wrong', { written: height, span: entry.span, terms: values.terms, own }))
    leaveOut(entryAt(root, path.slice(0, -1)), 'height', entry)
  })
  return diagnostics
}

function noStitch(code: 'key-unknown' | 'value-wrong', { written, span, terms, own }: {
  readonly written: string
  readonly span: Span
  readonly terms: Terms
  readonly own: readonly string[]
}): Diagnostic {
  const others = terms === 'US' ? 'UK' : 'US'
  const foreign = stitchNamed(written.trim().toLowerCase(), others) !== undefined
  return {
    code,
    message: `${quoted(written)} is no stitch in ${terms} terms`,
    primary: { span, text: foreign ? `a ${others} word` : 'no such stitch' },
    secondary: [],
    ...(foreign ? { note: `it is a word of ${others} terms, and the pattern is in ${terms} terms` } : didYouMean(written, [...own, ...allSpellings(terms)])),
  }
}
