import type { BaseRow } from './base-row.ts'

// Wordings of our own, after the spellings of the trade. Common practice, no source. The counts are worked by hand; kinds stand in US
// words: UK dc is US sc, htr is hdc, tr is dc, dtr is tr (the Craft Yarn Council's table, www.YarnStandards.com).

/** Rows in UK terms. */
export const ukRows: readonly BaseRow[] = [
  {
    name: 'UK: 24 htr on 24', on: 'last=24 terms=UK', over: 24, makes: 24, kinds: { hdc: 24 },
    wordings: [
      'Row 2: Ch 2 (does not count as a st), turn, htr in each st across. (@ htr)',
      'Row 2: 2 ch (does not count as st), turn, 1 htr in each st to end. (@)',
      '2nd row: 2ch (not a st), turn, 1htr into each st to end — @ htr.',
      'Row 2: 2 ch (does not count as a stitch), turn, half treble in each stitch to end. [@ sts]',
      'Row 2: Ch 2 (not a st), turn, half treble crochet in each stitch across = @',
      'ROW 2: CH 2 (NOT A ST), TURN, HTR IN EACH ST ACROSS. (@ HTR)',
      'R2: 2 ch (not a st), turn, 24 htr {@}',
      'Row 2: Turn, 2 ch (not counted as st), 1 htr into each of next 24 sts. @ htr.',
      'Row 2: Ch 2 (doesn’t count as st), turn, htr across. (@ sts)',
      'Row 2: 2 ch (not a st), turn.\nWork 1 htr in every st\nto end of row. (@ htr)',
    ],
  },
  {
    name: 'UK: ch-3 as tr, 7 × (miss 2, 1 tr, 2 ch) on 22', on: 'last=22 terms=UK', over: 22, makes: 8, kinds: { dc: 8 }, spaces: { 'ch-2': 7 },
    wordings: [
      'Row 2: 3 ch (counts as tr), turn, miss first st, *miss 2 dc, 1 tr into next dc, 2 ch; rep from * to end. (@ tr, 7 ch-2 sps)',
      'Row 2: Ch 3 (counts as tr), turn, miss 1st st, (miss 2 sts, tr in next st, ch 2) 7 times. (@ tr)',
      '2nd row: 3ch (counts as 1tr), turn, miss first dc, *miss 2dc, 1tr in next dc, 2ch, rep from * to end — @ tr',
      'Row 2: 3 ch (counts as first tr), turn, miss first st, [miss 2 sts, 1 tr in next st, 2 ch] seven times. [@ tr; 7 ch-2 sps]',
      'ROW 2: CH 3 (COUNTS AS TR), TURN, MISS FIRST ST, *MISS 2 STS, TR IN NEXT ST, CH 2; REP FROM * ACROSS. (@ TR, 7 CH-2 SPS)',
      'Row 2: 3 ch (counts as a treble), turn, miss first stitch, *miss 2 stitches, 1 treble in next stitch, 2 ch; repeat from * to end. (@ tr)',
      'Row 2: Ch 3 (counts as tr), turn, skip first st, (sk 2 sts, tr in next st, ch 2) x7 = @ tr',
      'Row 2: 3 ch (counts as tr), turn. Miss first st. *Miss 2 sts. 1 tr in next st. 2 ch. Rep from * to end of row. {@ tr}',
      'Row 2: 3 ch (counts as tr), turn, miss first st, {miss 2, tr in next, 2 ch} ×7 (@ tr)',
      'Row 2: 3 ch (counts as tr), turn, miss first st, miss 2 sts, tr in next st, ch 2, *miss 2 sts, tr in next st, ch 2; rep from * 5 more times. (@ tr, 7 ch-2 sps)',
    ],
  },
  {
    name: 'UK: dc2tog, 16 dc, dc2tog on 20', on: 'last=20 terms=UK', over: 20, makes: 18, kinds: { sc: 16, sc2tog: 2 },
    wordings: [
      'Row 2: Ch 1, turn, dc2tog, dc in next 16 sts, dc2tog. (@ sts)',
      'Row 2: 1 ch, turn, dc2tog over first 2 sts, 1 dc in each st to last 2 sts, dc2tog. (@)',
      '2nd row: 1ch, turn, 2dctog, 16dc, 2dctog — @ sts',
      'Row 2: 1 ch, turn, dc2tog, 16 dc, dc2tog [@]',
      'ROW 2: CH 1, TURN, DC2TOG, DC TO LAST 2 STS, DC2TOG. (@ STS)',
      'Row 2: 1 ch, turn, dec, 1 dc in each of next 16 sts, dec = @',
      'Row 2: 1 ch, turn, dc 2 tog, dc in next sixteen sts, dc 2 tog. (@ sts)',
      'Row 2: 1 ch, turn. Dc2tog over next 2 sts. 1 dc in each st until 2 sts rem. Dc2tog. {@ sts}',
      'Row 2: 1 ch, turn, dc next 2 sts tog, 1 dc into each of next 16 sts, dc last 2 sts tog = @ sts',
      'Row 2: 1 ch, turn, double crochet 2 together, double crochet in next 16 stitches, double crochet 2 together. (@ stitches)',
    ],
  },
  {
    name: 'UK: 6 × (2 tr, 2 tr in one) on 18, joined', on: 'lastround=18 terms=UK', over: 18, makes: 24, kinds: { dc: 24 },
    wordings: [
      'Rnd 3: 2 ch (not a st), *1 tr in each of next 2 sts, 2 tr in next st; rep from * around, ss in first tr. (@ tr)',
      'Round 3: 2 ch (not a st), (tr in next 2 sts, 2 tr in next st) 6 times, ss to first tr to join. (@)',
      'Rnd 3: 2ch (not a st), [2tr, 2tr in next st] x 6, join with ss — @ tr',
      'Rnd 3: Ch 2 (not a st), *tr in next 2 sts, inc in next st; rep from * to end of rnd, join. [@ tr]',
      'RND 3: CH 2 (NOT A ST), (TR IN NEXT 2 STS, 2 TR IN NEXT ST) 6 TIMES, JOIN. (@ TR)',
      'Rnd 3: 2 ch (not a st), *1 treble in each of next 2 stitches, 2 treble in next stitch; repeat from * five more times, join with slip stitch. (@ treble)',
      'Rnd 3: 2 ch (not a st). *Tr in next two sts. Two tr in next st. Rep from * around. Join with ss in first tr. {@ tr}',
      '3rd rnd: 2 ch (not a st), *1 tr into each of next 2 tr, 2 tr into next tr, rep from * to end, ss into first tr = @ tr',
      'Rnd 3: 2 ch (not a st), (tr 2, inc) six times, join – @ tr',
      'Rnd 3: 2 ch (not a st), {1 tr, 1 tr, 2 tr in next st} ×6, ss in first tr to join (@ tr)',
    ],
  },
  {
    name: 'UK: 3 missed ch of Row 1 as the last tr, 20 tr on 20', before: ['Foundation: 22 ch.', 'Row 1: 1 tr in 4th ch from hook (3 missed ch count as 1 tr), 1 tr in each ch to end. (20 tr)'], on: 'terms=UK', over: 20, makes: 20, kinds: { dc: 20 },
    wordings: [
      'Row 2: 3 ch (counts as 1 tr), turn, miss first tr, 1 tr in each of next 18 tr, 1 tr into top of the 3 missed ch. (@ tr)',
      'Row 2: 3 ch (counts as 1 tr), turn, miss first tr, 1 tr in each of next 18 tr, 1 tr into top of missed ch. (@ tr)',
      '2nd row: 3ch (counts as 1tr), turn, miss 1st tr, 1tr in each of next 18tr, 1tr in 3rd of the 3 missed ch — @ tr',
      'Row 2: 3 ch (counts as tr), turn, miss first st, tr in next 18 sts, tr in the top of the skipped 3 ch. [@ tr]',
      'Row 2: 3 ch (counts as tr), turn, miss first tr, *tr in next 6 tr; rep from * twice more, tr in top of the 3 ch missed at the beginning of Row 1. (@ tr)',
      'Row 2: Turn, 3 ch (counts as tr), miss first tr, 1 tr in each of next 18 tr, 1 tr in the last of the skipped ch. @ tr.',
      'Row 2: 3 ch (counts as a treble), turn, miss first treble, 1 treble in each of next 18 trebles, 1 treble in top of the 3 missed chains of the foundation. (@ trebles)',
      'ROW 2: 3 CH (COUNTS AS TR), TURN, MISS FIRST TR, TR IN NEXT 18 TR, TR IN TOP OF 3 SKIPPED CH. (@ TR)',
      'Row 2: 3 ch (counts as tr), turn, miss first tr, 1 tr in each tr to end, 1 tr in top of the 3 ch that were missed. {@ tr}',
      'Row 2: 3 ch (counts as tr), turn, miss first tr, 1 tr in each of next 18 tr, 1 tr in third missed ch = @',
    ],
  },
]
