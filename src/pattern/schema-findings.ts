import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { listOf } from '../diagnostics/words.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { didYouMean } from './did-you-mean.ts'
import { textAt, type Entry, type KeysEntry, type Path } from './entry.ts'
import { quoted, shown } from './shown.ts'

/** What one entry of a list is called. */
const oneOf: Readonly<Record<string, string>> = {
  pieces: 'piece', yarns: 'yarn', notions: 'notion', stitches: 'special stitch', seams: 'seam', finished: 'finished measurement', changes: 'change', accepted: 'acceptance',
}

/** A key that no such group has. */
export function keyUnknown({ name, span, path, known, likely }: {
  readonly name: string
  readonly span: Span
  readonly path: Path
  readonly known: readonly string[]
  readonly likely?: string
}): Diagnostic {
  const group = kindOf(path)
  const note = name !== name.trim() ? 'it begins or ends with a space that YAML takes for a letter, as a no-break space'
    : /.:./.test(name) ? 'between brackets too, a colon has a space after it'
      : likely === undefined ? `${group} has ${listOf(known.map((key) => `\`${key}\``))}` : undefined
  return {
    code: 'key-unknown',
    message: `${quoted(name)} is no key of ${group}`,
    primary: { span, text: 'no such key' },
    secondary: [],
    ...(note === undefined ? {} : { note }),
    ...(likely === undefined ? {} : { hint: { text: `did you mean \`${likely}\`?` } }),
  }
}

/** A key that its group cannot do without. */
export function keyMissing({ root, holder, path, opening }: {
  readonly root: KeysEntry
  readonly holder: KeysEntry
  readonly path: Path
  readonly opening: Span
}): Diagnostic {
  const [first] = holder.pairs.values()
  return {
    code: 'key-missing',
    message: `${nameOf(root, path.slice(0, -1))} has no \`${path.at(-1)}\``,
    primary: { span: path.length === 1 ? opening : first?.key ?? holder.span, text: `no \`${path.at(-1)}\`` },
    secondary: [],
  }
}

/** A value that is not of the kind that it must be. `must` ends the sentence: `must be a whole number from 1`. */
export function valueWrong({ source, must, options, value, holder, path, root }: {
  readonly source: Source
  readonly must: string
  readonly options: readonly string[]
  readonly value: Entry
  readonly holder: Entry | undefined
  readonly path: Path
  readonly root: KeysEntry
}): Diagnostic {
  const key = path.findLast((step) => typeof step === 'string') ?? ''
  const single = oneOf[key]
  const inList = typeof path.at(-1) === 'number'
  const subject = !inList ? `\`${key}\` is` : single === undefined ? `\`${key}\` holds` : `${nameOf(root, path)} is`
  const what = inList && single === undefined && value.kind === 'empty' ? 'an empty entry' : shown(value)
  const note = noteOn(source, value, holder, path)
  return {
    code: 'value-wrong',
    message: `${subject} ${what}, but ${inList && single === undefined ? `each ${must}` : must}`,
    primary: { span: placeOfWrong(source, value, holder, path), text: must },
    secondary: [],
    ...(note === undefined ? {} : { note }),
    ...(value.kind === 'text' ? didYouMean(value.value, options) : {}),
  }
}

/** A value on one line is shown itself; a long one, or none, by its key. */
function placeOfWrong({ text }: Source, value: Entry, holder: Entry | undefined, path: Path): Span {
  const key = holder?.kind === 'keys' ? holder.pairs.get(String(path.at(-1)))?.key : undefined
  const shownItself = value.kind !== 'empty' && !text.slice(value.span.start, value.span.end).includes('\n')
  return shownItself ? value.span : key ?? value.span
}

function noteOn({ text }: Source, value: Entry, holder: Entry | undefined, path: Path): string | undefined {
  const sign = text[value.span.start] ?? ''
  if ((value.kind === 'list' || value.kind === 'keys') && /[[{]/.test(sign)) return `text that begins with \`${sign}\` needs quotes`
  const key = holder?.kind === 'keys' ? holder.pairs.get(String(path.at(-1)))?.key : undefined
  if (value.kind !== 'empty' || !key) return undefined
  const line = text.slice(key.end, key.end + 200).split('\n', 1)[0] ?? ''
  return /^: *#/.test(line) ? '`#` begins a comment in YAML: a value that begins with it needs quotes' : undefined
}

/** What the group at the end of a path is one of: `a piece`, `the gauge`. */
function kindOf(path: Path): string {
  const last = path.findLast((step) => typeof step === 'string')
  if (last === undefined) return 'a pattern'
  const single = oneOf[last]
  return single === undefined ? `\`${last}\`` : `${/^[aeiou]/.test(single) ? 'an' : 'a'} ${single}`
}

/** A group by its name, or by its place among its like: piece `Front`, yarn 2, `gauge`. */
function nameOf(root: KeysEntry, path: Path): string {
  const last = path.at(-1)
  if (last === undefined) return 'the front-matter'
  if (typeof last === 'string') return `\`${last}\``
  const name = textAt(root, [...path, 'name']) ?? textAt(root, [...path, 'abbr'])
  const single = oneOf[String(path.at(-2))] ?? `\`${path.at(-2)}\``
  return `${single} ${name === undefined || name === '' ? last + 1 : quoted(name)}`
}
