import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { sentencesOf, spanOf } from './passages.ts'
import { sizeCount, type SenseFacts } from './sense-facts.ts'

const stated = /\bmultiples? of (\d{1,3})(?:\s+(?:sts|stitches|chs?|chains))?(?:,?\s*(?:plus|\+|and|add)\s*(\d{1,3})(?:\s+(?:more|sts|stitches|chs?|chains))*)?(?:,?\s*(?:\(?\s*(?:plus|\+|and|add))\s*(\d{1,3})\b)?/i

/** `Rnd 2 of the border needs a multiple of 6 sts`: the row that the sentence speaks of. */
const ofRow = /\b(?:row|rnd|rd|round)s? (\d{1,3})\b/i

/** `The shell round is a multiple of 6`: one of those round what was begun. */
const ofEdging = /\b(?:round|rnd|edging|edge|border|trim|band)\b/i

/** What the rows that a sentence speaks of are worked on, each alone: those of that number, or of the border that it names. */
function offeredTo(facts: SenseFacts, sentence: string): readonly (readonly number[])[] | undefined {
  const number = Number(ofRow.exec(sentence)?.[1] ?? 0)
  if (number === 1) return undefined
  const said = sentence.toLowerCase()
  const named = facts.pieces.filter(({ piece }) => said.includes(piece.name.toLowerCase()))
  const edgings = named.length === 0 && ofEdging.test(sentence) ? facts.pieces : named
  const spoken = named.length > 0 || number === 0 ? edgings.filter(({ piece }) => number > 0 || piece.on !== undefined) : facts.pieces
  const rows = spoken.flatMap((piece) => piece.rows.filter((row) => (number === 0 || row.number === number) && row.offers > 0))
  return rows.length > 0 ? rows.map(({ offers }) => [offers]) : undefined
}

/** `97 is 16 times 6, plus 1`: numbers beside the multiple on which a row is worked. The multiple is that of such a row. */
function workedOnNamed(facts: SenseFacts, sentence: string): readonly (readonly number[])[] {
  const offers = new Set(facts.pieces.flatMap(({ rows }) => rows.map((row) => row.offers)))
  return (sentence.replace(stated, '').match(/\d+/g) ?? []).map(Number).filter((number) => number > 1 && offers.has(number)).map((number) => [number])
}

/** A multiple in the notes that neither the foundation chain nor the first row fits. Told once a sentence. */
export function multipleMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const begun = facts.pieces.filter(({ piece }) => piece.on === undefined)
  const flat = begun.filter(({ rows }) => rows.length > 1 && rows.every(({ uncounted }) => !uncounted))
  const counts = flat.map(({ rows }) => [rows[0]!, rows[1]!].map(({ makes }) => makes).filter((count) => count > 0))
  if (counts.length === 0 || begun.length > sizeCount(facts)) return []
  return facts.prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence): readonly Diagnostic[] => {
    const match = stated.exec(sentence.text)
    if (!match) return []
    const named = workedOnNamed(facts, sentence.text)
    const begins = offeredTo(facts, sentence.text) ?? counts
    const every = Number(match[1])
    const more = [match[2], match[3]].flatMap((number) => (number === undefined ? [] : [Number(number)]))
    const rests = new Set([0, ...more, more.reduce((sum, number) => sum + number, 0)].slice(more.length > 0 ? 1 : 0).map((rest) => rest % every))
    if (every < 2 || [...begins, ...named].some((each) => each.some((count) => rests.has(count % every)))) return []
    const shown = [...new Set(begins.flat())].slice(0, 4).map(String)
    return [{
      code: 'multiple-mismatch',
      message: `the text gives a multiple of ${every}${more.map((number) => ` plus ${number}`).join('')}, but ${begins === counts ? 'the work begins with' : 'what it speaks of is worked on'} ${listOf(shown)} stitches`,
      primary: { span: spanOf(sentence, match), text: `${shown[0]} is ${Math.floor(Number(shown[0]) / every)} × ${every} and ${Number(shown[0]) % every}` },
      secondary: [],
    }]
  })
}
