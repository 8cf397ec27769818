import { takeNumber } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** `Working through both layers,`, `hook through BOTH layers:`, `going through both:`: every stitch takes a place of each. */
export function parseLayers(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  // `Work Rnd 1 through both layers.`
  if (!(reader.take('work|working?', 'this|the|all?', 'rnd|rnds|round|rounds|row|border|edging') && (takeNumber(reader) || true) && /^(?:through|into)$/.test(reader.word()))) reader.at = at
  reader.take('now|from', 'now|here?', 'on|onwards?')
  reader.take('inserting|insert|putting|put?', 'the?', 'hook', 'each?', 'time?') || reader.take('working|work|going?', 'every|each|all', 'stitch|st|stitches|sts', 'of?', 'this?', 'round|rnd|row?', 'goes|go|is|are?', 'worked?') || reader.take('working|work|going')
  if (!throughBoth(reader) && !throughTwoEdges(reader) && !matching(reader)) {
    reader.at = at
    return undefined
  }
  return [{ node: 'start', target: { walk: 'layers', start, end: reader.end }, start, end: reader.end }]
}

/** Whether such words come next: `flatten the opening and work through both layers`. */
export function layersAhead(reader: Reader): boolean {
  const { at } = reader
  const found = parseLayers(reader) !== undefined
  reader.at = at
  return found
}

/** `through the sts of Row 28 and the foundation ch together`: two edges that are laid on one another. */
function throughTwoEdges(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('through|in|into', 'the?', 'sts|stitches', 'of')) {
    while (!reader.done && !/^([,;:.()]|together)$/.test(reader.word())) reader.at += 1
    if (reader.take('together') && reader.all.slice(at, reader.at).some(({ text }) => /^and$/i.test(text))) return true
  }
  reader.at = at
  return false
}

/** `through both layers again`, `into both pieces together`, `through both`, `through Front and Back each time`. */
function throughBoth(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('through|into|in|under', 'both|all') || reader.take('through|into', 'the?', 'two|2') || reader.take('picking', 'up', 'both') || reader.take('taking|catching', 'both')) {
    if (reader.take(layers)) {
      everyTime(reader)
      return true
    }
    if (!/^in$/.test(reader.word(-2)) && (reader.done || /^[,;:.]$/.test(reader.word()))) return true
  }
  reader.at = at
  if (reader.take('through', 'the?') && takePieceEdge(reader) && reader.take(',?', 'and|then', 'then?') && takePieceEdge(reader)) {
    everyTime(reader)
    return true
  }
  reader.at = at
  return false
}

/** `Front`, `the foundation of Upper Back`, `the last row of Front` */
function takePieceEdge(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('the?', 'foundation|top|last|first|side|edge|foot', 'row|edge|ch|chain?', 'of') && takePieceName(reader) !== undefined) return true
  reader.at = at
  return takePieceName(reader) !== undefined
}

const layers = 'layers|thicknesses|pieces|sides|edges|parts|fabrics|panels|squares|motifs|halves|borders|edgings|bands|rims'

/** `together`, `throughout`, `all the way round`, `at once`, `each time`, `with every st` */
function everyTime(reader: Reader): void {
  reader.take('together|again|throughout') || reader.take('at', 'once') || reader.take('as', 'one') || reader.take('all', 'the', 'way', 'along|around|round|up?') || reader.take('at|with|for|in?', 'each|every', 'time|st|stitch')
}

/** `catching the matching row-end of the Back with every st` */
function matching(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('catching|taking|including', 'in?', 'the?', 'matching|corresponding|same') && takeThing(reader) && reader.take('of', 'the?') && takePieceName(reader) !== undefined) {
    everyTime(reader)
    return true
  }
  reader.at = at
  return false
}
