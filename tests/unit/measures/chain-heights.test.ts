import { describe, expect, test } from 'vitest'
import { firstRowStitches, foundationChain, startChain, turningChain } from '../../../src/measures/chain-heights.ts'

describe('turning chains', () => {
  // Turning-chain tables of handbooks: dummies.com; toruyuri.com gives the same for Japan, kreativehaekelideen.de the chain to start in.
  test.each([['sl st', 0], ['sc', 1], ['hdc', 2], ['dc', 3], ['tr', 4], ['dtr', 5]])('%s turns with %s', (stitch, chains) => {
    expect(turningChain(stitch)).toBe(chains)
  })

  test.each([['sc', 2], ['hdc', 3], ['dc', 4], ['tr', 5]])('%s starts in chain %s from the hook', (stitch, chain) => {
    expect(startChain(stitch)).toBe(chain)
  })

  test('a stitch that handbooks give no height for has none', () => {
    expect(turningChain('bobble of our own')).toBeUndefined()
    expect(startChain('bobble of our own')).toBeUndefined()
  })
})

describe('foundation chains', () => {
  // A Japanese blog's English pattern (note.com, tweed stitch) prints ch 16 and 15 sc.
  test('ch 16 gives 15 sc', () => {
    expect(firstRowStitches(16, { height: 1, counts: false })).toBe(15)
  })

  // Leaflet CAC0129-010202M: half double crochet from the 3rd chain, ch 2 not counted, five sizes.
  test.each([[32, 30], [34, 32], [36, 34], [38, 36], [42, 40]])('ch %s gives %s hdc', (chains, stitches) => {
    expect(firstRowStitches(chains, { height: 2, counts: false })).toBe(stitches)
    expect(foundationChain(stitches, { height: 2, counts: false })).toBe(chains)
  })

  // Arithmetic: the chains that are not turned with, and one stitch more where the turning chain is one.
  test.each([[10, 1, false, 9], [12, 3, true, 10], [12, 3, false, 9], [14, 4, true, 11]])(
    'ch %s, turning with %s, counted %s, gives %s', (chains, height, counts, stitches) => {
      expect(firstRowStitches(chains, { height, counts })).toBe(stitches)
    })

  // toruyuri.com: for 10 stitches 10 + 1 chains in sc; in hdc and dc the turning chain is one of the 10, so 9 chains and the turning chain of 2 or 3.
  test.each([[1, false, 11], [2, true, 11], [3, true, 12]])('10 stitches, turning with %s, counted %s, need ch %s', (height, counts, chains) => {
    expect(foundationChain(10, { height, counts })).toBe(chains)
  })
})
