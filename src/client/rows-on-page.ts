/** A box of a row, as it stands on the page. */
export interface Box {
  /** Without the copy: `ball-9.10`. */
  readonly key: string
  readonly input: HTMLInputElement
  /** Its row's number as it is said: `10`. */
  readonly label: string
  readonly row: Row
  /** The stitches that its row makes, for each size; undefined where it cannot be told; null for a size that leaves it out. */
  readonly stitches: readonly (number | undefined | null)[]
}

/** A line of a table of rows: one row, or a range of rows. */
export interface Row {
  readonly id: string
  readonly element: HTMLElement
  readonly work: HTMLElement
  readonly digest: string
  readonly part: Part
  readonly boxes: readonly Box[]
}

/** A piece. */
export interface Part {
  readonly id: string
  readonly name: string
  /** `Row` or `Round` */
  readonly word: string
  readonly copies: number
  readonly element: HTMLElement
  readonly boxes: readonly Box[]
  readonly rows: readonly Row[]
}

/** All pieces with their rows, read from the page. */
export function partsOnPage(): readonly Part[] {
  return [...document.querySelectorAll<HTMLElement>('.part[data-word]')].map((element) => {
    const part = {
      id: element.dataset.part ?? '', name: element.dataset.name ?? '', word: element.dataset.word ?? 'Row', copies: Number(element.dataset.make ?? 1), element,
      rows: [] as Row[], boxes: [] as Box[],
    }
    for (const line of element.querySelectorAll<HTMLElement>('tr[data-digest]')) {
      const row = rowOf(line, part)
      part.rows.push(row)
      part.boxes.push(...row.boxes)
    }
    return part
  })
}

function rowOf(element: HTMLElement, part: Part): Row {
  const counts = (element.dataset.stitches ?? '').split(' ').map((sizes) => sizes.split('/').map(countOf))
  const boxes: Box[] = []
  const row = { id: element.id, element, work: element.querySelector<HTMLElement>('.work') ?? element, digest: element.dataset.digest ?? '', part, boxes }
  element.querySelectorAll<HTMLInputElement>('input[type=checkbox]').forEach((input, at) => {
    boxes.push({ key: input.name, input, label: input.dataset.label ?? '', row, stitches: counts[at] ?? counts[0] ?? [] })
  })
  return row
}

const countOf = (text: string) => (text === '–' ? null : text === '?' || text === '' ? undefined : Number(text))

/** How a row is called: `Round 7`; a row whose label is a word keeps it: `Next: Round 3`. */
export function nameOf({ input }: Box): string {
  return input.getAttribute('aria-label') ?? ''
}

/** A box's key for a copy: the first copy has none of its own. */
export function keyFor({ key }: Box, copy: number): string {
  return copy === 1 ? key : `${key}~${copy}`
}

/** The boxes of a piece that a size works. `size` is its place among the sizes, -1 for all of them. */
export function boxesIn(part: Part, size: number): readonly Box[] {
  return size < 0 ? part.boxes : part.boxes.filter(({ stitches }) => stitches[size] !== null)
}
