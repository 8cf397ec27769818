import { inflateSync } from 'node:zlib'

/** A value of PDF (ISO 32000-1, 7.3), read apart from the program that wrote it. A name is `/Name`, a reference `{ ref }`. */
export type PdfObject = number | boolean | null | string | PdfText | PdfRef | readonly PdfObject[] | PdfDict
export interface PdfRef { readonly ref: number }
export interface PdfText { readonly text: string }
export interface PdfDict { readonly dict: ReadonlyMap<string, PdfObject>; readonly stream?: Uint8Array }

export const isRef = (value: PdfObject | undefined): value is PdfRef => typeof value === 'object' && value !== null && 'ref' in value
export const isDict = (value: PdfObject | undefined): value is PdfDict => typeof value === 'object' && value !== null && 'dict' in value
export const isText = (value: PdfObject | undefined): value is PdfText => typeof value === 'object' && value !== null && 'text' in value

/** A file as a reader has it: its objects by number, and where its catalogue is. */
export interface PdfFile {
  readonly objects: Map<number, PdfObject>
  readonly catalogue: PdfDict
  /** Follows references to a value. */
  readonly at: (value: PdfObject | undefined) => PdfObject | undefined
  readonly dictAt: (value: PdfObject | undefined) => PdfDict | undefined
  readonly listAt: (value: PdfObject | undefined) => readonly PdfObject[]
}

/** Reads a whole file, packed objects included. It takes the file's objects one after the other and believes no table of places. */
export function readPdfObjects(bytes: Uint8Array): PdfFile {
  const file = Buffer.from(bytes).toString('latin1')
  const objects = new Map<number, PdfObject>()
  for (const found of file.matchAll(/(?:^|\n)(\d+) 0 obj\n/g)) {
    const reader = new Reader(file, found.index + found[0].length)
    const value = reader.value()
    objects.set(Number(found[1]), isDict(value) ? { ...value, ...streamAfter(file, reader.at, value) } : value)
  }
  for (const value of [...objects.values()]) if (isDict(value) && value.dict.get('Type') === '/ObjStm') for (const [id, one] of packed(value)) objects.set(id, one)
  const at = (value: PdfObject | undefined): PdfObject | undefined => (isRef(value) ? at(objects.get(value.ref)) : value)
  const dictAt = (value: PdfObject | undefined) => {
    const own = at(value)
    return isDict(own) ? own : undefined
  }
  const listAt = (value: PdfObject | undefined): readonly PdfObject[] => {
    const own = at(value)
    return Array.isArray(own) ? own : own === undefined || own === null ? [] : [value as PdfObject]
  }
  const trailer = [...objects.values()].find((value) => isDict(value) && value.dict.get('Type') === '/XRef') as PdfDict
  return { objects, at, dictAt, listAt, catalogue: dictAt(trailer.dict.get('Root')) as PdfDict }
}

/** The pages of a file, as objects. */
export function pageObjects(file: PdfFile): readonly { readonly id: number; readonly dict: PdfDict }[] {
  const pages = (value: PdfObject): readonly { id: number; dict: PdfDict }[] => {
    const dict = file.dictAt(value)!
    return dict.dict.get('Type') === '/Pages' ? file.listAt(dict.dict.get('Kids')).flatMap(pages) : [{ id: isRef(value) ? value.ref : 0, dict }]
  }
  return pages(file.catalogue.dict.get('Pages')!)
}

function streamAfter(file: string, from: number, { dict }: PdfDict): { readonly stream?: Uint8Array } {
  const [head] = /^\s*stream\r?\n/.exec(file.slice(from, from + 20)) ?? []
  const length = dict.get('Length')
  if (head === undefined || typeof length !== 'number') return {}
  const raw = Buffer.from(file.slice(from + head.length, from + head.length + length), 'latin1')
  return { stream: dict.get('Filter') === '/FlateDecode' ? inflateSync(raw) : raw }
}

function packed({ dict, stream = new Uint8Array() }: PdfDict): readonly (readonly [number, PdfObject])[] {
  const text = Buffer.from(stream).toString('latin1')
  const first = Number(dict.get('First'))
  const heads = text.slice(0, first).trim().split(/\s+/).map(Number)
  return Array.from({ length: Number(dict.get('N')) }, (_, index) => [heads[2 * index]!, new Reader(text, first + heads[2 * index + 1]!).value()] as const)
}

class Reader {
  readonly file: string
  at: number

  constructor(file: string, at: number) {
    this.file = file
    this.at = at
  }

  #take(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at
    const found = pattern.exec(this.file)
    if (!found || found.index !== this.at) return undefined
    this.at += found[0].length
    return found[0]
  }

  value(): PdfObject {
    this.#take(/\s+/y)
    if (this.#take(/<</y)) return this.#dict()
    if (this.#take(/\[/y)) return this.#list()
    const name = this.#take(/\/[^\s/<>[\]()]*/y)
    if (name !== undefined) return name
    const hex = this.#take(/<[0-9A-Fa-f\s]*>/y)
    if (hex !== undefined) return { text: decoded(Buffer.from(hex.slice(1, -1), 'hex').toString('latin1')) }
    if (this.#take(/\(/y)) return { text: decoded(this.#literal()) }
    const ref = this.#take(/\d+ \d+ R/y)
    if (ref !== undefined) return { ref: Number.parseInt(ref, 10) }
    const number = this.#take(/[+-]?(?:\d+\.?\d*|\.\d+)/y)
    if (number !== undefined) return Number(number)
    const word = this.#take(/true|false|null/y)
    if (word === undefined) throw new Error(`no value at ${this.at}: ${JSON.stringify(this.file.slice(this.at, this.at + 30))}`)
    return word === 'null' ? null : word === 'true'
  }

  #dict(): PdfDict {
    const dict = new Map<string, PdfObject>()
    for (;;) {
      this.#take(/\s+/y)
      if (this.#take(/>>/y)) return { dict }
      const key = this.#take(/\/[^\s/<>[\]()]+/y)
      if (key === undefined) throw new Error(`no key at ${this.at}`)
      dict.set(key.slice(1), this.value())
    }
  }

  #list(): readonly PdfObject[] {
    const list: PdfObject[] = []
    for (;;) {
      this.#take(/\s+/y)
      if (this.#take(/\]/y)) return list
      list.push(this.value())
    }
  }

  #literal(): string {
    let out = ''
    for (let depth = 1; ;) {
      const character = this.file[this.at++]
      if (character === undefined) throw new Error('a string without an end')
      if (character === '\\') {
        const next = this.file[this.at++] ?? ''
        out += { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }[next] ?? next
        continue
      }
      if (character === '(') depth += 1
      if (character === ')' && --depth === 0) return out
      out += character
    }
  }
}

/** A text string: UTF-16 with its mark, or PDFDocEncoding, which is Latin-1 for the letters that are used here. */
function decoded(raw: string): string {
  return raw.startsWith('\xfe\xff') ? Buffer.from(raw.slice(2), 'latin1').swap16().toString('utf16le') : raw
}
