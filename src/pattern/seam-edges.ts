import type { EdgeWords, NamedEdge } from '../fabric/named-edges.ts'
import { ordinals, tens, teens, units } from '../notation/number-words.ts'
import { namePattern } from '../text/name-pattern.ts'

/** What a seam joins: a piece, or an edge of it that is named. */
export interface SeamPart {
  readonly piece: string
  readonly edge?: EdgeWords
  /** The piece is named, and the words about its edge are not understood. */
  readonly unread?: true
}

/** Words that tell which edge is meant, the first that is there. */
const edges: readonly (readonly [RegExp, NamedEdge])[] = [
  [/\ball (?:(?:four|4|three|3|the) )*(?:sides|edges|round|around)\b/i, 'all'], [/^(?!.*\b(?:left|right|top|bottom|underside|rows?)\b).*\b(?:stepped|steps|stairs?)\b/i, 'stepped'],
  [/\b(?:top|upper|last row|final row|shoulders?)\b/i, 'top'], [/\b(?:bottom|underside|lower|foundation|beginning|starting|hem)\b/i, 'bottom'],
  [/\bleft\b/i, 'left'], [/\bright\b/i, 'right'], [/\b(?:sides?|row-? ?ends?|ends of (?:the )?rows)\b/i, 'side'],
  [/\b(?:rounds?|rnds?|border|edging|(?:outer|outside|whole|entire) edge|all \d+)\b/i, 'all'], [/\brow \d+(?! to)\b/i, 'top'],
]

/** Words that a place on a piece is told in; anything else is a name. */
const told = /^(?:the|its|an?|of|at|on|in|to|from|along|and|all|both|each|either|every|one|other|two|four|round|around|whole|entire|edges?|sides?|ends?|rows?|rnds?|rounds?|row-ends?|chains?|chs?|sleeves?|arms?|wings?|sts?|stitch(?:es)?|f?sc|f?h?dc|f?htr|fd?tr|d?tr|loops?|tops?|bottom|upper|lower|last|final|first|second|third|fourth|2nd|3rd|4th|next|following|foundation|beginning|starting|hem|left|right|hand|left-hand|right-hand|left-side|right-side|long|short|outer|outermost|outside|inner|innermost|side-edge|seam|selvedges?|selvages?|vertical|horizontal|straight|sloped|slanted|curved|shaped|stepped|steps|stairs?|raw|open|free|neck|armhole|shoulders?|underside|border|edging|corners?|middle|cent(?:re|er)|central|half|part|except|but|for|inclusive|only|worked|unworked|separate|added|remaining|rem|skipped|missed|waiting|held|unused|below|beneath|under|armholes?|underarms?|\d+)$/i

const stitches = '(?:sts?|stitch(?:es)?|f?sc|f?h?dc|f?htr|fd?tr|d?tr)'

/** Words that tell only a part of an edge; a shoulder is one end of a top. */
const aPart = new RegExp(String.raw`\b(?:middle|cent(?:re|er)|central|half|part|corners?|shoulders?|(?:first|last|next|inner|outer|innermost|outermost) \d+|\d+ (?:${stitches} )?(?:at|in from|from)|${stitches} \d+ to \d+)\b`, 'i')

/** `[first 9 (11, 13) sts of Back, Left front]`: YAML parts a list at each comma, also inside a list of sizes, which is whole again here. */
export function wholeEdges(join: readonly string[]): readonly string[] {
  const whole: string[] = []
  for (const text of join) {
    const last = whole.at(-1)
    if (last !== undefined && opens(last)) whole[whole.length - 1] = `${last}, ${text}`
    else whole.push(text)
  }
  return whole
}

/** `[Rows 1-5 of right side of Box, underside of the added ch]`: words of an edge without a piece are of the piece that the seam's other edge names. */
export function namedEdges(join: readonly string[], names: readonly string[], parts: readonly PartName[]): readonly string[] {
  const whole = wholeEdges(join)
  const isNamed = (text: string): boolean => [...names, ...parts.map(({ name }) => name)].some((name) => placeOf(name, text) >= 0)
  const [piece, ...others] = names.filter((name) => whole.some((text) => placeOf(name, text) >= 0))
  return piece === undefined || others.length > 0 ? whole : whole.map((text) => (isNamed(text) || !isTold(edgeWords(text)) ? text : `${text} of ${piece}`))
}

