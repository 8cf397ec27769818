import { describe, expect, test } from 'vitest'
import { ballsToBuy, metresOf, yardsOf } from '../../../src/measures/yarn.ts'

const bulky = { grams: 100, metres: 68 }

describe('yarn by the ball', () => {
  // By hand: metres = grams × metres of the ball ÷ grams of the ball.
  test('120 g of 68 m to 100 g is 82 m and 89 yd', () => {
    expect(metresOf(120, bulky)).toBe(82) // 81.6
    expect(yardsOf(120, bulky)).toBe(89) // 81.6 ÷ 0.9144 = 89.24
  })

  test('yards are reckoned from the exact metres', () => {
    // 13 × 2 = 26 m ÷ 0.9144 = 28.43; 0.2 × 2 = 0.4 m is 0 m when rounded and 0.44 yd.
    expect(yardsOf(13, { grams: 100, metres: 200 })).toBe(28)
    // 10.3 × 2 = 20.6 m ÷ 0.9144 = 22.53 → 23; from the rounded 21 m it would be 22.97, and from 20 m 21.87.
    expect(yardsOf(10.3, { grams: 100, metres: 200 })).toBe(23)
  })

  // Trade fact: 200 g from 100 g balls is 2 balls; a part of a ball is a ball to buy.
  test.each([[200, 100, 2], [201, 100, 3], [1, 50, 1], [150, 50, 3], [100, 33.3, 4], [99.9, 33.3, 3]])(
    '%s g from balls of %s g is %s balls', (grams, ball, balls) => {
      expect(ballsToBuy(grams, { grams: ball, metres: 100 })).toBe(balls)
    })

  // 0.1 + 0.2 is a hair more than 0.3 in binary: it must not cost a ball.
  test('a rounding hair buys no ball', () => {
    expect(ballsToBuy(0.1 + 0.2, { grams: 0.3, metres: 1 })).toBe(1)
  })
})
