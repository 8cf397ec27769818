import { parseArgs } from 'node:util'

/** What the command was asked to do. */
export type CheckArguments =
  | { readonly asks: 'check'; readonly form: 'report' | 'short' | 'json'; readonly files: readonly string[] }
  | { readonly asks: 'help' }
  | { readonly asks: 'nothing sensible'; readonly reason: string }

/** What the command is and how it ends. */
export const usage = `\
npm run check [-- [--json | --short] [file …]]

Works every row of each pattern file and says what does not come out.
Without a file: every .md file in patterns/.

  --short   one line for each finding
  --json    one JSON document, for other programs
  --help    this text

Ends with 0 when there is no error, with 1 when there is one, with 2 when it was
called wrongly or a file cannot be read.
`

/** Reads the words behind `check`. */
export function checkArguments(words: readonly string[]): CheckArguments {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, short: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    })
    if (values.help) return { asks: 'help' }
    if (values.json && values.short) return { asks: 'nothing sensible', reason: '--json and --short are two forms: choose one' }
    const empty = positionals.includes('')
    if (empty) return { asks: 'nothing sensible', reason: 'a file name is empty' }
    return { asks: 'check', form: values.json ? 'json' : values.short ? 'short' : 'report', files: positionals }
  } catch (error) {
    return { asks: 'nothing sensible', reason: error instanceof Error ? error.message : String(error) }
  }
}
