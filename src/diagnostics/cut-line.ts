import { widthOf, type Cell } from './shown-line.ts'

/** A run of cells by index, from `from` up to but not including `to`. */
export interface Run {
  readonly from: number
  readonly to: number
}

// A reader needs a few words around a label; less than `worthCutting` columns saved would only puzzle.
const contextColumns = 6
const furthestContext = 30
const worthCutting = 20
// On a narrow screen every column counts.
const narrow = 80
const worthCuttingNarrow = 8
const longestHead = 45
const longestTotal = 45

/**
 * The cells of a line that are shown, longest unlabelled stretches out first until the line fits the width; after those
 * the middle of stretches that are labelled from end to end. Cuts lie between words; the row's own label and its total stay:
 *
 *   8: … [ch 2, skip next 2 sts, dc in next 3 sts] 6 times. (17 dc, 5 ch-2 sps)
 *
 * On a narrow screen the total may go as well, unless it is labelled.
 */
export function cutLine(cells: readonly Cell[], labelled: readonly Run[], width: number): readonly Cell[] {
  const over = widthOf(cells) - width
  if (over <= 0) return cells
  const worth = width < narrow ? worthCuttingNarrow : worthCutting
  const between = enough(stretches(cells, labelled, width), over, worth)
  if (between.over <= 0) return withMarks(cells, between.dropped)
  const within = enough(stretches(cells, labelled.flatMap(bothEnds), width), over, worth)
  if (within.over <= 0 || width >= narrow) return within.dropped.length === 0 ? cells : withMarks(cells, within.dropped)
  const alone = enough(stretches(cells, labelled.flatMap(bothEnds), width, false), over, worth)
  return alone.dropped.length === 0 ? cells : withMarks(cells, alone.dropped)
}

function enough(candidates: ReturnType<typeof stretches>, width: number, worth: number): { readonly dropped: readonly Run[]; readonly over: number } {
  const dropped: Run[] = []
  let over = width
  for (const { stretch, saves } of candidates) {
    if (over <= 0 || saves < worth) break
    dropped.push(stretch)
    over -= saves
  }
  return { dropped, over }
}

/** The first and the last words of a long labelled stretch; a short one whole. */
function bothEnds(run: Run): readonly Run[] {
  if (run.to - run.from <= 2 * furthestContext) return [run]
  return [{ from: run.from, to: run.from + contextColumns }, { from: run.to - contextColumns, to: run.to }]
}

function stretches(cells: readonly Cell[], labelled: readonly Run[], width: number, wholeEnds = true) {
  const kept = labelled.length === 0
    ? [{ from: 0, to: endOfContext(cells, Math.max(0, width - furthestContext)) }]
    : [{ from: 0, to: endOfHead(cells) }, ...labelled.map((run) => withContext(cells, run)), ...(wholeEnds ? [{ from: startOfTotal(cells), to: cells.length }] : [])]
  kept.sort((a, b) => a.from - b.from)
  const found: Run[] = []
  let reached = 0
  for (const { from, to } of kept) {
    if (from > reached) found.push({ from: reached, to: from })
    reached = Math.max(reached, to)
  }
  if (reached < cells.length) found.push({ from: reached, to: cells.length })
  return found
    .map((stretch) => ({ stretch, saves: widthOf(cells.slice(stretch.from, stretch.to)) - ' … '.length }))
    .sort((a, b) => b.saves - a.saves)
}

/** After the indentation and the row's own label, `Row 12 (RS): ` or `Rnds 2-3 (2-4, 2-4): `. */
function endOfHead(cells: readonly Cell[]): number {
  const text = cells.slice(0, longestHead).map((cell) => cell.text[0] ?? ' ').join('')
  return /^\s*(?:- )?(?:[^\s:][^:]*:(?:\s+|$))?/.exec(text)?.[0].length ?? 0
}

/** Where the total at the row's end begins, `(17 dc, 5 ch-2 sps)`; the end of a row that says none, or a long one. */
function startOfTotal(cells: readonly Cell[]): number {
  const from = Math.max(0, cells.length - longestTotal)
  const text = cells.slice(from).map((cell) => cell.text[0] ?? ' ').join('')
  const found = /[([{](?:[^()]|\([^()]*\))*[)\]}][.\s]*$/.exec(text)
  return found ? from + found.index : cells.length
}

function withContext(cells: readonly Cell[], run: Run): Run {
  return { from: startOfContext(cells, run.from), to: endOfContext(cells, run.to) }
}

function startOfContext(cells: readonly Cell[], at: number): number {
  const latest = at - contextColumns
  if (latest <= 0) return 0
  const first = Math.max(1, at - furthestContext)
  for (const stop of [clauseEnd, anything]) {
    for (let from = latest; from >= first; from -= 1) {
      if (isSpace(cells[from - 1]) && stop.test(cells[from - 2]?.text ?? '')) return from
    }
  }
  return latest
}

function endOfContext(cells: readonly Cell[], at: number): number {
  const earliest = at + contextColumns
  if (earliest >= cells.length) return cells.length
  const last = Math.min(cells.length - 1, at + furthestContext)
  for (const stop of [clauseEnd, anything]) {
    for (let to = earliest; to <= last; to += 1) {
      if (isSpace(cells[to]) && stop.test(cells[to - 1]?.text ?? '')) return to
    }
  }
  return earliest
}

const clauseEnd = /[,;.:]/
const anything = /^/

function isSpace(cell: Cell | undefined): boolean {
  return cell?.text === ' '
}

/** Puts `…` where a stretch was, with a space towards every word that stays. */
function withMarks(cells: readonly Cell[], dropped: readonly Run[]): readonly Cell[] {
  const shown: Cell[] = []
  let at = 0
  for (const { from, to } of [...dropped].sort((a, b) => a.from - b.from)) {
    shown.push(...cells.slice(at, from))
    const place = cells[from]?.start ?? 0
    const mark = `${from === 0 || isSpace(shown.at(-1)) ? '' : ' '}…${to === cells.length ? '' : ' '}`
    shown.push({ start: place, end: place, text: mark, width: mark.length })
    at = to
  }
  return [...shown, ...cells.slice(at)]
}
