import type PDFDocument from 'pdfkit'
import type { PdfValue, Reference } from 'pdfkit'
import type { Tag } from '../sheet/placed.ts'

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

  constructor(document: PDFDocument) {
    this.#document = document
    this.#root = document.getStructTreeRoot()
  }

  /** Begins an element, so that its content can point to it. */
  begin(): Reference {
    return this.#document.ref({})
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

function valueOf(kid: Kid, page: Reference | undefined): PdfValue {
  if ('element' in kid) return kid.element
  if ('annotation' in kid) return { Type: 'OBJR', Obj: kid.annotation, Pg: kid.page }
  return kid.page === page ? kid.mcid : { Type: 'MCR', Pg: kid.page, MCID: kid.mcid }
}

function attributesOf({ scope, colSpan, rowSpan, numbering }: Tag): PdfValue | undefined {
  if (numbering) return { O: 'List', ListNumbering: numbering }
  if (scope === undefined && colSpan === undefined && rowSpan === undefined) return undefined
  return { O: 'Table', Scope: scope, ColSpan: colSpan, RowSpan: rowSpan }
}
