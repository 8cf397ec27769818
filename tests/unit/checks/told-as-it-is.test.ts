import { expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { flap, told } from './checked.ts'

// A border that is joined anew is told of from where it is least wrong: a slip of one is told as a slip of one, and not as a border that is
// begun at another edge and fits nowhere. All sums by hand.

function each(slips: readonly (readonly [from: string, to: string, expected: string])[], right: string): void {
  test('it is right', () => expect(told(right)).toEqual([]))
  test.each(slips)('%s → %s', (from, to, expected) => {
    expect(right.split(from)).toHaveLength(2)
    expect(told(right.replace(from, to))).toEqual([expected])
  })
}

// Flap of 14 stitches by 8 rows; its edging is joined at the other end of the last row than where the hook stands: 8 row-ends, 14 chains
// and 8 row-ends with 3 in each of the two corners = 30 + 4 = 34.
each([
  ['(34 sc)', '(33 sc)', 'total-mismatch: row 1 makes 34 stitches, but its total says 33'],
  ['next 12 ch', 'next 11 ch', 'places-left-over: row 1 leaves a stitch of the edge unworked and says nothing of it'],
  ['in each of 8 row-ends to', 'in each of 7 row-ends to', 'row-ends-passed: row 1 goes past 1 row-end and says nothing of it'],
], `${flap} at the top of the left side, ch 1, sc in each of 8 row-ends to the corner, 3 sc in first ch of the underside, sc in each of next 12 ch, 3 sc in last ch, sc in each of last 8 row-ends. Fasten off. (34 sc)`)

// A cover of 20 by 10 with two flaps on its sides: 20 + 4 + (3 + 8 + 3) + 4 + 20 + 4 + 14 + 4 = 84.
each([
  ['(84 sc)', '(86 sc)', 'total-mismatch: round 1 makes 84 stitches, but its total says 86'],
  ['each of 20 foundation', 'each of 19 foundation', 'places-left-over: round 1 leaves a stitch of the edge unworked and says nothing of it'],
], `  - name: Cover
    rows: |
      Foundation: Ch 21.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (20)
      Rows 2-10: Ch 1, turn, sc in each st across. Fasten off after Row 10. (20)
  - name: Left Flap
    on: Cover
    rows: |
      Row 1 (RS): With right side facing, join yarn at top of left side, ch 1, sc in each of 10 row-ends. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off after Row 4. (10)
  - name: Right Flap
    on: Cover
    rows: |
      Row 1 (RS): With right side facing, join yarn at bottom of right side, ch 1, sc in each of 10 row-ends. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off after Row 4. (10)
  - name: Border
    on: Cover
    rows: |
      Rnd 1 (RS): With right side facing, join yarn in stitch at right-hand end of Row 10 of Cover, ch 1, sc in each of 20 sts of Row 10, sc in each of 4 row-ends of Left Flap, 3 sc in first st across end of Left Flap, sc in each of next 8 sts, 3 sc in last st, sc in each of 4 row-ends of Left Flap, sc in underside of each of 20 foundation ch, sc in each of 4 row-ends of Right Flap, 3 sc in first st across end of Right Flap, sc in each of next 8 sts, 3 sc in last st, sc in each of 4 row-ends of Right Flap, join with sl st in first sc. (84 sc)`)

// A square of 6 by 6: 6 + 6 + 6 + 6 places and two more in each of four corners = 32; of the next round four corners again, 32 + 8 = 40.
each([
  ['each of the 4 corners', 'each of the 3 corners', 'places-left-over: round 2 names 3 corners of round 1, but there are 4'],
  ['each of the 4 corners', 'each of the 5 corners', 'row-overruns: round 2 asks for 5 corners here, and only 4 corners are left'],
], `  - name: Square
    rows: |
      Foundation: Ch 7.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (6)
      Rows 2-6: Ch 1, turn, sc in each st across. Fasten off after Row 6. (6)
  - name: Border
    on: Square
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in first st of Row 6, ch 1, 3 sc in same st, sc in next 4 sts, 3 sc in last st, sc in each of 6 row-ends, 3 sc in first ch, sc in next 4 ch, 3 sc in last ch, sc in each of 6 row-ends, join with sl st in first sc. (32)
      Rnd 2: Ch 1, sc in each sc around, working 3 sc in the center sc of each of the 4 corners, join with sl st in first sc. Fasten off. (40)`)

// 20 - 2 = 18, if the words mean two decreases; without them the row has 20.
test('where words cannot be read, what the rest comes to is told with them', () => {
  const text = '---\ntitle: Case\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Case\n    rows: |\n      Row 1: Ch 21, sc in 2nd ch from hook and in each ch across. (20)\n      Row 2: Ch 1, turn, sc in each sc, shaping both ends neatly. (18)\n---\n'
  const [finding] = checkPattern({ path: 'case.md', text }).diagnostics.filter(({ code }) => code === 'row-not-checked')
  expect(finding?.note).toBe('it is to be counted by hand; the next one is counted on what this one says; without these words row 2 makes 20 stitches, but its total says 18')
  expect(finding?.tally?.at(-1)?.soFar).toBe(20)
})

// 20 of 20, whatever the words say of where: the row comes out, and the words are named as passed over.
test.each(['behind Row 6', 'hard by the ends of Rows 6 and 5'])('a row by its number counts nothing: %s', (words) => {
  const text = `---\ntitle: Case\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Case\n    rows: |\n      Row 1: Ch 21, sc in 2nd ch from hook and in each ch across. (20)\n      Rows 2-6: Ch 1, turn, sc in each sc across. (20)\n      Row 7: Ch 1, turn, sc in each of next 20 sc, ${words}. (20)\n---\n`
  expect(checkPattern({ path: 'case.md', text }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')).toEqual(['words-passed-over'])
})

// 12 are left on Row 1; 5 are skipped and 7 are left for 8 stitches. Row 3 is a row of the other shoulder.
test('what an older row held out is told of that row', () => {
  const text = '---\ntitle: Vest\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Vest\n    rows: |\n      Foundation: Ch 21.\n      Row 1: Sc in 2nd ch from hook and in each ch across. (20)\n      Row 2: Ch 1, turn, sc in first 8 sts, leave the rest unworked. (8)\n      Row 3: Ch 1, turn, sc in each st across. (8)\n      SECOND SHOULDER\n      Row 2: Skip 5 sts for the neck, join in next st, ch 1, sc in same st and in next 7 sts. (8)\n---\n'
  expect(checkPattern({ path: 'vest.md', text }).diagnostics.map(({ message }) => message)).toContain('row 2 works over 13 stitches, 1 more than row 1 holds out to it')
})

test('one of a kind is told as one', () => {
  const text = '---\ntitle: Tie\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Band\n    rows: |\n      Foundation: Ch 21.\n      Row 1: Sc in 2nd ch from hook and in each ch across. (20)\n      Row 2: Ch 1, turn, sc in next 10 sts, ch 11, sl st in 2nd ch from hook and in next 9 ch (tie made), sc in next 10 sts. (20 sc, 2 ties)\n---\n'
  expect(checkPattern({ path: 'band.md', text }).diagnostics.map(({ message }) => message)).toContain('row 2 makes 1 tie, but its total says 2')
})
