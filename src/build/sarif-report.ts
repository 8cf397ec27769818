import { isAbsolute } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { ArtifactLocation, Fix, Location, Log, Region, ReportingDescriptor, Result } from 'sarif'
import { codes, severityOf, type DiagnosticCode } from '../diagnostics/codes.ts'
import type { Diagnostic, Hint } from '../diagnostics/diagnostic.ts'
import { errorsFirst } from '../diagnostics/report.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { regionOf } from './json-report.ts'

/**
 * Checked patterns as a log of SARIF 2.1.0 (OASIS), for services that show the findings of checks beside the lines of a change. What the
 * designer accepts is a result that is suppressed in the source, with the reason; a change that was tried is a fix.
 */
export function sarifReport(checked: readonly CheckedPattern[]): Log {
  const used = new Set(checked.flatMap(({ diagnostics, accepted = [] }) => [...diagnostics, ...accepted.map(({ diagnostic }) => diagnostic)].map(({ code }) => code)))
  const rules = (Object.keys(codes) as DiagnosticCode[]).filter((code) => used.has(code))
  return {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [{
      tool: { driver: { name: 'Loopledger', rules: rules.map(ruleOf) } },
      columnKind: 'utf16CodeUnits',
      artifacts: checked.map(({ source }) => ({ location: locationOf(source) })),
      results: checked.flatMap(({ source, diagnostics, accepted = [] }) => [
        ...errorsFirst(diagnostics).map((diagnostic) => resultOf(diagnostic, source, rules)),
        ...accepted.map(({ diagnostic, why }): Result => ({
          ...resultOf(diagnostic, source, rules), suppressions: [{ kind: 'inSource', status: 'accepted', justification: why }],
        })),
      ]),
    }],
  }
}

function ruleOf(code: DiagnosticCode): ReportingDescriptor {
  const { severity, title } = codes[code]
  return { id: code, shortDescription: { text: `${title}.` }, defaultConfiguration: { level: severity } }
}

function resultOf(diagnostic: Diagnostic, source: Source, rules: readonly DiagnosticCode[]): Result {
  const { code, message, note, primary, secondary, hint, otherHints = [], sizes } = diagnostic
  const fixes = [...(hint ? [hint] : []), ...otherHints].flatMap((one) => fixOf(one, source))
  const inSizes = sizes && sizes.length > 0 ? ` (in ${sizes.join(', ')})` : ''
  return {
    ruleId: code,
    ruleIndex: rules.indexOf(code),
    level: severityOf(code),
    message: { text: [`${message}${inSizes}`, ...(note === undefined ? [] : [note])].join('\n') },
    locations: [placeOf(source, primary.span)],
    ...(secondary.length > 0 && { relatedLocations: secondary.map(({ span, text }) => ({ ...placeOf(source, span), ...(text !== '' && { message: { text } }) })) }),
    ...(fixes.length > 0 && { fixes }),
  }
}

function fixOf({ text, edit }: Hint, source: Source): readonly Fix[] {
  if (!edit) return []
  return [{
    description: { text },
    artifactChanges: [{
      artifactLocation: locationOf(source),
      replacements: [{ deletedRegion: sarifRegion(source, edit.span), insertedContent: { text: edit.replacement } }],
    }],
  }]
}

function placeOf(source: Source, span: Span): Location {
  return { physicalLocation: { artifactLocation: locationOf(source), region: sarifRegion(source, span) } }
}

function sarifRegion(source: Source, span: Span): Region {
  const { line, column, endLine, endColumn } = regionOf(span, source)
  return { startLine: line, startColumn: column, endLine, endColumn }
}

/** A path as a URI: relative to where the command was called, as the path itself is. */
function locationOf({ path }: Source): ArtifactLocation {
  if (isAbsolute(path)) return { uri: pathToFileURL(path).href }
  return { uri: path.split(/[\\/]/).map(encodeURIComponent).join('/') }
}
