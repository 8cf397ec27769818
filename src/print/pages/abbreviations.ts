import type { Abbreviation, Booklet } from '../../booklet/booklet.ts'
import { gaps, live, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { oneLine, placeHead, textLines } from './heads.ts'
import { anchorOf } from './linked-words.ts'

const half = { width: 85, gap: 8 }
const padding = { above: 0.95, below: 0.95 }
const headHeight = 1.3 + lineHeight(styles.columnHead) + 1.1

interface Entry {
  /** Words whose meaning it gives: rows link to them. */
  readonly anchors: readonly string[]
  readonly us: readonly Line[]
  readonly uk: readonly Line[]
  readonly meaning: readonly Line[]
  readonly height: number
}

/** The abbreviations set in their columns, without a place yet. `height` in mm, in two halves, head included. */
export interface AbbreviationList extends Table {
  readonly entries: readonly Entry[]
  readonly height: number
}

/** Sets abbreviations in order: stitches first, then words, then signs. The terms of this printing are bold. */
export function abbreviationList(abbreviations: readonly Abbreviation[], terms: Booklet['terms']): AbbreviationList {
  const order = { stitch: 0, word: 1, sign: 2 }
  const sorted = abbreviations.toSorted((a, b) => order[a.kind] - order[b.kind])
  const style = { us: terms === 'US' ? styles.wordStrong : styles.word, uk: terms === 'UK' ? styles.wordStrong : styles.word }
  const us = columnWidth(sorted.map((one) => one.us), style.us)
  const uk = columnWidth(sorted.map((one) => one.uk), style.uk)
  const edges = { us: 0, uk: us, meaning: us + uk }
  const entries = sorted.map((one): Entry => {
    const lines = {
      us: textLines(one.us, style.us, us - 1), uk: textLines(one.uk, style.uk, uk - 1),
      meaning: textLines(one.meaning, styles.fact, half.width - us - uk),
    }
    const tall = Math.max(lines.us.length, lines.uk.length, lines.meaning.length)
    const own = one.kind === 'sign' ? [] : (terms === 'US' ? one.us : one.uk).split(/,\s*/).map(anchorOf.abbreviation)
    return { ...lines, anchors: own, height: padding.above + tall * lineHeight(styles.fact) + padding.below }
  })
  const left = splitAt(entries)
  const height = lineHeight(styles.head) + gaps.under + headHeight + Math.max(heightOf(entries.slice(0, left)), heightOf(entries.slice(left)))
  return { entries, edges, style, height }
}

/** Places the list in two halves that fill downwards. A list to look things up in stays on one page if a page holds it. */
export function placeAbbreviations(sheet: Sheet, list: AbbreviationList): void {
  const { entries, height } = list
  if (entries.length === 0) return
  const follows = height - lineHeight(styles.head)
  placeHead(sheet, 'Abbreviations', { follows: follows < 200 ? follows : gaps.under + headHeight + 40 })
  sheet.y += gaps.under
  for (let from = 0; from < entries.length;) {
    from += placePage(sheet, list, entries.slice(from))
    if (from < entries.length) sheet.newPage()
  }
}

/** 14 mm, or more for a long abbreviation, which is never broken; two of them (`ch-sp, ch-sps`) may take two lines. */
function columnWidth(texts: readonly string[], style: TypeStyle): number {
  const widest = (all: readonly string[]) => Math.max(...all.map((text) => oneLine(text, style).width)) + 2
  return Math.min(30, Math.max(14, widest(texts.flatMap((text) => text.split(' '))), Math.min(20, widest(texts))))
}

const heightOf = (entries: readonly Entry[]) => entries.reduce((sum, { height }) => sum + height, 0)

/** Where to go to the right half, so that the taller of the two is as short as may be; of two such places the later. */
function splitAt(entries: readonly Entry[]): number {
  const all = heightOf(entries)
  let best = { at: entries.length, height: all }
  let left = 0
  for (const [at, { height: own }] of entries.entries()) {
    left += own
    const height = Math.max(left, all - left)
    if (height < best.height + 0.01) best = { at: at + 1, height }
  }
  return best.at
}

interface Table {
  readonly edges: { readonly us: number; readonly uk: number; readonly meaning: number }
  readonly style: { readonly us: (typeof styles)['word' | 'wordStrong']; readonly uk: (typeof styles)['word' | 'wordStrong'] }
}

/** Fills what is left of a page with two halves. Gives how many entries it took. */
function placePage(sheet: Sheet, table: Table, entries: readonly Entry[]): number {
  const room = sheet.room - headHeight
  let left = splitAt(entries)
  let taken = entries.length
  if (heightOf(entries.slice(0, left)) > room) {
    left = Math.max(1, fitting(entries, room))
    taken = left + fitting(entries.slice(left), room)
  }
  sheet.rule(sheet.y, weights.heavy)
  const top = sheet.y
  const halves = [entries.slice(0, left), entries.slice(left, taken)].filter((one) => one.length > 0)
  for (const [at, own] of halves.entries()) placeHalf(sheet, table, own, live.left + at * (half.width + half.gap), top)
  sheet.y = top + headHeight + Math.max(...halves.map(heightOf))
  sheet.rule(sheet.y, weights.heavy)
  return taken
}

function fitting(entries: readonly Entry[], room: number): number {
  let height = 0
  const first = entries.findIndex((entry) => (height += entry.height) > room)
  return first === -1 ? entries.length : first
}

function placeHalf(sheet: Sheet, { edges, style }: Table, entries: readonly Entry[], x: number, top: number): void {
  const table = sheet.tag(sheet.root, 'Table')
  const head = sheet.tag(sheet.tag(table, 'THead'), 'TR')
  const heads = [['US', edges.us], ['UK', edges.uk], ['Meaning', edges.meaning]] as const
  for (const [text, edge] of heads) {
    const cell = sheet.tag(head, 'TH', { scope: 'Column' })
    sheet.text(cell, oneLine(text, styles.columnHead), styles.columnHead, x + edge, top + 1.3 + baselineIn(styles.columnHead))
  }
  sheet.rule(top + headHeight, weights.middle, x, x + half.width)
  const body = sheet.tag(table, 'TBody')
  let y = top + headHeight
  for (const [at, entry] of entries.entries()) {
    if (at > 0) sheet.rule(y, weights.hair, x, x + half.width)
    for (const name of entry.anchors) sheet.anchor(name, y)
    const row = sheet.tag(body, 'TR')
    const baseline = y + padding.above + baselineIn(styles.fact)
    const put = (cell: Tag, lines: readonly Line[], own: (typeof styles)['word' | 'wordStrong' | 'fact'], edge: number) => {
      for (const [index, line] of lines.entries()) sheet.text(cell, line, own, x + edge, baseline + index * lineHeight(own))
    }
    put(sheet.tag(row, 'TH', { scope: 'Row' }), entry.us, style.us, edges.us)
    put(sheet.tag(row, 'TD'), entry.uk, style.uk, edges.uk)
    put(sheet.tag(row, 'TD'), entry.meaning, styles.fact, edges.meaning)
    y += entry.height
  }
}
