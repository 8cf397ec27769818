import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { abbreviationNotUsed } from './abbreviation-not-used.ts'
import { abbreviationTwoMeanings } from './abbreviation-two-meanings.ts'
import { ballOutsideWeight } from './ball-outside-weight.ts'
import { ballsMismatch } from './balls-mismatch.ts'
import { buttonholeMismatch } from './buttonhole-mismatch.ts'
import { changesOutOfOrder } from './changes-out-of-order.ts'
import { constructionUnsaid } from './construction-unsaid.ts'
import { conversionWrong } from './conversion-wrong.ts'
import { cordOnChildrensWear } from './cord-on-childrens-wear.ts'
import { creditConsentUnsaid } from './credit-consent-unsaid.ts'
import { eyesAfterClosing } from './eyes-after-closing.ts'
import { fibreMelts } from './fibre-melts.ts'
import { finishedSizeMismatch } from './finished-size-mismatch.ts'
import { finishingUnsaid } from './finishing-unsaid.ts'
import { gaugeIncomplete } from './gauge-incomplete.ts'
import { gaugeOutsideWeight } from './gauge-outside-weight.ts'
import { gaugeStitchNotUsed } from './gauge-stitch-not-used.ts'
import { hazardInNotions } from './hazard-in-notions.ts'
import { hookLabelWrong } from './hook-label-wrong.ts'
import { hookNotListed } from './hook-not-listed.ts'
import { hookNotUsed } from './hook-not-used.ts'
import { hookOutsideWeight } from './hook-outside-weight.ts'
import { joinMissing } from './join-missing.ts'
import { levelBelowTechniques } from './level-below-techniques.ts'
import { madeForDoubtful } from './made-for-doubtful.ts'
import { makeMismatch } from './make-mismatch.ts'
import { markerNotPlaced } from './marker-not-placed.ts'
import { multipleMismatch } from './multiple-mismatch.ts'
import { notionCountMismatch } from './notion-count-mismatch.ts'
import { notionNotListed } from './notion-not-listed.ts'
import { notionNotUsed } from './notion-not-used.ts'
import { pictureWithoutWords } from './picture-without-words.ts'
import { pointedAtMissing } from './pointed-at-missing.ts'
import { proseCountMismatch } from './prose-count-mismatch.ts'
import { proseNameUnknown } from './prose-name-unknown.ts'
import { proseReferenceUnknown } from './prose-reference-unknown.ts'
import { repeatSignsMixed } from './repeat-signs-mixed.ts'
import { sentenceLong } from './sentence-long.ts'
import { sideMismatch } from './side-mismatch.ts'
import { sidesShapedAlike } from './sides-shaped-alike.ts'
import { sidesUnequal } from './sides-unequal.ts'
import { sizeJumpUneven } from './size-jump-uneven.ts'
import { sizeListOrder } from './size-list-order.ts'
import { sizesEndApart } from './sizes-end-apart.ts'
import { specialStitchIncomplete } from './special-stitch-incomplete.ts'
import { specialStitchNotUsed } from './special-stitch-not-used.ts'
import { starReadAsMark } from './star-read-as-mark.ts'
import { sumWrong } from './sum-wrong.ts'
import { templateLeftover } from './template-leftover.ts'
import { turnSaidTwice } from './turn-said-twice.ts'
import { versionNotInChanges } from './version-not-in-changes.ts'
import { wordDoubled } from './word-doubled.ts'
import { wordOfOtherMarket } from './word-of-other-market.ts'
import { writtenTwoWays } from './written-two-ways.ts'
import { yarnAmountImplausible } from './yarn-amount-implausible.ts'
import { yarnDetailsMissing } from './yarn-details-missing.ts'
import { yarnEndUnsaid } from './yarn-end-unsaid.ts'
import { yarnRowsMismatch } from './yarn-rows-mismatch.ts'
import { yarnSameForAllSizes } from './yarn-same-for-all-sizes.ts'
import { yarnWordMismatch } from './yarn-word-mismatch.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Every check of sense: the front-matter, the rows beside one another, the words around them. */
export const senseChecks: readonly ((facts: SenseFacts) => readonly Diagnostic[])[] = [
  gaugeIncomplete,
  gaugeStitchNotUsed,
  gaugeOutsideWeight,
  hookOutsideWeight,
  ballOutsideWeight,
  hookNotListed,
  hookNotUsed,
  notionNotListed,
  notionNotUsed,
  notionCountMismatch,
  yarnDetailsMissing,
  yarnAmountImplausible,
  yarnSameForAllSizes,
  finishedSizeMismatch,
  conversionWrong,
  levelBelowTechniques,
  madeForDoubtful,
  hazardInNotions,
  cordOnChildrensWear,
  fibreMelts,
  versionNotInChanges,
  changesOutOfOrder,
  makeMismatch,
  specialStitchNotUsed,
  specialStitchIncomplete,
  abbreviationTwoMeanings,
  sideMismatch,
  turnSaidTwice,
  joinMissing,
  sidesUnequal,
  sidesShapedAlike,
  sizesEndApart,
  repeatSignsMixed,
  markerNotPlaced,
  yarnEndUnsaid,
  yarnRowsMismatch,
  eyesAfterClosing,
  writtenTwoWays,
  wordDoubled,
  sentenceLong,
  wordOfOtherMarket,
  proseCountMismatch,
  proseReferenceUnknown,
  proseNameUnknown,
  sumWrong,
  multipleMismatch,
  pointedAtMissing,
  pictureWithoutWords,
  templateLeftover,
  starReadAsMark,
  creditConsentUnsaid,
  constructionUnsaid,
  finishingUnsaid,
  sizeJumpUneven,
  sizeListOrder,
  buttonholeMismatch,
  ballsMismatch,
  hookLabelWrong,
  yarnWordMismatch,
  abbreviationNotUsed,
]
