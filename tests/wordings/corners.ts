import type { BaseRow } from './base-row.ts'

// Wordings of our own for a second round that goes on at the corners. Common practice, no source. The counts are worked by hand.

/** 6 by 4: 4 sides of 4 between 4 corners of 3: 28. */
const square = [
  'Foundation: Ch 7.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (6 sc)', 'Rows 2-4: Ch 1, sc in each sc across, turn. (6 sc)',
  'Rnd 1: Ch 1, 3 sc in first sc, sc in next 4 sc, 3 sc in last sc, sc in next 4 row-ends, 3 sc in first ch of foundation, sc in next 4 ch, 3 sc in last ch, sc in next 4 row-ends, join with sl st in first sc. (28 sc)',
]

/** 6 by 2 and 4 by 2 on it: 2, 2 + 1 past the inner corner, 2, 4 and 4 between 5 outer corners of 3: 30. */
const ell = [
  'Foundation: Ch 7.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (6 sc)', 'Row 2: Ch 1, sc in each sc across, turn. (6 sc)',
  'Row 3: Ch 1, sc in next 4 sc, leave last 2 sts unworked, turn. (4 sc)', 'Row 4: Ch 1, sc in each sc across, turn. (4 sc)',
  'Rnd 1: Ch 1, 3 sc in first sc, sc in next 2 sc, 3 sc in last sc, sc in next 2 row-ends, sc in next st, 3 sc in next st, sc in next 2 row-ends, 3 sc in first ch of foundation, sc in next 4 ch, 3 sc in last ch, sc in next 4 row-ends, join with sl st in first sc. (30 sc)',
]

/** Rounds that grow at the corners. */
export const corners: readonly BaseRow[] = [
  {
    name: '28 and 2 more at each of 4 corners: 36', before: square, over: 28, makes: 36, kinds: { sc: 36 },
    wordings: [
      'Rnd 2: Ch 1, work in sc around, increasing 2 sts at each corner by working 3 sc in center sc; join with sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc around; at each of the four corners, make three sc in the center stitch; sl st to beg sc. (@ sc)',
      'Rnd 2: Ch 1, sc in each sc around except for the middle sc of each of the 4 corners, where you work 3 sc; sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc, but at each corner work 3 sc into the second of the three corner sc, which adds 2 sc per corner. Join with sl st into first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc to end, turning each corner with 3 sc in the middle of the 3 corner sc; join with a sl st. (@ sc)',
      'Rnd 2: Ch 1, 3 sc in mid sc of ea corner and 1 sc in all other sc around, end with a sl st in first sc. {@ sc}',
      'Rnd 2: Ch 1, sc in each of the 28 sc, placing 2 additional sc in the middle sc of each corner (3 sc in all in that st), join with sl st in first sc. (@)',
      'Rnd 2: Ch 1, 1 sc in next sc, 3 sc in next sc (corner made), 1 sc in each of next 6 sc, corner in next sc, sc in next 6 sc, corner in next sc, sc in next 6 sc, corner in next sc, sc in last 5 sc; sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc around, with 3 sc instead of 1 in center st of each 3-sc group to keep work flat; join with sl st in first sc. (@)',
      'Rnd 2: Sl st in next sc, which brings you to the middle of the first corner, ch 1, *3 sc in corner sc, 6 sc along the side; rep from * 3 times more; join with sl st in first sc. (@)',
    ],
  },
  {
    name: '30 and 2 more at each of 5 outer corners: 40', before: ell, over: 30, makes: 40, kinds: { sc: 40 },
    wordings: [
      'Rnd 2: Ch 1, sc in each sc around, 3 sc in middle sc of each outer corner; work straight past the inside corner; join with sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc, 3 sc in 2nd sc of each 3-sc corner; do not inc or dec at inner corner; sl st to beg sc. (@ sc)',
      'Rnd 2: Ch 1, 1 sc in each sc around, inner corner included, and 3 sc in middle sc of each of the 5 corner groups. Join with sl st in 1st sc. (@)',
      'Rnd 2: Ch 1, 3 sc in middle st of each outer corner, sc in all other sts. At inner corner simply sc in each st. Close with sl st in first st. (@)',
      'Rnd 2: Ch 1, sc around, with 3 sc in the middle sc of each outer corner. The inner corner needs no special treatment; simply sc straight past it. Sl st in first sc. (@)',
      'Rnd 2: Ch 1, [sc in each sc to the middle sc of the next outer corner, 3 sc in that sc] 5 times, sc in each remaining sc, sl st in first sc. (@)',
      'Rnd 2: Sl st to center sc of corner, ch 1, 3 sc in corner sc, *sc in each sc to next outer corner, 3 sc in corner sc; rep from * 3 times more, sc in each sc to end; sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in first sc, 3 sc in next sc for the corner, 4 sc along the top, 3 sc in corner sc, 3 sc down to the inner corner, 2 sc along the step, 3 sc in corner sc, 4 sc to the lower edge, 3 sc in corner sc, 6 sc along the lower edge, 3 sc in corner sc, 5 sc up the long side; sl st in first sc. (@)',
      'Rnd 2: Ch 1, sc in each sc; at the outer corners only, work (sc, sc, sc) in the middle sc. No extra stitches at the inner corner. Join with sl st. (@)',
      'Rnd 2: Ch 1, 3 sc in the center sc of each outer corner and 1 sc in each of the others; join with sl st in first sc. (@)',
    ],
  },
]
