import type PDFDocument from 'pdfkit'
import type { Reference } from 'pdfkit'
import type { PlacedBox } from '../sheet/placed.ts'
import { digits, fromBottom, points } from './numbers.ts'

/** Form check boxes, made by hand: PDFKit's own have no appearance, so they stay invisible until they are ticked. */
export class CheckBoxes {
  readonly #document: PDFDocument
  readonly #fields: Reference[] = []
  /** Appearances by the size of the box: one pair serves every box of a size. */
  readonly #appearances = new Map<string, Reference>()

  constructor(document: PDFDocument) {
    this.#document = document
  }

  /** Puts a box on a page, not ticked. `structParent` leads back from it to its place in the structure tree. */
  add({ x, y, side, weight, name }: PlacedBox, page: Reference, structParent: number): Reference {
    const half = weight / 2
    const edges = [points(x) - half, fromBottom(y + side) - half, points(x + side) + half, fromBottom(y) + half]
    const field = this.#document.ref({
      Type: 'Annot', Subtype: 'Widget', FT: 'Btn', T: new String(name.replaceAll('.', '')), TU: new String(name), V: 'Off', AS: 'Off',
      Rect: edges.map((edge) => Math.round(edge * 1000) / 1000), F: 4, P: page, StructParent: structParent, AP: this.#appearance(side, weight),
    })
    field.end()
    this.#fields.push(field)
    return field
  }

  /** Ends the form. A viewer is not to make up looks of its own. */
  end(): void {
    if (this.#fields.length === 0) return
    this.#document.initForm()
    const form = this.#document._root.data['AcroForm'] as Reference
    form.data['Fields'] = this.#fields
    form.data['NeedAppearances'] = false
  }

  /** The square itself is on the page, where every printer finds it; ticked, a mark is laid over it. */
  #appearance(side: number, weight: number): Reference {
    const key = `${side} ${weight}`
    const known = this.#appearances.get(key)
    if (known) return known
    const whole = points(side) + weight
    const tick = [[0.2, 0.52], [0.42, 0.27], [0.82, 0.78]].map(([u = 0, v = 0], at) => `${digits(u * whole)} ${digits(v * whole)} ${at === 0 ? 'm' : 'l'}`)
    const appearance = this.#document.ref({ N: { Off: this.#form(whole, ' '), Yes: this.#form(whole, `${digits(whole / 9)} w ${tick.join(' ')} S`) } })
    appearance.end()
    this.#appearances.set(key, appearance)
    return appearance
  }

  #form(side: number, operators: string): Reference {
    const form = this.#document.ref({ Type: 'XObject', Subtype: 'Form', BBox: [0, 0, side, side], Resources: {} })
    form.end(operators)
    return form
  }
}
