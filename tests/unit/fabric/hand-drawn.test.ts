import { expect, test } from 'vitest'
import { namedOutline } from '../../support/named-outline.ts'

// Every fabric is drawn by hand, its rows from below; an arrow shows which way a row was worked, a1 is the first stitch of the first
// row. The outlines were read off the drawings with a finger: from the last stitch worked on in the direction of work, and turned.
// Common practice, no source: a slip stitch that only leads in leaves its stitch free, the stitch that a step stands on is used.

const drawn = (rows: string, onward: string, turned: string, conventions: Parameters<typeof namedOutline>[1] = {}): void => {
  expect(namedOutline(rows, conventions)).toEqual({ onward, turned, wrong: [] })
}

test('two steps on either side, eight rows', () => {
  //   ←             h2 h1
  //   →             g1 g2
  //   ←          f4 f3 f2 f1
  //   →          e1 e2 e3 e4
  //   ←    d8 d7 d6 d5 d4 d3 d2 d1
  //   →    c1 c2 c3 c4 c5 c6 c7 c8
  //   ←    b8 b7 b6 b5 b4 b3 b2 b1
  //   →    a1 a2 a3 a4 a5 a6 a7 a8
  drawn(`Foundation: Ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across. (8)
Rows 2-4: Ch 1, turn, sc in each st across. (8)
Row 5: Turn, sl st in first 2 sts, ch 1, sc in next 4 sts, leave last 2 sts unworked. (4)
Row 6: Ch 1, turn, sc in each st across. (4)
Row 7: Turn, sl st in first st, ch 1, sc in next 2 sts, leave last st unworked. (2)
Row 8: Ch 1, turn, sc in each st across. (2)`,
  'end h g | f4 | end f e | d7 d8 | end d c b a | z1 z2 z3 z4 z5 z6 z7 z8 | end a b c d | d1 d2 | end e f | f1 | end g h | h1 h2',
  'h2 h1 | end h g | f1 | end f e | d2 d1 | end d c b a | z8 z7 z6 z5 z4 z3 z2 z1 | end a b c d | d8 d7 | end e f | f4 | end g h')
})

test('a piece that narrows on its right side only, first by slip stitches, then by what is left', () => {
  //   →  f1 f2 f3
  //   ←  e4 e3 e2 e1
  //   →  d1 d2 d3 d4
  //   ←  c5 c4 c3 c2 c1        slip stitch in b6
  //   →  b1 b2 b3 b4 b5 b6
  //   ←  a6 a5 a4 a3 a2 a1
  drawn(`Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across. (6)
Row 2: Ch 1, turn, sc in each st across. (6)
Row 3: Turn, sl st in first st, ch 1, sc in next 5 sts. (5)
Row 4: Ch 1, turn, sc in next 4 sts, leave last st unworked. (4)
Row 5: Ch 1, turn, sc in each st across. (4)
Row 6: Ch 1, turn, sc in next 3 sts, leave last st unworked. (3)`,
  'end f | e1 | end e d | c1 | end c | b6 | end b a | z1 z2 z3 z4 z5 z6 | end a b c d e f | f1 f2 f3',
  'f3 f2 f1 | end f e d c b a | z6 z5 z4 z3 z2 z1 | end a b | b6 | end c | c1 | end d e | e1 | end f')
})

