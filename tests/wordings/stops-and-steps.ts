import type { BaseRow } from './base-row.ts'

// Wordings of our own: what a row leaves and steps over, told before it, behind it, in a bracket or in a sentence. Common practice, no source.
// The counts are worked by hand; the sum stands in each name.

/** Rows that stop short, and rows that begin further on. */
export const stopsAndSteps: readonly BaseRow[] = [
  {
    name: '16 sc on 24, 8 left in other words', on: 'last=24', over: 16, makes: 16, kinds: { sc: 16 },
    wordings: [
      'Row 2: Leaving last 8 sts unworked, ch 1, turn, sc in next 16 sts. (@ sc)',
      'Row 2: Leaving the last 8 sts of the row unworked, ch 1, turn, sc in each st across. (@ sc)',
      'Row 2: Ch 1, turn, sc in each st to the last 8 sts. Do not work these 8 stitches; leave them for later. (@)',
      'Row 2: Ch 1, turn, sc in next 16 sts and stop. There should be 8 sts over at the end of the row; leave these unworked. (@)',
      'Row 2: Ch 1, turn, sc in next 16 sts. Leave 8 sts unworked at the end of the row. @ sc in all.',
      'Row 2: Ch 1, turn, sc in next 16 sts; 8 sts remain and are left unworked. Stitch count: @ sc.',
      'Row 2: Ch 1, turn, sc in each st across, but stop when 8 sts are still unworked. (@)',
      'Row 2: Ch 1, turn, sc in the first 16 sts only, leave the 8 sts at the far end unworked. (@ sc)',
      'Row 2: Ch 1, turn, sc across until 8 sts remain, without working these eight. @ sc in row.',
      'Row 2: Dec 8 sts at end of row as follows: ch 1, turn, sc in next 16 sts, leave last 8 sts unworked. @ sc',
    ],
  },
  {
    name: '4 slipped, 16 sc and 4 left on 24', on: 'last=24 slip=not', over: 20, makes: 16, kinds: { sc: 16 },
    wordings: [
      'Row 2: Dec 4 sts at each end as follows: turn, sl st in first 4 sc, ch 1, sc in next 16 sc, leave last 4 sc unworked. @ sc',
      'Row 2: Decrease 4 sts at both ends of the row: turn, sl st in first 4 sc, ch 1, sc in next 16 sc, leave last 4 sc unworked. @ sc',
      'Row 2: Turn, sl st in 4 sc, ch 1, beg in next sc, sc in 16 sc, leaving 4 sc free for second armhole. @ sts',
      'Row 2: Turn, sl st in 4 sc, ch 1, starting in the next sc work 1 sc in each of 16 sc, leave the 4 sc at the end unworked. (@ sc)',
      'Row 2: Turn, sl st in first 4 sc, ch 1, sc in next 16 sc. There are 4 sc left unworked. (@ sc)',
      'Row 2: Turn, sl st in first 4 sc, ch 1, sc in next 16 sc, stop before the last 4 sc, which are left unworked. (@ sc)',
      'Row 2: Turn, sl st across first 4 sc, ch 1, sc in next 16 sc; stop here, with 4 sc still unworked. (@ sc)',
      'Row 2: Turn, sl st in each of the first 4 sc, ch 1, sc in next 16 sc (do not work into the slip stitches on the next row). Leave the 4 sc at the end unworked. (@ sc)',
      'Row 2: Turn, sl st in first 4 sc, ch 1, sc in each sc until 4 sc remain, without working these four. @ sc in row.',
      'Row 2: Leaving 4 sc unworked at the end of the row, turn, sl st over first 4 sc, ch 1, sc in next 16 sc. (@ sc)',
    ],
  },
]
