import * as z from 'zod'
import { choice, grid, keys, text, yesNo } from './fields.ts'

/** Pieces that are joined. */
export const seam = keys({
  join: z.array(text('The name of a piece, or an edge of it: `Front`, `left side of Gusset`.'), 'must be a list of pieces such as `[Front, Back]`').min(1, 'must name at least one piece')
    .describe('The pieces that are joined, by their names; or edges of them in words, as `top of Front`, so that these are compared.'),
  grid: grid('How many motifs lie side by side, and how many below one another, as `5 x 7`. Several kinds in `join` lie among one another.').optional(),
  name: text('What the joined grid is called, as `Blanket`, for a border that goes on from it.').optional(),
  by: text('How: `whip stitch`, `mattress stitch`, `sl st through both`.').optional(),
  'wrong-sides': choice(['together', 'apart'], 'Whether the wrong sides lie together while joining.').optional(),
  'right-sides': choice(['together', 'apart', 'up'], 'Whether the right sides lie together while joining, so that the wrong sides are apart; or both `up`, edge to edge.').optional(),
  ease: yesNo('Whether a longer edge is eased in to a shorter one, so that the two need not match stitch for stitch.').optional(),
}, 'A seam: which pieces are joined, and how.')
