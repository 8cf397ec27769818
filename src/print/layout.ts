import type { Booklet } from '../booklet/booklet.ts'
import { placeAbbreviations } from './pages/abbreviations.ts'
import { placeCover, type CoverDrawing } from './pages/cover.ts'
import { placeCredits } from './pages/credits.ts'
import { placeMoreFacts } from './pages/facts.ts'
import { placeFooters } from './pages/footer.ts'
import { placeGauge } from './pages/gauge.ts'
import { countingOf, placeHowToRead } from './pages/how-to-read.ts'
import { placeMaterials } from './pages/materials.ts'
import { placePart } from './pages/part.ts'
import { placeSection } from './pages/prose.ts'
import { placeSpecialStitches } from './pages/special-stitches.ts'
import { live } from './sheet/measures.ts'
import type { LaidOut } from './sheet/placed.ts'
import { Sheet } from './sheet/sheet.ts'

/** Rows begin on a new page, unless what stands before them ended above this height, in mm. */
const rowsMayBegin = live.top + (live.textBottom - live.top) * 0.45

/** Lays out a whole pattern: cover, what you need, what you should know, the parts, what is left to do. */
export function layOut(booklet: Booklet, drawing?: CoverDrawing): LaidOut {
  const sheet = new Sheet()
  const moreFacts = placeCover(sheet, booklet, drawing)
  // The cover is full: whatever comes next begins a page.
  sheet.y = live.textBottom
  placeMoreFacts(sheet, moreFacts)
  placeMaterials(sheet, booklet.materials, booklet.cautions)
  if (booklet.gauge) placeGauge(sheet, booklet.gauge)
  placeAbbreviations(sheet, booklet.abbreviations, booklet.terms)
  placeSpecialStitches(sheet, booklet.specialStitches)
  if (booklet.key) placeHowToRead(sheet, booklet.key, countingOf(booklet))
  for (const section of booklet.before) placeSection(sheet, section)
  if (booklet.parts.length > 0 && sheet.y > rowsMayBegin) sheet.newPage()
  for (const part of booklet.parts) placePart(sheet, part, booklet.sizes)
  for (const section of booklet.after) placeSection(sheet, section)
  placeCredits(sheet, booklet.credits)
  placeFooters(sheet, booklet)
  return sheet
}
