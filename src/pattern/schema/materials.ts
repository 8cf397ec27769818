import { hook, keys, list, oneOrMore, perSize, text, whole } from './fields.ts'
import { yarn } from './yarn.ts'

const notion = keys({
  what: text('The thing itself, as `yarn needle`.'),
  count: perSize(whole('How many.', { from: 1 }), 'How many: one number, or a list with one for each size.').optional(),
  amount: perSize(text('As much as this, as `200 g`.'), 'How much, in words: one amount, or a list with one for each size.').optional(),
  for: text('What it is for, as `stuffing`.').optional(),
}, 'Something that is needed besides yarn and hooks.')

/** Everything that the maker has to have before the first row. */
export const materials = keys({
  yarns: list(yarn, 'The yarns, in the order of the materials list.').optional(),
  hooks: oneOrMore(hook('A hook by its shaft in millimetres, as `5 mm`.'), 'The hooks, by millimetres.').optional(),
  notions: list(notion, 'Needles, markers, filling, buttons and the like.').optional(),
}, 'Everything that the maker has to have before the first row.')
