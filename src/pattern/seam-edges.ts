import type { EdgeWords, NamedEdge } from '../fabric/named-edges.ts'

/** What a seam joins: a piece, or an edge of it that is named. */
export interface SeamPart {
  readonly piece: string
  readonly edge?: EdgeWords
}

/** Words that tell which edge is meant, the first that is there. */
const edges: readonly (readonly [RegExp, NamedEdge])[] = [
  [/\b(?:top|upper|last row|last round|last rnd|final row)\b/i, 'top'], [/\b(?:bottom|lower|foundation|beginning|starting|hem)\b/i, 'bottom'],
  [/\bleft\b/i, 'left'], [/\bright\b/i, 'right'], [/\b(?:sides?|row-? ?ends?|ends of (?:the )?rows)\b/i, 'side'],
]

/** Words that a place on a piece is told in; anything else is a name. */
const told = /^(?:the|an?|of|at|on|in|to|from|along|and|all|both|each|one|other|two|edges?|sides?|ends?|rows?|rnds?|rounds?|row-ends?|chains?|ch|sts?|stitch(?:es)?|loops?|tops?|bottom|upper|lower|last|final|first|foundation|beginning|starting|hem|left|right|hand|left-hand|right-hand|left-side|right-side|long|short|outer|inner|side-edge|seam|selvedges?|selvages?|vertical|horizontal|straight|sloped|slanted|curved|shaped|stepped|raw|open|free|neck|armhole|shoulder|underside|border|corners?|middle|cent(?:re|er)|central|half|part|inclusive|only|worked|\d+)$/i

/** Words that tell only a part of an edge. */
const aPart = /\b(?:middle|cent(?:re|er)|central|half|part|corners?|(?:first|last|next|inner|outer) \d+)\b/i

/**
 * `left side of Gusset`, `Gusset left edge`, `Front: right edge (12 row-ends)`, `Rows 1-8 of the left side of Back`: an edge in words, of a
 * piece that there is; a piece's name alone is the piece. A text that tells no such edge is given back as it is.
 */
export function seamPart(text: string, names: readonly string[]): SeamPart {
  const own = names.find((name) => name.toLowerCase() === text.trim().toLowerCase())
  if (own !== undefined) return { piece: own }
  const named = names.map((name) => ({ name, at: placeOf(name, text) })).filter(({ at }) => at >= 0).toSorted((a, b) => b.name.length - a.name.length)[0]
  if (!named) return { piece: text }
  const words = `${text.slice(0, named.at)} ${text.slice(named.at + named.name.length)}`.replace(/[(),:;'’]/g, ' ').replace(/[-–](?=\d)/g, ' to ').trim()
  if (!words.split(/\s+/).every((word) => told.test(word))) return { piece: text }
  return { piece: named.name, edge: edgeOf(words) }
}

/** Where a name stands in a text, as whole words; -1 for nowhere. */
function placeOf(name: string, text: string): number {
  const at = text.toLowerCase().indexOf(name.toLowerCase())
  const around = at < 0 ? '' : `${text[at - 1] ?? ''}${text[at + name.length] ?? ''}`
  return /[\p{L}\p{N}]/u.test(around) ? -1 : at
}

function edgeOf(words: string): EdgeWords {
  const edge = edges.find(([form]) => form.test(words))?.[1] ?? 'any'
  const rows = /\brows? (\d+)(?: to (?:row )?(\d+))?/i.exec(words)
  const count = rows ? Number(rows[2] ?? rows[1]) - Number(rows[1]) + 1 : Number(/\b\d+\b/.exec(words)?.[0] ?? 0)
  const part = rows !== null && edge !== 'top' || aPart.test(words)
  return { edge, ...(count > 0 && (!rows || part) && { count }), ...(part && { part }) }
}
