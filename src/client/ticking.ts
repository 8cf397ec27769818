import { changedSince, showCorrected } from './corrected.ts'
import { showHere } from './here.ts'
import { keepProgress, keepSettings, keeps, keptProgress, onProgressElsewhere } from './kept.ts'
import { say, tell } from './offers.ts'
import { mostBoxes, showRange } from './ranges.ts'
import { showPartsProgress } from './parts-progress.ts'
import { withEntry, withTicks, type Progress } from './progress.ts'
import { boxesIn, keyFor, nameOf, type Box, type Part } from './rows-on-page.ts'
import { showTape } from './tape.ts'
import { thumbBar } from './thumb-bar.ts'
import { nextTurn, whereabouts, type Whereabouts } from './whereabouts.ts'

/** A pattern's page as far as ticking needs it. */
export interface Sheet {
  readonly parts: readonly Part[]
  /** Names of the sizes; empty for one size. */
  readonly sizes: readonly string[]
  readonly version: string
  readonly title: string
  /** Nothing kept, nothing done. */
  readonly fresh: Progress
  /** Says whether ticks are kept on this device. */
  readonly saved: (kept: boolean) => void
}

/** The ticks of a page: what they are, and how they are changed from outside. */
export interface Ticking {
  readonly progress: () => Progress
  readonly change: (change: (progress: Progress) => Progress) => void
}

