import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { workedPiece } from '../support/named-outline.ts'
import { mirrored, pencilLine, sectionsOf, type Line } from '../support/squared-paper.ts'
import { borderRound, borderWords, mirrorable, patternOf, steppedPiece, type Border, type SteppedPiece } from './random-steps.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'

// The outside oracle is a pencil on squared paper: `support/squared-paper.ts` draws round the squares and shares nothing with the engine.

const sum = ({ sections }: Border): number => sections.reduce((all, { count }) => all + count, 0)

/** Slip stitches in the totals or not. */
const anyPiece = (draw: Draw): SteppedPiece => {
  const stitch = oneOf(draw, ['sc', 'sc', 'hdc', 'dc'] as const)
  const chainCounts = stitch === 'dc' && oneOf(draw, [true, false])
  return steppedPiece(draw, 2, 12, chainCounts ? 'not counted' : oneOf(draw, ['counted', 'not counted']), { stitch, chainCounts })
}

function findings(text: string): string[] {
  return checkOnce({ path: 'steps.md', text }).diagnostics
    // Random steps are no pairs, and need not match.
    .filter(({ code }) => code !== 'key-missing-to-publish' && code !== 'step-lopsided')
    .map(({ code, message }) => `${code} ${message}`)
}

describe('the pencil', () => {
  // Geometry: a rectangle of n squares by m lines.
  test('draws 2n + 2m edges round n squares by m lines, in four sections', () => {
    for (const [n, m] of [[1, 1], [7, 1], [1, 7], [12, 9]] as const) {
      const lines = Array.from({ length: m }, (_, row): Line => ({ from: 0, to: n, toRight: row % 2 === 0 }))
      const edges = pencilLine(lines, false)
      expect(edges).toHaveLength(2 * n + 2 * m)
      expect(sectionsOf(edges)).toEqual([
        { side: 'row-end', count: m }, { side: 'underside', count: n }, { side: 'row-end', count: m }, { side: 'top', count: n },
      ])
    }
  })

  // Drawn by hand: six squares to the right, then three back, of which the first stands on the last but one.
  //
  //      ┌─2─┐
  //   ┌──┘   └─┐
  //   └────1───┘
  test('goes in at a step', () => {
    const lines = [{ from: 0, to: 6, toRight: true }, { from: 2, to: 5, toRight: false }]
    expect(sectionsOf(pencilLine(lines, false)).map(({ side, count }) => `${count} ${side}`)).toEqual([
      '1 row-end', '2 top', '1 row-end', '6 underside', '1 row-end', '1 top', '1 row-end', '3 top',
    ])
    expect(pencilLine(lines, false).slice(1, 3)).toEqual([{ side: 'top', row: 0, stitch: 2 }, { side: 'top', row: 0, stitch: 1 }])
  })
})

describe('a border round a stepped piece', () => {
  test('comes out when it works the edges that a pencil finds', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = anyPiece(draw)
      const border = borderRound(draw, piece)
      const text = patternOf(piece, borderWords(border, sum(border)))
      expect(findings(text), text).toEqual([])
    }), { numRuns: 250, seed: 4_1 })
  })

  test('is found when one of its numbers is one off, whether or not the total goes with it', () => {
    let planted = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = anyPiece(draw)
      const border = borderRound(draw, piece)
      // Row-ends at a step may be passed over, so a number of row-ends that is off is only wrong against the total.
      const at = whole(draw, 0, border.sections.length - 1)
      const off = oneOf(draw, [-1, 1])
      const section = border.sections[at]!
      if (section.count + off === 0) return
      // A turning chain that counts stands on a chain of its own or on none: its underside is worked by some and not by others.
      if (piece.worked.chainCounts && section.side === 'underside' && off === -1) return
      const slipped = { ...border, sections: border.sections.with(at, { ...section, count: section.count + off }) }
      const along = section.side !== 'row-end' && oneOf(draw, [true, false])
      const text = patternOf(piece, borderWords(slipped, along ? sum(slipped) : sum(border)))
      expect(findings(text), `${off} in part ${at + 1}: ${text}`).not.toEqual([])
      planted += 1
    }), { numRuns: 250, seed: 4_2 })
    expect(planted).toBeGreaterThan(180)
  })

  test('is found when only its total is one off', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = anyPiece(draw)
      const border = borderRound(draw, piece)
      const text = patternOf(piece, borderWords(border, sum(border) + oneOf(draw, [-1, 1])))
      expect(findings(text), text).not.toEqual([])
    }), { numRuns: 80, seed: 4_3 })
  })
})

