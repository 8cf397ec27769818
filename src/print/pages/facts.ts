import type { Fact } from '../../booklet/booklet.ts'
import { live, liveWidth, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { oneLine, textLines } from './heads.ts'

interface Block {
  readonly x: number
  readonly top: number
  readonly width: number
  /** Where the block must end at the latest. */
  readonly bottom: number
}

const above = 1.5
const below = 1.7

/** Sets the facts in a block under `At a glance`. Gives those that it has no room for, and where it ends. */
export function placeFacts(sheet: Sheet, facts: readonly Fact[], { x, top, width, bottom }: Block): { readonly left: readonly Fact[]; readonly end: number } {
  if (facts.length === 0) return { left: [], end: top }
  const { capitals } = styles
  sheet.rule(top, weights.heavy, x, x + width)
  sheet.text(sheet.tag(sheet.root, 'P'), oneLine('AT A GLANCE', capitals), capitals, x, top + 2.2 + baselineIn(capitals))
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  let y = top + 2.2 + lineHeight(capitals) + 1.8
  let placed = 0
  for (const fact of facts) {
    const height = heightOf(fact, width)
    if (y + height > bottom && placed > 0) break
    sheet.rule(y, weights.hair, x, x + width)
    placeFact(sheet, list, fact, { x, y, width })
    y += height
    placed++
  }
  sheet.rule(y, weights.heavy, x, x + width)
  return { left: facts.slice(placed), end: y }
}

/** Sets the rest of the facts in a second block that ends where the first does. Gives them back if they need more room than there is. */
export function placeFactsBeside(sheet: Sheet, facts: readonly Fact[], { x, top, width, bottom }: Block): readonly Fact[] {
  const from = bottom - facts.reduce((sum, fact) => sum + heightOf(fact, width), 0)
  if (facts.length === 0 || from < top) return facts
  sheet.y = from
  placeFactLines(sheet, facts, { x, width })
  return []
}

/** Sets over the whole width, on an inner page, the facts that the cover had no room for. */
export function placeMoreFacts(sheet: Sheet, facts: readonly Fact[]): void {
  if (facts.length === 0) return
  if (facts[0] && heightOf(facts[0], liveWidth) > sheet.room && !sheet.isFresh) sheet.newPage()
  placeFactLines(sheet, facts, { x: live.left, width: liveWidth })
}

/** Facts under one another between heavy rules, from the top of what is free. */
function placeFactLines(sheet: Sheet, facts: readonly Fact[], { x, width }: { x: number; width: number }): void {
  const list = sheet.tag(sheet.root, 'L', { numbering: 'None' })
  sheet.rule(sheet.y, weights.heavy, x, x + width)
  for (const [at, fact] of facts.entries()) {
    const height = heightOf(fact, width)
    if (height > sheet.room && !sheet.isFresh) sheet.newPage()
    if (at > 0) sheet.rule(sheet.y, weights.hair, x, x + width)
    placeFact(sheet, list, fact, { x, y: sheet.y, width })
    sheet.y += height
  }
  sheet.rule(sheet.y, weights.heavy, x, x + width)
}

function placeFact(sheet: Sheet, list: Tag, fact: Fact, { x, y, width }: { x: number; y: number; width: number }): void {
  const entry = sheet.tag(list, 'LI')
  sheet.text(sheet.tag(entry, 'Lbl'), oneLine(fact.label, styles.label), styles.label, x, y + above + baselineIn(styles.label))
  const body = sheet.tag(entry, 'LBody')
  for (const [at, line] of valueLines(fact, width).entries()) {
    sheet.text(body, line, styles.fact, x, y + above + lineHeight(styles.label) + at * lineHeight(styles.fact) + baselineIn(styles.fact))
  }
}

const valueLines = (fact: Fact, width: number) => textLines(fact.value, styles.fact, width)

function heightOf(fact: Fact, width: number): number {
  return above + lineHeight(styles.label) + valueLines(fact, width).length * lineHeight(styles.fact) + below
}
