import type { HandPiece, HandRow } from './made-by-hand.ts'

const increase = (number: number, plain: number): HandRow => {
  const unit = plain === 1 ? '*Sc in next st, inc' : `*Sc in next ${plain} sts, inc`
  return { written: `Rnd ${number}:|${unit}; rep from * around.|(${6 * number})`, numbers: [number], makes: [[6 * number]], repeats: [[unit, 6]] }
}

const decrease = (number: number, plain: number, makes: number): HandRow => {
  const unit = plain === 1 ? '*Sc in next st, dec' : `*Sc in next ${plain} sts, dec`
  return { written: `Rnd ${number}:|${unit}; rep from * around.|(${makes})`, numbers: [number], makes: [[makes]], repeats: [[unit, 6]] }
}

const even = (label: string, first: number, last: number, text: string): HandRow => {
  const numbers = Array.from({ length: last - first + 1 }, (_, index) => first + index)
  return { written: `${label}:|${text}|(48)`, numbers, makes: [numbers.map(() => 48)] }
}

/** A ball of 24 rounds, 816 stitches by hand: 6 × (1+…+8) = 216, 9 × 48 = 432, 6 × (7+…+1) = 168. */
export const ball: HandPiece = {
  name: 'The ball',
  lines: [
    { written: 'Rnd 1:|with A, make an adjustable ring; 6 sc in ring.|(6)', numbers: [1], makes: [[6]] },
    { written: 'Rnd 2:|Inc in each st around.|(12)', numbers: [2], makes: [[12]] },
    increase(3, 1), increase(4, 2), increase(5, 3), increase(6, 4), increase(7, 5), increase(8, 6),
    even('Rnds 9-10', 9, 10, 'Sc in each st around.'),
    even('Rnds 11-15', 11, 15, 'Change to B. Sc in each st around.'),
    even('Rnds 16-17', 16, 17, 'Change to A; fasten off B. Sc in each st around.'),
    decrease(18, 6, 42), decrease(19, 5, 36), decrease(20, 4, 30), decrease(21, 3, 24),
    'Note: stuff firmly now.',
    decrease(22, 2, 18), decrease(23, 1, 12),
    { written: 'Rnd 24:|Dec around.|(6)', numbers: [24], makes: [[6]] },
    'Fasten off; draw the tail through the last 6 sts and pull the ring shut.',
  ],
}

/** Its loop, 100 stitches by hand: 24 + 24 + 28 + 24. */
export const becket: HandPiece = {
  name: 'The becket',
  lines: [
    { written: 'Foundation:|With B, ch 25.', makes: [[25]], kinds: { ch: 25 } },
    { written: 'Row 1 (RS):|Sc in 2nd ch from hook and in each ch across.|(24)', numbers: [1], makes: [[24]], side: 'RS' },
    { written: 'Row 2:|Ch 1, turn, sc in each st\n      across.|(24)', numbers: [2], makes: [[24]], side: 'WS' },
    { written: 'Row 3:|Ch 1, turn, *sc in next 5 sts, inc; rep from * across.|(28)', numbers: [3], makes: [[28]], side: 'RS', repeats: [['*sc in next 5 sts, inc', 4]] },
    { written: 'Row 4:|Ch 1, turn, *sc in next 5 sts, dec; rep from * across.|(24)', numbers: [4], makes: [[24]], side: 'WS', repeats: [['*sc in next 5 sts, dec', 4]] },
  ],
}
