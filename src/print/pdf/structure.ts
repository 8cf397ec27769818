import type PDFDocument from 'pdfkit'
import type { PdfValue, Reference } from 'pdfkit'
import { mmPerPoint } from '../sheet/measures.ts'
import { isTag, type Placed, type Tag, type TagType } from '../sheet/placed.ts'
import { fromBottom, points } from './numbers.ts'

/** A kid of a structure element: another element, a piece of a page, or an annotation. */
export type Kid =
  | { readonly element: Reference }
  | { readonly page: Reference; readonly mcid: number }
  | { readonly page: Reference; readonly annotation: Reference }

/** Leads from the number of a page or an annotation back to the elements that own what is on it. */
interface ParentTree {
  add(key: number, value: Reference | readonly (Reference | null)[]): void
}

/**
 * Writes the structure tree into the document. PDFKit's own elements want their content drawn inside closures and lose what follows a
 * rule; here each element is one object, ended as soon as its kids are known.
 */
export class StructureWriter {
  readonly #document: PDFDocument
  readonly #root: Reference
  /** For each page by its key: the elements that own its pieces, by their number. */
  readonly #owners = new Map<Reference, (Reference | null)[]>()
  /** An object for each element, those of a type numbered without a gap: the file's table of places then packs to nearly nothing. */
  readonly #elements: ReadonlyMap<TagType, Iterator<Reference>>

  constructor(document: PDFDocument, tree: Tag) {
    this.#document = document
    this.#root = document.getStructTreeRoot()
    const types = Map.groupBy(typesIn(tree), (type) => type)
    this.#elements = new Map([...types].map(([type, all]) => [type, all.map(() => document.ref({})).values()]))
  }

  /** Begins the next element of a type, so that its content can point to it. */
  begin(type: TagType): Reference {
    return this.#elements.get(type)?.next().value as Reference
  }

  /** The number of the next piece of a page, which an element owns. */
  nextPiece(page: Reference, owner: Reference): number {
    let owners = this.#owners.get(page)
    if (!owners) {
      const key = this.#document.createStructParentTreeNextKey()
      page.data['StructParents'] = key
      this.#owners.set(page, (owners = []))
      this.#parentTree().add(key, owners)
    }
    return owners.push(owner) - 1
  }

  /** The key of an annotation that an element owns. */
  annotationKey(owner: Reference): number {
    const key = this.#document.createStructParentTreeNextKey()
    this.#parentTree().add(key, owner)
    return key
  }

  /** Ends an element. The root's parent is the structure tree itself. */
  end(element: Reference, tag: Tag, parent: Reference | undefined, kids: readonly Kid[]): void {
    const page = kids.find((kid) => 'page' in kid)
    Object.assign(element.data, { S: tag.type, P: parent ?? this.#root })
    if (page && 'page' in page) element.data['Pg'] = page.page
    if (tag.alt !== undefined) element.data['Alt'] = new String(tag.alt)
    if (tag.actual !== undefined) element.data['ActualText'] = new String(tag.actual)
    const attributes = attributesOf(tag)
    if (attributes) element.data['A'] = attributes
    const values = kids.map((kid) => valueOf(kid, element.data['Pg'] as Reference | undefined))
    if (values.length > 0) element.data['K'] = values.length === 1 ? (values[0] as PdfValue) : values
    if (!parent) this.#root.data['K'] = [element]
    element.end()
  }

  #parentTree(): ParentTree {
    return this.#root.data['ParentTree'] as unknown as ParentTree
  }
}

const typesIn = (tree: Tag): readonly TagType[] => [tree.type, ...tree.children.flatMap((child) => (isTag(child) ? typesIn(child) : []))]

function valueOf(kid: Kid, page: Reference | undefined): PdfValue {
  if ('element' in kid) return kid.element
  if ('annotation' in kid) return { Type: 'OBJR', Obj: kid.annotation, Pg: kid.page }
  return kid.page === page ? kid.mcid : { Type: 'MCR', Pg: kid.page, MCID: kid.mcid }
}

function attributesOf(tag: Tag): PdfValue | undefined {
  const { scope, colSpan, rowSpan, numbering } = tag
  if (tag.type === 'Figure') return { O: 'Layout', Placement: 'Block', BBox: boundsOf(tag) }
  if (numbering) return { O: 'List', ListNumbering: numbering }
  if (scope === undefined && colSpan === undefined && rowSpan === undefined) return undefined
  return { O: 'Table', Scope: scope, ColSpan: colSpan, RowSpan: rowSpan }
}

/** The rectangle that a figure fills, in points: left, bottom, right, top. */
function boundsOf(figure: Tag): readonly number[] {
  const corners = figure.children.flatMap((child) => (isTag(child) ? [] : cornersOf(child)))
  const [xs, ys] = [corners.map(({ x }) => points(x)), corners.map(({ y }) => fromBottom(y))]
  const edges = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
  return edges.map((edge) => Math.round(edge * 100) / 100)
}

function cornersOf(one: Placed): readonly { readonly x: number; readonly y: number }[] {
  if (one.kind === 'line') return [{ x: one.x1, y: one.y1 }, { x: one.x2, y: one.y2 }]
  if (one.kind === 'ellipse') {
    // As wide as the longer half axis on every side: a turned chain reaches no further.
    const reach = Math.max(one.rx, one.ry)
    return [{ x: one.x - reach, y: one.y - reach }, { x: one.x + reach, y: one.y + reach }]
  }
  if (one.kind === 'text' && one.turned) return [{ x: one.x, y: one.y }, { x: one.x - one.size * mmPerPoint, y: one.y - one.width }]
  const [width, height] = one.kind === 'text' ? [one.width, -one.size * mmPerPoint] : [one.side, one.side]
  return [{ x: one.x, y: one.y }, { x: one.x + width, y: one.y + height }]
}
