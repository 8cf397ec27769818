import { takeCornerCentre, takeCornerSize } from './parse-centre.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Thing } from './target.ts'

/** Takes `to the ch-2 sp`, `until next corner`, `to center sc of next 3-sc corner`, `to 2nd sc of 3-sc corner`: the place before which something ends. */
export function takeUpTo(reader: Reader): Thing | undefined {
  const { at } = reader
  if (!reader.take('across?', 'up?', 'to|until', 'the?', 'next|first?')) return undefined
  // `sc in each sc to the buttonhole`: its chains.
  if (reader.take('buttonhole|eyelet', 'opening|sp|space|loop?')) return { kind: 'space' }
  const nth = takeCornerCentre(reader)
  if (nth) return nth
  const centre = reader.take('center|centre|middle|first', 'st|stitch|sc|dc|hdc|tr', 'of|in', 'the?', 'next|each?')
  if (centre) takeCornerSize(reader)
  const found = takeThing(reader)
  const thing = centre && found?.where === 'corner' ? { kind: 'stitch' as const, where: 'corner' as const } : found
  // `to the side edge`
  if (reader.word(-1) === 'side' && reader.word() === 'edge') return back(reader, at)
  if (thing && (thing.kind === 'space' || thing.where === 'corner')) return thing
  reader.at = at
  return undefined
}

function back(reader: Reader, at: number): undefined {
  reader.at = at
  return undefined
}
