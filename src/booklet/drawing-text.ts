import { counted, listOf, ordinal, plural } from '../diagnostics/words.ts'
import { drawPiece, type DrawnPiece } from '../drawing/draw-piece.ts'
import type { InkedRow } from '../drawing/gauge.ts'
import { pens } from '../drawing/pens.ts'
import type { Dimension, Legend, PieceDrawing } from '../drawing/piece-drawing.ts'
import { lengthOf, widthOf } from '../measures/size.ts'
import { nearestHalfCm } from '../measures/units.ts'
import type { Pattern, Piece } from '../pattern/pattern.ts'
import { stitchOf, type Terms } from '../stitches/terms.ts'
import type { DrawingText } from './booklet.ts'
import { capital, figure, sentence } from './figures.ts'
import type { WorkedPart } from './part.ts'
import { bothUnits } from './sizes-text.ts'
import { typeset } from './typeset.ts'
import { stitchYarns } from './stitch-yarns.ts'
import { yarnsInUse } from './yarn-in-use.ts'

/** A cord is so many times longer than it is high. */
const cordLength = 4

/** The most pieces that are drawn beside one another. */
const mostPieces = 6

/** The pattern's pieces drawn from their counts, in the first size, with all that is said beside them. */
export function drawingText(pattern: Pattern, parts: readonly WorkedPart[]): DrawingText | undefined {
  const begun = parts.filter(({ piece }) => piece.on === undefined)
  const bodies = begun.filter((part) => !isCord(part))
  const largest = (bodies.length > 0 ? bodies : begun).toSorted((a, b) => stitchesOf(b) - stitchesOf(a)).slice(0, mostPieces)
  const [main] = largest
  if (!main) return undefined
  // A ball has its cord standing on it; other cords are lines that show nothing.
  const cord = main.piece.shape === 'ball' && largest.length === 1 ? begun.find(isCord) : undefined
  const shown = begun.filter((part) => largest.includes(part))
  const pieces = shown.map((part) => drawnPiece(pattern, [part, ...continuing(parts, part.piece)]))
  const [first, ...beside] = pieces
  if (!first) return undefined
  const { gauge } = pattern
  const drawing = drawPiece({
    ...first, beside,
    words: (at, size) => wordsUnder(shown[at]?.piece, size),
    ...(cord === undefined ? {} : { loop: rowsOf(cord)[0]?.makes ?? 0 }),
    ...(gauge === undefined ? {} : { size: { width: 10 * widthOf(1, gauge), height: 10 * lengthOf(1, gauge), ...(gauge.stitch === undefined ? {} : { stitch: gauge.stitch }) } }),
    worn: isWorn(pattern.madeFor),
  })
  if (!drawing) return undefined
  const several = drawing.captions.length > 0
  const named = !several && begun.length > (cord ? 2 : 1) ? `, ${main.piece.name.replace(/^The /, 'the ')}` : ''
  const size = pattern.sizes[0] === undefined ? '' : `, size ${pattern.sizes[0]}`
  return {
    drawing,
    dimensions: drawing.dimensions.flatMap((dimension) => dimensionText(dimension, drawing, pattern)),
    scale: `${drawing.scale === undefined ? 'Not to scale' : `Drawn ${scaleWords(drawing.scale)}`}${named}${size}`,
    caption: typeset([captionOf(drawing, pattern, cord?.piece), notDrawn(begun.filter((part) => part !== cord && !shown.includes(part)))].filter((text) => text !== '').join(' ')),
    alt: typeset(several ? altOfSeveral(drawing, shown) : altOf(drawing, [main, ...continuing(parts, main.piece)], cord)),
  }
}

/** `Tie and strap are not drawn.` Cords are lines that show nothing. */
function notDrawn(left: readonly WorkedPart[]): string {
  const names = left.map(({ piece }) => piece.name.replace(/^The /, 'the '))
  return names.length === 0 ? '' : sentence(`${capital(listOf(names.map((name, at) => (at === 0 ? name : name.toLowerCase()))))} ${names.length === 1 ? 'is' : 'are'} not drawn`)
}

/** A piece and what goes on from it, on its way into a drawing. */
function drawnPiece(pattern: Pattern, worked: readonly WorkedPart[]): DrawnPiece {
  const inked = inkedRows(pattern, worked)
  const [main] = worked
  const width = main && finishedWidth(pattern, main.piece)
  return {
    parts: worked.map(({ piece }, at) => ({ rows: inked[at] ?? [], make: piece.make, ...(piece.shape === undefined ? {} : { shape: piece.shape }) })),
    ...(width === undefined ? {} : { across: width * 10 }),
    ...(main?.piece.drawn === 'upside down' ? { upsideDown: true } : {}),
  }
}

