import * as z from 'zod'
import { choice, keys } from './fields.ts'

const counted = (meaning: string) => choice(['counted', 'not counted'], meaning)

/** What the pattern says, once for all rows, about the things that rows leave open. */
export const conventions = keys({
  'turning-chains': z.record(z.string(), counted('Whether that turning chain is a stitch of its row.'), 'must be stitches with `counted` or `not counted` such as `{ sc: not counted, dc: counted }`')
    .describe('Whether turning chains count as stitches: by the stitch at whose height the chain stands, in the terms of the pattern.').optional(),
  'slip-stitches': counted('Whether slip stitches worked into stitches count in a row\'s total.').optional(),
  chains: counted('Whether chains count as stitches in totals.').optional(),
}, 'What holds for all rows and is not said in each.')
