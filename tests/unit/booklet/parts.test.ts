import { describe, expect, test } from 'vitest'
import type { PartLine, RowLine } from '../../../src/booklet/booklet.ts'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { ball, becket } from './float-by-hand.ts'
import { byHand, plainSpaces, underlinedText, type HandPiece } from './made-by-hand.ts'

const partsOf = (pieces: readonly HandPiece[], pattern: Parameters<typeof byHand>[1] = {}, body = '') => makeBooklet(byHand(pieces, pattern, body)).parts
const rowsOf = (lines: readonly PartLine[]): readonly RowLine[] => lines.filter((line) => line.kind === 'row')
const seen = (line: PartLine): string => plainSpaces(underlinedText(line.text))

describe('a ball in rounds', () => {
  const [part, strip] = partsOf([ball, becket])
  const rows = rowsOf(part!.lines)

  // Texts written out by hand as a maker would read them in a printed book.
  test('each row is a sentence with its repeat underlined from the star to the semicolon', () => {
    expect(rows.slice(0, 4).map(seen)).toEqual([
      'With A, make an adjustable ring; 6 sc in ring.',
      'Inc in each st around.',
      '_*Sc in next st, inc;_ rep from * around.',
      '_*Sc in next 2 sts, inc;_ rep from * around.',
    ])
  })

  test('the written total is not printed again', () => {
    expect(rows.map(seen).join(' ')).not.toMatch(/\(\d+\)/)
  })

  test('what is reckoned stands beside the text', () => {
    const beside = rows.map(({ label, repeats, change, stitches }) => plainSpaces([label, repeats, change, ...stitches].join(' | ')))
    expect(beside).toEqual([
      '1 |  |  | 6', '2 |  | +6 | 12', '3 | 6 × | +6 | 18', '4 | 6 × | +6 | 24', '5 | 6 × | +6 | 30', '6 | 6 × | +6 | 36',
      '7 | 6 × | +6 | 42', '8 | 6 × | +6 | 48', '9–10 |  |  | 48', '11–15 |  |  | 48', '16–17 |  |  | 48', '18 | 6 × | −6 | 42',
      '19 | 6 × | −6 | 36', '20 | 6 × | −6 | 30', '21 | 6 × | −6 | 24', '22 | 6 × | −6 | 18', '23 | 6 × | −6 | 12', '24 |  | −6 | 6',
    ])
  })

  test('a range has a box for each real round', () => {
    expect(rows[9]).toMatchObject({ label: '11–15', boxes: ['11', '12', '13', '14', '15'] })
    expect(rows[2]!.boxes).toEqual(['3'])
    expect(rows.flatMap(({ boxes }) => boxes)).toHaveLength(24)
  })

  test('what is done between rounds stands between them, and at the end', () => {
    const at = part!.lines.findIndex((line) => line.kind === 'instruction')
    expect(part!.lines.slice(at - 1, at + 2).map(seen)).toEqual([
      '_*Sc in next 3 sts, dec;_ rep from * around.', 'Note: stuff firmly now.', '_*Sc in next 2 sts, dec;_ rep from * around.',
    ])
    expect(seen(part!.lines.at(-1)!)).toBe('Fasten off; draw the tail through the last 6 sts and pull the ring shut.')
  })

  // By hand: after Round 8, 216 of 816 stitches; after Round 10, 312.
  test('progress is the stitches worked of all the stitches', () => {
    expect(rows[7]!.progress).toBeCloseTo(216 / 816, 10)
    expect(rows[8]!.progress).toBeCloseTo(312 / 816, 10)
    expect(rows.at(-1)!.progress).toBe(1)
  })

  test('lines have names of their own, without the article', () => {
    expect(rows[8]!.id).toBe('ball-9')
    const all = [...rows, ...rowsOf(strip!.lines)].map(({ id }) => id)
    expect(new Set(all).size).toBe(all.length)
  })

  test('the head says how it is worked', () => {
    expect(part).toMatchObject({ number: 1, name: 'The ball', counting: 'Round', sides: false, line: 'Make 1. In a spiral. US terms.' })
  })
})

