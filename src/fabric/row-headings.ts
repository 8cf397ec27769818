import type { RowLabel } from '../notation/labels.ts'
import type { RowsEntry } from '../notation/split-rows.ts'
import type { Remark, WrittenEntry } from './real-rows.ts'

/** Headings that a row may call a part by: a few words, and no sentence. */
export function headingsIn(text: string, parts: readonly RowsEntry[]): readonly string[] {
  return parts.flatMap((part, index) => {
    const alone = part.kind === 'row' && part.label?.word === 'unsaid' && part.label.numbers.length === 0 ? partName(part.label.name) : ''
    const name = part.kind === 'row' ? (part.label?.part ?? alone) : parts[index + 1]?.kind === 'row' ? partName(text.slice(part.span.start, part.span.end)) : ''
    return /^(?:front|back|left|right|cent(?:re|er)|middle|\p{L}+(?: [\p{L}\d]+){1,3})$/u.test(name) ? [name] : []
  })
}

/** A heading's words, without what only makes it one: `Note: FIRST SHOULDER.` */
function partName(heading: string): string {
  return heading.toLowerCase().replace(/^notes?\s*:\s*/, '').replace(/\s*\(.*?\)/, '').replace(/\s*[:.]$/, '')
}

/** `First side, row 1:`: the part stands in the label, its first row is headed by it, and the rows behind that have no heading of their own belong to it. */
export function partOf(label: RowLabel | undefined, above: WrittenEntry | undefined, remarked: boolean): Pick<WrittenEntry, 'headed' | 'heading' | 'ofPart'> {
  const goesOn = label?.part === undefined && !remarked ? above?.ofPart : undefined
  if (label?.part === undefined) return goesOn === undefined ? {} : { heading: goesOn, ofPart: goesOn }
  return { heading: label.part, ofPart: label.part, ...(label.part !== above?.label?.part && { headed: true }) }
}

export function headingOf(text: string, remarks: readonly Remark[], before: number): Pick<WrittenEntry, 'headed' | 'heading'> {
  const last = remarks.at(-1)
  if (!last) return {}
  const { start, end } = last.heading ?? last.span
  return { heading: text.slice(start, end).replace(/\s*[:.]$/, '').toLowerCase(), ...(last.after === before && { headed: true }) }
}
