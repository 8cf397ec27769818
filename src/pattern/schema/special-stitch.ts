import { keys, text, whole } from './fields.ts'

/** A stitch that this pattern defines for itself. */
export const specialStitch = keys({
  abbr: text('How rows write it, as `bo`.'),
  name: text('Its name in full, as `bobble`.').optional(),
  'works-over': whole('Stitches of the row below that one of these uses up.', { to: 1000 }).default(1),
  makes: whole('Stitches that it gives the next row.', { to: 1000 }).default(1),
  height: text('The stitch whose height it has, in the terms of the pattern, as `dc`.').optional(),
  how: text('How it is worked.').optional(),
}, 'A stitch that this pattern defines. Numbers left out are 1.')