test('a cross: chains added at both ends, then both arms left again', () => {
  //   ←       f3 f2 f1
  //   →       e1 e2 e3         slipped over d7 d6, left d2 d1
  //   ← d7 d6 d5 d4 d3 d2 d1   dx1 dx2 under d1 d2 (dx1 outermost)
  //   → c1 c2 c3 c4 c5         cx1 cx2 under c1 c2
  //   ←       b3 b2 b1
  //   →       a1 a2 a3
  drawn(`Ch 4.
Row 1: Sc in 2nd ch from hook and in each ch across. (3)
Row 2: Ch 1, turn, sc in each st across. (3)
Row 3: Ch 3, turn, sc in 2nd ch from hook and in next ch, sc in each st across. (5)
Row 4: Ch 3, turn, sc in 2nd ch from hook and in next ch, sc in each st across. (7)
Row 5: Turn, sl st in first 2 sts, ch 1, sc in next 3 sts, leave rem 2 sts unworked. (3)
Row 6: Ch 1, turn, sc in each st across. (3)`,
  'end f e | d6 d7 | end d c | cx1 cx2 | end b a | z1 z2 z3 | end a b c | dx2 dx1 | end d | d1 d2 | end e f | f1 f2 f3',
  'f3 f2 f1 | end f e | d2 d1 | end d | dx1 dx2 | end c b a | z3 z2 z1 | end a b | cx2 cx1 | end c d | d7 d6 | end e f')
})

test('a neck: two shoulders on one row, the second joined anew', () => {
  // b lies over a8 a7 a6; d, in the same direction, over a3 a2 a1.
  //   →  e1 e2 e3       c1 c2 c3
  //   ←  d3 d2 d1       b3 b2 b1
  //   →  a1 a2 a3 a4 a5 a6 a7 a8
  drawn(`Ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across. (8)
Row 2: Ch 1, turn, sc in next 3 sts, leave rem 5 sts unworked. (3)
Row 3: Ch 1, turn, sc in each st across. (3)
Fasten off.
Row 4: Skip next 2 unworked sts of Row 1, join yarn in next st, ch 1, sc in same st, sc in next 2 sts. (3)
Row 5: Ch 1, turn, sc in each st across. (3)`,
  'end e d | a4 a5 | end b c | c1 c2 c3 | end c b a | z8 z7 z6 z5 z4 z3 z2 z1 | end a d e | e1 e2 e3',
  'e3 e2 e1 | end e d a | z1 z2 z3 z4 z5 z6 z7 z8 | end a b c | c3 c2 c1 | end c b | a5 a4 | end d e')
})

test('short rows, taken up again by one long row', () => {
  //   ←  f6 f5 f4 f3 f2 f1      over e2 e1, on over c2 c1, on over a2 a1
  //   →              e1 e2
  //   ←              d2 d1      leaves c2 c1
  //   →        c1 c2 c3 c4
  //   ←        b4 b3 b2 b1      leaves a2 a1
  //   →  a1 a2 a3 a4 a5 a6
  drawn(`Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across. (6)
Row 2: Ch 1, turn, sc in next 4 sts, leave rem 2 sts unworked. (4)
Row 3: Ch 1, turn, sc in each st across. (4)
Row 4: Ch 1, turn, sc in next 2 sts, leave rem 2 sts unworked. (2)
Row 5: Ch 1, turn, sc in each st across. (2)
Row 6: Ch 1, turn, sc in next 2 sts, sc in 2 unworked sts of Row 3, sc in 2 unworked sts of Row 1. (6)`,
  'end f a | z1 z2 z3 z4 z5 z6 | end a b c d e f | f1 f2 f3 f4 f5 f6',
  'f6 f5 f4 f3 f2 f1 | end f e d c b a | z6 z5 z4 z3 z2 z1 | end a f')
})

test('a triangle: decreases make no steps, only row-ends', () => {
  //   →      e1
  //   ←     d2 d1        (sc2tog, 2 times over 3: d1 over c3 c2, d2 over c1)
  //   →    c1 c2 c3
  //   ←   b4 b3 b2 b1
  //   →  a1 a2 a3 a4 a5
  drawn(`Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across. (5)
Row 2: Ch 1, turn, sc2tog, sc in next 3 sts. (4)
Row 3: Ch 1, turn, sc2tog, sc in next 2 sts. (3)
Row 4: Ch 1, turn, sc2tog, sc in next st. (2)
Row 5: Ch 1, turn, sc2tog. (1)`,
  'end e d c b a | z5 z4 z3 z2 z1 | end a b c d e | e1',
  'e1 | end e d c b a | z1 z2 z3 z4 z5 | end a b c d e')
})

