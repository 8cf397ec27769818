/** The same edge in other words: what stands in the pages, and what others write for it. */
export interface OtherWords {
  readonly name: string
  readonly from: RegExp
  readonly to: string
}

const rows = /in each of next (\d+) row-ends/g
const under = /in the underside of each of next (\d+) ch/g
// Not behind `along the foot with`: the edge is told there already.
const underWith = /(?<!\d |with )\b(sc|hdc) in the underside of each of next (\d+) ch/g
const left = /leave (last|rem) (\d+ sts) unworked/g
const stepIn = /sl st in first (\d+) sts/g

/** Wordings of the trade; common practice, no source. */
export const otherWords: readonly OtherWords[] = [
  { name: 'row ends in two words', from: /row-end/g, to: 'row end' },
  { name: 'the end of each row', from: rows, to: 'in end of each of next $1 rows' },
  { name: 'the ends of the next rows', from: rows, to: 'in the ends of next $1 rows' },
  { name: 'the side of each row', from: rows, to: 'in side of each of next $1 rows' },
  { name: 'the next row-ends', from: rows, to: 'in next $1 row-ends' },
  { name: 'so many evenly across so many', from: /, sc in each of next (\d+) row-ends/g, to: ', $1 sc evenly across next $1 row-ends' },
  { name: 'row-ends counted and not next', from: rows, to: 'in each of $1 row-ends' },
  { name: 'bottom loops', from: under, to: 'in bottom loop of each of next $1 ch' },
  { name: 'free loops of the foundation', from: under, to: 'in free loop of each of next $1 foundation ch' },
  { name: 'across the bottom', from: under, to: 'in each of next $1 ch across bottom' },
  { name: 'along the bottom edge', from: underWith, to: '$1 in each of next $2 ch along bottom edge' },
  { name: 'leaving', from: left, to: 'leaving $1 $2 unworked' },
  { name: 'a number left unworked', from: left, to: 'leave $2 unworked' },
  { name: 'the remaining ones', from: left, to: 'leave the remaining $2 unworked' },
  { name: 'do not work them', from: left, to: 'do not work last $2' },
  { name: 'turned before they are left', from: new RegExp(`, ${left.source}`, 'g'), to: ', turn, leaving $2 unworked' },
  { name: 'they remain', from: left, to: '$2 remain unworked' },
  { name: 'left in brackets', from: new RegExp(`, ${left.source}`, 'g'), to: ' ($2 left unworked)' },
  { name: 'slip stitches across', from: stepIn, to: 'sl st across first $1 sts' },
  { name: 'slip stitches over', from: stepIn, to: 'sl st over first $1 sts' },
  { name: 'a slip stitch in each', from: stepIn, to: 'sl st in each of first $1 sts' },
  { name: 'slip stitches by number', from: stepIn, to: '$1 sl sts' },
  { name: 'slip stitches in the next', from: stepIn, to: 'sl st in next $1 sts' },
  { name: 'slip st into the first', from: stepIn, to: 'slip st into the first $1 sts' },
  { name: 'the piece rotated', from: /do not turn,/g, to: 'do not turn, rotate piece,' },
  { name: 'the work rotated by a right angle', from: /do not turn,/g, to: 'do not turn, rotate work 90 degrees clockwise,' },
  { name: 'down the side edge', from: /do not turn,/g, to: 'do not turn; working down the side edge,' },
  { name: 'the border begun', from: /do not turn,/g, to: 'do not turn; begin border:' },
  { name: 'a slip stitch to join', from: /join with sl st in first (sc|hdc)/g, to: 'sl st in first $1 to join' },
  { name: 'joined to the first with a slip stitch', from: /join with sl st in first (sc|hdc)/g, to: 'join to first $1 with sl st' },
  { name: 'joined to the first st', from: /join with sl st in first (sc|hdc)/g, to: 'join with a sl st to the first st' },
  { name: 'fastened off after the join', from: /join with sl st in first (sc|hdc)\./g, to: 'join with sl st in first $1. Fasten off and weave in ends.' },
  { name: 'what remains of an older row', from: /unworked sts of (Row|Rnd) (\d+)/g, to: 'remaining sts of $1 $2' },
  { name: 'held stitches', from: /(\d+) skipped sts/g, to: '$1 held sts' },
  { name: 'yarn joined with a slip stitch', from: /\bjoin yarn in/g, to: 'join yarn with sl st in' },
  { name: 'yarn attached', from: /\bjoin yarn in/g, to: 'attach yarn to' },
  { name: 'yarn rejoined', from: /\bjoin yarn in/g, to: 'rejoin yarn in' },
  { name: 'yarn reattached', from: /Join yarn in/g, to: 'Reattach yarn in' },
  { name: 'on the opposite side', from: under, to: 'in each of next $1 ch on opposite side of foundation ch' },
  { name: 'across the opposite side', from: under, to: 'in each of next $1 ch across opposite side of foundation ch' },
  { name: 'on the other side of the chain', from: under, to: 'in each of next $1 ch on other side of chain' },
  { name: 'across the bottom edge', from: under, to: 'in each of next $1 ch across bottom edge' },
  { name: 'foundation chains', from: under, to: 'in each of next $1 foundation ch' },
  { name: 'unused loops', from: under, to: 'in each of next $1 unused loops of foundation ch' },
  { name: 'row-ends down the side edge', from: rows, to: 'in each of next $1 row-ends down side edge' },
  { name: 'row-ends up the other side', from: rows, to: 'in each of next $1 row-ends up the other side' },
  { name: 'row-ends along the left edge', from: rows, to: 'in each of next $1 row-ends along left edge' },
  { name: 'so many along so many', from: /, sc in each of next (\d+) row-ends/g, to: ', $1 sc along next $1 row ends' },
  { name: 'on the underside', from: under, to: 'in each of next $1 ch on underside' },
  { name: 'working along the opposite side', from: underWith, to: 'working along opposite side of foundation ch, $1 in each of next $2 ch' },
  { name: 'working in what loops remain', from: underWith, to: 'working in remaining loops of foundation ch, $1 in each of next $2 ch' },
  { name: 'into the base of the chain', from: underWith, to: 'working into base of foundation ch, $1 in each of next $2 ch' },
  { name: 'the chain edge', from: underWith, to: 'along the chain edge $1 in each of next $2 ch' },
  { name: 'headed by the foundation', from: underWith, to: 'foundation: $1 in each of next $2 ch' },
  { name: 'headed by the bottom', from: underWith, to: 'bottom: $1 in each of next $2 ch' },
  { name: 'what is held for later', from: left, to: 'hold $1 $2 for later' },
  { name: 'the final ones, for a step', from: new RegExp(left.source.replace('(last|rem)', 'last'), 'g'), to: 'leave final $1 unworked for the step' },
  { name: 'stopped before them', from: new RegExp(left.source.replace('(last|rem)', 'last'), 'g'), to: 'stop before the last $1' },
  { name: 'turned on its side', from: /do not turn,/g, to: 'turn the work on its side and work along the edge,' },
  { name: 'turned by a quarter', from: /do not turn,/g, to: 'turn the piece a quarter turn,' },
  { name: 'the corner turned', from: /do not turn,/g, to: 'turn the corner,' },
]

