import { yardsFromMetres } from './units.ts'

/** A ball as its band states it. */
export interface Ball {
  readonly grams: number
  readonly metres: number
}

/** Metres in a weight of yarn, by what the ball band says, to the nearest whole metre. */
export function metresOf(grams: number, ball: Ball): number {
  return Math.round((grams * ball.metres) / ball.grams)
}

/** Yards in a weight of yarn, by what the ball band says, to the nearest whole yard. Reckoned from the exact metres, not the rounded ones. */
export function yardsOf(grams: number, ball: Ball): number {
  return Math.round(yardsFromMetres((grams * ball.metres) / ball.grams))
}

/** Whole balls to buy for a weight of yarn. */
export function ballsToBuy(grams: number, ball: Ball): number {
  // 100 g from 33.3 g balls is three balls for anyone with a kitchen scale: a ten-thousandth of a ball is no reason to buy another.
  return Math.ceil(grams / ball.grams - 1e-4)
}