test('wider by increases: the underside stays the foundation', () => {
  //   ←  d6 d5 d4 d3 d2 d1
  //   →  c1 c2 c3 c4 c5
  //   ←   b4 b3 b2 b1
  //   →    a1 a2 a3
  drawn(`Ch 4.
Row 1: Sc in 2nd ch from hook and in each ch across. (3)
Row 2: Ch 1, turn, 2 sc in first st, sc in each st across. (4)
Row 3: Ch 1, turn, 2 sc in first st, sc in each st across. (5)
Row 4: Ch 1, turn, 2 sc in first st, sc in each st across. (6)`,
  'end d c b a | z1 z2 z3 | end a b c d | d1 d2 d3 d4 d5 d6',
  'd6 d5 d4 d3 d2 d1 | end d c b a | z3 z2 z1 | end a b c d')
})

test('a turning chain that counts is the end of its row and stands on the last slip stitch', () => {
  //   →     e1 e2 e3        e1 is the chain
  //   ←     d3 d2 d1        d1 is the chain
  //   →     c1 c2 c3        slip stitches in b7 b6 b5, the chain c1 stands on b5; b1 b2 left
  //   ←  b7 b6 b5 b4 b3 b2 b1
  //   →  a1 a2 a3 a4 a5 a6 a7     a1 is the skipped chain, which has no underside: z1 lies under a2
  drawn(`Ch 9.
Row 1: Dc in 4th ch from hook (skipped ch count as dc) and in each ch across. (7)
Row 2: Ch 3 (counts as dc), turn, dc in next st and in each st across. (7)
Row 3: Turn, sl st in first 3 sts, ch 3 (counts as dc), dc in next 2 sts, leave rem 2 sts unworked. (3)
Rows 4-5: Ch 3 (counts as dc), turn, dc in next st and in each st across. (3)`,
  'end e d c | b2 b1 | end b a | z6 z5 z4 z3 z2 z1 | end a b | b7 b6 | end c d e | e1 e2 e3',
  'e3 e2 e1 | end e d c | b6 b7 | end b a | z1 z2 z3 z4 z5 z6 | end a b | b1 b2 | end c d e')
})

test('slip stitches at both ends of a row step in on both sides', () => {
  // Slip stitches in a8 a7, then b1 to b4, then slip stitches in a2 a1.
  //   →        c1 c2 c3 c4
  //   ←        b4 b3 b2 b1
  //   →  a1 a2 a3 a4 a5 a6 a7 a8
  drawn(`Ch 9.
Row 1: Sc in 2nd ch from hook and in each ch across. (8)
Row 2: Ch 1, turn, sl st in first 2 sts, sc in next 4 sts, sl st in last 2 sts. (4)
Row 3: Ch 1, turn, sc in 4 sc, leave sl sts unworked. (4)`,
  'end c b | a7 a8 | end a | z8 z7 z6 z5 z4 z3 z2 z1 | end a | a1 a2 | end b c | c1 c2 c3 c4',
  'c4 c3 c2 c1 | end c b | a2 a1 | end a | z1 z2 z3 z4 z5 z6 z7 z8 | end a | a8 a7 | end b c')
})

test('a side grown over again: what hung out lies between two undersides', () => {
  //   ←     d6 d5 d4 d3 d2 d1     dx1 dx2 dx3 under d1 d2 d3
  //   →     c1 c2 c3
  //   ←     b3 b2 b1              slip stitches in a6 a5, a1 left
  //   →  a1 a2 a3 a4 a5 a6
  drawn(`Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across. (6)
Row 2: Turn, sl st in first 2 sts, ch 1, sc in next 3 sts, leave last st unworked. (3)
Row 3: Ch 1, turn, sc in each st across. (3)
Row 4: Ch 4, turn, sc in 2nd ch from hook and in next 2 ch, sc in each st across. (6)`,
  'end d c b | a1 | end a | z1 z2 z3 z4 z5 z6 | end a | a6 a5 | end b c | dx3 dx2 dx1 | end d | d1 d2 d3 d4 d5 d6',
  'd6 d5 d4 d3 d2 d1 | end d | dx1 dx2 dx3 | end c b | a5 a6 | end a | z6 z5 z4 z3 z2 z1 | end a | a1 | end b c d')
})

