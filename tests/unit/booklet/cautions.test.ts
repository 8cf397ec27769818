import { describe, expect, test } from 'vitest'
import type { Part } from '../../../src/booklet/booklet.ts'
import { cautionsOf, withCautions } from '../../../src/booklet/cautions.ts'
import type { Pattern } from '../../../src/pattern/pattern.ts'
import { byHand } from './made-by-hand.ts'

const cautions = (madeFor: NonNullable<Pattern['madeFor']> | undefined, notions: readonly string[] = [], words = '', fibre = '100% wool', sizes: readonly string[] = []) =>
  cautionsOf(byHand([], {
    ...(madeFor === undefined ? {} : { madeFor }), sizes,
    materials: { yarns: [{ fibre, needs: [10] }], hooks: [], notions: notions.map((what) => ({ what })) },
  }).pattern!, words).join('\n')

// What careful patterns caution against, by kind of thing: common practice in printed patterns; the hazards are those of the US
// small-parts rule (16 CFR 1501, under three years), EN 71-1 (toys), EN 14682 and 16 CFR 1120 (cords on clothes for children) and
// the American Academy of Pediatrics' advice on infant sleep of 2022 (nothing soft, first twelve months).
describe('cautions', () => {
  test('small parts on toys: not under three, not for pets, embroider instead', () => {
    expect(cautions('toy', ['safety eyes, 8 mm'])).toMatch(/under three.*pet.*embroider/)
    expect(cautions('toy', ['yarn needle'])).not.toMatch(/under three/)
    expect(cautions('home', ['buttons'])).not.toMatch(/under three/)
  })

  test('toys: filling, seams, and the rules for who sells them', () => {
    expect(cautions('toy', ['toy stuffing'])).toMatch(/clean, washable filling/)
    expect(cautions('toy')).toMatch(/Sew every part on firmly/)
    expect(cautions('toy')).toMatch(/sold.*toy rules of the country/)
  })

  test('things for babies: nothing soft where a baby sleeps in the first twelve months', () => {
    expect(cautions('baby')).toMatch(/out of the cot when the baby sleeps/)
    expect(cautions('baby')).toMatch(/first twelve months nothing soft/)
  })

  test('cords on clothes for children', () => {
    expect(cautions('garment', ['cotton cord'])).toMatch(/neck or hood/)
    expect(cautions('garment', [], '', '100% wool', ['Baby', 'Adult'])).toMatch(/no ties or cords/)
    expect(cautions('garment', [], '', '100% wool', ['Small', 'Large'])).toBe('')
  })

  test('heat in the kitchen, more so with yarn that melts', () => {
    expect(cautions('kitchen')).toMatch(/all cotton or all wool/)
    expect(cautions('kitchen', [], '', '100% cotton')).not.toMatch(/listed here melts/)
    expect(cautions('kitchen', [], '', '60% cotton, 40% acrylic')).toMatch(/listed here melts/)
  })

  test('pets, fire, and soft things for the home', () => {
    expect(cautions('pet')).toMatch(/swallowed/)
    expect(cautions('home', ['tealight holder', 'candle'])).toMatch(/LED/)
    expect(cautions('home', ['fibrefill'])).toMatch(/no toy.*cot/)
    expect(cautions('home', [], 'with a becket to hang it by')).toMatch(/out of reach|cannot reach/)
  })

  test('whatever is said defers to the rules of the place and to those who know', () => {
    expect(cautions('toy')).toMatch(/no law.*where you are.*ask a professional/)
  })

  test('a thing without hazards has no cautions, and nothing to defer', () => {
    expect(cautions('home')).toBe('')
    expect(cautions(undefined)).toBe('')
  })
})

// Printed beside the row where the hazard enters, not only at the end: common practice of careful patterns, no source.
describe('cautions beside the rows', () => {
  const part = (name: string, texts: readonly string[]): Part => ({
    number: 1, name, line: '', counting: 'Round', sides: false, lines: texts.map((text) => ({ kind: 'instruction', text: [{ text, repeat: false }] })),
  })
  const said = (parts: readonly Part[], more: Partial<Pattern>) => withCautions(parts, byHand([], more).pattern!, '')
    .flatMap(({ lines }) => lines.map((line) => `${line.kind === 'instruction' && line.caution ? '! ' : ''}${line.text.map(({ text }) => text).join('')}`))
  const toy: Partial<Pattern> = { madeFor: 'toy', materials: { yarns: [], hooks: [], notions: [{ what: 'safety eyes' }, { what: 'fibrefill' }] } }

  test('stand after the line at which the hazard enters, each once', () => {
    const lines = said([part('Head', ['Sc around.', 'Put in the eyes.', 'Stuff firmly.', 'Stuff again.'])], toy)
    expect(lines.map((line) => line.startsWith('!'))).toEqual([false, false, true, false, true, false])
    expect(lines[2]).toMatch(/under three/)
    expect(lines[4]).toMatch(/filling/)
  })

  test('none where nothing is said of the hazard, or the thing is for nobody who is in danger', () => {
    expect(said([part('Head', ['Sc around.'])], toy)).toEqual(['Sc around.'])
    expect(said([part('Head', ['Put in the eyes.'])], { ...toy, madeFor: 'garment' })).toEqual(['Put in the eyes.'])
  })
})
