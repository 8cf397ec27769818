import type { Line, LineRun } from '../type/break-lines.ts'
import { widthOf } from '../type/shape.ts'
import type { TypeStyle } from '../type/styles.ts'
import { live, mmPerPoint, weights } from './measures.ts'
import type { Bookmark, LaidOut, LineUse, PageFurniture, Placed, PlacedEllipse, Tag, TagType } from './placed.ts'

/** The line under what is repeated: points under the baseline, and its weight. Large print has a heavier one. */
const underline = { usual: { below: 2.1, weight: weights.repeat }, large: { below: 4.6, weight: 1.1 } }
const largeType = 18

/** Where a line of text goes: into the structure tree, or to what is repeated on each page. */
export type Place = Tag | 'pagination'

/** The document while it is filled, page by page, from the top. It knows where the next thing may stand. */
export class Sheet implements LaidOut {
  readonly pages: PageFurniture[] = []
  readonly root: Tag = { type: 'Document', children: [] }
  readonly bookmarks: Bookmark[] = []
  readonly anchors = new Map<string, Omit<Bookmark, 'title'>>()
  /** Top of what is still free on the page, in mm. */
  y: number = live.top
  readonly #boxNames = new Map<string, number>()

  /** Where text ends at the latest, in mm: an edition may need more room for its footer. */
  readonly textBottom: number

  constructor(textBottom: number = live.textBottom) {
    this.textBottom = textBottom
    this.newPage()
  }

  /** Number of the page being filled, from 0. */
  get page(): number {
    return this.pages.length - 1
  }

  get isFresh(): boolean {
    return this.y === live.top
  }

  newPage(): void {
    this.pages.push({ ruling: [], pagination: [] })
    this.y = live.top
  }

  /** What is left for text on the page, in mm. */
  get room(): number {
    return this.textBottom - this.y
  }

  /** Goes to a new page unless so many mm are left, and leaves a gap if something stands above. */
  makeRoom(height: number, gap = 0): void {
    if (this.isFresh) return
    if (gap + height > this.room) this.newPage()
    else this.y += gap
  }

  tag(parent: Tag, type: TagType, more: Omit<Tag, 'type' | 'children'> = {}): Tag {
    const tag: Tag = { type, children: [], ...more }
    parent.children.push(tag)
    return tag
  }

  bookmark(title: string): void {
    this.bookmarks.push({ title, page: this.page, y: this.y })
  }

  /** Names a place on this page that links may lead to. The first of a name counts. */
  anchor(name: string, y: number = this.y): void {
    if (!this.anchors.has(name)) this.anchors.set(name, { page: this.page, y })
  }

  /** Sets a line with its start at `x` and its baseline at `y`, and underlines what is repeated. */
  text(place: Place, line: Line, style: TypeStyle, x: number, y: number): void {
    for (const run of line.runs) {
      const within = run.href !== undefined && place !== 'pagination' && place.type !== 'Link' ? this.tag(place, 'Link', { href: run.href }) : place
      // A character that cannot be drawn is an element of its own, because not every reader finds a text that is said inside a piece.
      const own = run.missing && within !== 'pagination' ? this.tag(within, 'Span', { actual: run.text }) : within
      this.#put(own, {
        kind: 'text', page: this.page, x: x + run.x, y, width: run.width, text: run.spaceAfter && !run.missing ? `${run.text} ` : run.text, font: run.font, size: style.size,
        ...(style.tracking === undefined ? {} : { tracking: style.tracking }),
        ...(run.missing ? { missing: true as const } : {}),
        ...(run.href === undefined ? {} : { href: run.href }),
      })
    }
    this.#underline(line.runs, style.size, x, y)
  }

  /** The same, with its end at `right`. */
  textTo(place: Place, line: Line, style: TypeStyle, right: number, y: number): void {
    this.text(place, line, style, right - line.width, y)
  }

  #underline(runs: readonly LineRun[], size: number, x: number, y: number): void {
    const repeated = runs.filter(({ repeat }) => repeat)
    const first = repeated[0]
    const last = repeated.at(-1)
    if (!first || !last) return
    const trailing = last.text.endsWith(' ') ? (widthOf(last.font, ' ') * size * mmPerPoint) / 1000 : 0
    const { below, weight } = size < largeType ? underline.usual : underline.large
    const under = y + below * mmPerPoint
    this.line({ x1: x + first.x, y1: under, x2: x + last.x + last.width - trailing, y2: under }, weight, 'repeat')
  }

  /** A rule over the whole width, or from `from` to `to`. */
  rule(y: number, weight: number, from: number = live.left, to: number = live.right): void {
    this.line({ x1: from, y1: y, x2: to, y2: y }, weight)
  }

  /** Two rules, as under a sum. Gives the middle of the lower one. */
  doubleRule(y: number): number {
    this.rule(y, weights.middle)
    this.rule(y + 1.1, weights.middle)
    return y + 1.1
  }

  line(
    ends: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number },
    weight: number, use: LineUse = 'rule', place?: Tag,
  ): void {
    this.#put(place ?? 'ruling', { kind: 'line', page: this.page, ...ends, weight, use })
  }

  ellipse(ellipse: Omit<PlacedEllipse, 'kind' | 'page'>): void {
    this.#put('ruling', { kind: 'ellipse', page: this.page, ...ellipse })
  }

  /** A check box in a Form element of its own. A second box of the same name is told apart by a number. */
  box(parent: Tag, x: number, y: number, { side, weight, inset }: { side: number; weight: number; inset: number }, name: string): void {
    const times = (this.#boxNames.get(name) ?? 0) + 1
    this.#boxNames.set(name, times)
    const form = this.tag(parent, 'Form')
    this.#put(form, {
      kind: 'box', page: this.page, x: x + inset, y: y + inset, side: side - 2 * inset, weight, name: times === 1 ? name : `${name} (${times})`,
    })
  }

  /** Puts a box placed elsewhere, moved by so many mm, on this page. */
  put(place: Tag, placed: Placed, dx: number, dy: number): void {
    this.#put(place, moved(placed, dx, dy, this.page))
  }

  #put(place: Place | 'ruling', placed: Placed): void {
    const page = this.pages[placed.page]
    if (place === 'ruling') page?.ruling.push(placed)
    else if (place === 'pagination') page?.pagination.push(placed)
    else place.children.push(placed)
  }
}

function moved(placed: Placed, dx: number, dy: number, page: number): Placed {
  if (placed.kind === 'line') {
    return { ...placed, page, x1: placed.x1 + dx, x2: placed.x2 + dx, y1: placed.y1 + dy, y2: placed.y2 + dy }
  }
  return { ...placed, page, x: placed.x + dx, y: placed.y + dy }
}

/** The distance from the top of a part's head to the rule under it, in mm. */
export const headToRule = 8.7
