import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** The text of a PDF's pages in the order of its content, without any spaces: where a line breaks says nothing. */
export async function pdfText(bytes: Uint8Array): Promise<{ readonly pages: number; readonly text: string }> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 })
  const document = await task.promise
  const texts: string[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const content = await (await document.getPage(number)).getTextContent()
    texts.push(content.items.map((item) => ('str' in item ? item.str : '')).join(''))
  }
  const pages = document.numPages
  await task.destroy()
  return { pages, text: unspaced(texts.join('')) }
}

/** A text without spaces of any kind. */
export function unspaced(text: string): string {
  return text.replaceAll(/\s+/g, '')
}
