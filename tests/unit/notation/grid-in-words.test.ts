import { expect, test } from 'vitest'
import { gridInWords } from '../../../src/notation/grid-in-words.ts'

// Common practice, no source: how designers tell the size of a blanket of motifs.

test.each([
  ['(2 squares wide, 3 squares long)', 2, 3],
  ['four squares across and six squares down', 4, 6],
  ['5 wide by 7 long', 5, 7],
  ['a blanket of 4 by 5 motifs', 4, 5],
  ['3 rows of 4 hexagons', 3, 4],
  ['With RS of the strip of six motifs facing', 1, 6],
])('%s', (words, across, down) => {
  const { across: first, down: second } = gridInWords(words) ?? { across: 1, down: 1 }
  // A strip may be told either way.
  expect([first, second].toSorted()).toEqual([across, down].toSorted())
})

test.each(['With RS facing', 'join yarn in the 3rd square', 'work 2 rows of sc', 'a square 20 cm wide and 30 cm long'])('%s tells of none', (words) => {
  expect(gridInWords(words)).toBeUndefined()
})
