import { keys, text } from './fields.ts'

/** A warning that the designer has looked at and lets stand. */
export const acceptance = keys({
  code: text('The code of the warning, as `count-missing`. Errors cannot be accepted.'),
  row: text('The row that it stands in, as `Row 3`. Left out for a warning that stands in no row.').optional(),
  piece: text('The piece of the row, where more than one has it.').optional(),
  why: text('Why it may stand, for the editor.'),
}, 'A warning that the designer has looked at and lets stand.')
