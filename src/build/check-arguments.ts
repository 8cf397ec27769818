import { parseArgs } from 'node:util'

/** How findings are written: for a person, one a line, or for other programs. */
export type CheckForm = 'report' | 'short' | 'json' | 'sarif'

/** What the command was asked to do. */
export type CheckArguments =
  | { readonly asks: 'check'; readonly form: CheckForm; readonly watch: boolean; readonly files: readonly string[] }
  | { readonly asks: 'help' }
  | { readonly asks: 'nothing sensible'; readonly reason: string }

/** What the command is and how it ends. */
export const usage = `\
npm run check [-- [--short | --json | --sarif] [--watch] [file …]]

Works every row of each pattern file and says what does not come out.
Without a file: every .md file in patterns/.

  --short   one line for each finding
  --json    one JSON document, for other programs
  --sarif   one SARIF 2.1.0 document, for services that review changes
  --watch   checks again whenever a file is saved, and shows what changed
  --help    this text

Ends with 0 when there is no error, with 1 when there is one, with 2 when it was
called wrongly or a file cannot be read. Colour follows NO_COLOR and FORCE_COLOR.
`

const forms = ['short', 'json', 'sarif'] as const

/** Reads the words behind `check`. */
export function checkArguments(words: readonly string[]): CheckArguments {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, short: { type: 'boolean' }, sarif: { type: 'boolean' }, watch: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    })
    if (values.help) return { asks: 'help' }
    const asked = forms.filter((form) => values[form])
    if (asked.length > 1) return senseless(`${asked.map((form) => `--${form}`).join(' and ')} are different forms: choose one`)
    const [form = 'report'] = asked
    const watch = values.watch === true
    if (watch && (form === 'json' || form === 'sarif')) return senseless(`--watch shows what changed to a person, so it does not go with --${form}`)
    if (positionals.includes('')) return senseless('a file name is empty')
    return { asks: 'check', form, watch, files: positionals }
  } catch (error) {
    return senseless(error instanceof Error ? error.message : String(error))
  }
}

function senseless(reason: string): CheckArguments {
  return { asks: 'nothing sensible', reason }
}
