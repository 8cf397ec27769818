import type { HelpEntry } from '../components/help-entry.ts'
import { codes, type DiagnosticCode } from '../diagnostics/codes.ts'
import { helpHtml } from './help-html.ts'

/** What `src/help` says about a code. A file must be named for its code. */
export function helpEntryOf(name: string, text: string): HelpEntry {
  if (!isCode(name)) throw new Error(`src/help/${name}.md is named for no diagnostic: this is our mistake, not your pattern's`)
  return { code: name, ...codes[name], html: helpHtml(text) }
}

function isCode(name: string): name is DiagnosticCode {
  return name in codes
}
