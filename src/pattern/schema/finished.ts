import { keys, length, perSize, text } from './fields.ts'

/** A measurement of the finished work. */
export const finished = keys({
  what: text('What is measured, as `width` or `chest`.'),
  of: text('What it is measured on, as `Front`.').optional(),
  is: perSize(length('A length, as `50 cm` or `19½ in`.'), 'The length: one for every size, or a list with one for each.'),
}, 'A measurement of the finished work.')
