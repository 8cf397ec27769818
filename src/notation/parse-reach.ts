import { numberAhead, takeNumber } from './numbers.ts'
import { parseLeave } from './parse-leave.ts'
import { takeSorted } from './parse-sorted.ts'
import { takeThing } from './parse-thing.ts'
import { takeToChain } from './parse-top-of-chain.ts'
import type { Reader } from './reader.ts'
import type { KeptBack, Num, Thing } from './target.ts'

const ends: readonly (readonly string[])[] = [
  ['across|over', 'the', 'strip|band|tab|flap|strap|edging|panel|piece|heel|cuff|brim'], ['across|over', 'all', 'of?', 'the?', 'st|sts|stitch|stitches'], ['across', 'the?', 'row?'], ['around'], ['round'], ['all', 'around'], ['all', 'across'], ['all', 'round'], ['all|right', 'along|across|around|round'], ['all', 'the', 'way', 'around|across|round|along'], ['the', 'whole', 'way', 'around|across|round|along'], ['all', 'the', 'way', 'to', 'the', 'end'],
  ['to', 'the?', 'end', 'of?', 'the?', 'row|rnd|round?'], ['until', 'the?', 'end'], ['to', 'the?', 'side|outer|outside|armhole|left|right|far|other', '-?', 'hand?', 'edge|end'], ['along'], ['to', 'the?', 'beg|beginning'], ['thereafter'], ['after', 'that|it'], ['from', 'there', 'on|onwards?'], ['onwards'], ['elsewhere'], ['everywhere', 'else'],
  ['on|along|around|round|across', 'all|the', 'two|three|four|five|six|seven|eight?', 'sides|edges'],
]

const edges: readonly (readonly string[])[] = [
  ['across|along|down|up', 'the|this|each|first|second|left|right|short|long?', 'side|edge', 'edge?'], ['across|along|down|up', 'the?', 'row', '-?', 'ends'],
]

/** `around the three sides` */
function aroundSides(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('around|round', 'the|all?', 'the?') && takeNumber(reader) && reader.take('sides|edges')) return true
  reader.at = at
  return false
}

/** Takes `across`, `around`, `to the end of the row`. */
export function takeToEnd(reader: Reader): boolean {
  if (goesOver(reader)) return false
  if (reader.take('around|round', 'the|this?', 'neck|thumb|button?', 'slit|slot|opening|keyhole|thumbhole')) return true
  if (aroundSides(reader)) return true
  // `around next st` goes round a post; `around` alone goes to the end.
  if (/^(around|round|along)$/.test(reader.word()) && /^(next|each|post|posts|the|first|last|same|\d+|sc|dc|hdc|tr|st|foll|following|both|edge|front|back)$/.test(reader.word(1))) return false
  // `rep from * along all 10 row-ends`: so many are told.
  if (/^(?:along|across|around)$/.test(reader.word()) && reader.word(1) === 'all' && numberAhead(reader, 2) !== undefined) return false
  // `inc, sc 2, inc across its tip`: three instructions, and where they lie.
  if (/^(?:inc|dec)$/.test(reader.word(-1)) && tipAhead(reader)) return false
  // `sl st to beg sc` goes into a stitch.
  if (reader.word() === 'to' && /^beg/.test(reader.word(1)) && (/^(?:ch|chain)$/.test(reader.word(2)) || reader.vocabulary.stitchAt([reader.word(2)]) !== undefined)) return false
  // `sc in every ch after`
  if (reader.word() === 'after' && (reader.at + 1 >= reader.limit || /^[,;.:]$/.test(reader.word(1))) && reader.take('after')) return true
  return takeToCorner(reader) || edges.some((words) => reader.take(...words)) || ends.some((words) => reader.take(...words)) && endTail(reader)
}

const tipAhead = (reader: Reader): boolean => /^(?:across|along|at|around|on)$/.test(reader.word()) && /^(?:tip|point)$/.test(reader.word(/^(?:its|the)$/.test(reader.word(1)) ? 2 : 1))

/** `across its tip` behind an increase. Takes the words. */
export function takeTip(reader: Reader): boolean {
  const tip = /^(?:inc|dec)$/.test(reader.word(-1)) && tipAhead(reader)
  return tip && reader.take('across|along|at|around|on', 'its|the?', 'tip|point', 'of?', 'the|this?', 'flap|earflap?')
}

/** Takes `to next corner`; `to corner ch-2 sp` names the space itself. */
export function takeToCorner(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('across?', 'up?', 'to', 'the?', 'next?', 'corner') && !/^(sp|space|ch|st|stitch|sc|dc|hdc|tr|\d+)$/.test(reader.word())) return true
  reader.at = at
  return false
}

