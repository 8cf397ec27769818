import PDFDocument, { type Page, type Reference } from 'pdfkit'
import { CheckBoxes } from './pdf/check-boxes.ts'
import { drawLines } from './pdf/line-operators.ts'
import { describeWell, infoOf, type Description } from './pdf/metadata.ts'
import { fromBottom, points } from './pdf/numbers.ts'
import { takeOverFile } from './pdf/object-file.ts'
import { StructureWriter, type Kid } from './pdf/structure.ts'
import { beginText, endText, missingBox, startPage, TextWriter, type PageText } from './pdf/text-operators.ts'
import { live, page as sheetPage } from './sheet/measures.ts'
import { isTag, type LaidOut, type Placed, type PlacedBox, type PlacedText, type Tag } from './sheet/placed.ts'

/** A page while it is drawn. */
interface DrawnPage {
  readonly page: Page
  readonly text: PageText
  /** Pencil boxes: their form fields are tagged, their squares are ruling. */
  readonly squares: PlacedBox[]
}

interface Drawing {
  readonly document: PDFDocument
  readonly pages: readonly DrawnPage[]
  readonly texts: TextWriter
  readonly structure: StructureWriter
  readonly boxes: CheckBoxes
  readonly anchors: LaidOut['anchors']
}

/** Draws placed boxes as a tagged PDF (ISO 14289-1). The same boxes and description give the same bytes. */
export function draw(laidOut: LaidOut, description: Description): Uint8Array {
  const document = new PDFDocument({
    pdfVersion: '1.7', subset: 'PDF/UA', tagged: true, lang: description.language, displayTitle: true, bufferPages: true, autoFirstPage: false,
    font: null, size: [points(sheetPage.width), points(sheetPage.height)], margin: 0, info: infoOf(description),
  })
  const fileBytes = takeOverFile(document)
  describeWell(document, description)
  const texts = new TextWriter(document)
  const pages = laidOut.pages.map((): DrawnPage => {
    document.addPage()
    return { page: document.page, text: startPage(), squares: [] }
  })
  const drawing: Drawing = { document, pages, texts, structure: new StructureWriter(document, laidOut.root), boxes: new CheckBoxes(document), anchors: laidOut.anchors }
  drawTag(drawing, laidOut.root, undefined)
  for (const [index, { ruling, pagination }] of laidOut.pages.entries()) finishPage(drawing, index, ruling, pagination)
  for (const { title, page, y } of laidOut.bookmarks) {
    document.outline.addItem(title, { pageNumber: page, top: points(y), left: points(sheetPage.width) })
  }
  // A form names a font; the footer's is in every document.
  texts.font('count')
  document.font('count')
  drawing.boxes.end()
  texts.end()
  document.end()
  return fileBytes()
}

function drawTag(drawing: Drawing, written: Tag, parent: Reference | undefined): Reference {
  const { structure } = drawing
  // A link to what is not in this edition is only its words.
  const tag: Tag = written.href?.startsWith('#') === true && !drawing.anchors.has(written.href.slice(1)) ? { ...written, type: 'Span' } : written
  const element = structure.begin(written.type)
  const kids: Kid[] = []
  let together: Placed[] = []
  const flush = () => {
    const [first] = together
    if (first) kids.push(drawContent(drawing, tag, element, together))
    together = []
  }
  for (const child of tag.children) {
    if (isTag(child)) {
      flush()
      kids.push({ element: drawTag(drawing, child, element) })
    } else if (child.kind === 'box') {
      flush()
      kids.push(drawBox(drawing, child, element))
    } else {
      if (together[0] && together[0].page !== child.page) flush()
      together.push(child)
    }
  }
  flush()
  if (tag.type === 'Link') kids.push(...drawLinks(drawing, tag, element))
  structure.end(element, tag, parent, kids)
  return element
}