describe('the edges of a stepped piece', () => {
  const edgeOf = { top: 'stitches', step: 'stitches', 'row-ends': 'row-ends', underside: 'underside', round: 'round' } as const
  const sideOf = { top: 'stitches', 'row-end': 'row-ends', underside: 'underside' } as const

  test('are told as the pencil finds them, and so is what the border uses of each', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = steppedPiece(draw, 2, 12, oneOf(draw, ['counted', 'not counted']))
      const border = borderRound(draw, piece)
      const { pieces } = checkOnce({ path: 'steps.md', text: patternOf(piece, borderWords(border, sum(border))) })
      const onward = sectionsOf(pencilLine(piece.lines, false))
      expect(pieces[0]!.edges.map(({ edge, places }) => ({ edge: edgeOf[edge], places }))).toEqual(onward.map(({ side, count }) => ({ edge: sideOf[side], places: count })))
      // A row of sc is one chain high.
      expect(pieces[0]!.edges.flatMap(({ height }) => height ?? [])).toEqual(onward.filter(({ side }) => side === 'row-end').map(({ count }) => count))
      expect(pieces[0]!.edges.at(-1)!.rows).toEqual([`Row ${piece.lines.length}`])
      expect(pieces[1]!.rows[0]!.along!.map(({ edge, offers, worksOver, makes }) => ({ edge: edgeOf[edge], offers, worksOver, makes })))
        .toEqual(border.sections.map(({ side, count }) => ({ edge: sideOf[side], offers: count, worksOver: count, makes: count })))
    }), { numRuns: 100, seed: 4_17 })
  })

  test('tell which edge a slip is on', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = steppedPiece(draw, 2, 12, oneOf(draw, ['counted', 'not counted']))
      const border = borderRound(draw, piece)
      const undersides = border.sections.flatMap(({ side, count }, at) => (side === 'underside' && count > 6 ? [at] : []))
      const at = undersides.at(-1)
      if (at === undefined) return
      const slipped = { ...border, sections: border.sections.with(at, { side: 'underside', count: border.sections[at]!.count - 1 }) }
      const { pieces } = checkOnce({ path: 'steps.md', text: patternOf(piece, borderWords(slipped, sum(slipped))) })
      const used = pieces[1]!.rows[0]!.along!.map(({ offers, worksOver }) => offers - worksOver)
      expect(used).toEqual(border.sections.map((_, index) => (index === at ? 1 : 0)))
    }), { numRuns: 60, seed: 4_18 })
  })
})

describe('the outline of a stepped piece', () => {
  test('is the same when the work is turned twice', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const { outline } = workedPiece(steppedPiece(draw, 2, 12).rows.join('\n'))
      const flat = (turned: boolean) => outline.walk(turned).flatMap(({ places }) => places)
      expect(flat(true).toReversed()).toEqual(flat(false))
    }), { numRuns: 100, seed: 4_4 })
  })

  test('holds every stitch that no later row was worked into, once, and no other', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = steppedPiece(draw, 2, 12)
      const { rows, outline } = workedPiece(piece.rows.join('\n'))
      const stitches = rows.flatMap(({ fabric }) => fabric.made).filter(({ travel }) => travel !== true)
      const worked = new Set(stitches.map(({ into }) => into))
      const onOutline = outline.walk(false).filter(({ edge }) => edge === 'top' || edge === 'step').flatMap(({ places }) => places)
      const free = stitches.filter((stitch) => !worked.has(stitch))
      expect(new Set(onOutline).size).toBe(onOutline.length)
      expect(new Set(onOutline), piece.rows.join('\n')).toEqual(new Set(free))
    }), { numRuns: 150, seed: 4_5 })
  })

  test('is mirrored when the piece is mirrored', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 2, 10)
      const sections = (text: readonly string[]): string[] => workedPiece(text.join('\n')).outline.walk(false).map(({ edge, places }) => `${places.length} ${edge}`)
      const onward = sections(piece.rows)
      // From the other end of the last row the other way round: the top, which came last, comes last again.
      expect(sections(piece.mirroredRows), piece.rows.join('\n')).toEqual([...onward.slice(0, -1).toReversed(), onward.at(-1)])
      expect(sectionsOf(pencilLine(mirrored(piece.lines), false))).toEqual([...sectionsOf(pencilLine(piece.lines, false)).slice(0, -1).toReversed(), sectionsOf(pencilLine(piece.lines, false)).at(-1)])
    }), { numRuns: 100, seed: 4_6 })
  })
})
