import { describe, expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// Sentences as notes have them, around rows whose counts are plain: 6, 12, 18, 24, 24 for the head, 5, 10 for the ear, which is made
// twice. What each sentence claims was compared with these by hand; no outside source has such a list.

const head = ['Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each st around. (12)', 'Rnd 3: (Sc in next st, 2 sc in next st) 6 times. (18)', 'Rnd 4: (Sc in next 2 sts, 2 sc in next st) 6 times. (24)', 'Rnds 5-9: Sc in each st around. (24)']
const ear = ['Rnd 1: 5 sc in magic ring. (5)', 'Rnd 2: 2 sc in each st around. (10)']

function toy(body: string, remark = ''): readonly string[] {
  const rows = (lines: readonly string[]): string => lines.map((line) => `      ${line}\n`).join('')
  const text = `---\ntitle: Seal Pup\nterms: US\nmaterials:\n  yarns:\n    - { letter: A, weight: 4, fibre: 100% wool, ball: { grams: 50, metres: 100 }, needs: [20 g] }\n    - { letter: B, weight: 4, fibre: 100% wool, ball: { grams: 50, metres: 100 }, needs: [5 g] }\npieces:\n  - name: Head\n    rows: |\n${rows(head.slice(0, 4))}${remark === '' ? '' : `      ${remark}\n`}${rows(head.slice(4))}  - name: Ear\n    make: 2\n    rows: |\n${rows(ear)}---\n\nWith A for the head. With B for the ears.\n\n${body}\n`
  return codesIn(text)
}

function jersey(body: string): readonly string[] {
  return codesIn(`---\ntitle: Deck Jersey\nterms: US\nsizes: [S, M, L]\npieces:\n  - name: Body\n    rows: |\n      Foundation: Ch 31 (37, 43).\n      Row 1: Sc in 2nd ch from hook and in each ch across. (30 (36, 42))\n      Rows 2-10: Ch 1, turn, sc in each st across. (30 (36, 42))\n---\n\n${body}\n`)
}

function codesIn(text: string): readonly string[] {
  return checkPattern({ path: 'pattern.md', text }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')
}

describe('sentences that are true, or that no machine should judge', () => {
  test.each([
    'You should have 18 stitches at the end of Round 3.',
    'At the end of Rnd 4 you have 24 sts.',
    'Round 2 of the ear has 10 stitches.',
    'Round 2 has 10 stitches or 12, by the piece.',
    'Sew the ears on between Rnds 4 and 6, 5 stitches apart.',
    'Sew the ears to Rounds 4, 5 and 6 of the head.',
    'Work Rnds 5-9 without a break.',
    'After Round 4 there are 4 stitches between the markers.',
    'After Round 3, skip 6 stitches and put the eyes in.',
    'For a larger head repeat Round 5 twice more.',
    'Each ear has 10 stitches around its edge and lies over 3 stitches of Round 6.',
    'The last round of the head has 24 stitches.',
    'Halfway, the head has 18 stitches around.',
    'It has 18 stitches around.',
    'The last round of the ear has 10 sc.',
    'In Round 3 there are 6 increases.',
    'Rows 4 cm tall are too tall.',
    'The head is 4 in (10 cm) across, or 12 cm with the ears.',
    'It takes 20 g of A and 5 g of B.',
    'Sew both ears on.',
    'Take 2 strands of A to embroider the mouth, 3 stitches wide.',
    'A child of 3 years may help with Round 1.',
    'Round 12 of the chart is not worked.',
    'Work 2 sc in each st for an even edge.',
    'Work 3 times in each st, if the yarn is thin.',
    'The toy weighs 25 g (0.9 oz).',
    'Every round has 6 stitches more than the one before, up to Round 4.',
    'If you have more than 24 stitches at the end of Round 4, count again.',
    'Six increases, six times over, make 36 of them; there are 18 sts in the third round.',
    '2 × 10 is 20.',
  ])('%s', (sentence) => {
    expect(toy(sentence)).toEqual([])
  })

  test.each([
    'You should have 30 (36, 42) stitches at the end of Row 1.',
    'At the end of Row 10 there are 36 sts in size M.',
    'Sizes S and M end with Row 10.',
    'Size L has 42 stitches.',
    'For size M, chain 37.',
  ])('%s', (sentence) => {
    expect(jersey(sentence)).toEqual([])
  })

  test('a remark between the rows that is true', () => {
    expect(toy('', 'Note: You should now have 24 sts.')).toEqual([])
  })
})

describe('sentences that are not true', () => {
  test.each([
    ['You should have 20 stitches at the end of Round 3.', 'prose-count-mismatch'],
    ['At the end of Rnd 4 you have 23 sts.', 'prose-count-mismatch'],
    ['Round 2 of the ear has 12 stitches.', 'prose-count-mismatch'],
    ['The last round of the head has 22 stitches.', 'prose-count-mismatch'],
    ['The last round of the ear has 12 sc.', 'prose-count-mismatch'],
    ['The head has 28 stitches around.', 'prose-count-mismatch'],
    ['Halfway, the ear has 12 sts around.', 'prose-count-mismatch'],
    ['Sew the ears to the head between Rnds 9 and 10.', 'prose-reference-unknown'],
    ['Repeat Rounds 8 to 12 of the head once more.', 'prose-reference-unknown'],
    ['Round 3 of the ear lies flat.', 'prose-reference-unknown'],
    ['Sew all three ears on.', 'make-mismatch'],
    ['Round 4 of the Muzzle lies flat.', 'prose-name-unknown'],
    ['Round 14 of the Muzzle lies flat.', 'prose-name-unknown'],
    ['It takes 20 g of A and 5 g of C.', 'prose-name-unknown'],
    ['Work 2 scx in each st.', 'prose-name-unknown'],
    ['2 × 10 is 22.', 'sum-wrong'],
    // 50 + 8 = 58, 36 − 6 = 30.
    ['A side has 5 × 10 + 4 × 2 = 60 stitches.', 'sum-wrong'],
    ['A side has 3 × 12 − 6 = 36 stitches.', 'sum-wrong'],
    ['The head is 4 in (12 cm) across.', 'conversion-wrong'],
    ['The head is 10 cm (6 in) across.', 'conversion-wrong'],
    ['The ball holds 110 yds (110 m).', 'conversion-wrong'],
  ])('%s', (sentence, code) => {
    expect(toy(sentence)).toEqual([code])
  })

  test.each([
    ['You should have 30 (36, 44) stitches at the end of Row 1.', 'prose-count-mismatch'],
    ['At the end of Row 10 there are 40 sts.', 'prose-count-mismatch'],
    ['Sizes S and XL end with Row 10.', 'prose-name-unknown'],
  ])('%s', (sentence, code) => {
    expect(jersey(sentence)).toEqual([code])
  })

  test('a remark between the rows that is not true', () => {
    expect(toy('', 'Note: You should now have 26 sts.')).toEqual(['prose-count-mismatch'])
  })
})
