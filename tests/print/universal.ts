import { isDict, isRef, isText, pageObjects, readPdfObjects, type PdfDict, type PdfFile, type PdfObject } from './pdf-objects.ts'

/** An element of the structure tree with its place in the file. */
export interface Element {
  readonly id: number
  readonly type: string
  readonly dict: PdfDict
  readonly parent: Element | undefined
  readonly children: readonly Element[]
  /** Pieces of pages, by the page's number as an object, and annotations that it owns. */
  readonly pieces: readonly { readonly page: number; readonly mcid: number }[]
  readonly annotations: readonly number[]
}

/** The structure tree of a file from its root down. */
export function structureOf(file: PdfFile): Element {
  const root = file.dictAt(file.catalogue.dict.get('StructTreeRoot'))!
  const [first] = file.listAt(root.dict.get('K'))
  return elementOf(file, first, undefined)
}

function elementOf(file: PdfFile, value: PdfObject | undefined, parent: Element | undefined): Element {
  const dict = file.dictAt(value)!
  const element = { id: isRef(value) ? value.ref : 0, type: String(dict.dict.get('S')).slice(1), dict, parent, children: [] as Element[], pieces: [] as { page: number; mcid: number }[], annotations: [] as number[] }
  const own = dict.dict.get('Pg')
  const kids = file.at(dict.dict.get('K'))
  for (const kid of Array.isArray(kids) ? kids : kids === undefined ? [] : [dict.dict.get('K')!]) {
    if (typeof kid === 'number') element.pieces.push({ page: isRef(own) ? own.ref : 0, mcid: kid })
    else {
      const inner = file.dictAt(kid)!
      const type = inner.dict.get('Type')
      const page = inner.dict.get('Pg') ?? own
      if (type === '/MCR') element.pieces.push({ page: isRef(page) ? page.ref : 0, mcid: Number(inner.dict.get('MCID')) })
      else if (type === '/OBJR') element.annotations.push((inner.dict.get('Obj') as { ref: number }).ref)
      else element.children.push(elementOf(file, kid, element))
    }
  }
  return element
}

/** An element and all below it, in reading order. */
export const allOf = (element: Element): readonly Element[] => [element, ...element.children.flatMap(allOf)]

/** What each number of a number tree stands for (ISO 32000-1, 7.9.7). */
function numbersOf(file: PdfFile, tree: PdfDict): ReadonlyMap<number, PdfObject> {
  const found = new Map<number, PdfObject>()
  const pairs = file.listAt(tree.dict.get('Nums'))
  for (let at = 0; at < pairs.length; at += 2) found.set(Number(pairs[at]), pairs[at + 1]!)
  for (const kid of file.listAt(tree.dict.get('Kids'))) for (const [key, value] of numbersOf(file, file.dictAt(kid)!)) found.set(key, value)
  return found
}

const content = (file: PdfFile, page: PdfDict): string => file.listAt(page.dict.get('Contents')).map((one) => Buffer.from(file.dictAt(one)?.stream ?? []).toString('latin1')).join('\n')

/** Types that may stand in others (ISO 32000-1, 14.8.4.3; ISO 14289-1, 7.5 and 7.6). */
const inside: Readonly<Record<string, readonly string[]>> = {
  Table: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'], THead: ['TR'], TBody: ['TR'], TR: ['TH', 'TD'], L: ['LI', 'L', 'Caption'], LI: ['Lbl', 'LBody'],
}
const onlyIn: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table', 'THead', 'TBody', 'TFoot'], TH: ['TR'], TD: ['TR'], THead: ['Table'], TBody: ['Table'], LI: ['L'], LBody: ['LI'],
}
const standard = new Set(['Document', 'H1', 'H2', 'H3', 'H4', 'H5', 'H6', 'P', 'Span', 'Link', 'Figure', 'Form', 'L', 'LI', 'Lbl', 'LBody', 'Table', 'THead', 'TBody', 'TR', 'TH', 'TD'])

/**
 * Failure conditions of ISO 14289-1 that a machine can find, as the Matterhorn Protocol 1.1 numbers them. Numbers and wording are from memory;
 * no validator could be had from the registries. Gives a line for each failure.
 */
export const universalFailures = (bytes: Uint8Array): readonly string[] => failuresOf(readPdfObjects(bytes))

