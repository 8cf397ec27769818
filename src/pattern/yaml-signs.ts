import type { Span } from '../text/span.ts'
import { quoted } from './shown.ts'

/** What is amiss with a value because of a sign that YAML reads as its own. Spans are offsets in the text that was looked at. */
export interface SignTrouble {
  readonly message: string
  readonly span: Span
  readonly label: string
  readonly note?: string
}

/** A value with the place where YAML stumbled. */
export interface Stumble {
  readonly text: string
  readonly value: Span
  /** The value's key, if it has one. */
  readonly key?: string
  /** Where YAML says that it cannot go on. */
  readonly at: number
}

/**
 * The sign at the root of the trouble: one that begins the value, or a colon and a space within it.
 *
 *   summary: *Sc in next st* to end
 *            ^
 */
export function signTrouble(stumble: Stumble): SignTrouble | undefined {
  const { text, value } = stumble
  const first = text[value.start] ?? ''
  if (first === '"' || first === "'") return quoteTrouble(stumble, first)
  if (first === '[' || first === '{') return bracketTrouble(stumble, first)
  const written = text.slice(value.start, value.end)
  const sign = /^(?:[*&!@`%,\]}|>]|[?-](?=\s|$))/.exec(written)?.[0]
  if (sign !== undefined) {
    const begins = `begins with ${sign === '`' ? 'a backtick' : `\`${sign}\``}`
    return {
      message: `${subject(stumble)} ${begins}, which has a meaning of its own in YAML`,
      span: firstLine(written, value.start),
      label: begins,
      note: needsQuotes(begins, stumble),
    }
  }
  const line = firstLine(written, value.start)
  if (!/:(?:\s|$)/.test(text.slice(line.start, line.end))) return undefined
  return {
    message: `${subject(stumble)} holds a colon and a space, which begin a new key in YAML`,
    span: line,
    label: 'holds `: `',
    note: needsQuotes('holds a colon and a space', stumble),
  }
}

function quoteTrouble(stumble: Stumble, quote: string): SignTrouble | undefined {
  const { text, value } = stumble
  const close = closingQuote(text, value.start, value.end)
  if (close === undefined) {
    return {
      message: `the quote at the start of ${subject(stumble)} is not closed`,
      span: firstLine(text.slice(value.start, value.end), value.start),
      label: `no closing \`${quote}\``,
      ...(quote === "'" ? { note: 'within single quotes an apostrophe is written twice' } : {}),
    }
  }
  const rest = text.slice(close + 1, value.end)
  if (rest.trim() !== '' && !/^\s+#/.test(rest)) {
    return {
      message: `${subject(stumble)} goes on after its closing quote`,
      span: firstLine(rest.trimStart(), value.end - rest.trimStart().length),
      label: 'after the closing quote',
      note: 'a quote at the start of a value goes round all of it; quotes within it are then of the other kind',
    }
  }
  const escape = quote === '"' ? /\\./.exec(text.slice(stumble.at, value.end)) : null
  if (!escape) return undefined
  const start = stumble.at + escape.index
  return {
    message: `${subject(stumble)} holds \`${escape[0]}\`, and a backslash in double quotes has a meaning of its own in YAML`,
    span: { start, end: start + escape[0].length },
    label: 'a backslash',
    note: 'in single quotes a backslash is only a backslash',
  }
}

function bracketTrouble(stumble: Stumble, bracket: '[' | '{'): SignTrouble | undefined {
  const { text, value } = stumble
  const { closedAt, open } = brackets(text, value)
  const what = `a value that begins with \`${bracket}\` and is no ${bracket === '[' ? 'list' : 'group of keys'}`
  if (closedAt === undefined) {
    const sign = text[open] ?? bracket
    const comment = /\s#/.exec(text.slice(open, value.end))
    if (comment) {
      const start = open + comment.index + 1
      return {
        message: `a \`${sign}\` of ${subject(stumble)} is not closed before a comment begins`,
        span: { start, end: start + 1 },
        label: 'a comment from here on',
        note: 'a value that begins with `#` needs quotes',
      }
    }
    return {
      message: `a \`${sign}\` of ${subject(stumble)} is not closed`,
      span: { start: open, end: open + 1 },
      label: `no \`${sign === '[' ? ']' : '}'}\` for it`,
      note: `${what} needs quotes`,
    }
  }
  const rest = text.slice(closedAt + 1, value.end)
  if (rest.trim() !== '' && !/^\s+#/.test(rest)) {
    return {
      message: `${subject(stumble)} goes on after its closing \`${text[closedAt]}\``,
      span: firstLine(text.slice(value.start, value.end), value.start),
      label: `begins with \`${bracket}\``,
      note: needsQuotes(`begins with \`${bracket}\``, stumble),
    }
  }
  return withinBrackets(stumble)
}

