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
]
