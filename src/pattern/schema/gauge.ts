import { hook, keys, length, positive, text } from './fields.ts'

/** So many stitches and rows over a distance. */
export const gauge = keys({
  stitch: text('The stitch that the swatch is worked in, as `hdc`.').optional(),
  sts: positive('Stitches over the distance.'),
  rows: positive('Rows or rounds over the distance.'),
  over: length('The distance, as `10 cm` or `4 in`.'),
  hook: hook('The hook that gave this gauge, as `5 mm`.').optional(),
  after: text('The state in which it was measured, as `as worked` or `washed and dried flat`.').optional(),
}, 'Gauge: so many stitches and rows over a distance. UK: tension.')
