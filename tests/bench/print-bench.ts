import PDFDocument from 'pdfkit'
import type { Booklet, RowLine } from '../../src/booklet/booklet.ts'
import { printPattern } from '../../src/print/print-pattern.ts'
import { fontOf, type FontRole } from '../../src/print/type/fonts.ts'

/** What a run of the bench found: our figure as a multiple of the bare loop's. */
export interface Ratio {
  readonly name: string
  readonly ratio: number
  readonly detail: string
}

const rows = Array.from({ length: 120 }, (_, at): RowLine => ({
  kind: 'row', id: `hawser-${at + 1}`, label: String(at + 1), boxes: [String(at + 1)], repeats: '6 ×', change: at % 2 === 0 ? '+6' : '−6', spaces: '', progress: 0,
  stitches: [String(48 + 6 * (at % 2 === 0 ? 1 : 0))],
  text: [
    { text: `*Sc in next ${(at % 9) + 2} sts, inc;`, repeat: true },
    { text: ' rep from * around.', repeat: false },
  ],
}))

export const booklet: Booklet = {
  slug: 'hawser', title: 'Hawser', number: 21, publisher: 'Saltmarsh Yarnworks', version: '1.0', date: '2027-03-14', dateText: '14 March 2027', terms: 'US',
  sizes: [], facts: [], gauge: { paragraphs: [] }, abbreviations: [], specialStitches: [], cautions: [], before: [], after: [], credits: [],
  materials: Array.from({ length: 10 }, (_, at) => ({
    kind: 'tool' as const, item: `Yarn ${at + 1}, kelp`, for: `Rounds ${12 * at + 1} to ${12 * at + 12}`, amount: [`${20 + at} m`], weight: `${10 + at} g`,
  })),
  parts: [{ number: 1, name: 'The hawser', line: 'Make 1. In rounds.', counting: 'Round', sides: false, lines: rows }],
}

/**
 * A developer's first loop: the same title, table and row lines with PDFKit's own calls, each line in a structure element, boxes as
 * plain squares that cannot be ticked, no line breaking, no check of glyphs, the same font objects. It has every text of ours but the column heads.
 */
function bareLoop(): Promise<Uint8Array> {
  const document = new PDFDocument({
    pdfVersion: '1.7', subset: 'PDF/UA', tagged: true, lang: 'en-US', displayTitle: true, bufferPages: true, autoFirstPage: false, font: null,
    size: [595.28, 792], margin: 0, info: { Title: booklet.title, CreationDate: new Date(0) },
  }) as unknown as BareDocument
  const chunks: Uint8Array[] = []
  const done = new Promise<Uint8Array>((resolve) => document.on('data', (chunk) => chunks.push(chunk as Uint8Array)).on('end', () => resolve(Buffer.concat(chunks))))
  const roles: FontRole[] = ['title', 'head', 'text', 'textStrong', 'count', 'countStrong', 'countBold']
  for (const role of roles) document.registerFont(role, fontOf(role))
  const root = document.struct('Document')
  document.addStructure(root)
  const put = (role: FontRole, size: number, text: string, x: number, y: number) => document.font(role).fontSize(size).text(text, x, y, { lineBreak: false, baseline: 'alphabetic' })
  const element = (type: string, draw: () => void) => root.add(document.struct(type, draw))
  const square = (x: number, y: number) => {
    document.markContent('Artifact', { type: 'Layout' })
    document.lineWidth(0.7).rect(x, y, 13, 13).stroke()
    document.endMarkedContent()
  }
  const page = (name: string) => {
    document.addPage()
    element('H2', () => put('head', 15, name, 51, 53))
  }
  document.addPage()
  element('H1', () => put('title', 74, booklet.title, 51, 140))
  page('Materials')
  const table = document.struct('Table')
  root.add(table)
  for (const [at, { item, for: purpose, amount, weight }] of booklet.materials.entries()) {
    const y = 95 + at * 20
    square(51, y - 11)
    const tr = document.struct('TR')
    table.add(tr)
    const cells: [FontRole, string, number][] = [['textStrong', item, 71], ['text', purpose, 190], ['count', amount[0] ?? '', 480], ['count', weight, 530]]
    for (const [role, text, x] of cells) tr.add(document.struct('TD', () => put(role, 10.5, text, x, y)))
  }
  for (const [at, row] of rows.entries()) {
    if (at % 30 === 0) page(at === 0 ? '1  The hawser' : 'The hawser, continued')
    const y = 95 + (at % 30) * 20
    square(51, y - 11)
    element('P', () => {
      put('countBold', 11, row.label, 90, y)
      put('text', 10.5, row.text[0]?.text ?? '', 113, y)
      put('text', 10.5, row.text[1]?.text ?? '', 230, y)
      put('count', 9.5, row.repeats, 380, y)
      put('count', 9.5, row.change, 420, y)
      put('countBold', 11, row.stitches[0] ?? '', 450, y)
    })
  }
  for (let index = 0; index < 6; index++) {
    document.switchToPage(index)
    document.markContent('Artifact', { type: 'Pagination' })
    put('countStrong', 8.5, booklet.title, 51, 750)
    put('count', 8.5, `Version 1.0, 14 March 2027  Terms: US`, 230, 750)
    put('count', 8.5, `Page ${index + 1} of 6`, 510, 750)
    document.endMarkedContent()
  }
  document.end()
  return done
}

interface BareElement {
  add(child: BareElement): void
}

/** PDFKit's public calls, which print itself does without. */
interface BareDocument {
  on(event: string, listener: (chunk: unknown) => void): this
  registerFont(name: string, font: unknown): this
  font(name: string): this
  fontSize(size: number): this
  text(text: string, x: number, y: number, options: object): this
  struct(type: string, draw?: () => void): BareElement
  addStructure(element: BareElement): void
  markContent(tag: string, options: object): this
  endMarkedContent(): this
  lineWidth(width: number): this
  rect(x: number, y: number, width: number, height: number): this
  stroke(): this
  addPage(): this
  switchToPage(index: number): void
  end(): void
}

async function time(make: () => Promise<Uint8Array>): Promise<number> {
  const start = performance.now()
  await make()
  return performance.now() - start
}

const median = (times: readonly number[]) => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN

type Print = () => Promise<Uint8Array>

/** Prints the six-page document with ours and with something else in turn, and compares the medians. */
export async function inTurn(ours: Print, other: Print, what: string, turns = 40): Promise<readonly Ratio[]> {
  for (let warm = 0; warm < 10; warm++) {
    await ours()
    await other()
  }
  const times = { ours: [] as number[], other: [] as number[] }
  for (let turn = 0; turn < turns; turn++) {
    times.ours.push(await time(ours))
    times.other.push(await time(other))
  }
  const [own, others] = [median(times.ours), median(times.other)]
  // Turn by turn, so that a load that comes and goes weighs on both sides of each quotient.
  const ratio = median(times.ours.map((ms, turn) => ms / (times.other[turn] ?? Number.NaN)))
  const bytes = { ours: (await ours()).length, other: (await other()).length }
  return [
    { name: `print, time against ${what}`, ratio, detail: `${own.toFixed(1)} ms against ${others.toFixed(1)} ms for six pages` },
    { name: `print, bytes against ${what}`, ratio: bytes.ours / bytes.other, detail: `${bytes.ours} bytes against ${bytes.other}` },
  ]
}

export const printBench = (turns = 40): Promise<readonly Ratio[]> => inTurn(() => printPattern(booklet), bareLoop, 'a bare loop', turns)