describe('a strip in rows', () => {
  const strip = partsOf([ball, becket])[1]!

  test('the foundation chain and its colour stand at the head', () => {
    expect(plainSpaces(strip.line)).toBe('Make 1. In rows, with B. Ch 25. US terms.')
    expect(rowsOf(strip.lines).map(({ label }) => label)).toEqual(['1', '2', '3', '4'])
  })

  test('rows have sides', () => {
    expect(strip).toMatchObject({ counting: 'Row', sides: true })
    expect(rowsOf(strip.lines).map(({ side }) => side)).toEqual(['RS', 'WS', 'RS', 'WS'])
  })

  test('a row that was written over two lines is one line', () => {
    expect(seen(strip.lines[1]!)).toBe('Ch 1, turn, sc in each st across.')
  })

  test('the first row changes nothing, whatever stands below it', () => {
    expect(rowsOf(strip.lines).map(({ change }) => change)).toEqual(['', '', '+4', '−4'])
  })
})

describe('heads of parts', () => {
  const round: HandPiece = {
    name: 'Cover', lines: [{ written: 'Rnd 1:|6 sc in ring, join with sl st in first sc.|(6)', numbers: [1], makes: [[6]] }],
  }
  const spiral: HandPiece = { name: 'Cover', lines: [{ written: 'Rnd 1:|6 sc in ring.|(6)', numbers: [1], makes: [[6]] }] }

  test('joined rounds are told from a spiral', () => {
    expect(partsOf([round])[0]!.line).toBe('Make 1. In joined rounds. US terms.')
    expect(partsOf([spiral])[0]!.line).toBe('Make 1. In a spiral. US terms.')
  })

  test('a join that the notes speak of holds for every round', () => {
    expect(partsOf([spiral], {}, '## Notes\n\nJoin each round with a sl st.')[0]!.line).toBe('Make 1. In joined rounds. US terms.')
    expect(partsOf([spiral], {}, '## Notes\n\nDo not join the rounds; move the marker up.')[0]!.line)
      .toBe('Make 1. In a spiral; move the marker up each round. US terms.')
  })

  test('a yarn that is joined does not close a round', () => {
    const joining = { ...spiral, lines: [{ written: 'Rnd 1:|Join B with sl st in any st, sc in each st around.|(6)', numbers: [1], makes: [[6]] }] }
    expect(partsOf([joining])[0]!.line).toBe('Make 1. In a spiral. US terms.')
  })

  test('rounds that turn say so, and have sides', () => {
    const turned: HandPiece = {
      name: 'Cover',
      lines: [
        { written: 'Rnd 1 (RS):|6 sc in ring, join with sl st in first sc.|(6)', numbers: [1], makes: [[6]], side: 'RS' },
        { written: 'Rnd 2:|Ch 1, turn, sc in each st around, join with sl st in first sc.|(6)', numbers: [2], makes: [[6]], side: 'WS' },
      ],
    }
    expect(partsOf([turned])[0]).toMatchObject({ line: 'Make 1. In joined rounds, turned. US terms.', sides: true })
  })

  test('copies and what a piece goes on from', () => {
    expect(partsOf([{ ...round, piece: { make: 2 } }])[0]!.line).toBe('Make 2. In joined rounds. US terms.')
    expect(partsOf([{ ...round, name: 'Edge' }, { ...round, piece: { on: 'Edge' } }])[1]!.line).toBe('Goes on from Edge. In joined rounds. US terms.')
    expect(partsOf([{ ...round, name: 'Edge' }, { ...round, piece: { on: 'Edge', onAlso: ['Disc'] } }])[1]!.line).toBe('Goes on from Edge and Disc. In joined rounds. US terms.')
  })

  test('a yarn is said of the whole piece only when no row brings in another', () => {
    const foundation = { written: 'Foundation:|With A, ch 4.', makes: [[4]], kinds: { ch: 4 }, yarns: ['A'] }
    const two = { written: 'Rnd 1:|Join B with sl st in ring, 6 sc in ring, join with sl st in first sc.|(6)', numbers: [1], makes: [[6]], yarns: ['B'] }
    expect(plainSpaces(partsOf([{ ...round, lines: [foundation, ...round.lines] }])[0]!.line)).toBe('Make 1. In joined rounds, with A. Ch 4. US terms.')
    expect(plainSpaces(partsOf([{ ...round, lines: [foundation, two] }])[0]!.line)).toBe('Make 1. In joined rounds. With A, ch 4. US terms.')
  })

  test('a long foundation is a line of its own, and a foundation of stitches is a row', () => {
    const long = 'With A, ch 60 and join with sl st in first ch, being careful not to twist the chain.'
    const tube: HandPiece = { ...round, lines: [{ written: `Foundation:|${long}`, makes: [[0]], kinds: {} }, ...round.lines] }
    expect(partsOf([tube])[0]!.line).toBe('Make 1. In joined rounds. US terms.')
    expect(seen(partsOf([tube])[0]!.lines[0]!)).toBe(long)
    const stitched: HandPiece = { name: 'Strip', lines: [{ written: 'Foundation:|Fsc 40.|(40)', makes: [[40]], word: 'row' }] }
    expect(rowsOf(partsOf([stitched])[0]!.lines)[0]).toMatchObject({ label: 'Start', stitches: ['40'], id: 'strip-start' })
  })
})

