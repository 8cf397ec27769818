import { deflateSync } from 'node:zlib'
import type PDFDocument from 'pdfkit'
import type { Reference } from 'pdfkit'

/** An object as PDFKit wrote it: head, dictionary, end; a stream has its bytes between them. */
interface Written {
  readonly id: number
  readonly chunks: readonly (string | Uint8Array)[]
}

/** Objects in one packed stream. Readers unpack a whole stream for one object of it, so it is kept short. */
const objectsInStream = 1000

/** The catalogue and the head of the pages stay plain: they are where a reader begins. */
const plain = /^<<\n\/Type \/(?:Catalog|Pages)\b/

/**
 * Takes over the writing of the file. Tags and check boxes make thousands of small objects, which PDFKit would write as plain text;
 * here they are packed into object streams (ISO 32000-1, 7.5.7) with a cross-reference stream (7.5.8), to a third of the size.
 * Gives the file's bytes once the document has ended.
 */
export function takeOverFile(document: PDFDocument): () => Uint8Array {
  const written: Written[] = []
  let chunks: (string | Uint8Array)[] = []
  let file: Uint8Array | undefined
  const countDown = document._refEnd.bind(document)
  document._write = (chunk) => {
    chunks.push(chunk)
  }
  document._refEnd = (reference: Reference) => {
    written.push({ id: reference.id, chunks })
    chunks = []
    countDown(reference)
  }
  document._finalize = () => {
    document._ended = false
    file = assemble(document, written)
  }
  return () => {
    if (!file) throw new Error('this is our mistake, not your pattern\'s: the PDF was not finished, an object in it was never ended')
    return file
  }
}

const isPacked = ({ chunks: [, body, end] }: Written) => end === 'endobj' && typeof body === 'string' && !plain.test(body)

/** What an object is, for its place among the others. */
const kindOf = ({ chunks: [, body] }: Written): string => /^<<\n\/(?:Type \/|S \/)\w+/.exec(String(body))?.[0] ?? ''

/** Where an object is: so many bytes into the file, or the n-th object of a stream. */
type Place = { readonly offset: number } | { readonly stream: number; readonly index: number }

function assemble(document: PDFDocument, written: Written[]): Uint8Array {
  const places = new Map<number, Place>()
  // What is alike packs best side by side.
  const small = [...Map.groupBy(written.filter(isPacked).toSorted((a, b) => a.id - b.id), kindOf).values()].flat()
  for (let from = 0; from < small.length; from += objectsInStream) packStream(document, small.slice(from, from + objectsInStream), places)
  const bytes: Uint8Array[] = [latin1('%PDF-1.7\n%\xff\xff\xff\xff\n')]
  let offset = bytes[0]?.length ?? 0
  const append = (one: Written) => {
    places.set(one.id, { offset })
    for (const chunk of one.chunks) {
      const part = typeof chunk === 'string' ? latin1(`${chunk}\n`) : chunk
      bytes.push(part)
      offset += part.length
    }
  }
  for (const one of written) if (!isPacked(one)) append(one)
  const start = offset
  writeCrossReferences(document, places, start)
  append(written.at(-1) as Written)
  bytes.push(latin1(`startxref\n${start}\n%%EOF\n`))
  return Buffer.concat(bytes)
}

const latin1 = (text: string) => Buffer.from(text, 'latin1')

function packStream(document: PDFDocument, objects: readonly Written[], places: Map<number, Place>): void {
  const stream = document.ref({ Type: 'ObjStm', N: objects.length, Filter: 'FlateDecode' })
  // PDFKit writes a key a line. In texts line ends are escaped, so that all of these stand between keys.
  const bodies = objects.map(({ chunks: [, body] }) => String(body).replace(/\n(?=[/>])|(?<=<<)\n/g, ''))
  let offset = 0
  const heads = objects.map(({ id }, index) => {
    places.set(id, { stream: stream.id, index })
    const head = `${id} ${offset}`
    offset += (bodies[index]?.length ?? 0) + 1
    return head
  })
  const head = `${heads.join(' ')}\n`
  stream.data['First'] = head.length
  // A level harder than usual pays here, and costs little; the hardest would cost a quarter of all printing.
  stream.end(deflateSync(latin1(`${head}${bodies.join('\n')}\n`), { level: 7 }))
}

/** Type, place and number of each object in seven bytes: 1, 4 and 2 of them, each row as what it adds to the row before (ISO 32000-1, 7.4.4.4). */
function writeCrossReferences(document: PDFDocument, places: Map<number, Place>, start: number): void {
  const table = document.ref({
    Type: 'XRef', W: [1, 4, 2], DecodeParms: { Predictor: 12, Columns: 7 }, Root: document._root, Info: document._info, ID: [document._id, document._id],
  })
  places.set(table.id, { offset: start })
  const size = table.id + 1
  table.data['Size'] = size
  const entries = Buffer.alloc(size * 7)
  entries.writeUInt16BE(0xffff, 5)
  for (const [id, place] of places) {
    entries.writeUInt8('stream' in place ? 2 : 1, id * 7)
    entries.writeUInt32BE('stream' in place ? place.stream : place.offset, id * 7 + 1)
    entries.writeUInt16BE('stream' in place ? place.index : 0, id * 7 + 5)
  }
  table.end(predicted(entries, 7))
}

/** Rows of so many bytes, each byte less the one above it, after a byte that says so: the predictor `Up` of PNG. */
function predicted(rows: Uint8Array, columns: number): Buffer {
  const count = rows.length / columns
  const out = Buffer.alloc(count * (columns + 1))
  for (let row = 0; row < count; row += 1) {
    out[row * (columns + 1)] = 2
    for (let column = 0; column < columns; column += 1) {
      const at = row * columns + column
      out[row * (columns + 1) + 1 + column] = ((rows[at] ?? 0) - (row === 0 ? 0 : rows[at - columns] ?? 0)) & 0xff
    }
  }
  return out
}
