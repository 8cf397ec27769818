import type { core } from 'zod'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Span } from '../text/span.ts'
import type { Source } from '../text/source.ts'
import { meant } from './did-you-mean.ts'
import { closeUp, entryAt, leaveOut, plainValue, putText, type Entry, type KeysEntry, type Path } from './entry.ts'
import { keyMissing, keyUnknown, valueWrong } from './schema-findings.ts'
import { patternSchema, type PatternValues } from './schema/pattern.ts'
import { keysAt } from './schema/shape-at.ts'

/** Values that passed, and what did not. Entries and values stay in step: what did not pass is gone from both. */
export interface Validated {
  readonly values?: PatternValues
  readonly diagnostics: readonly Diagnostic[]
}

/** What the reading knows besides the entries. */
export interface Context {
  readonly source: Source
  /** The opening `---`, where a missing key is shown. */
  readonly opening: Span
  /** What is not there may have been written all the same, so nothing is called missing. */
  readonly losesKeys: boolean
  /** Stands in for a title that is missing or wrong, so that the rows are counted. */
  readonly fallbackTitle: string
}

// A value that is left out can make its group wrong, the group its list, and so on up to the pattern.
const mostRounds = 12

/**
 * Holds the front-matter to the schema. Where all is right the schema is asked once. What is wrong is said, left out (or taken
 * for what was likely meant) and the rest asked again, so that a slip in the materials keeps no row from being counted.
 */
export function validate(root: KeysEntry, context: Context): Validated {
  const diagnostics: Diagnostic[] = []
  for (let round = 0; round < mostRounds; round += 1) {
    closeUp(root)
    const result = patternSchema.safeParse(plainValue(root))
    if (result.success) return { values: result.data, diagnostics }
    const troubles = result.error.issues.map((issue) => troubleAt(root, issue))
    const settled = new Set<Entry>()
    let changed = false
    // Unknown keys first: one that is near a missing key is that key, misspelt.
    for (const trouble of troubles) if (trouble.issue.code === 'unrecognized_keys') changed = settleUnknown(trouble, trouble.issue.keys, diagnostics) || changed
    for (const trouble of troubles) {
      const { issue, value } = trouble
      if (issue.code === 'unrecognized_keys') continue
      if (!value) changed = settleMissing(trouble, context, diagnostics) || changed
      else if (!settled.has(value)) {
        settled.add(value)
        changed = settleWrong(trouble, value, context, diagnostics) || changed
      }
    }
    if (!changed) break
  }
  return { diagnostics }
}

/** An issue of the schema with what stands on the way to its place. */
interface Trouble {
  readonly issue: core.$ZodIssue
  readonly path: Path
  readonly root: KeysEntry
  readonly value: Entry | undefined
  readonly holder: Entry | undefined
  readonly holdersHolder: Entry | undefined
}

function troubleAt(root: KeysEntry, found: core.$ZodIssue): Trouble {
  let issue = found
  let path = found.path as Path
  while (issue.code === 'invalid_union') {
    const branch = likeliest(issue.errors)
    if (!branch) break
    path = [...path, ...(branch.path as Path)]
    issue = branch
  }
  return {
    issue, path, root,
    value: entryAt(root, path),
    holder: path.length > 0 ? entryAt(root, path.slice(0, -1)) : undefined,
    holdersHolder: path.length > 1 ? entryAt(root, path.slice(0, -2)) : undefined,
  }
}

/** Of the forms that a value may have, the one that was written: the form whose trouble lies within, not at its very kind. */
function likeliest(branches: readonly (readonly core.$ZodIssue[])[]): core.$ZodIssue | undefined {
  const within = branches.find(([first]) => first !== undefined && (first.path.length > 0 || first.code !== 'invalid_type'))
  return (within ?? branches[0])?.[0]
}

function settleUnknown({ path, value: group }: Trouble, names: readonly string[], diagnostics: Diagnostic[]): boolean {
  if (group?.kind !== 'keys') return false
  const known = keysAt(patternSchema, path)
  for (const name of names) {
    const pair = group.pairs.get(name)
    if (!pair) continue
    const likely = meant(name, known.filter((key) => !group.pairs.has(key) && !group.leftOut.has(key)))
    diagnostics.push(keyUnknown({ name, span: pair.key, path, known, ...(likely === undefined ? {} : { likely }) }))
    leaveOut(group, name, pair.value)
    // `sts:8` between braces is a key with nothing behind it.
    if (likely !== undefined && pair.value.kind === 'empty') group.leftOut.add(likely)
    else if (likely !== undefined) group.pairs.set(likely, pair)
  }
  return true
}

function settleMissing({ root, path, holder, holdersHolder }: Trouble, context: Context, diagnostics: Diagnostic[]): boolean {
  const step = path.at(-1)
  if (holder?.kind !== 'keys' || step === undefined) return false
  const key = String(step)
  if (holder.pairs.has(key)) return true
  if (!context.losesKeys && !holder.leftOut.has(key)) diagnostics.push(keyMissing({ root, holder, path, opening: context.opening }))
  const known = holder.leftOut.has(key)
  holder.leftOut.add(key)
  const fallback = fallbackAt(path, context)
  if (fallback !== undefined) {
    putText(holder, key, fallback, { start: holder.span.start, end: holder.span.start })
    return true
  }
  if (!holdersHolder) return !known
  leaveOut(holdersHolder, path.at(-2), holder)
  return true
}

function settleWrong({ issue, path, holder, root }: Trouble, value: Entry, context: Context, diagnostics: Diagnostic[]): boolean {
  const step = path.at(-1)
  if (step === undefined) return false
  const lacks = value.kind === 'list' && value.lacks
  const options = issue.code === 'invalid_value' ? issue.values.map(String) : []
  if (!lacks) diagnostics.push(valueWrong({ source: context.source, must: issue.message, options, value, holder, path, root }))
  const likely = value.kind === 'text' ? meant(value.value, options) : undefined
  const instead = likely ?? fallbackAt(path, context)
  if (instead === undefined) leaveOut(holder, step, value)
  else putText(holder, step, instead, value.span)
  return true
}

/** A name for what must have one, when its own cannot be read. */
function fallbackAt(path: Path, context: Context): string | undefined {
  const [first, index, key] = path
  if (first === 'title') return context.fallbackTitle
  if (first === 'pieces' && key === 'name') return `Piece ${Number(index) + 1}`
  return first === 'sizes' && index !== undefined ? `Size ${Number(index) + 1}` : undefined
}
