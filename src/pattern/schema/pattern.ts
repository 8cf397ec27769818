import * as z from 'zod'
import { acceptance } from './acceptance.ts'
import { change } from './change.ts'
import { conventions } from './conventions.ts'
import { choice, day, keys, list, text, version, whole } from './fields.ts'
import { credit } from './credit.ts'
import { finished } from './finished.ts'
import { gauge } from './gauge.ts'
import { materials } from './materials.ts'
import { piece } from './piece.ts'
import { seam } from './seam.ts'
import { specialStitch } from './special-stitch.ts'

/**
 * The front-matter of a pattern file. This one definition reads the file, words its diagnostics and gives the JSON Schema.
 * A pattern is checked with `title`, `terms` and `pieces`; `missing-to-publish.ts` says what else a published one needs.
 */
export const patternSchema = keys({
  title: text('The name of the pattern.'),
  number: whole('The studio\'s own pattern number.', { from: 1, to: 1_000_000 }).optional(),
  summary: text('One sentence that says what it is.').optional(),
  designer: text('Who designed it, as it is printed.').optional(),
  version: version('The version of the pattern, as `1.0.0`.').optional(),
  date: day('The day of this version, as `2026-11-02`.').optional(),
  access: choice(['free', 'sold'], 'Whether the rows are free to read. The rows of a sold pattern never reach the public site.').default('free'),
  terms: choice(['US', 'UK'], 'The terms that the rows are written in: a US sc is a UK dc.'),
  level: choice(['basic', 'easy', 'intermediate', 'complex'], 'How hard the project is.').optional(),
  'made-for': choice(['home', 'garment', 'toy', 'baby', 'pet', 'kitchen'], 'What it is made for. It decides which cautions are printed.').optional(),
  sizes: z.array(text('The name of a size.'), 'must be a list of names such as `[Small, Large]`')
    .describe('The names of the sizes, smallest first. Their order is the order of every list of numbers. Left out for one size.').optional(),
  papers: choice(['all sizes', 'each size'], 'Whether pattern and checklist are printed for each size alone as well. Left out: for all sizes at once.').optional(),
  gauge: gauge.optional(),
  conventions: conventions.optional(),
  materials: materials.optional(),
  stitches: list(specialStitch, 'Special stitches, those that this pattern defines.').optional(),
  pieces: list(piece, 'The pieces, in the order in which they are worked.').min(1, 'must hold at least one piece'),
  seams: list(seam, 'How the pieces are joined.').optional(),
  finished: list(finished, 'Finished measurements.').optional(),
  licence: text('What may be done with the pattern and with what is made from it, in a sentence or two.').optional(),
  contact: text('Where help is to be had: an address of mail or of a page.').optional(),
  errata: text('Where corrections are published.').optional(),
  credits: list(credit, 'Who else had a part in it, each with their consent.').optional(),
  changes: list(change, 'What each version brought, the newest first.').optional(),
  accepted: list(acceptance, 'Warnings that the designer has looked at and lets stand.').optional(),
}, 'A crochet pattern: its facts, its materials and the rows of its pieces.')

/** The front-matter as it comes out of `patternSchema`: keys as written, values in centimetres, millimetres and grams. */
export type PatternValues = z.output<typeof patternSchema>
