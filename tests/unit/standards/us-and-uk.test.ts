import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { stitches } from '../../../src/stitches/table.ts'
import { stitchNamed, stitchOf, wordFor } from '../../../src/stitches/terms.ts'
import { workRows } from '../../support/work-rows.ts'

// The US/UK table of the Craft Yarn Council (www.YarnStandards.com), as reproduced by webyourself.eu blog 24343, with
// funcrochetdesigns.com and two shops' translation charts, which agree. The made stitches follow from the plain ones.

const pairs: readonly (readonly [us: string, uk: string])[] = [
  ['sc', 'dc'], ['hdc', 'htr'], ['dc', 'tr'], ['tr', 'dtr'], ['dtr', 'trtr'],
  ['sc2tog', 'dc2tog'], ['hdc2tog', 'htr2tog'], ['dc2tog', 'tr2tog'],
  ['FPsc', 'FPdc'], ['BPsc', 'BPdc'], ['FPhdc', 'FPhtr'], ['BPhdc', 'BPhtr'], ['FPdc', 'FPtr'], ['BPdc', 'BPtr'],
]
const ukOf = new Map(pairs)
const usOf = new Map(pairs.map(([us, uk]) => [uk, us] as const))

describe('US and UK words', () => {
  test.each(pairs)('US %s is UK %s', (us, uk) => {
    expect(wordFor(us, 'UK')).toBe(uk)
    expect(wordFor(us, 'US')).toBe(us)
    expect(stitchNamed(uk.toLowerCase(), 'UK')?.us).toBe(us)
    expect(stitchNamed(us.toLowerCase(), 'US')?.us).toBe(us)
  })

  test.each(pairs)('there and back again: %s', (us) => {
    expect(stitchNamed(wordFor(us, 'UK').toLowerCase(), 'UK')?.us).toBe(us)
  })

  // The map loses nothing: every stitch of the table, and those made from it.
  const made = ['dc5tog', 'sc4tog', 'FPdc2tog', '4-dc cl', '5-tr cl', 'ftr']
  test.each([...stitches.keys(), ...made])('%s is itself again after both', (us) => {
    const uk = wordFor(us, 'UK')
    expect(stitchNamed(uk.toLowerCase(), 'UK')?.us).toBe(us)
    expect(stitchOf(us)?.uk).toBe(uk)
  })

  test('one pass only: a second would move every word on', () => {
    expect(wordFor('dc', 'UK')).toBe('tr')
    expect(wordFor(wordFor('dc', 'UK'), 'UK')).toBe('dtr')
  })

  test('the slip stitch is ss', () => {
    expect(wordFor('sl st', 'UK')).toBe('ss')
    expect(stitchNamed('ss', 'UK')?.us).toBe('sl st')
    expect(stitchNamed('sl st', 'UK')?.us).toBe('sl st')
  })

  test.each([['ttr', 'dtr'], ['trip tr', 'dtr']])('UK %s is US %s', (uk, us) => {
    expect(stitchNamed(uk, 'UK')?.us).toBe(us)
  })

  // Turning chains of the same table.
  test.each([['sl st', 0], ['sc', 1], ['hdc', 2], ['dc', 3], ['tr', 4], ['dtr', 5]])('%s is turned with %i chains', (us, chains) => {
    expect(stitchOf(us)?.height).toBe(chains)
  })
})

describe('words that tell US from UK', () => {
  // Derived collision table: these exist in one system only.
  test.each(['sc', 'sc2tog', 'hdc', 'hdc2tog'])('%s is no UK word', (word) => {
    expect(stitchNamed(word, 'UK')).toBeUndefined()
    expect(stitchNamed(word, 'US')?.us).toBe(word)
  })

  test.each(['htr', 'htr2tog', 'ttr', 'qtr'])('%s is no US word', (word) => {
    expect(stitchNamed(word, 'US')).toBeUndefined()
    expect(stitchNamed(word, 'UK')).not.toBeUndefined()
  })

  test.each(['dc', 'tr', 'dtr', 'trtr', 'dc2tog', 'tr2tog', 'fpdc', 'fptr', 'edc'])('%s is in both, one step apart', (word) => {
    const us = stitchNamed(word, 'US')!
    const uk = stitchNamed(word, 'UK')!
    expect(us.us).not.toBe(uk.us)
    expect(us.height).toBeGreaterThan(uk.height)
  })
})

describe('a row in both terms', () => {
  const into = ['in next st', 'in each of next 2 sts']

  test('counts the same, and its kinds are the same US words', () => {
    const plain = pairs.map(([us]) => us).filter((us) => !us.includes('tog') && !us.includes('P'))
    fc.assert(fc.property(fc.array(fc.record({ us: fc.constantFrom(...plain), into: fc.constantFrom(...into) }), { minLength: 1, maxLength: 12 }), (steps) => {
      const over = steps.reduce((sum, step) => sum + (step.into === into[0] ? 1 : 2), 0)
      const textIn = (word: (us: string) => string): string => steps.map((step) => `${word(step.us)} ${step.into}`).join(', ')
      const us = workRows(`Ch ${over + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${over})\nRow 2: Ch 1, turn, ${textIn((word) => word)}. (${over})`)
      const uk = workRows(`Ch ${over + 1}.\nRow 1: Dc in 2nd ch from hook and in each ch to end. (${over})\nRow 2: Ch 1, turn, ${textIn((word) => ukOf.get(word)!)}. (${over})`, 'terms=UK')
      const facts = ({ row }: typeof us): unknown => {
        const { worksOver, makes, leaves, kinds, verdict } = row('Row 2')
        return { worksOver, makes, leaves, kinds, verdict }
      }
      const wanted: Record<string, number> = {}
      for (const step of steps) wanted[step.us] = (wanted[step.us] ?? 0) + (step.into === into[0] ? 1 : 2)
      expect(facts(us)).toEqual({ worksOver: over, makes: over, leaves: 0, kinds: wanted, verdict: 'adds-up' })
      expect(facts(uk)).toEqual(facts(us))
    }), { numRuns: 80 })
  })

  test('the same letters mean another stitch: UK dc2tog is over two dc, which are US sc', () => {
    const { row } = workRows('Ch 7.\nRow 1: 1 dc in 2nd ch from hook and in each ch to end. (6 dc)\nRow 2: 1 ch, turn, dc2tog, 1 dc in each st to end. (5)', 'terms=UK')
    expect(row('Row 2').kinds).toEqual({ sc2tog: 1, sc: 4 })
    expect(usOf.get('dc2tog')).toBe('sc2tog')
  })
})
