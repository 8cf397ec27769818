import * as z from 'zod'
import { choice, keys, text, yesNo } from './fields.ts'

/** Pieces that are joined. */
export const seam = keys({
  join: z.array(text('The name of a piece.'), 'must be a list of pieces such as `[Front, Back]`').min(1, 'must name at least one piece')
    .describe('The pieces that are joined, by their names.'),
  by: text('How: `whip stitch`, `mattress stitch`, `sl st through both`.').optional(),
  'wrong-sides': choice(['together', 'apart'], 'Whether the wrong sides lie together while joining.').optional(),
  ease: yesNo('Whether a longer edge is eased in to a shorter one, so that the two need not match stitch for stitch.').optional(),
}, 'A seam: which pieces are joined, and how.')
