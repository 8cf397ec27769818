import { checkPattern } from '../pattern/check-pattern.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { decodePattern } from '../pattern/decode-pattern.ts'
import type { FileBytes } from './read-files.ts'

/** Works a pattern file from its bytes. A file that is no UTF-8 text is a finding of its own, and nothing else is said of it. */
export function checkBytes({ path, bytes }: FileBytes): CheckedPattern {
  const decoded = decodePattern(bytes)
  if ('text' in decoded) return checkPattern({ path, text: decoded.text })
  return {
    source: { path, text: '' },
    pieces: [],
    diagnostics: [{
      code: 'file-unreadable', message: decoded.reason, primary: { span: { start: 0, end: 0 }, text: '' }, secondary: [],
    }],
  }
}
