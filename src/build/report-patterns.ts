import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { severityOf } from '../diagnostics/codes.ts'
import { reportText, type ReportOptions } from '../diagnostics/report.ts'
import { placeOf } from '../text/source.ts'
import type { Remark } from '../components/pattern-entry.ts'
import { hindrances, type Collected } from './collect-patterns.ts'

/** The whole report on every pattern that cannot be published; empty when all can. */
export function reportHindrances(collected: readonly Collected[], options: ReportOptions): string {
  return collected
    .map(({ source, diagnostics }) => ({ source, found: hindrances(diagnostics) }))
    .filter(({ found }) => found.length > 0)
    .map(({ source, found }) => reportText(found, source, options).trimEnd())
    .join('\n\n')
}

/** Diagnostics as a page shows them, errors first. */
export function remarks({ source, diagnostics }: Collected): readonly Remark[] {
  return diagnostics.map((diagnostic) => remark(diagnostic, source)).sort((a, b) => rank(a) - rank(b))
}

function remark(diagnostic: Diagnostic, source: Collected['source']): Remark {
  const { line, column } = placeOf(source, diagnostic.primary.span.start)
  return {
    code: diagnostic.code,
    severity: severityOf(diagnostic.code),
    message: diagnostic.message,
    place: `${source.path}:${line}:${column}`,
    // The first two lines are message and place, which the page sets as its own words.
    report: reportText([diagnostic], source, { colour: false, width: 88 }).trimEnd().split('\n').slice(2).join('\n'),
  }
}

function rank({ severity }: Remark): number {
  return severity === 'error' ? 0 : 1
}