/** `across next 10 sts`, `across the last 5 sts`, `across 10 sts`: over so many, and not to the end. */
function goesOver(reader: Reader): boolean {
  if (reader.word() !== 'across') return false
  const ahead = reader.word(1) === 'the' ? 2 : 1
  const which = /^(next|first|last|rem|remaining|following|foll|these)$/.test(reader.word(ahead))
  return numberAhead(reader, which ? ahead + 1 : ahead) !== undefined
}

function endTail(reader: Reader): true {
  reader.take('of', 'the?', 'row|rnd|round|chain|ch')
  return true
}

/** Takes `to last 3 sts`, `to within 2 sts of marker`, `until 5 sts rem`, `to 2 sts before m`: how many places are kept back. */
export function takeKeepBack(reader: Reader): KeptBack | undefined {
  const at = reader.at
  if (reader.take('across|around?', 'up?', 'to|until|till', 'within?', 'the?', 'last|final')) {
    return ofThing(takeNumber(reader) ?? one(reader), takeThing(reader))
  }
  // `in all but last 2 sts`
  if (reader.take('in|into?', 'all', 'of?', 'the?') && (reader.take('st|sts|stitches') || takeThing(reader) || true) && reader.take('but|except', 'for?', 'the?', 'last|final')) {
    return ofThing(takeNumber(reader) ?? one(reader), takeThing(reader))
  }
  reader.at = at
  if (takeToChain(reader)) return one(reader)
  if (reader.take('across?', 'up?', 'to|till|until', 'within?')) {
    const num = takeNumber(reader)
    if (num) {
      const thing = takeThing(reader)
      if (reader.take('rem|remain|remains|remaining|left', 'unworked?') || reader.take('short?', 'of|before|from', 'the?', 'end', 'of?', 'the?', 'row|rnd|round?')
        || reader.take('are|is', 'left?', 'unworked') || reader.take('are|is', 'left')) return sortedAs(reader, num) ? ofThing(num, thing) : undefined
    }
  }
  reader.at = at
  return undefined
}

/** Takes `until there are 14 dc`, `until you have 14 sts in all`, `until 14 sc have been worked`: so many in the row. */
export function takeUntilMade(reader: Reader): Num | undefined {
  const { at } = reader
  if (reader.take('until|till', 'there', 'are|is') || reader.take('until|till', 'you|we', 'have', 'made|worked?')) {
    const num = takeNumber(reader)
    if (num && takeThing(reader)) {
      reader.take('in', 'all|total') || reader.take('on', 'the?', 'flap|hook|row') || reader.take('altogether')
      return num
    }
  }
  reader.at = at
  if (reader.take('until|till')) {
    const num = takeNumber(reader)
    if (num && takeThing(reader) && (reader.take('are', 'worked|made|done|complete') || reader.take('have', 'been', 'worked|made'))) return num
  }
  reader.at = at
  return undefined
}

/** `until 5 sts are left (4 dc and the turning ch)`: told kind by kind behind, they come to the same number. */
function sortedAs(reader: Reader, num: Num): boolean {
  const sum = takeSorted(reader)
  return sum === undefined || sum.values.join() === num.values.join()
}

function ofThing(count: Num, of: Thing | undefined): KeptBack {
  return { ...count, ...(of && { of }) }
}

/** Takes `to marker`, `to marked st`, `to 2 sts before m`. */
export function takeToMarker(reader: Reader): boolean {
  const at = reader.at
  if (reader.take('across?', 'to|until', 'the?', 'within?')) {
    if (takeNumber(reader)) {
      takeThing(reader)
      if (!reader.take('before|of|from')) {
        reader.at = at
        return false
      }
      reader.take('the|each|next')
    } else if (reader.take('st|stitch|last', 'st|stitch?', 'before')) reader.take('the|next?', 'next|first|second|last|other?')
    else reader.take('next|first|the|st', 'before?')
    if (reader.take('marker|m|marked|markers', 'st|stitch|sc|dc|hdc?')) return true
  }
  reader.at = at
  return false
}

/** Looks past signs and a turn for `leaving last 4 sts unworked`, `stop 4 sts before the end`: how many places an `across` before it keeps back. Takes nothing. */
export function leftLater(reader: Reader): Num | undefined {
  const { at } = reader
  while (reader.take(',|;|and|but|then') || reader.take('turn', 'here?')) continue
  const [left] = parseLeave(reader) ?? []
  reader.at = at
  return left?.node === 'leave' && !left.rowEnds && !left.before && !left.slips ? left.count : undefined
}

function one(reader: Reader): Num {
  return { values: [1], start: reader.end, end: reader.end }
}