describe('repeats', () => {
  const one = (written: string, repeats: readonly (readonly [string, ...number[]])[]) =>
    rowsOf(partsOf([{ name: 'Piece', lines: [{ written: `Row 1:|${written}`, numbers: [1], makes: [[30]], repeats }] }])[0]!.lines)[0]!

  test('brackets inside a starred repeat get no line of their own', () => {
    const row = one('*Sc in next 2 sts, [dc in next st, ch 1] twice, sk 1; rep from * 4 more times.', [
      ['*Sc in next 2 sts, [dc in next st, ch 1] twice, sk 1', 5], ['[dc in next st, ch 1', 10],
    ])
    expect(seen(row)).toBe('_*Sc in next 2 sts, [dc in next st, ch 1] twice, sk 1;_ rep from * 4 more times.')
    expect(plainSpaces(row.repeats)).toBe('5 ×')
  })

  test('a bracket that is repeated is underlined with both its brackets', () => {
    const row = one('[sc in next 3 sts, 2 sc in next st] 6 times.', [['[sc in next 3 sts, 2 sc in next st', 6]])
    expect(seen(row)).toBe('_[Sc in next 3 sts, 2 sc in next st]_ 6 times.')
  })

  test('two repeats side by side have both their numbers', () => {
    const row = one('(sc, inc) x 3, 6 sc, (sc, inc) x 2', [['(sc, inc', 3], ['(sc, inc) x 2', 2]])
    expect(plainSpaces(row.repeats)).toBe('3 ×, 2 ×')
    expect(seen(row)).toContain('× 3, 6 sc, ')
  })

  test('stars used as brackets are underlined with both stars', () => {
    expect(seen(one('*2 sc, inc* 6 times', [['*2 sc, inc', 6]]))).toBe('_*2 sc, inc*_ 6 times.')
  })

  test('a repeat that goes round a cycle of rows counts the cycles', () => {
    const numbers = [5, 6, 7, 8, 9, 10, 11, 12]
    const cloth: HandPiece = { name: 'Cloth', lines: [{ written: 'Rows 5-12:|Rep Rows 3 and 4.|(48)', numbers, makes: [numbers.map(() => 48)] }] }
    const row = rowsOf(partsOf([cloth])[0]!.lines)[0]!
    expect(row).toMatchObject({ label: '5–12', boxes: ['5', '6', '7', '8', '9', '10', '11', '12'], stitches: ['48'] })
    expect(plainSpaces(row.repeats)).toBe('4 ×')
    expect(seen(row)).toBe('Rep Rows 3 and 4.')
  })
})