/** The entry between two commas in which YAML stumbled. */
function withinBrackets(stumble: Stumble): SignTrouble {
  const { text, value } = stumble
  const before = /^[\s\S]*(?:[[{,]|:[ \t])\s*/.exec(text.slice(value.start, stumble.at))?.[0] ?? ''
  const start = value.start + before.length
  const end = start + (/^[^,\]}\r\n]*/.exec(text.slice(start, value.end))?.[0].trimEnd().length ?? 0)
  const { key: _, ...rest } = stumble
  const trouble = end > start && !/["'[{]/.test(text[start] ?? '') ? signTrouble({ ...rest, value: { start, end } }) : undefined
  if (trouble) return trouble
  const at = Math.min(Math.max(stumble.at, value.start), value.end - 1)
  return {
    message: `${subject(stumble)} does not read as a ${text[value.start] === '[' ? 'list' : 'group of keys'}`,
    span: { start: at, end: Math.max(at + 1, Math.min(end, value.end)) },
    label: 'up to here it does',
    note: 'between brackets, entries have commas between them, and a key has a colon and a space after it',
  }
}

/** Where a bracketed value closes, or else its innermost bracket that does not. */
function brackets(text: string, { start, end }: Span): { readonly closedAt?: number; readonly open: number } {
  const open: number[] = []
  for (let at = start; at < end; at += 1) {
    const sign = text[at] ?? ''
    if ((sign === '"' || sign === "'") && /[[{,:\s]/.test(text[at - 1] ?? ' ')) at = closingQuote(text, at, end) ?? at
    else if (sign === '#' && /\s/.test(text[at - 1] ?? '')) at = endOfLine(text, at, end)
    else if (sign === '[' || sign === '{') open.push(at)
    else if (sign === ']' || sign === '}') {
      const opener = open.at(-1)
      if (opener === undefined || (text[opener] === '[') !== (sign === ']')) break
      open.pop()
      if (open.length === 0) return { closedAt: at, open: start }
    }
  }
  return { open: open.at(-1) ?? start }
}

function endOfLine(text: string, at: number, end: number): number {
  const newline = text.indexOf('\n', at)
  return newline === -1 ? end : newline
}

function closingQuote(text: string, start: number, end: number): number | undefined {
  const quote = text[start]
  for (let at = start + 1; at < end; at += 1) {
    if (text[at] === '\\' && quote === '"') at += 1
    else if (text[at] === quote && text[at + 1] === quote && quote === "'") at += 1
    else if (text[at] === quote) return at
  }
  return undefined
}

function subject({ key, text, value }: Stumble): string {
  return key === undefined ? quoted(text.slice(value.start, Math.min(value.end, value.start + 200))) : `\`${key}\``
}

function firstLine(written: string, start: number): Span {
  return { start, end: start + (written.split(/\r?\n/, 1)[0] ?? '').trimEnd().length }
}

/** Says which values need quotes, and shows this one in them when it is short. */
function needsQuotes(which: string, { key, text, value }: Stumble): string {
  const written = text.slice(value.start, value.end)
  if (written.length > 60 || /[\r\n]/.test(written)) return `a value that ${which} needs quotes`
  const inQuotes = /["\\]/.test(written) ? `'${written.replaceAll("'", "''")}'` : `"${written}"`
  return `a value that ${which} needs quotes: \`${key === undefined ? '' : `${key}: `}${inQuotes}\``
}