/** The row that joins two shoulders of 9 sc over a chain of 10, in other words. */
export const joiningRows: readonly string[] = [
  'sc across second shoulder, ch 10, sc across first shoulder',
  'sc in next 9 sts, ch 10 for front neck, sc in each of 9 sc of other shoulder',
  'sc in each sc across, ch 10, sc in each sc across first shoulder',
  'sc in each st of second shoulder, ch 10, with WS of first shoulder facing, sc in each st of first shoulder',
  'sc in 9 sc, ch 10, continuing on to first shoulder, sc in 9 sc',
  'sc in 9 sc, ch 10, join to first shoulder, sc in 9 sc of first shoulder',
  'sc in each of the 9 second shoulder sts, ch 10, sc in each of the 9 first shoulder sts',
  'sc in each of 9 sts, ch 10, sc in each of the 9 held sts of first shoulder',
  'sc in 9 sts of 2nd shoulder, ch 10, sc in 9 sts of 1st shoulder',
  'working across second shoulder, sc in 9 sts, ch 10; working across first shoulder, sc in 9 sts',
  '9 sc across second shoulder, ch 10, 9 sc across first shoulder',
  'sc 9 across second shoulder, ch 10, sc 9 across first shoulder',
  'sc across 9 sc of second shoulder, ch 10, sc across 9 sc of first shoulder',
  'sc in each of first 9 sc, ch 10 for neck, sc in each of 9 sc at the top of first shoulder',
  'sc in each sc of this shoulder, ch 10, sc in each sc of the other',
]