/** The same of a file that was read. */
export function failuresOf(file: PdfFile): readonly string[] {
  const { catalogue, at, dictAt, listAt } = file
  const failures: string[] = []
  const fail = (condition: string, holds: boolean, what = '') => {
    if (!holds) failures.push(`${condition}${what === '' ? '' : `: ${what}`}`)
  }
  const root = structureOf(file)
  const elements = allOf(root)
  const pages = pageObjects(file)

  // 06, 07, 11, 25, 26: the file as a whole.
  const metadata = Buffer.from(dictAt(catalogue.dict.get('Metadata'))?.stream ?? []).toString('utf8')
  fail('06-001 no metadata', metadata !== '')
  fail('06-002 no identification', /<pdfuaid:part>1<\/pdfuaid:part>|pdfuaid:part="1"/.test(metadata))
  fail('06-003 no dc:title', /<dc:title>[^]*<rdf:li[^>]*>[^<]+</.test(metadata))
  fail('07-001 no title in the window', dictAt(catalogue.dict.get('ViewerPreferences'))?.dict.get('DisplayDocTitle') === true)
  fail('11-006 no language', isText(at(catalogue.dict.get('Lang'))))
  fail('02-003 not marked, or suspect', dictAt(catalogue.dict.get('MarkInfo'))?.dict.get('Marked') === true && dictAt(catalogue.dict.get('MarkInfo'))?.dict.get('Suspects') !== true)
  fail('25-001 XFA', dictAt(catalogue.dict.get('AcroForm'))?.dict.get('XFA') === undefined)
  fail('26-001 encrypted', ![...file.objects.values()].some((one) => isDict(one) && one.dict.get('Filter') === '/Standard'))
  fail('21-001 embedded files', ![...file.objects.values()].some((one) => isDict(one) && one.dict.get('Type') === '/Filespec'))

  // 02, 09, 13, 14, 15: the structure tree.
  for (const { type, children, parent, dict } of elements) {
    fail('02-001 no standard type', standard.has(type), type)
    for (const child of children) fail('09-004 child out of place', inside[type]?.includes(child.type) ?? true, `${child.type} in ${type}`)
    fail('09-005 out of its place', !(type in onlyIn) || (parent !== undefined && onlyIn[type]!.includes(parent.type)), type)
    fail('09-006 Lbl out of its place', type !== 'Lbl' || parent?.type === 'LI', parent?.type)
    if (type === 'Figure') fail('13-004 figure without words', isText(at(dict.dict.get('Alt'))) && (at(dict.dict.get('Alt')) as { text: string }).text.trim() !== '')
    if (type === 'Figure') fail('13-001 figure without bounds', listAt(dictAt(dict.dict.get('A'))?.dict.get('BBox')).length === 4)
    if (type === 'TH') fail('15-003 head without scope', ['/Row', '/Column', '/Both'].includes(String(dictAt(dict.dict.get('A'))?.dict.get('Scope'))))
    if (type === 'L') fail('16-001 list without numbering', dictAt(dict.dict.get('A'))?.dict.get('ListNumbering') !== undefined)
  }
  const levels = elements.flatMap(({ type }) => (/^H[1-6]$/.test(type) ? [Number(type[1])] : []))
  fail('14-002 does not begin with H1', levels[0] === 1)
  fail('14-003 skips a level', levels.every((level, index) => index === 0 || level <= (levels[index - 1] ?? 0) + 1))
  for (const table of elements.filter(({ type }) => type === 'Table')) fail('15-005 ragged table', isRegular(table, file), String(table.id))

  // 01 and the parent tree: what is on a page is owned once, and the way back leads to its owner.
  const tree = numbersOf(file, dictAt(dictAt(catalogue.dict.get('StructTreeRoot'))!.dict.get('ParentTree'))!)
  const owners = new Map(elements.flatMap(({ id, pieces }) => pieces.map(({ page, mcid }) => [`${page} ${mcid}`, id] as const)))
  fail('01-006 a piece is owned twice', owners.size === elements.reduce((sum, { pieces }) => sum + pieces.length, 0))
  for (const { id, dict } of pages) {
    const ids = [...content(file, dict).matchAll(/\/MCID (\d+)/g)].map(([, mcid]) => Number(mcid))
    const back = listAt(tree.get(Number(dict.dict.get('StructParents'))))
    fail('01-006 a number is used twice', new Set(ids).size === ids.length)
    for (const mcid of ids) {
      const way = back[mcid]
      fail('01-006 the way back leads elsewhere', isRef(way) && way.ref === owners.get(`${id} ${mcid}`), `${mcid}`)
    }
    // 28: annotations.
    const annotations = listAt(dict.dict.get('Annots'))
    fail('28-008 order of tabs', annotations.length === 0 || dict.dict.get('Tabs') === '/S')
    for (const one of annotations) {
      const annotation = dictAt(one)!
      const number = isRef(one) ? one.ref : 0
      const owner = elements.find((element) => element.annotations.includes(number))
      const subtype = annotation.dict.get('Subtype')
      fail('28-004 an annotation of another kind', subtype === '/Widget' || subtype === '/Link', String(subtype))
      if (subtype === '/Widget') fail('28-005 field without a name', isText(annotation.dict.get('TU')) && (annotation.dict.get('TU') as { text: string }).text !== '')
      if (subtype === '/Widget') fail('28-010 field outside a Form', owner?.type === 'Form')
      if (subtype === '/Link') fail('28-012 link without words', isText(annotation.dict.get('Contents')) && (annotation.dict.get('Contents') as { text: string }).text.trim() !== '')
      if (subtype === '/Link') fail('28-011 link outside a Link', owner?.type === 'Link')
      const way = tree.get(Number(annotation.dict.get('StructParent')))
      fail('28-002 the way back leads elsewhere', isRef(way) && way.ref === owner?.id)
    }
  }
  for (const link of elements.filter(({ type }) => type === 'Link')) fail('28-011 Link without a link', link.annotations.length > 0, String(link.id))
  for (const form of elements.filter(({ type }) => type === 'Form')) fail('28-010 Form without one field', form.annotations.length === 1 && form.children.length === 0)
  return [...failures, ...fontFailures(file, pages)]
}

