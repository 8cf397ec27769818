import type { BaseRow } from './base-row.ts'

// Wordings of our own: the total stands between the row's label and its colon. Common practice, no source. The counts are worked by hand; the
// sum stands in each name.

/** Rows whose label holds their total. */
export const totalsInLabels: readonly BaseRow[] = [
  {
    name: '24 sc on 24, counted in the label', on: 'last=24', over: 24, makes: 24, kinds: { sc: 24 },
    wordings: [
      'Row 2 (@ sc): Ch 1, turn, sc in each st across.',
      'Row 2 (WS) (@ sc): Ch 1, turn, sc in each st across.',
      'Row 2 (@ sts) (WS): Ch 1, turn, sc in each st across.',
      'Row 2 [@ sc]: Ch 1, turn, sc in each of next 24 sts.',
      'Row 2 (wrong side) {@ sc}: Ch 1, turn, 24 sc.',
      'R2 (@ sts): ch1, turn, 24 sc',
      '2nd row (@ stitches): Ch 1, turn, sc to end.',
      'Row 2 (@ sc) – Ch 1, turn, sc in each st across.',
      'Row 2, @ sc: Ch 1, turn, sc in each st across.',
      'Row 2 (WS), @ sc: Ch 1, turn, sc in each of the 24 sts. Fasten off.',
    ],
  },
]
