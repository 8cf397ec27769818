import type { NamedEdge } from '../fabric/named-edges.ts'

/** What a seam joins: a piece, or an edge of it that is named. */
export interface SeamPart {
  readonly piece: string
  readonly edge?: NamedEdge
}

const words: readonly (readonly [RegExp, NamedEdge])[] = [
  [/\b(?:top|upper|last)\b/i, 'top'], [/\b(?:bottom|lower|foundation|beginning|starting|hem)\b/i, 'bottom'],
  [/\bleft\b/i, 'left'], [/\bright\b/i, 'right'], [/\bsides?\b/i, 'side'],
]

/** `left side of Gusset`, `the top of the Front`, `Gusset left edge`: an edge in words, of a piece that there is; a piece's name alone is the piece. */
export function seamPart(text: string, names: readonly string[]): SeamPart {
  const known = (name: string): string | undefined => names.find((piece) => piece.toLowerCase() === name.trim().toLowerCase())
  const own = known(text)
  if (own !== undefined) return { piece: own }
  const of = /^(?:the )?((?:[\w-]+ ){0,3}?(?:edge|side|end|row|chain|top|bottom)s?) of (?:the )?(.+)$/i.exec(text)
  const behind = /^(?:the )?(.+?),? ((?:[\w-]+ )?(?:edge|side|top|bottom)s?)$/i.exec(text)
  const named = of ? { said: of[1]!, piece: known(of[2]!) } : behind && { said: behind[2]!, piece: known(behind[1]!) }
  if (named?.piece === undefined) return { piece: text }
  return { piece: named.piece, edge: words.find(([form]) => form.test(named.said))?.[1] ?? 'any' }
}
