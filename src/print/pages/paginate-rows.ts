/** What is set on a page of a table: how tall it is, and whether it is a row or something to do after one. */
export interface Stackable {
  readonly kind: 'row' | 'instruction'
  readonly height: number
}

/** What a table has on a page. */
export interface PageRange {
  readonly from: number
  readonly to: number
  /** Begins on a new page rather than where the sheet stands. */
  readonly onNewPage: boolean
}

/** At least so many rows of a part on each page, so that no row is stranded. */
const fewest = 3

/** Room in mm: `first` on the page where the sheet stands, `whole` on a new page, and `note` less on a page that is not the last. */
export interface Rooms {
  readonly first: number
  readonly whole: number
  readonly note: number
}

/**
 * Shares out the rows of a part over pages.
 * No row is parted, nothing to do is parted from the row before it, and each page has three rows where the part has that many.
 */
export function paginateRows(blocks: readonly Stackable[], rooms: Rooms): readonly PageRange[] {
  const fresh = shareRows(blocks, { ...rooms, first: rooms.whole })
  const here = shareRows(blocks, rooms)
  const startsHere = here.every((page) => rowsIn(blocks, page) >= fewest) || (here.length === 1 && rooms.first > 0)
  // A part that a new page would hold whole is not begun at the foot of this one with a row or two.
  const pages = startsHere && (here[0]?.to ?? 0) > 0 ? here : fresh
  return pages.map((page, at) => ({ ...page, onNewPage: at > 0 || pages === fresh }))
}

/** The same from where the sheet stands, even where a page gets less than three rows. */
export function shareRows(blocks: readonly Stackable[], { first, whole, note }: Rooms): readonly { from: number; to: number }[] {
  const pages: { from: number; to: number }[] = []
  for (let from = 0; from < blocks.length;) {
    const room = pages.length === 0 ? first : whole
    const rest = blocks.slice(from).reduce((sum, { height }) => sum + height, 0)
    const to = rest <= room ? blocks.length : breakAt(blocks, from, room - note)
    pages.push({ from, to })
    if (to === from) return pages
    from = to
  }
  return pages
}

/** Where the page ends that begins at `from`: after as many blocks as fit, less those that the next page needs to have three rows. */
function breakAt(blocks: readonly Stackable[], from: number, room: number): number {
  let to = from
  let height = 0
  while (to < blocks.length && height + (blocks[to]?.height ?? 0) <= room) height += blocks[to++]?.height ?? 0
  if (to === blocks.length) return to
  to = beforeRow(blocks, from, to)
  const own = rowsIn(blocks, { from, to })
  const rest = rowsIn(blocks, { from: to, to: blocks.length })
  for (let missing = fewest - rest, left = own; missing > 0 && left > fewest; missing--, left--) to = beforeRow(blocks, from, to - 1)
  return to
}

/** The nearest place at or before `to` where a row begins. */
function beforeRow(blocks: readonly Stackable[], from: number, to: number): number {
  while (to > from && blocks[to]?.kind === 'instruction') to--
  return to
}

function rowsIn(blocks: readonly Stackable[], { from, to }: { from: number; to: number }): number {
  return blocks.slice(from, to).filter(({ kind }) => kind === 'row').length
}
