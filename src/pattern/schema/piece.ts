import * as z from 'zod'
import { choice, keys, oneOrMore, text, whole, yesNo } from './fields.ts'

const must = 'must hold rows, each on a line of its own'

/** One thing worked from one start. */
export const piece = keys({
  name: text('What the piece is called, as `Front`. Each piece has a name of its own.'),
  make: whole('How many of it are worked.', { from: 1 }).default(1),
  shape: choice(['flat', 'tube', 'cone', 'ball'], 'How the piece is drawn. Left out: as the fabric lies.').optional(),
  drawn: choice(['as worked', 'upside down'], 'Which way up a flat piece is drawn. As worked its first row is at the foot.').optional(),
  symmetrical: yesNo('Whether the two sides of a flat piece are to be alike, so that steps that differ are told.').optional(),
  on: oneOrMore(text('The name of a piece.'), 'The piece that this one goes on from, on the same fabric, where that one ended; of a band over several the one that it begins on, and the others.').optional(),
  note: text('A sentence or two that is printed above the rows.').optional(),
  rows: z.string(must).regex(/\S/, must)
    .describe('The rows, in a `|` block: each on a line of its own that begins with its label, as `Row 1 (RS): Sc in each st across. (40)`.'),
}, 'One thing worked from one start: a front, a sleeve, a border.')
