import type { Booklet } from '../booklet/booklet.ts'
import { abbreviationList, placeAbbreviations } from './pages/abbreviations.ts'
import { coverDrawing } from './pages/cover-drawing.ts'
import { placeCover, type CoverDrawing } from './pages/cover.ts'
import { placeCredits } from './pages/credits.ts'
import { placeMoreFacts } from './pages/facts.ts'
import { placeFooters } from './pages/footer.ts'
import { placeGauge } from './pages/gauge.ts'
import { partOfKey, placeHowToRead } from './pages/how-to-read.ts'
import { placeMaterials } from './pages/materials.ts'
import { placePart } from './pages/part.ts'
import { placeSection } from './pages/prose.ts'
import { placeSpecialStitches } from './pages/special-stitches.ts'
import { gaps, live } from './sheet/measures.ts'
import type { LaidOut } from './sheet/placed.ts'
import { Sheet } from './sheet/sheet.ts'

/** Rows begin on a new page, unless what stands before them ended above this height, in mm. */
const rowsMayBegin = live.top + (live.textBottom - live.top) * 0.45

/** Lays out a whole pattern: cover, what you need, what you should know, the parts, what is left to do. `drawing` stands in for the booklet's own. */
export function layOut(booklet: Booklet, drawing?: CoverDrawing): LaidOut {
  const sheet = new Sheet()
  const own = booklet.drawing
  const moreFacts = placeCover(sheet, booklet, (room) => drawing ?? (own && coverDrawing(own, room)))
  // The cover is full: whatever comes next begins a page.
  sheet.y = live.textBottom
  placeMoreFacts(sheet, moreFacts)
  placeMaterials(sheet, booklet)
  placeCredits(sheet, booklet.credits)
  if (booklet.gauge) placeGauge(sheet, booklet.gauge, booklet.terms)
  placeWords(sheet, booklet)
  for (const section of booklet.before) placeSection(sheet, section)
  const rowsOnNewPage = booklet.parts.length > 0 && sheet.y > rowsMayBegin
  if (rowsOnNewPage) sheet.newPage()
  for (const part of booklet.parts) placePart(sheet, part, booklet)
  for (const section of [...booklet.after, ...(booklet.closing ?? []), ...(booklet.versions ? [booklet.versions] : [])]) placeSection(sheet, section)
  placeFooters(sheet, booklet)
  return sheet
}

/** Abbreviations, special stitches, and how to read a row; the last comes first where the abbreviations need a page of their own to begin on. */
function placeWords(sheet: Sheet, booklet: Booklet): void {
  const list = abbreviationList(booklet.abbreviations, booklet.terms)
  const { key } = booklet
  const placeKey = () => {
    if (key) placeHowToRead(sheet, key, partOfKey(booklet))
  }
  const keyFirst = list.height + gaps.section > sheet.room
  if (keyFirst) placeKey()
  placeAbbreviations(sheet, list)
  placeSpecialStitches(sheet, booklet.specialStitches)
  if (!keyFirst) placeKey()
}
