import type { BaseRow } from './base-row.ts'

// Chatty wordings of our own: how far a row goes, where it stops, what an increase was for, and totals said in a sentence. Common practice,
// no source. The counts are worked by hand; the sum stands in each name.

/** Rows told as one maker tells another. */
export const saidInPassing: readonly BaseRow[] = [
  {
    name: '24 sc on 24, told', on: 'last=24', over: 24, makes: 24, kinds: { sc: 24 },
    wordings: [
      'Row 2: Make 1 chain, turn, and sc all the way along. @ stitches',
      'Row 2: Ch 1, turn, sc right across. Still @ sc.',
      'Row 2: Ch 1, turn, sc the whole way across // @ sc',
      'Row 2: Ch 1, turn, sc in each of its 24 sts. That makes @ sc.',
      'Row 2: Ch 1, turn, sc in the very first st and in every st to the end! Still @ sts!',
      'Row 2: Ch 1, turn, sc in the first st, sc in the one after, 1 in each of the other 22 sts. (@)',
      'Row 2: Ch 1, turn, sc in the next 24 sts; the very last one goes in the last sc. You still have @ sc.',
      'Row 2: Ch 1, turn, sc in every st as you come to it — and that’s @ sc.',
      'Row 2: Ch 1, turn, 1 sc in each of the first 23 sts, 1 in the last st. (@)',
      'Row 2: Ch 1, turn, sc all along, giving you @ sc.',
    ],
  },
  {
    name: '16 sc on 24, 8 left', on: 'last=24', over: 16, makes: 16, kinds: { sc: 16 },
    wordings: [
      'Row 2: Ch 1, turn, sc in the first 16 stitches and stop there, so that 8 are left over at the end. @ stitches',
      'Row 2: Ch 1, turn, sc in the first 16 sts and stop. (@)',
      'Row 2: Ch 1, turn, sc in first 16 sts, stopping 8 sts short of the end. (@ sc)',
      'Row 2: Ch 1, turn, sc in each st, stopping 8 sts before the end of the row. (@)',
      'Row 2: Ch 1, turn, sc across, stop 8 sts from the end. (@ sts)',
      'Row 2: Ch 1, turn, sc in the next 16 sts, so that 8 sts remain unworked. (@)',
      'Row 2: Ch 1, turn, sc in each of first 16 sts; stop here with 8 sts left over. (@)',
      'Row 2: Ch 1, turn, 16 sc, so 8 sts are left at the end of the row. (@)',
      'Row 2: Ch 1, turn, sc in first 16 sts and stop there, turn; @ sc. Break off.',
      'Row 2: Ch 1, turn, sc in each st to 8 sts short of the end, leave these unworked. (@)',
    ],
  },
  {
    name: '12 x (1 + 2) = 36 on 24, told', on: 'last=24', over: 24, makes: 36, kinds: { sc: 36 },
    wordings: [
      'Row 2: Ch 1, turn, *sc in next st, 2 sc in next st (1 inc made), rep from * 11 times more; @ sc.',
      'Row 2: Ch 1, turn, * sc in next st, 2 sc in next st; rep from * 11 more times; @ sc. Break off.',
      'Row 2: Ch 1, turn, *sc in next st, 2 sc in the one after; rep from * across, 12 times in all. (@)',
      'Row 2: Ch 1, turn, *sc in next st, 2 in the st after that*, work from * to * a total of 12 times // @ sc',
      'Row 2: Ch 1, turn, *sc in next st, 2 sc in next st (there’s your increase); rep from * across. And that makes @ sc!',
      'Row 2: Ch 1, turn, [sc in next st, 2 sc in the following one (inc made)] 12 times. You now have @ sc.',
      'Row 2: Ch 1, turn, *sc in next st, 2 sc in next st (an increase made), repeat from * to the end, a total of 12 times. (@)',
      'Row 2: Ch 1, turn, *1 sc in next st, 2 in next st; repeat from * 12 times in all – @ sc',
      'Row 2: Ch 1, turn, [1 sc in next st, 2 sc in the next one] across, 12 times. (@)',
      'Row 2: Ch 1, turn, (sc in next st, 2 sc in the one after that) a total of 12 times. (@)',
    ],
  },
  {
    name: '14 dc and 3 chains on 17 ch', before: ['Foundation: Ch 17 to measure about 12 cm.'], over: 17, makes: 15, kinds: { dc: 15 },
    wordings: [
      'Row 1: Dc in 4th ch from hook (the skipped 3 ch are your first dc) and in each ch across. (@)',
      'Row 1: Dc in 4th ch from hook (the skipped ch-3 is dc number one!) and in each ch across. @ dc.',
      'Row 1: Dc in the 4th ch from hook (those 3 skipped chains make the first dc), then dc in every ch to the end. You have @ dc.',
      'Row 1: Skip 3 ch (they count as a dc), dc in the next ch and in every ch to the end. = @ dc',
      'Row 1: Skip first 3 ch (these count as 1 dc), dc in each of next 14 ch. (@)',
      'Row 1: Dc in 4th ch from hook (3 skipped ch form first dc), dc in each ch across // @ dc',
      'Row 1: Skip 3 ch (that’s your first dc), dc in the next ch and in every ch to the end. (@)',
      'Row 1: Dc in 4th ch from hook (it counts as first dc), dc in next 13 ch. (@)',
      'Row 1: Skip the first 3 ch (they are the first dc), dc in the next 14 ch. And that’s @ dc.',
      'Row 1: Dc in fourth ch from hook (the missed ch equals one dc) and in every ch all the way along. @ stitches',
    ],
  },
  {
    name: '24 flat, two and two together: 12', on: 'lastround=24', over: 24, makes: 12, kinds: { sc: 12 },
    wordings: [
      'Rnd 2: Flatten the opening and work through both layers, 12 sc. (@)',
      'Rnd 2: Fold flat and, working through both layers, 12 sc. (@)',
      'Rnd 2: Press the tube flat and, going through both thicknesses, sc 12. (@)',
      'Rnd 2: Squash it flat, then work through both sides: 12 sc. (@)',
      'Rnd 2: Lay flat and work 12 sc through both layers. (@)',
      'Rnd 2: Flatten the top and insert the hook through both layers, 12 sc. (@)',
      'Rnd 2: Flatten opening and sc 12 through both layers. (@)',
      'Rnd 2: Fold the tube in half and, with the hook through both layers, sc 12. (@)',
      'Rnd 2: Pinch the opening closed and work 12 sc through both sides. (@)',
      'Rnd 2: Flatten the end, then, working through both layers: 12 sc. (@)',
    ],
  },
  {
    name: '4 shells of 5 with a sc between, on 24', on: 'last=24', over: 24, makes: 24, kinds: { sc: 4, dc: 20 },
    wordings: [
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 5 dc all in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 5 dc, all in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, (5 dc) all in the next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 5 dc all into the next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, (2 dc, dc, 2 dc) all in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 3 dc, 2 dc, all of them in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 2 dc and 3 dc, both in the next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, 5 dc all worked in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, *sc in next st, skip 2 sts, dc 5 all in next st, skip 2 sts; rep from * across. (@)',
      'Row 2: Ch 1, turn, (sc in next st, skip 2 sts, 5 dc all together in next st, skip 2 sts) 4 times. (@)',
    ],
  },
]
