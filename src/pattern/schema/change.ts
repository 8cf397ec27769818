import { day, keys, text, version } from './fields.ts'

/** What a version of the pattern brought. */
export const change = keys({
  version: version('The version that brought it, as `1.0.1`.'),
  date: day('The day it came out, as `2026-11-02`.'),
  what: text('What is different, in a sentence for those who have the older version.'),
}, 'What a version of the pattern brought.')
