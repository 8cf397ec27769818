import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { severityOf } from '../../src/diagnostics/codes.ts'
import { checkPattern } from '../../src/pattern/check-pattern.ts'
import { countNaively, type Place, type Step } from '../support/naive-counter.ts'
import { workRows } from '../support/work-rows.ts'
import { fenceOf, lineOf, pieceOf, totalOf, type RandomPiece } from './random-pieces.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'

// What a designer's finger does by mistake: a step dropped, doubled, swapped, a number one off. The naive counter is the judge.

function slip(draw: Draw, steps: readonly Step[]): readonly Step[] {
  const at = whole(draw, 0, steps.length - 1)
  const here = steps[at]!
  const inside = here.step === 'times' || here.step === 'fill' ? here : undefined
  const by = oneOf(draw, [1, -1])
  const ways: (() => readonly Step[])[] = [
    () => steps.toSpliced(at, 1),
    () => steps.toSpliced(at, 0, here),
    () => steps.with(at, oneOff(here, by)),
    () => (at + 1 < steps.length ? steps.toSpliced(at, 2, steps[at + 1]!, here) : steps.with(at, oneOff(here, by))),
  ]
  if (inside) ways.push(() => steps.with(at, { ...inside, steps: slip(draw, inside.steps) }))
  return oneOf(draw, ways)()
}

function oneOff(step: Step, by: number): Step {
  switch (step.step) {
    case 'work':
    case 'skip':
      return { ...step, count: step.count + by }
    case 'many':
      return { ...step, of: step.of + by }
    case 'together':
      return { ...step, over: step.over + by }
    case 'times':
      return { ...step, times: step.times + by }
    case 'fill':
    case 'each':
      return { ...step, keepBack: step.keepBack + by }
    case 'space':
      return { ...step, of: step.of + by }
    default:
      return step
  }
}

/** No number of a step is nothing, and nothing is written that means another thing than it says. */
function sayable(steps: readonly Step[]): boolean {
  return steps.length > 0 && steps.every((step) => {
    switch (step.step) {
      case 'work':
      case 'skip':
        return step.count > 0
      case 'many':
        return step.of > 0
      case 'together':
        return step.over > 1
      case 'space':
        return step.of > 0
      case 'each':
        return step.keepBack >= 0
      case 'times':
        return step.times > 1 && sayable(step.steps)
      case 'fill':
        return step.keepBack >= 0 && sayable(step.steps)
      default:
        return true
    }
  })
}

function worksOn(piece: RandomPiece, row: number): readonly Place[] {
  const below = row === 0 ? Array.from({ length: piece.base }, () => ({ stitch: 'sc' })) : piece.rows[row - 1]!.count.top
  return piece.flat ? below.toReversed() : below
}

const shown = (counts: Readonly<Record<string, number>>): string => Object.entries(counts).map(([kind, count]) => `${count} ${kind}`).sort().join()

