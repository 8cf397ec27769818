import type PDFDocument from 'pdfkit'

/** What the file says about itself, beside its pages. */
export interface Description {
  readonly title: string
  readonly author: string
  readonly subject: string
  readonly keywords: string
  /** ISO date of the version printed; it stands for the date of making, so that the same version is the same bytes. */
  readonly date: string
  readonly language: 'en-US' | 'en-GB'
}

const producer = 'Loopledger'

/** The entries of the document's information dictionary. */
export function infoOf({ title, author, subject, keywords, date }: Description): Readonly<Record<string, string | Date>> {
  const given = { Title: title, Author: author, Subject: subject, Keywords: keywords }
  const filled = Object.entries(given).map(([key, value]) => [key, printable(value)] as const).filter(([, value]) => value !== '')
  return { ...Object.fromEntries(filled), Creator: producer, Producer: producer, CreationDate: dateOf(date) }
}

/** Midnight in Greenwich of the day; of the first day of 2000 when the date is none. */
function dateOf(date: string): Date {
  const day = new Date(`${date.slice(0, 10)}T00:00:00Z`)
  return Number.isNaN(day.getTime()) ? new Date(Date.UTC(2000, 0, 1)) : day
}

/** XML allows no control characters, not even escaped. */
const printable = (text: string) => text.toWellFormed().replace(/[\u0000-\u001f\u007f-\u009f\ufffe\uffff]+/g, ' ').trim()

const escaped = (text: string) => printable(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

/** Has the document write its metadata with `&` and `<` escaped, which PDFKit leaves as they are. */
export function describeWell(document: PDFDocument, description: Description): void {
  const { title, author, subject, keywords, date, language } = description
  const alternatives = (name: string, text: string) =>
    text === '' ? '' : `<dc:${name}><rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt></dc:${name}>\n`
  document._addInfo = () => document.appendXML(`
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
<xmp:CreateDate>${dateOf(date).toISOString().replace('.000', '')}</xmp:CreateDate>
<xmp:CreatorTool>${producer}</xmp:CreatorTool>
${alternatives('title', title)}${author === '' ? '' : `<dc:creator><rdf:Seq><rdf:li>${escaped(author)}</rdf:li></rdf:Seq></dc:creator>\n`}${alternatives('description', subject)}<dc:language><rdf:Bag><rdf:li>${language}</rdf:li></rdf:Bag></dc:language>
<pdf:Producer>${producer}</pdf:Producer>
<pdf:Keywords>${escaped(keywords)}</pdf:Keywords>
</rdf:Description>
`)
}
