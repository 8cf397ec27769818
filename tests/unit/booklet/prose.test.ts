import { describe, expect, test } from 'vitest'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { countReferences, referredCount } from '../../../src/measures/count-references.ts'
import { ball, becket } from './float-by-hand.ts'
import { byHand, plainSpaces, type HandPiece } from './made-by-hand.ts'

const sections = (body: string, pieces: readonly HandPiece[] = [ball, becket], pattern: Parameters<typeof byHand>[1] = {}) => {
  const { before, after } = makeBooklet(byHand(pieces, pattern, body))
  return { before, after }
}

const said = (body: string) => sections(body).before[0]!.blocks.map((block) =>
  (block.kind === 'list' ? block.items.map((item) => item.length) : plainSpaces(block.inlines.map(({ text }) => text).join(''))))

describe('sections', () => {
  const { before, after } = sections('A few words first.\n\n## Notes\n\nWorked in rounds.\n\n## Assembly\n\nSew.\n\n## Care\n\nWash.')

  test('notes come before the parts, finishing and what follows it after', () => {
    expect(before.map(({ heading }) => heading)).toEqual(['About this pattern', 'Notes'])
    expect(after.map(({ heading }) => heading)).toEqual(['Assembly', 'Care'])
  })

  test('prose without headings is about the pattern', () => {
    expect(sections('Only this.').before).toHaveLength(1)
    expect(sections('').before).toEqual([])
  })

  test('a smaller heading is a subheading of its section', () => {
    expect(sections('## Notes\n\n### Colours\n\nTwo.').before[0]!.blocks[0]).toEqual({
      kind: 'subheading', inlines: [{ text: 'Colours', strong: false, emphasis: false }],
    })
  })
})

describe('words and lists', () => {
  test('strong, emphasis and links keep their kind', () => {
    const block = sections('## Notes\n\nRead **all** rows, *twice*, at [the shed](https://example.org/shed).').before[0]!.blocks[0]!
    expect(block).toEqual({
      kind: 'paragraph',
      inlines: [
        { text: 'Read ', strong: false, emphasis: false }, { text: 'all', strong: true, emphasis: false },
        { text: ' rows, ', strong: false, emphasis: false }, { text: 'twice', strong: false, emphasis: true },
        { text: ', at ', strong: false, emphasis: false },
        { text: 'the shed', strong: false, emphasis: false, href: 'https://example.org/shed' }, { text: '.', strong: false, emphasis: false },
      ],
    })
  })

  test('lists keep their order and their nesting', () => {
    const block = sections('## Notes\n\n1. First\n2. Second\n   - a part of it').before[0]!.blocks[0]!
    expect(block).toMatchObject({ kind: 'list', ordered: true, items: [[{ kind: 'paragraph' }], [{ kind: 'paragraph' }, { kind: 'list', ordered: false }]] })
  })

  test('a table reads as a list with the heads of its columns', () => {
    const block = sections('## Notes\n\n| Size | Head |\n| --- | --- |\n| Small | 50 cm |').before[0]!.blocks[0]!
    expect(block.kind === 'list' && block.items[0]![0]).toEqual({
      kind: 'paragraph', inlines: [{ text: 'Size: Small; Head: 50\u00a0cm', strong: false, emphasis: false }],
    })
  })

  test('a colon before a letter is not lost', () => {
    expect(said('## Notes\n\nA ratio of a:b and 1:c holds.')).toEqual(['A ratio of a:b and 1:c holds.'])
  })

  test('lines of the source are no lines of print', () => {
    expect(said('## Notes\n\nOne\nline.')).toEqual(['One line.'])
  })
})

describe('counted numbers in prose', () => {
  // By hand: Round 12 of the ball has 48 stitches, Row 3 of the becket 28; the ball has 24 rounds.
  test('a reference prints the count of the row', () => {
    expect(said('## Notes\n\nThere are :count[The ball row 12] stitches, and :count[becket row 3] in the becket.'))
      .toEqual(['There are 48 stitches, and 28 in the becket.'])
  })

  test('sizes are listed', () => {
    const hem: HandPiece = { name: 'Hem', lines: [{ written: 'Row 1:|Sc across.', numbers: [1], makes: [[1048], [64]] }] }
    const block = sections('## Notes\n\nIt has :count[row 1] sts.', [hem], { sizes: ['S', 'L'] }).before[0]!.blocks[0]!
    expect(block).toMatchObject({ inlines: [{ text: 'It has 1,048\u00a0(64)\u00a0sts.' }] })
  })

  test('a reference that leads nowhere does not pass for a number', () => {
    expect(said('## Notes\n\nThere are :count[Sleeve row 4] sts.')).toEqual(['There are ? sts.'])
  })

  const counted = byHand([ball, becket]).pieces.map(({ piece, rows }) => ({ name: piece.name, rows }))

  test.each([
    ['The ball row 12', [48]], ['ball rnd 24', [6]], ['Ball round 1', [6]], ['Becket last row', [24]], ['ball rounds', [24]], ['becket rows', [4]],
  ])('%s', (reference, counts) => {
    expect(referredCount(reference, counted)).toEqual({ counts })
  })

  test.each([
    ['row 3', 'it names no piece, and the pattern has 2'], ['Sleeve row 3', 'there is no piece named Sleeve'],
    ['ball row 25', 'The ball has no row 25'], ['how many', 'names no row'],
  ])('%s leads nowhere', (reference, reason) => {
    expect(referredCount(reference, counted)).toHaveProperty('reason', expect.stringContaining(reason))
  })

  test('references are found with their places', () => {
    const text = '---\ntitle: :count[not here]\n---\nThere are :count[ball row 12] and :count[ball row 99].'
    const from = text.indexOf('There')
    const found = countReferences(text, from, counted)
    expect(found.map(({ span }) => text.slice(span.start, span.end))).toEqual([':count[ball row 12]', ':count[ball row 99]'])
    expect(found.map(({ is }) => 'counts' in is)).toEqual([true, false])
  })
})
