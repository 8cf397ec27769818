import type { BaseRow } from './base-row.ts'

// Rows as they are told in plain talk: what is left, what is worked to the end, and what the row comes to. Common practice, no source.
// The counts are worked by hand; the sum stands in each name.

/** Rows of one count in the words of plain talk. */
export const plainTalk: readonly BaseRow[] = [
  {
    name: '6 sc on 8, 2 left', on: 'last=8', over: 6, makes: 6, kinds: { sc: 6 },
    wordings: [
      'Row 2: Ch 1, turn, sc in first 6 sts, leave final 2 sts unworked for second step. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts; hold remaining 2 sts for later. (@ sc)',
      'Row 2: Ch 1, turn, sc in first 6 sts, place last 2 sts on hold for the shoulder. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts, setting the other 2 sts aside. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts, stop before the last 2 sts. (@)',
      'Row 2: Ch 1, turn, sc in each of the first 6 sts and no further. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts and stop there. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts; the last 2 sts are left unworked. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts, ignore the last 2 sts. (@)',
      'Row 2: Ch 1, turn, sc in first 6 sts. Stop 2 sts before the end. (@)',
    ],
  },
  {
    name: '8 sc from a chain of 9', before: ['Foundation: Ch 9.'], over: 9, makes: 8, kinds: { sc: 8 },
    wordings: [
      'Row 1: 1 sc in 2nd ch from hook, then 1 sc in every further chain. @ sc.',
      'Row 1: Sc in 2nd ch from hook and across. (@)',
      'Row 1: Sc in second ch from hook and all the way across. (@)',
      'Row 1: Sc in 2nd ch from hook and to the end. (@)',
      'Row 1: Sc in 2nd ch from hook, sc in each ch thereafter. (@)',
      'Row 1: Work 1 sc into the second chain from your hook and 1 sc into all the others. (@)',
      'Row 1: Sc in 2nd ch from hook and in the rest of the ch. (@)',
      'Row 1: Sc in 2nd ch from hook, sc 7 more. (@)',
      'Row 1: Starting in 2nd ch, sc in each ch across. (@)',
      'Row 1: Single crochet (sc) in the second chain from hook and in each one after that. (@)',
    ],
  },
  {
    name: '8 sc on 8, the total told', on: 'last=8', over: 8, makes: 8, kinds: { sc: 8 },
    wordings: [
      'Row 2: Ch 1, turn, sc in each st. That’s @ sc.',
      'Row 2: Ch 1, turn, sc in each st. Total = @ sc.',
      'Row 2: Ch 1, turn, sc in each st. Still @ sc.',
      'Row 2: Ch 1, turn, sc in each st. That makes @ sc.',
      'Row 2: Ch 1, turn, sc in each st. You’ll have @ sts.',
      'Row 2: Ch 1, turn, sc in each st. • @ sc',
      'Row 2: Ch 1, turn, sc in each st. @ sc altogether.',
      'Row 2: Ch 1, turn, sc in each st. @ sc. At end of Row 2, cut yarn and fasten off.',
      'Row 2: Ch 1, turn, sc in each st. @ stitches. Do not fasten off after Row 2.',
      'Row 2: Ch 1, turn, sc in each st. @ sc. The hook is now at the top left corner.',
    ],
  },
  {
    name: '3 sc, ch 4 over 4, 3 sc on 10', on: 'last=10', over: 10, makes: 6, kinds: { sc: 6 }, spaces: { 'ch-4': 1 },
    wordings: [
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. @ sc and a ch-4 buttonhole.',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc and one buttonhole)',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. @ sc and 1 buttonhole.',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc and a 4-ch space)',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. @ sc and an opening of ch 4.',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc, 1 buttonhole of 4 ch)',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc; one ch-4 space; 3 sc to each side)',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. @ sc with a ch-4 gap.',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc, four ch)',
      'Row 2: Ch 1, turn, sc in next 3 sts, ch 4, skip 4 sts, sc in last 3 sts. (@ sc and an opening)',
    ],
  },
  {
    name: 'as Row 2: 10 + 2 = 12', on: 'last=8', before: ['Row 2: Ch 1, turn, 2 sc in first st, sc in each st to last st, 2 sc in last st. (10)', 'Row 3: Ch 1, turn, sc in each st. (10)'],
    over: 10, makes: 12, kinds: { sc: 12 },
    wordings: [
      'Row 4: As the second row. (@ stitches.)',
      'Row 4: Work as given for Row 2. @ sc.',
      'Row 4: Do Row 2 again. (@)',
      'Row 4: Same again as Row 2. (@)',
      'Row 4: Exactly as Row 2. (@)',
      'Row 4: Work the same as for Row 2. (@)',
      'Row 4: In the same way as Row 2. (@)',
      'Row 4: As per the second row. (@)',
      'Row 4: Follow Row 2. (@)',
      'Row 4: Repeat the second row once. (@)',
    ],
  },
  {
    name: '4 × (1 sc, 2 sc) on 8, sent back to the star', on: 'lastround=8', over: 8, makes: 12, kinds: { sc: 12 },
    wordings: [
      'Rnd 2: *Sc in next st, 2 sc in next st; work from * 4 times in all. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; go back to * 3 times more. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; return to * three more times. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; continue from * to end. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; do this from * 4 times altogether. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; repeat from * all the way round, so 4 times in all. (@)',
      'Rnd 2: *Sc in next st, 2 sc in next st; keep repeating from * to the end. (@)',
      'Rnd 2: [Sc in next st, 2 sc in next st] all the way around, that is 4 times. (@)',
      'Rnd 2: (Sc in next st, 2 sc in next st) - work this 4 times. (@)',
      'Rnd 2: (Sc in next st, 2 sc in next st), four times over. (@)',
    ],
  },
]