describe('sizes', () => {
  const runner: HandPiece = {
    name: 'The runner',
    lines: [
      { written: 'Foundation:|Ch 49 (65).', makes: [[0], [0]], kinds: {} },
      { written: 'Row 1 (RS):|Sc in 2nd ch from hook and in each ch across.|(48 (64))', numbers: [1], makes: [[48], [64]], side: 'RS' },
      {
        written: 'Row 2:|Ch 1, turn, *sc in next 6 sts, dc in next 2 sts; rep from * across.|(48 (64))',
        numbers: [2], makes: [[48], [64]], side: 'WS', repeats: [['*sc in next 6 sts, dc in next 2 sts', 6, 8]],
      },
      { written: 'Row 3:|Ch 1, turn, [sc in next 6 (4) sts, inc] 6 (8) times.|(54 (72))', numbers: [3], makes: [[54], [72]], side: 'RS' },
      { written: 'Row 4:|Ch 1, turn, sc2tog, sc to last 2 sts, sc2tog.|(52 (70))', numbers: [4], makes: [[52], [70]], side: 'WS' },
    ],
  }
  const part = partsOf([runner], { sizes: ['Narrow', 'Wide'] })[0]!
  const rows = rowsOf(part.lines)

  test('counts stand one to a size, in the order of the sizes', () => {
    expect(rows.map(({ stitches }) => stitches)).toEqual([['48', '64'], ['48', '64'], ['54', '72'], ['52', '70']])
  })

  test('repeats and changes of the sizes stand in brackets where they differ', () => {
    expect(rows.map(({ repeats }) => plainSpaces(repeats))).toEqual(['', '6 (8) ×', '', ''])
    expect(rows.map(({ change }) => plainSpaces(change))).toEqual(['', '', '+6 (8)', '−2'])
  })

  test('the head keeps the sizes of the foundation', () => {
    expect(plainSpaces(part.line)).toBe('Make 1. In rows. Ch 49 (65). US terms.')
  })

  const cap: HandPiece = {
    name: 'Cap',
    lines: [
      { written: 'Rnd 1:|8 hdc in ring.|(8)', numbers: [1], makes: [[8], [8], [8]], kinds: { hdc: 8 } },
      { written: 'Sizes M and L only: Rnd 2:|2 hdc in each st around.|(– (16, 16))', numbers: [2], makes: [[], [16], [16]], kinds: { hdc: 16 } },
      { written: 'Next 2 (2, 3) rnds:|Hdc in each st around.|(8 (16, 16))', numbers: [2], word: 'round', makes: [[8, 8], [16, 16], [16, 16, 16]], kinds: { hdc: 16 } },
    ],
  }
  const capRows = rowsOf(partsOf([cap], { sizes: ['S', 'M', 'L'] })[0]!.lines)

  test('a line that a size leaves out says whose it is, and has a dash for the others', () => {
    expect(capRows[1]).toMatchObject({ label: '2', stitches: ['–', '16', '16'] })
    expect(seen(capRows[1]!)).toBe('Sizes M and L only: 2 hdc in each st around.')
    expect(plainSpaces(capRows[1]!.change)).toBe('– (+8, 8)')
  })

  test('rows without numbers keep their first word, and how many there are', () => {
    expect(capRows[2]).toMatchObject({ label: 'Next', stitches: ['8', '16', '16'] })
    expect(seen(capRows[2]!)).toBe('2 (2, 3) rnds: Hdc in each st around.')
  })

  test('a first line without a label is called as it was worked', () => {
    const base: HandPiece = { name: 'Edge', lines: [{ written: '|12 sc.', makes: [[12]], name: 'Base' }] }
    expect(rowsOf(partsOf([base])[0]!.lines)[0]!.label).toBe('Base')
  })

  test('a box that only the larger sizes need says so', () => {
    expect(capRows[2]!.boxes.map(plainSpaces)).toEqual(['2', '3', '4 L'])
  })
})

describe('counts that are made of more than stitches', () => {
  test('chain spaces are said, and kinds where the designer counts them', () => {
    const block: HandPiece = {
      name: 'Block',
      lines: [{
        written: 'Rnd 3:|Work the round.|(16 dc, 8 sc, 4 ch-2 sps)', numbers: [3], makes: [[24]], kinds: { dc: 16, sc: 8 },
        saysKinds: { dc: 16, sc: 8 }, spaces: { 'ch-2': 4 },
      }],
    }
    expect(plainSpaces(rowsOf(partsOf([block])[0]!.lines)[0]!.spaces)).toBe('16 dc, 8 sc, 4 ch-2 sps')
    // US dc is UK tr, US sc is UK dc.
    expect(plainSpaces(rowsOf(partsOf([block], { terms: 'UK' })[0]!.lines)[0]!.spaces)).toBe('16 tr, 8 dc, 4 ch-2 sps')
  })

  test('one kind alone is the number in the Stitches column', () => {
    const plain: HandPiece = { name: 'Block', lines: [{ written: 'Row 1:|16 sc.|(16 sc)', numbers: [1], makes: [[16]], saysKinds: { sc: 16 } }] }
    expect(rowsOf(partsOf([plain])[0]!.lines)[0]!.spaces).toBe('')
  })

  test('a count that cannot be told is a question mark, and the designer’s own count stays in the text', () => {
    const taste: HandPiece = {
      name: 'Sleeve',
      lines: [
        { written: 'Row 1:|Sc in each st across.|(40)', numbers: [1], makes: [[40]] },
        { written: 'Row 2:|Work in patt as set, incorporating new sts.|(44)', numbers: [2], makes: [[44]], verdict: 'cannot-tell' },
        { written: 'Row 3:|Sc in each st across.|(44)', numbers: [3], makes: [[44]] },
      ],
    }
    const rows = rowsOf(partsOf([taste])[0]!.lines)
    expect(rows[1]).toMatchObject({ stitches: ['?'], change: '', checkpoint: 'Count not checked.' })
    expect(seen(rows[1]!)).toBe('Work in patt as set, incorporating new sts. (44)')
    expect(rows[2]!.change).toBe('')
  })
})
