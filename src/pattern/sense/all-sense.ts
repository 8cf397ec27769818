import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { abbreviationTwoMeanings } from './abbreviation-two-meanings.ts'
import { ballOutsideWeight } from './ball-outside-weight.ts'
import { changesOutOfOrder } from './changes-out-of-order.ts'
import { conversionWrong } from './conversion-wrong.ts'
import { cordOnChildrensWear } from './cord-on-childrens-wear.ts'
import { fibreMelts } from './fibre-melts.ts'
import { finishedSizeMismatch } from './finished-size-mismatch.ts'
import { gaugeIncomplete } from './gauge-incomplete.ts'
import { gaugeOutsideWeight } from './gauge-outside-weight.ts'
import { gaugeStitchNotUsed } from './gauge-stitch-not-used.ts'
import { hazardInNotions } from './hazard-in-notions.ts'
import { hookNotListed } from './hook-not-listed.ts'
import { hookNotUsed } from './hook-not-used.ts'
import { hookOutsideWeight } from './hook-outside-weight.ts'
import { levelBelowTechniques } from './level-below-techniques.ts'
import { madeForDoubtful } from './made-for-doubtful.ts'
import { makeMismatch } from './make-mismatch.ts'
import { notionCountMismatch } from './notion-count-mismatch.ts'
import { notionNotListed } from './notion-not-listed.ts'
import { notionNotUsed } from './notion-not-used.ts'
import { specialStitchIncomplete } from './special-stitch-incomplete.ts'
import { specialStitchNotUsed } from './special-stitch-not-used.ts'
import { versionNotInChanges } from './version-not-in-changes.ts'
import { yarnAmountImplausible } from './yarn-amount-implausible.ts'
import { yarnDetailsMissing } from './yarn-details-missing.ts'
import { yarnSameForAllSizes } from './yarn-same-for-all-sizes.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Every check of sense, in the order of the front-matter. */
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
]