/** `Front`, `Sleeve, make 2`, and how large it is. */
function wordsUnder(piece: Piece | undefined, size: { readonly width: number; readonly height: number } | undefined): readonly string[] {
  if (!piece) return []
  return [
    typeset(capital(piece.make === 1 ? piece.name : `${piece.name}, make ${piece.make}`)),
    ...(size === undefined ? [] : [typeset(`${figure(nearestHalfCm(size.width / 10))} × ${figure(nearestHalfCm(size.height / 10))} cm`)]),
  ]
}

const isWorn = (madeFor: Pattern['madeFor']) => madeFor === 'garment' || madeFor === 'baby'
const rowsOf = ({ sizes }: WorkedPart) => sizes[0] ?? []
const stitchesOf = (part: WorkedPart) => rowsOf(part).reduce((sum, { makes }) => sum + makes, 0)
const widest = (part: WorkedPart) => Math.max(0, ...rowsOf(part).map(({ makes }) => makes))

/** A strip so narrow that it is a cord: a becket, a strap, a tie. */
function isCord(part: WorkedPart): boolean {
  return part.piece.on === undefined && part.part.counting === 'Row' && rowsOf(part).length > 0 && widest(part) >= cordLength * rowsOf(part).length
}

/** Pieces that go on from one another, in order. */
function continuing(parts: readonly WorkedPart[], from: Piece): readonly WorkedPart[] {
  // What goes over several pieces, as a neck edging does, is no border of the first of them.
  return parts.filter(({ piece }) => piece.on === from.name && !piece.onAlso).flatMap((part) => [part, ...continuing(parts.filter((one) => one !== part), part.piece)])
}

function inkedRows({ materials, source }: Pattern, worked: readonly WorkedPart[]) {
  const letters = (materials?.yarns ?? []).flatMap(({ letter }) => letter ?? [])
  let inHand: string | undefined
  return worked.map((part) => {
    const yarns = yarnsInUse(rowsOf(part), source, part.firstYarn ?? inHand)
    inHand = yarns.at(-1) ?? inHand
    const numberOf = (letter: string | undefined) => Math.max(0, letters.indexOf(letter ?? ''))
    const stitches = rowsOf(part).map((row, at) => stitchYarns(row, source, yarns[at - 1]))
    // Among rows in several colours a row all in the second has its stitches marked like theirs.
    const isMarked = stitches.some((own) => own !== undefined)
    return rowsOf(part).map((row, at): InkedRow => {
      const yarn = numberOf(yarns[at])
      const own = stitches[at]?.map(numberOf) ?? (isMarked && yarn > 0 ? row.fabric.made.map(() => yarn) : undefined)
      return { row, yarn, ...(own === undefined ? {} : { yarns: own }) }
    })
  })
}

const acrossWords = ['width', 'diameter', 'across']

/** The finished width of a piece, in cm, in the first size. */
function finishedWidth({ finished }: Pattern, { name }: Piece): number | undefined {
  return finished.find(({ what, of }) => acrossWords.includes(what.toLowerCase()) && (of === undefined || of === name))?.is[0]
}

function dimensionText({ side, from, to, says, value }: Dimension, { view, rows, scale }: PieceDrawing, pattern: Pattern): DrawingText['dimensions'] {
  if (says === 'rounds') return [{ side, from, to, text: typeset(`${value} ${plural('round', value)}`) }]
  if (scale === undefined) return side === 'below' ? [] : [{ side, from, to, text: typeset(`${rows} ${plural('row', rows)}`) }]
  // Within a row or two the piece is what the pattern says it is: one figure on the cover, not two.
  const apart = (cm: number) => Math.abs(cm * 10 - value)
  const [said] = pattern.finished.flatMap(({ is }) => is.slice(0, 1)).filter((cm) => apart(cm) < 0.06 * value).toSorted((a, b) => apart(a) - apart(b))
  const measure = bothUnits([[said ?? value / 10]])
  return [{ side, from, to, text: says === 'around' ? `${measure} around` : view === 'ball' ? `${measure} across` : measure }]
}

const fractions: Readonly<Record<number, string>> = {
  1: 'full size', 2: 'at one half', 4: 'at one quarter', 6: 'at one sixth', 8: 'at one eighth', 10: 'at one tenth', 12: 'at one twelfth', 16: 'at one sixteenth', 20: 'at one twentieth',
}

const scaleWords = (scale: number) => fractions[scale] ?? `at 1 to ${figure(scale)}`

