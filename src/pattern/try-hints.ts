import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic, Hint } from '../diagnostics/diagnostic.ts'
import { textOf, type Source } from '../text/source.ts'
import type { CheckedPattern } from './checked-pattern.ts'
import type { Change, Slip } from './hints/change.ts'
import { changesFor, totalIsLikelier } from './hints/changes-for.ts'
import { outcomeOf, type Outcome } from './hints/outcome.ts'
import { slipOf } from './hints/slip-of.ts'
import { plainChange } from './hints/plain-changes.ts'
import { missingTotals } from './hints/missing-totals.ts'
import { sameOutcome, withTotal } from './hints/with-total.ts'
import { edited, mends, type Edit } from './hints/work-again.ts'

/** A search for hints costs at most so many checks of the pattern, whatever there is to mend. */
export const mostTries = 18
/** So many that come out are enough to choose from; more choices than `shownChoices` only puzzle. */
const mostChoices = 5
const shownChoices = 3

type Check = (source: Source) => CheckedPattern

/**
 * Offers changes that were tried. A change is offered only when the pattern, worked again with it, has lost the finding and gained
 * none. No guess, no hint. The tries are shared out among the findings, errors first.
 */
export function withTriedHints(checked: CheckedPattern, check: Check): readonly Diagnostic[] {
  const found = new Map<Diagnostic, Diagnostic>()
  let left = mostTries
  const again = (edits: readonly Edit[]): CheckedPattern => {
    left -= 1
    return check(edited(checked.source, edits))
  }
  const missing = missingTotals(checked)
  if (missing.length > 0) {
    const edits = missing.map(({ edit }) => edit)
    const mended = mends(checked, edits, missing.map(({ diagnostic }) => diagnostic), again(edits))
    for (const { diagnostic, edit, words } of mended ? missing : []) found.set(diagnostic, { ...diagnostic, hint: { text: words, edit } })
  }
  const searches = checked.diagnostics.flatMap((diagnostic) => searchFor(checked, diagnostic)).toSorted((a, b) => rank(a.diagnostic) - rank(b.diagnostic))
  for (const [index, { diagnostic, search }] of searches.entries()) {
    if (left === 0) break
    found.set(diagnostic, search(again, Math.ceil(left / (searches.length - index))))
  }
  return checked.diagnostics.map((diagnostic) => found.get(diagnostic) ?? diagnostic)
}

type Again = (edits: readonly Edit[]) => CheckedPattern
interface Search {
  readonly diagnostic: Diagnostic
  /** Gives the finding with what was found within so many tries. */
  readonly search: (again: Again, tries: number) => Diagnostic
}

function searchFor(checked: CheckedPattern, diagnostic: Diagnostic): readonly Search[] {
  const meant = meantInstead(checked.source, diagnostic)
  if (meant) {
    const search = (again: Again): Diagnostic => (mends(checked, [meant], [diagnostic], again([meant])) ? { ...diagnostic, hint: { ...diagnostic.hint!, edit: meant } } : diagnostic)
    return [{ diagnostic, search }]
  }
  const plain = diagnostic.hint ? undefined : plainChange(checked, diagnostic)
  if (plain) {
    const search = (again: Again): Diagnostic => (mends(checked, [plain.edit], [diagnostic], again([plain.edit])) ? { ...diagnostic, hint: plain } : diagnostic)
    return [{ diagnostic, search }]
  }
  const slip = diagnostic.hint ? undefined : slipOf(checked, diagnostic)
  const changes = slip ? changesFor(slip) : []
  if (!slip || changes.length === 0) return []
  return [{ diagnostic, search: (again, tries) => withFound(diagnostic, foundFor(slip, changes, again, tries)) }]
}

interface Offer extends Outcome {
  readonly change: Change
}

/** Tries changes in their order until there are enough choices; those to which another row bears witness come first. */
function foundFor(slip: Slip, changes: readonly Change[], again: Again, tries: number): readonly Hint[] {
  const found: Offer[] = []
  let left = tries
  const offers = (change: Change): CheckedPattern => {
    left -= 1
    const worked = again([change])
    if (!mends(slip.checked, [change], [slip.diagnostic], worked)) return worked
    const offer = { change, ...outcomeOf(slip, change, worked) }
    if (!found.some((other) => sameOutcome(other, offer))) found.push(offer)
    return worked
  }
  const together: Change[] = []
  for (const change of changes) {
    if (left <= together.length || found.length === mostChoices) break
    const worked = offers(change)
    const both = found.length > 0 ? undefined : withTotal(slip, change, worked)
    if (both) together.push(both)
  }
  // Two changes at once are a guess that much farther: only where none alone will do.
  for (const both of found.length > 0 ? [] : together) if (left > 0) offers(both)
  const likelier = totalIsLikelier(slip)
  const rank = ({ change, witnessed, leaves }: Offer): number => (witnessed ? 2 : 0) + familiarity(slip, change) + (change.steadier ?? 0) - (leaves ? 2 : 0) - (change.ofTotal && !likelier ? 1 : 0)
  return found.toSorted((a, b) => rank(b) - rank(a)).slice(0, shownChoices).map(({ text, change: { span, replacement } }) => ({ text, edit: { span, replacement } }))
}

/**
 * A row says the same thing twice, at its two ends or its two sides: words that stand elsewhere in it are likelier meant than words that
 * stand nowhere, and words that stand elsewhere as well are likelier right as they are.
 */
function familiarity({ source, row: { written } }: Slip, { clause, stands, span }: Change): number {
  const row = `${source.text.slice(written.span.start, span.start)}|${source.text.slice(span.end, written.span.end)}`
  const twin = (words: string | undefined): number => (words !== undefined && words.length > 3 && row.includes(words) ? 1 : 0)
  return twin(clause) - twin(stands)
}

function withFound(diagnostic: Diagnostic, [best, ...others]: readonly Hint[]): Diagnostic {
  return best ? { ...diagnostic, hint: best, ...(others.length > 0 && { otherHints: others }) } : diagnostic
}

/** `did you mean …?` names what could stand in the place of the finding. */
function meantInstead(source: Source, { hint, primary }: Diagnostic): Edit | undefined {
  const meant = /^did you mean `([^`]+)`\?$/.exec(hint?.text ?? '')?.[1]
  const stands = textOf(source, primary.span)
  return meant === undefined || hint?.edit || !/^[\p{L}\p{N} _-]{1,60}$/u.test(stands) ? undefined : { span: primary.span, replacement: meant }
}

function rank({ code }: Diagnostic): number {
  return severityOf(code) === 'error' ? 0 : 1
}
