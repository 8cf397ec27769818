/**
 * Everyday words that lie one slip from a word that rows are made of (`spare` from `space`, `chair` from `chain`): a pattern may mean them, so they are
 * no slip of the pen. Gathered from a general list of English words, and kept to those that a pattern could have (choice of ours, no source).
 */
export const nearWords: ReadonlySet<string> = new Set(`
  abound aground alone aside backs balk bank bark bask bath beach beck beginnings behinds bend bends betweens book booth bow bows bright bring
  broth brow burn came cast centers centred centres chains chair chin coin cook coop cork corker corned cornet cover cow cows crest cross crow
  darn dawn decreased decreases east edged edger edges evens event ever eves fast fastens fend fist flip followings font fork form found
  foundations fro frog frond fronts frost gain game ground grow hack hale hall halt heave heaving hedge hide hiss hood hoof hooks hooky hoop
  hoops hover increased increases info jack joins joint lace lack lasts leach leading lease least leaves ledge lend lends lent let lift light
  lip list loft loin long loo look looks loom looms loot lop lost loth low magi magics manic mass mast mend mends mess mist mists moss mound
  mover name neat nest net night nook now oily onto ounce oven own pace paces pack palace past peach placed placer places plane plate pool
  pools prom prow rack raw reach regaining rejoins rend rent repeats reset rests retaining ride rig rights rind rine rings rink rob rod rods
  rook rot rounds rover rust sack safe sage sake sale salt sane sate save scapes seconds send sends seven shame ship shook sided sides sight
  sing sip site size skid skim skin skips slid slide slim slips slit snip some sound sow spaced spacer spade spades spare spares spice spices
  staring stating stitched stitcher switch switches tack tames teach tend tends test text thirds tide tides ties tight tiles time timed timer
  tires took torn tow town tows turf turnings turns twine urn vend very vest wast weave weaving wedge wend west wide width wing wish wit withs
  word wording wore workings works worn wound wow yard yarns
`.trim().split(/\s+/))
