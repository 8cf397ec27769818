import type { Booklet, Part, Section } from '../booklet/booklet.ts'
import { anchors } from './anchors.ts'

/** A part or a section of prose, with its place on the page. */
export interface Placed<T> {
  readonly id: string
  readonly what: T
}

/** Everything with a head on a pattern's page, in the order of the page. */
export interface PatternPlaces {
  readonly before: readonly Placed<Section>[]
  readonly parts: readonly Placed<Part>[]
  readonly after: readonly Placed<Section>[]
  /** The list `On this page`. */
  readonly contents: readonly { readonly id: string; readonly name: string }[]
}

/** Gives every head on a pattern's page a place of its own, apart from the rows' places. */
export function patternPlaces({ before, parts, after, materials, gauge, abbreviations, key, terms }: Booklet): PatternPlaces {
  const own = [
    ...(materials.length > 0 ? [{ id: 'materials', name: 'Materials' }] : []),
    ...(gauge ? [{ id: 'gauge', name: terms === 'UK' ? 'Tension' : 'Gauge' }] : []),
    ...(abbreviations.length > 0 ? [{ id: 'abbreviations', name: 'Abbreviations' }] : []),
    ...(key ? [{ id: 'how-to-read-a-row', name: 'How to read a row' }] : []),
  ]
  const rows = parts.flatMap(({ lines }) => lines.flatMap((line) => (line.kind === 'row' ? [line.id] : [])))
  const names = [...before.map(({ heading }) => heading), ...parts.map(({ name }) => name), ...after.map(({ heading }) => heading)]
  const ids = anchors(names, [...own.map(({ id }) => id), ...rows, 'content', 'at-a-glance', 'special-stitches', 'safety', 'on-this-page', 'to-look-at', 'options', 'on-paper', 'versions', 'here', 'buying'])
  const placed = <T>(things: readonly T[], from: number) => things.map((what, at) => ({ id: ids[from + at] ?? '', what }))
  const places = {
    before: placed(before, 0),
    parts: placed(parts, before.length),
    after: placed(after, before.length + parts.length),
  }
  const section = ({ id, what }: Placed<Section>) => ({ id, name: what.heading })
  return {
    ...places,
    contents: [
      ...own,
      ...places.before.map(section),
      ...places.parts.map(({ id, what }) => ({ id, name: `${what.number} ${what.name}` })),
      ...places.after.map(section),
    ],
  }
}
