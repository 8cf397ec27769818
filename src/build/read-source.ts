import { readFile } from 'node:fs/promises'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Source } from '../text/source.ts'

/** A source as it was read, and what stands in the way when its bytes are not UTF-8 text. */
export interface ReadSource {
  readonly source: Source
  readonly unreadable?: Diagnostic
}

/** Reads a pattern's bytes as text. `path` is what messages show. A byte-order mark at the start is dropped. */
export async function readSource(file: string | URL, path: string): Promise<ReadSource> {
  const bytes = await readFile(file)
  const text = new TextDecoder('utf-8').decode(bytes)
  const source: Source = { path, text }
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return { source }
  } catch {
    // A byte that is no UTF-8 became U+FFFD in the forgiving reading; the first one is the place to look at.
    const at = Math.max(0, text.indexOf('\uFFFD'))
    const wide = bytes[0] === 0xff || bytes[0] === 0xfe
    return {
      source,
      unreadable: {
        code: 'file-unreadable',
        message: wide ? 'the file is saved as UTF-16, and a pattern is UTF-8' : 'the file is not UTF-8 text from here on',
        primary: { span: { start: at, end: Math.min(at + 1, text.length) }, text: 'not UTF-8' },
        secondary: [],
        note: 'most editors can save the file again with the encoding UTF-8',
      },
    }
  }
}
