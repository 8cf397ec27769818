import { grams, keys, perSize, positive, text, whole } from './fields.ts'

/** A yarn of the materials: what it is and how much of it each size takes. */
export const yarn = keys({
  letter: text('The letter that rows call the yarn by, as `A` in "with A".').optional(),
  name: text('What the yarn is called, when it has a name.').optional(),
  weight: whole('Yarn weight category of the published table: 0 lace to 7 jumbo.', { to: 7 }).optional(),
  fibre: text('What it is spun of, as `100% cotton`.').optional(),
  ball: keys({
    grams: positive('Weight of one ball in grams.'),
    metres: positive('Length of one ball in metres.'),
  }, 'How the yarn is sold: the length of a ball is what lets a buyer put another yarn in its place.').optional(),
  colour: text('The colour.').optional(),
  for: text('What the yarn is for, as `border`.').optional(),
  substitute: text('What to look for in another yarn, as `any smooth cotton with a firm twist`.').optional(),
  needs: perSize(grams('Grams, as `120 g`.'), 'Grams of this yarn that the pattern takes: one amount, or a list with one for each size.').optional(),
}, 'A yarn, with the amount that each size takes.')