test('begun with foundation stitches: their bases are the underside', () => {
  //   →     c1 c2 c3
  //   ←     b4 b3 b2 b1
  //   →  a1 a2 a3 a4 a5
  drawn(`Row 1: Fsc 5. (5)
Row 2: Ch 1, turn, sc in next 4 sts, leave last st unworked. (4)
Row 3: Ch 1, turn, sc in next 3 sts, leave last st unworked. (3)`,
  'end c | b1 | end b a | z5 z4 z3 z2 z1 | end a | a1 | end b c | c1 c2 c3',
  'c3 c2 c1 | end c b | a1 | end a | z1 z2 z3 z4 z5 | end a b | b1 | end c')
})

test('a row begun farther in, with new yarn', () => {
  //   →     c1 c2 c3
  //   ←  b4 b3 b2 b1 .. ..
  //   →  a1 a2 a3 a4 a5 a6
  drawn(`Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across. Fasten off. (6)
Row 2: Turn, skip first 2 sts, join yarn in next st, ch 1, sc in same st, sc in next 3 sts. (4)
Row 3: Ch 1, turn, sc in next 3 sts, leave last st unworked. (3)`,
  'end c | b1 | end b | a5 a6 | end a | z6 z5 z4 z3 z2 z1 | end a b c | c1 c2 c3',
  'c3 c2 c1 | end c b a | z1 z2 z3 z4 z5 z6 | end a | a6 a5 | end b | b1 | end c')
})

test('added at the far end with a separate chain, and at the start with the working yarn', () => {
  //   ←  c7 c6 c5 c4 c3 c2 c1         cx1 cx2 under c1 c2
  //   →  b1 b2 b3 b4 b5               bx1 bx2 under b4 b5, from the row outwards
  //   ←  a3 a2 a1
  drawn(`Ch 4.
Row 1: Sc in 2nd ch from hook and in each ch across. (3)
Row 2: Ch 1, turn, sc in each st across; with a separate length of yarn ch 2 joined to the end; sc in each of 2 ch. (5)
Row 3: Ch 3, turn, sc in 2nd ch from hook and in next ch, sc in each st across. (7)`,
  'end c b a | z3 z2 z1 | end a | bx1 bx2 | end b | cx2 cx1 | end c | c1 c2 c3 c4 c5 c6 c7',
  'c7 c6 c5 c4 c3 c2 c1 | end c | cx1 cx2 | end b | bx2 bx1 | end a | z1 z2 z3 | end a b c')
})

test('rows that are not turned: the second goes back over the first from its end', () => {
  //   ←  b4 b3 b2 b1      the same side is seen
  //   →  a1 a2 a3 a4
  drawn(`Ch 5.
Row 1: Sc in 2nd ch from hook and in each ch across. (4)
Row 2: Ch 1, do not turn, working from left to right, reverse sc in each st across. (4)`,
  'end b a | z1 z2 z3 z4 | end a b | b1 b2 b3 b4',
  'b4 b3 b2 b1 | end b a | z4 z3 z2 z1 | end a b')
})

test('spaces are places of the top, and skipped stitches of a row are no step', () => {
  //   →  c1 sp c2 sp c3
  //   ←  b5 b4 b3 b2 b1
  //   →  a1 a2 a3 a4 a5
  drawn(`Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across. (5)
Row 2: Ch 1, turn, sc in each st across. (5)
Row 3: Ch 1, turn, sc in first st, (ch 1, skip next st, sc in next st) twice. (3 sc, 2 ch-1 sps)`,
  'end c b a | z5 z4 z3 z2 z1 | end a b c | c1 c2 c3 c4 c5',
  'c5 c4 c3 c2 c1 | end c b a | z1 z2 z3 z4 z5 | end a b c')
})
