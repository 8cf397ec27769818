import { keys, text } from './fields.ts'

/** Somebody who had a part in the pattern. */
export const credit = keys({
  part: text('What they did, as `edited`, `tested`, `photographed`.'),
  by: text('Who, by the name that they agreed to.'),
}, 'Somebody who had a part in the pattern and agreed to be named.')