/** A bracket stands open behind a number: `first 9 (11`. */
const opens = (text: string): boolean => /\(\d+(?:[-–]\d+)?(?:, \d+(?:[-–]\d+)?)*$/.test(text)

/** A part of a piece, by the words of the heading over it, in small letters. */
export interface PartName {
  readonly name: string
  readonly piece: string
}

/** `Left shoulder: With RS facing, skip next 6 sts, join yarn in next st.`: a heading that tells how its first row begins. */
const lead = /^\s*(?!(?:rows?|rnds?|rounds?|foundation|notes?|next|last)\b)(\p{L}+(?: [\p{L}\d]+){0,3}):\s+(?:with|rs|ws|skip|sk|join|rejoin|attach|hold|return|starting|beginning)\b/iu

/** Headings in a block of rows: a line of a few words, without a number behind a colon, or with how its first row begins. */
export function partNames(piece: string, rows: string): readonly PartName[] {
  return rows.split('\n').flatMap((line) => {
    const name = (/^\s*(\p{L}+(?: [\p{L}\d]+){0,3})\s*[:.]?\s*$/iu.exec(line) ?? lead.exec(line))?.[1]
    return name === undefined ? [] : [{ name: name.toLowerCase(), piece }]
  })
}

/**
 * `left side of Gusset`, `Gusset left edge`, `Front: right edge (12 row-ends)`, `Rows 1-8 of the left side of Back`: an edge in words, of a
 * piece that there is; a piece's name alone is the piece. A text that tells no such edge is given back as it is.
 */
export function seamPart(text: string, names: readonly string[], parts: readonly PartName[] = []): SeamPart {
  const own = names.find((name) => name.toLowerCase() === text.trim().toLowerCase())
  if (own !== undefined) return { piece: own }
  const named = names.map((name) => ({ name, at: placeOf(name, text) })).filter(({ at }) => at >= 0).toSorted((a, b) => Number(isBehindOf(text, b.at)) - Number(isBehindOf(text, a.at)) || b.name.length - a.name.length)[0]
  const under = parts.filter(({ name, piece }) => placeOf(name, text) >= 0 && (!named || named.name === piece))
  // `top of Second shoulder` is of no piece where two have such a part.
  if (under.length === 1 && !(named && partOfPiece(named.name, under[0]!.name))) {
    const { name, piece } = under[0]!
    const words = edgeWords(without(named ? without(text, named.name) : text, name))
    if (!isTold(words)) return { piece, edge: { edge: 'any', part: true }, unread: true }
    return { piece, edge: { ...(/^(?: |of|on|the)*$/i.test(words) ? { edge: 'top' } : edgeOf(words)), under: name } }
  }
  if (!named) return { piece: text }
  const words = edgeWords(without(text, named.name))
  if (!isTold(words)) return { piece: named.name, edge: { edge: 'any', part: true }, unread: true }
  return { piece: named.name, edge: edgeOf(words) }
}

/** Numbers for each size, the first outside the brackets: `12 (14, 16)`, `9-16 (9-18, 9-20)`. */
const sizeList = /\d+[-–]\d+ ?\(\d+[-–]\d+(?:, ?\d+[-–]\d+)*\)|\d+ ?\(\d+(?:, ?\d+)*\)/g
const inList = /\d+(?:[-–]\d+)?/g

/** The same in each of the sizes; once where its numbers are the same in all of them. */
export function seamPartBySize(text: string, names: readonly string[], parts: readonly PartName[] = []): readonly SeamPart[] {
  const lists = text.match(sizeList) ?? []
  const sizes = Math.max(1, ...lists.map((list) => list.match(inList)!.length))
  return Array.from({ length: sizes }, (_, size) => seamPart(text.replace(sizeList, (list) => list.match(inList)![size] ?? list), names, parts))
}

/** The text without a name that stands in it. */
function without(text: string, name: string): string {
  const at = placeOf(name, text)
  return `${text.slice(0, at)} ${text.slice(at + name.length)}`
}

/** What is told of an edge, without signs, its numbers in digits and its ranges with `to`. */
const edgeWords = (text: string): string => inDigits(text.replace(/[(),:;'’]/g, ' ').replace(/[-–](?=\d)/g, ' to ').trim())

const isTold = (words: string): boolean => words.split(/\s+/).every((word) => word === '' || told.test(word))

/** The part's heading is the piece's own name. */
const partOfPiece = (piece: string, part: string): boolean => piece.toLowerCase().includes(part)

/** `bottom of Rib`, where another piece is called Bottom. */
const isBehindOf = (text: string, at: number): boolean => /\bof (?:the )?$/i.test(text.slice(0, at))

/** Where a name stands in a text, as whole words; -1 for nowhere. */
function placeOf(name: string, text: string): number {
  const at = text.toLowerCase().indexOf(name.toLowerCase())
  const around = at < 0 ? '' : `${text[at - 1] ?? ''}${text[at + name.length] ?? ''}`
  return /[\p{L}\p{N}]/u.test(around) ? -1 : at
}

/** `outermost six stitches`: before a stitch the number may be a word. */
function inDigits(words: string): string {
  return words.replace(new RegExp(String.raw`\b([a-z]+)(?= ${stitches}\b)`, 'gi'), (word) => String({ ...units, ...teens, ...tens }[word.toLowerCase()] ?? word))
}

/** `sides of Front below the armholes`, `left side of Back up to the underarm` */
const tellsBelow = /\b(?:below|beneath|under|to) (?:the |its )?(?:armholes?|underarms?)\b/i

function edgeOf(words: string): EdgeWords {
  const added = addedChains(words)
  if (added) return added
  const edge = edges.find(([form]) => form.test(words))?.[1] ?? 'any'
  if (/^(?:left|right|side)$/.test(edge) && tellsBelow.test(words)) return { edge, below: true, ...(/\bsides\b/i.test(words) && edge === 'side' && { both: true }) }
  const left = /\b(?:except|but)(?: for)?(?: the)?(?: (?:cent(?:re|er)|middle|central|first|last))? (\d+)/i.exec(words)
  const rows = /\b(?:rows?|rnds?|rounds?) (\d+)(?: to (?:row )?(\d+))?/i.exec(words)
  const [from, to] = [Number(rows?.[1]), Number(rows?.[2])].toSorted((a, b) => a - b)
  const counted = new RegExp(String.raw`\b${stitches} (\d+) to (\d+)`, 'i').exec(words) ?? (rows?.[2] === undefined ? null : rows)
  const alone = Number(/\b\d+\b/.exec(words.replace(rows?.[0] ?? '', ' ').replace(/\ball (?:four|4|three|3)\b/i, ' '))?.[0] ?? 0)
  const count = counted ? Math.abs(Number(counted[2]) - Number(counted[1])) + 1 : rows !== null && edge !== 'top' && edge !== 'all' ? 1 : alone
  if (left) return { edge, without: Number(left[1]) }
  const part = rows !== null && edge !== 'top' && edge !== 'all' || aPart.test(words)
  const row = edge === 'top' && rows !== null && rows[2] === undefined ? Number(rows[1]) : undefined
  const at = /\b(first|last|next) \d+/i.exec(words)?.[1]?.toLowerCase() as EdgeWords['at']
  const named = rows?.[2] !== undefined && edge !== 'top' && edge !== 'all' ? [from!, to!] as const : undefined
  return { edge, ...(row !== undefined && { row }), ...(at && part && { at }), ...(named && { rows: named }), ...(count > 0 && (rows === null || part || alone > 0) && { count }), ...(part && { part }) }
}

/** `underside of the 5 ch of the separate chain`, `underside of the first 6 ch of Row 5`, `underside of the added ch at the left`: chains that were added at an end of a row, and no edge of the piece from end to end. */
function addedChains(words: string): EdgeWords | undefined {
  const row = /\b(?:rows?|rnds?|rounds?) (\d+)/i.exec(words)
  if (!/\bundersides?\b/i.test(words) || !/\b(?:separate|added|sleeves?|arms?|wings?)\b/i.test(words) && (row === null || Number(row[1]) === 1)) return undefined
  const count = /\b(\d+) (?:(?:added|extra|separate) )?(?:ch|chains?|sts?|fsc|fh?dc|fhtr|fd?tr)\b/i.exec(words)
  const hand = /\b(left|right)\b/i.exec(words)?.[1]?.toLowerCase() as 'left' | 'right' | undefined
  return { edge: 'added', ...(row && { row: Number(row[1]) }), ...(count && { count: Number(count[1]) }), ...(hand && { hand }), ...(/\bseparate\b/i.test(words) && { separate: true }) }
}

/** `left side of second Side`: which copy of the piece is meant, from 0; undefined where none is told. */
export function copyTold(text: string, piece: string): number | undefined {
  const before = new RegExp(String.raw`\b(\d|\p{L}+)(?:st|nd|rd|th)? ${namePattern(piece)}(?!\p{L})`, 'giu')
  const told = [...text.matchAll(before)].flatMap(([, word = '']) => copies[word.toLowerCase()] ?? (Number(word) || []))
  return told[0] === undefined ? undefined : told[0] - 1
}

/** Words for a copy of a piece; the other one is the second. */
const copies: Readonly<Record<string, number>> = { ...ordinals, first: 1, other: 2 }
