import { textOf } from '../../text/source.ts'
import { changeOfWords, type Change, type Slip } from './change.ts'

const stitch = String.raw`(?:\d{1,2} )?(?:fp|bp|e)?(?:sc|hdc|dc|tr|htr|dtr)`
const parts = String.raw`(?:(?:${stitch}|ch \d{1,2}), ){1,6}(?:and )?${stitch}`
const into = String.raw`(?: in (?:next|same|first|last) (?:st|sc|hdc|dc|tr|ch-\d sp|sp|corner(?: sp)?))`

// One place or several: each form against the one that it is mistaken for.
const ways: readonly { readonly written: RegExp; readonly instead: string; readonly fits?: true }[] = [
  { written: /\bin next (\d{1,3} (?:sts?|sc|hdc|dc|tr|htr))\b/gi, instead: 'in each of next $1' },
  { written: /\bin (?:each of|each) (?:the )?next (\d{1,3} (?:sts?|sc|hdc|dc|tr|htr))\b/gi, instead: 'in next $1' },
  { written: new RegExp(String.raw`(?<=^|[,;*.] ?)\b(${parts})(${into})`, 'gi'), instead: '($1)$2', fits: true },
  { written: new RegExp(String.raw`\((${parts})\)(${into})`, 'gi'), instead: '$1$2', fits: true },
  { written: /\bin same st\b/gi, instead: 'in next st' },
]

/** Stitches that are told for one place and worked over several, or the other way round. */
export function placeChanges(slip: Slip): readonly Change[] {
  const { source, row: { written: { text: within } } } = slip
  const text = textOf(source, within)
  return ways.flatMap(({ written, instead, fits }) => [...text.matchAll(written)].slice(0, 2).map((match) => {
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    const words = instead.replace(/\$(\d)/g, (_, group) => match[Number(group)] ?? '')
    return { ...changeOfWords(slip, within, span, words), ...(fits && { fits }) }
  }))
}
