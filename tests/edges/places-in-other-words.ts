/** Words for places in one row of the pages, and what others write there. */
export interface PlacesInOtherWords {
  readonly from: string
  readonly others: readonly string[]
}

/** Wordings of the trade; common practice, no source. */
export const placesInOtherWords: readonly PlacesInOtherWords[] = [
  {
    from: '1 dc into each of the 3 dc of Back left unworked',
    others: [
      '1 dc into each of the 3 dc of Back that were left unworked',
      '1 dc into each of the 3 dc left unworked on Back',
      '1 dc into each of the 3 dc of Row 4 of Back left unworked',
      '1 dc into each of the 3 dc of the last row of Back left unworked',
      '1 dc into each of the 3 dc of Back which Row 1 left unworked',
      '1 dc into each of the 3 dc of Back that the Flap left free',
      '1 dc into each of the 3 dc of Back not worked before',
      '1 dc into each of the 3 dc left unworked when working the Flap',
      '1 dc into each of the 3 dc of Back left unworked at the start of the Flap',
      '1 dc into each of the 3 dc remaining on Back',
      '1 dc into the 3 dc of Back left unworked',
      '1 dc into each dc of Back left unworked',
      '1 dc into each unworked dc of Back',
    ],
  },
  {
    from: 'join yarn with sl st in the second sc of Rnd 2, which is the center of the first corner',
    others: [
      'join yarn with sl st in the second sc of Rnd 2 (the center of the first corner)',
      'join yarn with sl st in the second sc of Rnd 2, that is, the middle of the first corner',
      'join yarn with sl st in the second sc of Rnd 2, i.e. the center of the corner',
      'join yarn with sl st in the second sc of Rnd 2 – the center sc of the first corner',
      'join yarn with sl st in the second sc of Rnd 2, where the first corner lies',
      'join yarn with sl st in the second sc of Rnd 2, which lies in the center of the corner',
      'join yarn with sl st in the second sc of Rnd 2, at the center of the first corner',
    ],
  },
  {
    from: 'in center sc of the first 3-sc corner of the foundation edge',
    others: [
      'in the center of the first 3-sc corner along the foundation edge',
      'in 2nd sc of the first 3-sc corner of the foundation edge',
      'in center sc of the first 3-sc corner of the lower edge',
      'in the middle sc of the right-hand 3-sc corner of the foundation edge',
      'in center sc of first 3-sc corner at the wide end',
    ],
  },
  {
    from: 'sc in underside of each of the 3 ch added before Row 5',
    others: [
      'sc in underside of each of the 3 ch added for Row 5',
      'sc in underside of each of the 3 ch made at the end of Row 4',
      'sc in underside of each of the 3 ch that begin Row 5',
      'sc in underside of the 3 ch that were added before Row 5',
      'sc in underside of each of the 3 extension ch',
      'sc in underside of each of the 3 ch of the step',
      'sc in underside of each of the 3 ch under Row 5',
      'sc in each of the 3 ch worked at end of Row 4',
    ],
  },
  {
    from: 'join yarn at the neck edge of Row 11 of the First front shoulder',
    others: [
      'join yarn at the neck end of Row 11 of First front shoulder',
      'join yarn in the neck edge of Row 11 of the First front shoulder',
      'join yarn at the neck edge of First front shoulder Row 11',
      'join yarn in the row-end of Row 11 at the neck edge of the First front shoulder',
      'join yarn to the inner edge of Row 11 of the First front shoulder',
    ],
  },
  {
    from: 'sc2tog over the 2 sc that meet at the inner corner',
    others: [
      'sc2tog over the 2 sc at the inner corner',
      'sc2tog at the inside corner',
      'sc2tog over the last sc before and the first sc after the inner corner',
      'sc2tog over the two sts on either side of the inner corner',
      'work the 2 sc where they meet at the inner corner together',
      'sc the 2 sc that meet at each inner corner together',
      'dec in the one inner corner',
      'working sc2tog over 2 sts at each inner corner',
    ],
  },
  {
    from: '3 sc in center sc of each of the 2 lower corners',
    others: [
      '3 sc in both lower corners',
      '3 sc in each of the two bottom corners',
      '3 sc in center sc of the 2 foundation corners',
      '3 sc in the 2nd sc of each of the 2 left-hand corners',
      '3 sc in the center sc of each of the 2 corners at the lower edge',
      '3 sc in the 3rd sc of both lower corners',
    ],
  },
  {
    from: 'Do not turn at the end of Row 4.',
    others: [
      'Do not turn after Row 4.',
      'Do not turn after the last row.',
      'On Row 4, do not turn.',
      'At the end of the last row, do not turn and do not fasten off.',
      'Omit the turn at end of Row 4.',
      'Do not turn or fasten off after working Row 4.',
    ],
  },
  {
    from: 'in first sc to the left of the ch-2 sp at the right-hand end of the top edge',
    others: ['in first sc after the ch-2 sp at the right-hand end of the top edge', 'in the first sc left of the ch-2 sp at the right-hand end of the top edge', 'in the first sc to the left of the top right ch-2 sp'],
  },
  { from: 'sc in this row-end', others: ['sc in that row end', 'sc in this same row-end'] },
  { from: 'tr3tog over last 2 sts and top of 3 ch', others: ['tr3tog over last 2 tr and the top of ch-3', 'tr3tog over next 2 sts and tch', 'tr3tog over the last 2 sts and turning ch'] },
  { from: 'in the foundation ch below the last sc of Row 1', others: ['in the ch under the final st of Row 1', 'in ch beneath last sc of Row 1'] },
  { from: 'Once the seam is sewn, ', others: ['After sewing the seam, ', 'As soon as the side seam is sewn, ', 'Once you have sewn the seams, ', 'After both seams have been joined, '] },
]
