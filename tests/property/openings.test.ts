import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'

// Sums by hand: an opening of s stitches under a chain of c offers s + c places, and nothing else. What is left of the round are the
// stitches between the openings, and its next round the chains as well.

/** An opening: stitches skipped, and the chains over them. */
interface Opening {
  readonly skipped: number
  readonly chains: number
}

interface Divided {
  readonly openings: readonly Opening[]
  /** Stitches worked before each opening, and after the last. */
  readonly between: readonly number[]
}

function divided(draw: Draw): Divided {
  const openings = Array.from({ length: whole(draw, 1, 3) }, () => ({ skipped: whole(draw, 4, 16), chains: whole(draw, 2, 8) }))
  return { openings, between: [...openings.map(() => whole(draw, 3, 20)), whole(draw, 3, 20)] }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0)

function bodyRounds({ openings, between }: Divided, total?: number): readonly string[] {
  const width = sum(between) + sum(openings.map(({ skipped }) => skipped))
  const kept = sum(between)
  const sizes = [...new Set(openings.map(({ chains }) => chains))]
  const spaces = sizes.map((size) => {
    const many = openings.filter(({ chains }) => chains === size).length
    return `, ${many} ch-${size} ${many === 1 ? 'sp' : 'sps'}`
  })
  const divide = openings.map(({ skipped, chains }, index) => `sc in next ${between[index]} sts, ch ${chains}, skip next ${skipped} sts`)
  return [
    `Foundation: Ch ${width}, join with sl st in first ch to form a ring.`,
    `Rnd 1: Ch 1, sc in each ch around, join. (${width})`,
    `Rnd 2: Ch 1, ${divide.join(', ')}, sc in next ${between.at(-1)} sts, join. (${kept} sc${spaces.join('')})`,
    `Rnd 3: Ch 1, sc in each sc and in each ch around, join. (${total ?? kept + sum(openings.map(({ chains }) => chains))})`,
  ]
}

/** A piece that begins on an opening, in one of the trade's ways. */
function openingRound(draw: Draw, { skipped, chains }: Opening, total = skipped + chains): string {
  const join = oneOf(draw, ['Join yarn in first skipped st of Rnd 1, ch 1, ', 'With RS facing, join yarn with sl st in first skipped st of Rnd 1, ch 1, '])
  const stitches = oneOf(draw, [`sc in each of ${skipped} skipped sts of Rnd 1`, `sc in each of next ${skipped} skipped sts of Rnd 1`, `sc in each of ${skipped} skipped sts`])
  const under = oneOf(draw, [`sc in underside of each of ${chains} ch`, `sc in the underside of each of next ${chains} ch`, `sc in each of next ${chains} ch of underarm`])
  return `Rnd 1: ${join}${stitches}, ${under}, join. (${total})`
}

const block = (lines: readonly string[]): string => lines.map((line) => `      ${line}`).join('\n')

const pattern = (body: readonly string[], rounds: readonly string[]): string => `---
title: Openings
terms: US
conventions: { turning-chains: { sc: not counted } }
pieces:
  - name: Body
    rows: |
${block(body)}
${rounds.map((round, index) => `  - name: Sleeve ${index + 1}\n    on: Body\n    rows: |\n${block([round, `Rnd 2: Ch 1, sc in each st around, join. (${/\((\d+)\)$/.exec(round)![1]})`])}`).join('\n')}
---
`

const findings = (text: string): string[] => checkOnce({ path: 'openings.md', text }).diagnostics
  .filter(({ code }) => code !== 'key-missing-to-publish')
  .map(({ code, message }) => `${code} ${message}`)

describe('openings in a round', () => {
  test('offer their skipped stitches and the undersides of their chains', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = divided(draw)
      const text = pattern(bodyRounds(piece), piece.openings.map((opening) => openingRound(draw, opening)))
      expect(findings(text), text).toEqual([])
    }), { numRuns: 150, seed: 4_14 })
  })

  test('are found to be one off, whether or not the total goes along', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = divided(draw)
      const at = whole(draw, 0, piece.openings.length - 1)
      const right = piece.openings[at]!
      const off = oneOf(draw, [-1, 1])
      const slipped = oneOf(draw, [{ ...right, skipped: right.skipped + off }, { ...right, chains: right.chains + off }])
      const total = oneOf(draw, [right, slipped])
      const rounds = piece.openings.map((opening, index) => (index === at ? openingRound(draw, slipped, total.skipped + total.chains) : openingRound(draw, opening)))
      const text = pattern(bodyRounds(piece), rounds)
      expect(findings(text), text).not.toEqual([])
    }), { numRuns: 150, seed: 4_15 })
  })
})
