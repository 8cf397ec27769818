import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { bandJoinsMismatch } from './band-joins-mismatch.ts'
import { changeMismatch } from './change-mismatch.ts'
import { closingSlipTwoMinds } from './closing-slip-two-minds.ts'
import { countMissing } from './count-missing.ts'
import { fabricTooLarge } from './fabric-too-large.ts'
import { edgeNotNext } from './edge-not-next.ts'
import { edgeOneOff } from './edge-one-off.ts'
import type { PatternFacts, PieceFacts, RowFacts } from './facts.ts'
import { gridCountMismatch } from './grid-count-mismatch.ts'
import { joinsMismatch } from './joins-mismatch.ts'
import { kindMismatch } from './kind-mismatch.ts'
import { motifSidesMismatch } from './motif-sides-mismatch.ts'
import { partialCountMismatch } from './partial-count-mismatch.ts'
import { placeMissing } from './place-missing.ts'
import { placesLeftOver } from './places-left-over.ts'
import { rangeLengthMismatch } from './range-length-mismatch.ts'
import { rateMismatch } from './rate-mismatch.ts'
import { repeatDoesNotDivide } from './repeat-does-not-divide.ts'
import { rowEndsPassed } from './row-ends-passed.ts'
import { rowNotChecked } from './row-not-checked.ts'
import { rowNumberOutOfOrder } from './row-number-out-of-order.ts'
import { rowOverruns } from './row-overruns.ts'
import { rowReferenceUnknown } from './row-reference-unknown.ts'
import { rowUnreadable } from './row-unreadable.ts'
import { seamMismatch } from './seam-mismatch.ts'
import { seamPartsMismatch } from './seam-parts-mismatch.ts'
import { sizeListLength } from './size-list-length.ts'
import { sizeListOrder } from './size-list-order.ts'
import { sizeUnknown } from './size-unknown.ts'
import { specialStitchUndefined } from './special-stitch-undefined.ts'
import { specialStitchDiffers } from './special-stitch-differs.ts'
import { stepLopsided } from './step-lopsided.ts'
import { stitchUnknown } from './stitch-unknown.ts'
import { stitchesWaiting } from './stitches-waiting.ts'
import { termsMixed } from './terms-mixed.ts'
import { totalMismatch } from './total-mismatch.ts'
import { turningChainTwoMinds } from './turning-chain-two-minds.ts'
import { turningChainUnsaid } from './turning-chain-unsaid.ts'
import { wordsPassedOver } from './words-passed-over.ts'
import { yarnNotListed } from './yarn-not-listed.ts'
import { yarnNotUsed } from './yarn-not-used.ts'

/** Checks of one row, first cause first: a row gets the first of these that speaks. */
export const rowChecks: readonly ((facts: RowFacts) => Diagnostic | undefined)[] = [
  rowReferenceUnknown, stitchUnknown, rowUnreadable, rowNotChecked, placeMissing, edgeNotNext, rowEndsPassed, rowOverruns, repeatDoesNotDivide, placesLeftOver, joinsMismatch, rateMismatch, partialCountMismatch, totalMismatch, kindMismatch, changeMismatch, countMissing, edgeOneOff, wordsPassedOver,
]

/** Checks of a piece as it is written, beside all the pieces. */
export const pieceChecks: readonly ((facts: PieceFacts, pieces: readonly PieceFacts[]) => readonly Diagnostic[])[] = [
  rowNumberOutOfOrder, rangeLengthMismatch, sizeListLength, sizeListOrder, sizeUnknown, stepLopsided, fabricTooLarge,
]

/** Checks across the whole pattern. */
export const patternChecks: readonly ((facts: PatternFacts) => readonly Diagnostic[])[] = [termsMixed, turningChainUnsaid, turningChainTwoMinds, closingSlipTwoMinds, seamMismatch, seamPartsMismatch, bandJoinsMismatch, motifSidesMismatch, gridCountMismatch, stitchesWaiting, specialStitchDiffers, yarnNotListed, yarnNotUsed, specialStitchUndefined]
