import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import { startOf } from '../fabric/joined-of.ts'
import { placesOfEdge } from '../fabric/named-edges.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { PatternFacts, PieceFacts } from './facts.ts'
import { toldOnceForSizes } from './told-once-for-sizes.ts'

type Joined = NonNullable<WorkedRow['joined']>

/**
 * A band that is worked sideways on to an edge is joined to it at the end of every other row, so many places at a time: in all, to as many as the
 * edge has. The place in which the yarn is joined for it may be one of them (common practice, no source).
 */
export function bandJoinsMismatch({ pieces }: PatternFacts): readonly Diagnostic[] {
  return toldOnceForSizes(pieces.flatMap((band) => {
    const joins = band.rows.flatMap(({ joined }) => joined ?? [])
    // A hem may go on from the front to the back.
    const byEdge = [...Map.groupBy(joins, ({ piece, edge }) => `${edge} ${piece}`).values()]
    return byEdge.flatMap((along, index) => {
      const body = along.length > 1 ? pieces.find(({ name, size }) => name === along[0]!.piece && size === band.size) : undefined
      const diagnostic = body && wrongIn(band, along, body, pieces, index === 0)
      return diagnostic ? [{ piece: band, diagnostic }] : []
    })
  }))
}

const names = { top: { edge: 'top', called: 'the top', are: 'stitch' }, underside: { edge: 'bottom', called: 'the underside', are: 'chain' }, side: { edge: 'side', called: 'a side', are: 'row-end' } } as const

function wrongIn(band: PieceFacts, joins: readonly Joined[], body: PieceFacts, pieces: readonly PieceFacts[], isFirst: boolean): Diagnostic | undefined {
  const { edge, called, are } = names[joins[0]!.edge]
  const { counts } = placesOfEdge(body.edge, { edge })
  const taken = joins.reduce((sum, { count }) => sum + count, 0)
  const start = isFirst ? startOf(band.entries[0]?.read.items ?? [], joins[0]!.edge) : undefined
  const most = Math.max(...counts)
  // `the row-ends of Rows 3 and 4 of Strip 1`: what lies below is free, and is seen to be.
  const below = joins[0]!.row === undefined ? 0 : Math.min(joins[0]!.row - 1, most - joins[0]!.row)
  // The place where the yarn is joined may be one of them; where it lies on the edge it is.
  const [least, inAll] = [start === 'on it' ? taken + 1 : taken, start ? taken + 1 : taken]
  if (!band.sound || !body.sound || body.make > 1 || counts.length === 0 || counts.some((count) => count - below === least || start && count === inAll)) return undefined
  if (inAll < most && (leavesSome(band, joins[0]!, pieces) || edge === 'side' && isBordered(body, pieces))) return undefined
  const last = joins.at(-1)!
  const room = most - below
  const from = below > 0 ? ` from Row ${joins[0]!.row} on` : ''
  const left = room - inAll
  return {
    code: 'band-joins-mismatch',
    message: least > room ? `${band.name} is joined to ${counted(least, are)} of ${called} of ${body.name}${from}, but it has ${room}${from && ' there'}` : `${band.name} is joined to ${inAll} of the ${counted(room, are)} of ${called} of ${body.name}${from}, and nothing is said of the ${left === 1 ? 'one' : left} left`,
    primary: { span: last.span, text: `${least > room ? least : inAll} of ${room}` },
    secondary: [],
    note: `${joins.length} of its rows are joined, to ${countsOf(joins)} each${start === 'on it' || start && taken < room ? ', and the place where the yarn is joined is taken for one' : ''}`,
  }
}

/** `2`, `2 or 3`: at the ends of how many places a row is joined. */
function countsOf(joins: readonly Joined[]): string {
  return [...new Set(joins.map(({ count }) => count))].join(' or ')
}

/** A border that comes out goes along rows of the piece that the strip is joined to: what the strip leaves of it is counted there. */
function isBordered({ name, size }: PieceFacts, pieces: readonly PieceFacts[]): boolean {
  return pieces.some((other) => other.size === size && other.rows.some(({ verdict, along = [] }) => verdict === 'adds-up' && along.some(({ edge, worksOver, rows }) => edge === 'row-ends' && worksOver > 0 && rows.some((row) => row.endsWith(` of ${name}`)))))
}

/** Another band is joined to the same edge, or the words tell that a part of it is left. */
function leavesSome({ name, entries, source }: PieceFacts, { piece, edge }: Joined, pieces: readonly PieceFacts[]): boolean {
  const [first] = entries
  const inside = first?.read.items.some((item) => item.node === 'skip' || item.node === 'start' && (item.target.passing !== undefined || item.target.fromEnd !== undefined))
  return inside === true || entries.some(({ text }) => /\b(?:leav|unworked|left free|left open|unjoined)/i.test(source.text.slice(text.start, text.end)))
    || pieces.some((other) => other.name !== name && other.rows.some(({ joined }) => joined?.piece === piece && joined.edge === edge))
}
