import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { RowLine } from '../../src/booklet/booklet.ts'
import { printPattern } from '../../src/print/print-pattern.ts'
import { booklet, inTurn, type Ratio } from './print-bench.ts'

const name = '@myriaddreamin/typst-ts-node-compiler'
const resolve = createRequire(import.meta.url).resolve
const fonts = ['besley', 'source-serif-4', 'source-sans-3'].map((family) => dirname(resolve(join('@expo-google-fonts', family, 'package.json'))))
const rows = (booklet.parts[0]?.lines ?? []).filter((line): line is RowLine => line.kind === 'row')
const words = (text: string) => `[#${JSON.stringify(text)}]`
const box = 'square(size: 4.6mm, stroke: 0.7pt)'
/** The six pages of the other benches as Typst sets them: tables with heads, in the same faces. `turn` stands in every row, so that no layout is remembered. */
const source = (turn: number) => `#set document(title: "${booklet.title}")
#set page(width: 210mm, height: 279.4mm, margin: (left: 18mm, right: 14mm, top: 14mm, bottom: 20mm), footer: context text(font: "Source Sans 3", 8.5pt)[*${booklet.title}* Version 1.0, 14 March 2027 Terms: US #h(1fr) Page #counter(page).display("1 of 1", both: true)])
#set text(font: "Source Serif 4", 10.5pt, lang: "en")
#show heading: set text(font: "Besley", weight: 600, 15pt)
= #text(74pt)[${booklet.title}]
#pagebreak()
== Materials
#table(columns: 5, table.header([], [Item], [For], [Amount], [Weight]), ${booklet.materials.map((line) => [box, ...[line.item, line.for, ...line.amount, line.weight].map(words)].join()).join()})
#pagebreak()
== The hawser
#table(columns: (auto, auto, 1fr, auto, auto, auto), stroke: none, table.header([], [Round], [Work], [Repeats], [Change], [Stitches]),
${rows.map((row) => [box, words(row.label), `[#underline(${JSON.stringify(row.text[0]?.text)})#${JSON.stringify(` ${turn}${row.text[1]?.text}`)}]`, ...[row.repeats, row.change, ...row.stitches].map(words)].join()).join(',\n')})`

/** Ours against Typst, where it was installed for the run; it is no dependency. */
export async function typstBench(): Promise<readonly Ratio[]> {
  const typst = await import(name).catch(() => undefined)
  if (typst === undefined) return []
  const compiler = typst.NodeCompiler.create({ fontArgs: [{ fontPaths: fonts }] })
  let turn = 0
  const theirs = async (): Promise<Uint8Array> => {
    const pdf = compiler.pdf({ mainFileContent: source(turn++) })
    compiler.evictCache(5)
    return pdf
  }
  return inTurn(() => printPattern(booklet), theirs, 'Typst')
}