function captionOf({ view, legend, everyRow, rows, unseen, strokes }: PieceDrawing, { terms, materials, madeFor }: Pattern, cord: Piece | undefined): string {
  const worn = isWorn(madeFor)
  const marked = legend.cross !== undefined || view === 'above' && legend.tall.length > 0
  const word = view === 'flat' ? 'row' : 'round'
  const heavy = legend.heavy === undefined ? [] : [`Heavy ${marked ? 'marks' : strokes.some(({ kind, weight }) => kind === 'line' && weight === pens.heavyMark) ? 'lines and marks' : 'lines'} are ${yarnName(materials, legend.heavy)}.`]
  const what = {
    ball: marked ? `Each mark is one stitch, each line one round: ${marks(legend, terms)}.` : 'Each line is one round.',
    above: marked ? `Seen from above; each mark is one stitch: ${marks(legend, terms)}.` : 'Seen from above. Each line is one round.',
    side: worn ? 'As it is worn. Each line is one round.' : 'Seen from the side. Each line is one round, as wide as its stitches make it.',
    flat: 'Each line is one row; its length is the number of stitches.',
    several: 'Each line is one row or round, as wide as its stitches make it.',
  }[view]
  return [
    what,
    ...(marked || legend.tall.length === 0 ? [] : [talls(legend.tall, terms)]),
    ...heavy,
    ...(legend.circles === undefined || !marked ? [] : [`Circles are ${yarnName(materials, legend.circles)}.`]),
    ...(everyRow > 1 && rows > everyRow ? [`Every ${everyRow === 2 ? 'second' : ordinal(everyRow)} ${word} is drawn.`] : []),
    ...(unseen === 0 ? [] : [`${counted(unseen, word)} ${unseen === 1 ? 'lies' : 'lie'} flat in the base.`]),
    ...(cord === undefined ? [] : [`${capital(cord.name)} is drawn shorter.`]),
  ].join(' ')
}

const nameOf = (kind: string, terms: Terms) => stitchOf(kind)?.name[terms === 'UK' ? 'uk' : 'us'] ?? kind

/** `+ single crochet, V increase, Λ decrease` */
function marks({ cross, increases, decreases, tall, chains }: Legend, terms: Terms): string {
  return [
    ...tall.slice(0, 1).map((kind) => `T ${tall.length === 1 ? nameOf(kind, terms) : 'taller stitch'}`),
    ...(cross === undefined ? [] : [`+ ${nameOf(cross, terms)}`]),
    ...(increases ? ['V increase'] : []),
    ...(decreases ? ['Λ decrease'] : []),
    ...(chains ? ['rings are chains'] : []),
  ].join(', ')
}

function talls(kinds: readonly string[], terms: Terms): string {
  return kinds.every((kind) => kind.startsWith('FP')) ? 'Upright lines are the ribs.' : `T marks are the ${listOf(kinds.map((kind) => nameOf(kind, terms)))} stitches.`
}

function yarnName(materials: Pattern['materials'], yarn: number): string {
  const { letter, colour } = materials?.yarns[yarn] ?? {}
  return letter !== undefined ? `colour ${letter}` : (colour ?? 'the second colour').toLowerCase()
}

function altOf(drawing: PieceDrawing, [main, ...others]: readonly WorkedPart[], cord: WorkedPart | undefined): string {
  if (!main) return ''
  // What goes on from the main piece in the same manner is drawn with it, and is a part of its count.
  const rows = [main, ...others.filter(({ part }) => part.counting === main.part.counting)].flatMap(rowsOf)
  const word = main.part.counting.toLowerCase()
  const [first, most, last] = [rows[0]?.makes ?? 0, Math.max(...rows.map(({ makes }) => makes)), rows.at(-1)?.makes ?? 0]
  const how = { ball: 'seen from the front', above: 'seen from above', side: 'seen from the side', flat: 'laid flat', several: 'side by side' }[drawing.view]
  const counts = rows.every(({ makes }) => makes === most)
    ? `${figure(most)} stitches in every ${word}`
    : `${figure(first)} stitches in the first ${word}, ${first === most || last === most ? '' : `${figure(most)} in the widest, `}${figure(last)} in the last`
  const name = listOf([main, ...others].map(({ piece }, at) => (at === 0 ? piece.name : piece.name.toLowerCase())))
  const loop = cord === undefined ? '' : ` ${capital(cord.piece.name)} stands on it as a loop.`
  return `${capital(name)}, ${how}, drawn from ${others.length > 0 ? 'their' : 'its'} ${rows.length} ${plural(word, rows.length)}: ${counts}.${loop}`
}

/** `Front and back, side by side: 9 rows and 9 rows.` */
function altOfSeveral({ captions }: PieceDrawing, shown: readonly WorkedPart[]): string {
  const told = shown.filter(({ piece }) => captions.some(({ lines }) => lines[0] === wordsUnder(piece, undefined)[0]))
  const each = told.map((part) => `${part.piece.name}, ${counted(rowsOf(part).length, part.part.counting.toLowerCase())}, ${figure(widest(part))} stitches where it is widest`)
  return `${counted(told.length, 'piece')} side by side, drawn from their counts: ${each.join('; ')}.`
}