/** Draws what one element has on one page, as one piece of marked content. */
function drawContent({ pages, texts, structure }: Drawing, tag: Tag, element: Reference, placed: readonly Placed[]): Kid {
  const { page, text } = pages[placed[0]?.page ?? 0] as DrawnPage
  const mcid = structure.nextPiece(page.dictionary, element)
  // A text object and a piece of marked content must lie one inside the other; a piece with boxes or lines in it ends text objects of its own.
  const plain = placed.every((one) => one.kind === 'text' && !one.missing)
  if (plain) beginText(text)
  else endText(text)
  const actual = tag.actual === undefined ? '' : ` /ActualText ${hexText(tag.actual)}`
  text.operators.push(`/${tag.type} <</MCID ${mcid}${actual}>> BDC`)
  drawTexts(texts, placed.filter((one) => one.kind === 'text'), text)
  if (!plain) {
    endText(text)
    text.operators.push(drawLines(placed))
  }
  text.operators.push('EMC')
  return { page: page.dictionary, mcid }
}

function drawTexts(texts: TextWriter, placed: readonly PlacedText[], page: PageText): void {
  for (const text of placed) {
    // Readers look among glyphs for what an actual text replaces; a space gives them one.
    texts.show(text.missing ? { ...text, text: ' ' } : text, page)
    if (!text.missing) continue
    endText(page)
    page.operators.push(missingBox(text))
  }
}

/** Text in UTF-16 with its mark, as a hexadecimal string. */
function hexText(text: string): string {
  let hex = 'FEFF'
  for (let at = 0; at < text.length; at++) hex += text.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0')
  return `<${hex}>`
}

function drawBox({ pages, structure, boxes }: Drawing, box: PlacedBox, element: Reference): Kid {
  const { page, squares } = pages[box.page] as DrawnPage
  const annotation = boxes.add(box, page.dictionary, structure.annotationKey(element))
  page.annotations.push(annotation)
  squares.push(box)
  return { page: page.dictionary, annotation }
}

function drawLinks({ document, pages, structure, anchors }: Drawing, tag: Tag, element: Reference): readonly Kid[] {
  const href = tag.href ?? ''
  const anchor = href.startsWith('#') ? anchors.get(href.slice(1)) : undefined
  const target = anchor
    ? { Dest: [(pages[anchor.page] as DrawnPage).page.dictionary, 'XYZ', 0, Math.round(fromBottom(Math.max(0, anchor.y - 2))), null] }
    : { A: { S: 'URI', URI: new String(encodeURI(href).replaceAll('%25', '%')) } }
  return tag.children.filter((child) => !isTag(child) && child.kind === 'text').map((child): Kid => {
    const { page: index, x, y, width, size, text } = child as PlacedText
    const { page } = pages[index] as DrawnPage
    const [left, base] = [points(x), fromBottom(y)]
    const annotation = document.ref({
      Type: 'Annot', Subtype: 'Link', F: 4, Border: [0, 0, 0], Rect: [left, base - 0.25 * size, left + points(width), base + 0.8 * size].map((edge) => Math.round(edge * 100) / 100),
      ...target, Contents: new String(text), StructParent: structure.annotationKey(element),
    })
    annotation.end()
    page.annotations.push(annotation)
    return { page: page.dictionary, annotation }
  })
}

function drawArtifact(texts: TextWriter, page: PageText, properties: string, placed: readonly PlacedText[]): void {
  if (placed.length === 0) return
  endText(page)
  page.operators.push(`/Artifact <<${properties}>> BDC`)
  drawTexts(texts, placed, page)
  endText(page)
  page.operators.push('EMC')
}

/** Adds what is no content, and hands the page's operators over. Ruling lies under the text. */
function finishPage({ document, pages, texts }: Drawing, index: number, ruling: readonly Placed[], pagination: readonly Placed[]): void {
  const { page, text, squares } = pages[index] as DrawnPage
  endText(text)
  const repeated = pagination.filter((one) => one.kind === 'text')
  const footers = repeated.filter(({ y }) => y > live.footerRule)
  drawArtifact(texts, text, '/Type /Pagination', repeated.filter((one) => !footers.includes(one)))
  drawArtifact(texts, text, '/Type /Pagination /Subtype /Footer /Attached [/Bottom]', footers)
  for (const role of text.fonts) page.fonts[texts.font(role).id] = texts.font(role).ref()
  document.switchToPage(index)
  document.addContent([
    // PDFKit begins each page upside down; what is placed here counts from the bottom, as PDF does.
    `1 0 0 -1 0 ${points(sheetPage.height)} cm`,
    '/Artifact <</Type /Layout>> BDC', drawLines([...ruling, ...squares]), 'EMC',
    ...text.operators,
  ].join('\n'))
}