describe('a row with a slip in it', () => {
  test('is never said to add up when a finger does not come out, and is when it does', () => {
    let judged = 0
    let wrong = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = pieceOf(draw, 1, 4)
      if (piece.rows.length === 0) return
      const last = piece.rows.length - 1
      const row = piece.rows[last]!
      const steps = slip(draw, row.steps)
      if (!sayable(steps)) return
      const count = countNaively(worksOn(piece, last), steps, piece.flat)
      if (count.unclear !== undefined) return
      const manner = { draw, plain: true, flat: piece.flat }
      const before = piece.rows.slice(0, last).map((other) => lineOf(other, manner, false))
      const total = totalOf(row.count, manner)
      const text = [...before, lineOf({ ...row, steps, count }, manner, false, total)].join('\n')
      const sameSpaces = shown(count.spaces) === shown(row.count.spaces)
      const comesOut = count.trouble === undefined && count.makes === row.count.makes && sameSpaces
      const worked = workRows(text, fenceOf(piece), false)
      const { verdict } = worked.row(row.label)
      judged += 1
      if (comesOut) {
        expect(verdict, text).toBe('adds-up')
        return
      }
      wrong += 1
      expect(verdict, `${text}\n(${count.trouble ?? `makes ${count.makes}`})`).not.toBe('adds-up')
      expect(worked.diagnostics.filter(({ severity, line }) => severity === 'error' && line === last + 1), text).not.toEqual([])
    }), { numRuns: 330 })
    expect(judged).toBeGreaterThan(100)
    expect(wrong).toBeGreaterThan(60)
  })

  test('one wrong total is one error, on its row, and the rows after it are worked on the truth', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = pieceOf(draw, 3, 8)
      if (piece.rows.length < 3) return
      const at = whole(draw, 0, piece.rows.length - 2)
      // Where there are chains, a total that is off by their number could be one that counts them.
      if (Object.keys(piece.rows[at]!.count.spaces).length > 0) return
      const manner = { draw, plain: true, flat: piece.flat }
      const text = piece.rows.map((row, index) => {
        if (index !== at) return lineOf(row, manner, false)
        const said = row.count.makes + oneOf(draw, [-3, -2, -1, 1, 2, 3])
        return lineOf(row, manner, false, `(${Math.max(said, 1)} sts)`)
      })
      if (text[at]!.endsWith(`(${piece.rows[at]!.count.makes} sts)`)) return
      const worked = workRows(text.join('\n'), fenceOf(piece), false)
      expect(worked.diagnostics.map(({ code, line }) => ({ code, line })), text.join('\n')).toEqual([{ code: 'total-mismatch', line: at + 1 }])
      expect(worked.row(piece.rows[at]!.label).verdict).toBe('does-not')
    }), { numRuns: 100 })
  })

  test('a count by kind with one number wrong is an error, though the others are right', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = pieceOf(draw, 1, 5)
      const row = piece.rows.at(-1)
      if (!row) return
      const counts = [
        ...Object.entries(row.count.kinds).map(([kind, count]) => ({ kind, count })),
        ...Object.entries(row.count.spaces).map(([kind, count]) => ({ kind: `${kind} sps`, count })),
      ]
      const wrong = whole(draw, 0, counts.length - 1)
      const off = oneOf(draw, [-2, -1, 1, 2])
      if (counts[wrong]!.count + off < 1) return
      const total = `(${counts.map(({ kind, count }, index) => `${index === wrong ? count + off : count} ${kind}`).join(', ')})`
      const manner = { draw, plain: true, flat: piece.flat }
      const lines = piece.rows.map((other) => (other === row ? lineOf(row, manner, false, total) : lineOf(other, manner, false)))
      const worked = workRows(lines.join('\n'), fenceOf(piece), false)
      expect(worked.row(row.label).verdict, lines.join('\n')).toBe('does-not')
      const found = worked.diagnostics.filter(({ severity }) => severity === 'error')
      expect(found.map(({ line }) => line), lines.join('\n')).toEqual([piece.rows.length])
      expect(['kind-mismatch', 'total-mismatch']).toContain(found[0]!.code)
    }), { numRuns: 130 })
  })

  test('a change that is offered, once made, mends its row and spoils none', () => {
    let offered = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = pieceOf(draw, 2, 5)
      if (piece.rows.length < 2) return
      const at = whole(draw, 0, piece.rows.length - 1)
      const row = piece.rows[at]!
      const manner = { draw, plain: true, flat: piece.flat }
      const steps = oneOf(draw, [true, false]) ? slip(draw, row.steps) : row.steps
      if (!sayable(steps)) return
      const total = oneOf(draw, [totalOf(row.count, manner), `(${row.count.makes + oneOf(draw, [1, -1])} sts)`])
      const text = piece.rows.map((other, index) => (index === at ? lineOf({ ...row, steps }, manner, false, total) : lineOf(other, manner, false)))
      const worked = workRows(text.join('\n'), fenceOf(piece))
      const errors = (diagnostics: typeof worked.diagnostics): number => diagnostics.filter(({ severity }) => severity === 'error').length
      for (const { diagnostic } of worked.diagnostics) {
        const edit = diagnostic.hint?.edit
        if (!edit) continue
        offered += 1
        const { text: before } = worked.checked.source
        const after = checkPattern({ path: 'bench.md', text: before.slice(0, edit.span.start) + edit.replacement + before.slice(edit.span.end) })
        const left = after.diagnostics.filter(({ code }) => severityOf(code) === 'error')
        expect(left.length, `${text.join('\n')}\n${diagnostic.hint!.text}`).toBeLessThan(errors(worked.diagnostics))
      }
    }), { numRuns: 130 })
    expect(offered).toBeGreaterThan(10)
  })
})
