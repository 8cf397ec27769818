import type { Label } from '../diagnostics/diagnostic.ts'
import { checkPattern } from '../pattern/check-pattern.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { decodePattern } from '../pattern/decode-pattern.ts'
import type { FileBytes } from './read-files.ts'

/** Works a pattern file from its bytes. A file that is no UTF-8 text is a finding of its own, and nothing else is said of it. */
export function checkBytes({ path, bytes }: FileBytes): CheckedPattern {
  const decoded = decodePattern(bytes)
  if ('text' in decoded) return checkPattern({ path, text: decoded.text })
  const { text, primary } = firstForeignPlace(bytes)
  return {
    source: { path, text },
    pieces: [],
    diagnostics: [{
      code: 'file-unreadable', message: decoded.reason, primary, secondary: [],
      note: 'most editors can save a file again with the encoding UTF-8',
    }],
  }
}

const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
const lenient = new TextDecoder('utf-8', { ignoreBOM: true })

/** The text as far as it can be shown, and the first place in it that is not UTF-8. UTF-16 is not shown: it would be noise. */
function firstForeignPlace(bytes: Uint8Array): { readonly text: string; readonly primary: Label } {
  if (bytes[0] === 0xff || bytes[0] === 0xfe) return { text: '', primary: { span: { start: 0, end: 0 }, text: '' } }
  let before = 0
  // No byte of a longer UTF-8 character is a line end, so each line stands for itself.
  for (let from = 0; from < bytes.length;) {
    const lineEnd = bytes.indexOf(10, from)
    const line = bytes.subarray(from, lineEnd === -1 ? bytes.length : lineEnd + 1)
    const shown = lenient.decode(line)
    if (line.includes(0) || !isText(line)) {
      const start = before + Math.max(0, shown.search(/[\0\uFFFD]/))
      return { text: lenient.decode(bytes), primary: { span: { start, end: start + 1 }, text: 'not UTF-8' } }
    }
    before += shown.length
    from += line.length
  }
  return { text: '', primary: { span: { start: 0, end: 0 }, text: '' } }
}

function isText(line: Uint8Array): boolean {
  try {
    strict.decode(line)
    return true
  } catch {
    return false
  }
}