/** Brings boxes, here-row, tape and bars to life, all from one record of progress. */
export function startTicking(sheet: Sheet): Ticking {
  const { parts, sizes, version } = sheet
  let progress = keptProgress(sheet.fresh.slug) ?? sheet.fresh
  let kept = keeps()

  const chosenCopy = new Map<Part, number>()
  const size = () => sizes.indexOf(progress.size ?? '')
  const where = () => whereabouts(parts, progress, size())
  const copyOf = (part: Part) => (progress.part === part.id ? progress.copy ?? 1 : chosenCopy.get(part) ?? 1)

  function change(to: (progress: Progress) => Progress): void {
    // Another window may have ticked in the meantime; what could not be kept is only here.
    progress = to((kept ? keptProgress(sheet.fresh.slug) : undefined) ?? progress)
    kept = keepProgress(progress)
    show()
  }

  function show(): void {
    sheet.saved(kept)
    for (const part of parts) for (const box of part.boxes) box.input.checked = keyFor(box, copyOf(part)) in progress.ticks
    const now = where()
    const acts = { tick, back, repeat: (key: string, done: number) => change((one) => ({ ...one, repeats: withEntry(one.repeats, key, done) })), note }
    showHere(now, { progress, size: size(), acts })
    if (now) showTape(now, (box) => keyFor(box, now.copy) in progress.ticks)
    bar.show(now?.here && nameOf(now.here), Object.keys(progress.ticks).length > 0)
    showPartsProgress(parts, progress, { size: size(), copyOf, choose: (part, copy) => { chosenCopy.set(part, copy); change((one) => ({ ...one, part: part.id, copy })) } })
    showNotes(parts, progress, now?.here)
    for (const part of parts) for (const row of part.rows) if (row.boxes.length > mostBoxes) showRange(row, (box) => keyFor(box, copyOf(part)) in progress.ticks)
    const changed = changedSince(parts, progress)
    showCorrected(changed, version, progress.version, (keys) => change((one) => ({ ...one, ticks: { ...one.ticks, ...digestsOf(keys) } })))
    if (now) keepWhere(now)
  }

  /** The digests of boxes' rows as they are now, by key. */
  function digestsOf(keys: readonly string[]): Readonly<Record<string, string>> {
    const digest = new Map(parts.flatMap((part) => part.boxes.map((box) => [box.key, box.row.digest] as const)))
    return Object.fromEntries(keys.map((key) => [key, digest.get(key.replace(/~\d+$/, '')) ?? '']))
  }

  function keepWhere(now: Whereabouts): void {
    if (Object.keys(progress.ticks).length === 0) return
    const name = now.here ? `${nameOf(now.here)} of ${now.boxes.length}` : `the end of ${now.part.name}`
    keepSettings({ last: { slug: progress.slug, title: sheet.title, where: name, address: location.pathname } })
  }

  function set(boxes: readonly Box[], copy: number, ticked: boolean): void {
    const part = boxes[0]?.row.part
    change((one) => ({
      ...withTicks(one, one.version === '' || changedSince(parts, one).corrected.length === 0 ? version : one.version,
        Object.fromEntries(boxes.map((box) => [keyFor(box, copy), ticked ? box.row.digest : undefined]))),
      ...(part ? { part: part.id, copy } : {}),
    }))
  }

  function tick(): void {
    const now = where()
    if (!now?.here) return
    set([now.here], now.copy, true)
    const next = where()
    if (next?.here) {
      say(`${nameOf(now.here)} ticked. Next: ${nameOf(next.here)}.`)
      goHere(next.here)
    } else goOn(now)
  }

  /** A piece is done: the next one, or the next copy, is taken in hand. */
  function goOn(done: Whereabouts): void {
    const turn = nextTurn(parts, progress, size())
    const name = `${done.part.name}${done.part.copies > 1 ? `, copy ${done.copy}` : ''} is done.`
    if (!turn) return tell(`${name} All rows are ticked.`)
    change((one) => ({ ...one, part: turn.part.id, copy: turn.copy }))
    chosenCopy.set(turn.part, turn.copy)
    tell(`${name} Next: ${turn.part.name}${turn.part.copies > 1 ? `, copy ${turn.copy}` : ''}.`, { words: 'Go there', act: () => turn.here && goHere(turn.here) })
  }

  /** Un-ticks the row that was ticked before this one, in this piece or the one before. */
  function back(): void {
    const now = where()
    if (!now) return
    const isTicked = (box: Box) => keyFor(box, now.copy) in progress.ticks
    const end = now.here ? now.boxes.indexOf(now.here) : now.boxes.length
    const last = now.boxes.slice(0, end).findLast(isTicked)
    if (last) {
      set([last], now.copy, false)
      say(`${nameOf(last)} is no longer ticked.`)
      goHere(last)
      return
    }
    const turns = parts.flatMap((part) => Array.from({ length: part.copies }, (_, at) => ({ part, copy: at + 1 })))
    const at = turns.findIndex(({ part, copy }) => part === now.part && copy === now.copy)
    const older = turns.slice(0, at).findLast(({ part, copy }) => boxesIn(part, size()).some((box) => keyFor(box, copy) in progress.ticks))
    const box = older && boxesIn(older.part, size()).findLast((one) => keyFor(one, older.copy) in progress.ticks)
    if (!older || !box) return
    chosenCopy.set(older.part, older.copy)
    set([box], older.copy, false)
    say(`${nameOf(box)} of ${older.part.name} is no longer ticked.`)
    goHere(box)
  }

  function note(row: string, text: string): void {
    change((one) => ({ ...one, notes: withEntry(one.notes, row, text === '' ? undefined : text) }))
  }

  /** A box was pressed: it changes alone, and the rows that are likely meant as well are offered. */
  function pressed(box: Box, part: Part): void {
    const copy = copyOf(part)
    const { checked } = box.input
    set([box], copy, checked)
    const boxes = boxesIn(part, size())
    const at = boxes.indexOf(box)
    const isTicked = (one: Box) => keyFor(one, copy) in progress.ticks
    const others = checked ? boxes.slice(0, at).filter((one) => !isTicked(one)) : boxes.slice(at + 1).filter(isTicked)
    const did = `${nameOf(box)} ${checked ? 'ticked' : 'is no longer ticked'}.`
    if (others.length === 0) {
      const now = where()
      if (checked && now && !now.here) goOn(now)
      else say(did)
      return
    }
    say(did, { words: `${checked ? 'Tick' : 'Un-tick'} ${span(others)} ${checked ? 'before it' : 'after it'}`, act: () => set(others, copy, checked) })
  }

  for (const part of parts) for (const box of part.boxes) box.input.addEventListener('change', () => pressed(box, part))
  addEventListener('keydown', (event) => {
    const at = event.target instanceof Element ? event.target : undefined
    if (!at?.closest('tr.here') || at.closest('input, textarea') || event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Backspace') back()
    else if (event.key === ' ' && !at.closest('button, a, label')) tick()
    else return
    event.preventDefault()
  })
  const bar = thumbBar({ tick, back }, parts.map((part) => part.element))
  onProgressElsewhere(sheet.fresh.slug, () => {
    progress = keptProgress(sheet.fresh.slug) ?? sheet.fresh
    show()
  })
  show()
  const { corrected, gone } = changedSince(parts, progress)
  if (corrected.length + gone.length > 0 && progress.version !== version) {
    const lost = gone.length > 0 ? ` ${gone.length === 1 ? 'A row that you had ticked is' : `${gone.length} rows that you had ticked are`} no longer in it.` : ''
    const first = corrected[0]?.row.boxes[0]
    tell(`This is version ${version}; you began with ${progress.version}.${corrected.length > 0 ? ` ${corrected.length === 1 ? 'One row' : `${corrected.length} rows`} that you had ticked ${corrected.length === 1 ? 'was' : 'were'} corrected.` : ''}${lost}`,
      ...(first ? [{ words: 'Show it', act: () => goHere(first) }] : []))
  }
  return { progress: () => progress, change }
}

/** `Rows 1 to 19`, `Row 3` */
function span(boxes: readonly Box[]): string {
  const [first, last] = [boxes[0], boxes.at(-1)]
  if (!first || !last) return ''
  return first === last ? nameOf(first) : `${first.row.part.word}s ${first.label} to ${last.label}`
}

/** Scrolls so that two rows stand above the row that is next, or as many as leave it in sight. */
function goHere({ row }: Box): void {
  const { top } = row.element.getBoundingClientRect()
  let above: Element = row.element
  for (let rows = 0; rows < 2; rows += 1) {
    const older = above.previousElementSibling
    if (!older || top - older.getBoundingClientRect().top > innerHeight * 0.3) break
    above = older
  }
  above.scrollIntoView({ block: 'start' })
}

/** Pencil notes stand under their rows; in the row that is next they stand in its own field. */
function showNotes(parts: readonly Part[], { notes }: Progress, here: Box | undefined): void {
  for (const { rows } of parts) {
    for (const { id, work } of rows) {
      const text = here?.row.id === id ? undefined : notes[id]
      const shown = work.querySelector('.pencilled')
      if (text === undefined) shown?.remove()
      else if (shown) shown.textContent = text
      else work.append(Object.assign(document.createElement('p'), { className: 'pencilled', textContent: text }))
    }
  }
}