/** Whether all rows of a table have as many cells, spans counted. */
function isRegular(table: Element, { dictAt, at }: PdfFile): boolean {
  const rows = allOf(table).filter(({ type }) => type === 'TR')
  const carried: number[] = []
  const widths = rows.map((row) => {
    let width = carried.shift() ?? 0
    for (const { dict } of row.children) {
      const attributes = dictAt(dict.dict.get('A'))?.dict
      const columns = Number(at(attributes?.get('ColSpan')) ?? 1)
      width += columns
      for (let down = 1; down < Number(at(attributes?.get('RowSpan')) ?? 1); down += 1) carried[down - 1] = (carried[down - 1] ?? 0) + columns
    }
    return width
  })
  return new Set(widths).size <= 1
}

/** 31: fonts are embedded, every glyph that is shown has a meaning and none is the box for what is missing. */
function fontFailures(file: PdfFile, pages: readonly { readonly dict: PdfDict }[]): readonly string[] {
  const { dictAt, listAt, at } = file
  const failures: string[] = []
  const fail = (condition: string, holds: boolean, what = '') => {
    if (!holds) failures.push(`${condition}: ${what}`)
  }
  for (const { dict } of pages) {
    const fonts = dictAt(dictAt(dict.dict.get('Resources'))?.dict.get('Font'))?.dict ?? new Map<string, PdfObject>()
    const shown = shownGlyphs(content(file, dict))
    for (const [name, glyphs] of shown) {
      const font = dictAt(fonts.get(name))!
      const descendant = dictAt(listAt(font.dict.get('DescendantFonts'))[0])!
      const descriptor = dictAt(descendant.dict.get('FontDescriptor'))!
      fail('31-009 not embedded', dictAt(descriptor.dict.get('FontFile2'))?.stream !== undefined, name)
      fail('31-004 no map of glyphs', descendant.dict.get('CIDToGIDMap') !== undefined, name)
      fail('31-006 another encoding', font.dict.get('Encoding') === '/Identity-H', name)
      const meanings = meaningsOf(Buffer.from(dictAt(font.dict.get('ToUnicode'))?.stream ?? []).toString('latin1'))
      const widths = listAt(listAt(descendant.dict.get('W'))[1])
      for (const glyph of glyphs) {
        fail('31-030 shows what is missing', glyph !== 0, name)
        const meaning = meanings.get(glyph)
        fail('31-027 a glyph without a meaning', meaning !== undefined && meaning !== '' && !/[\u0000\ufeff\ufffe]/.test(meaning), `${name} ${glyph}`)
        fail('31-016 a glyph without a width', typeof at(widths[glyph]) === 'number', `${name} ${glyph}`)
      }
    }
  }
  return [...new Set(failures)]
}

/** Glyph numbers that a page shows, by the name of the font in force. */
function shownGlyphs(stream: string): ReadonlyMap<string, ReadonlySet<number>> {
  const found = new Map<string, Set<number>>()
  let font = ''
  for (const [, name, hex] of stream.matchAll(/\/(\w+) [\d.]+ Tf|(?<!<)<([0-9A-Fa-f]+)>(?!>)/g)) {
    if (name !== undefined) font = name
    else if (hex !== undefined && font !== '' && !hex.startsWith('FEFF')) {
      const glyphs = found.get(font) ?? new Set()
      found.set(font, glyphs)
      for (let at = 0; at < hex.length; at += 4) glyphs.add(Number.parseInt(hex.slice(at, at + 4), 16))
    }
  }
  return found
}

/** What each glyph means, by the character map of a font (ISO 32000-1, 9.10.3). */
function meaningsOf(map: string): ReadonlyMap<number, string> {
  const found = new Map<number, string>()
  const text = (hex: string) => Buffer.from(hex, 'hex').swap16().toString('utf16le')
  for (const [, body = ''] of map.matchAll(/beginbfrange\s([^]*?)endbfrange/g)) {
    for (const [, from = '', , list, single] of body.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*(?:\[([^\]]*)\]|<([0-9a-f]+)>)/gi)) {
      const first = Number.parseInt(from, 16)
      if (list !== undefined) [...list.matchAll(/<([0-9a-f\s]*)>/gi)].forEach(([, hex = ''], index) => found.set(first + index, text(hex.replace(/\s/g, ''))))
      else if (single !== undefined) found.set(first, text(single))
    }
  }
  for (const [, body = ''] of map.matchAll(/beginbfchar\s([^]*?)endbfchar/g)) {
    for (const [, code = '', hex = ''] of body.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi)) found.set(Number.parseInt(code, 16), text(hex))
  }
  return found
}
