import { describe, expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// Sentences as designers write them, all of them true of the two patterns here or nobody's business: none may be told. Common
// practice, no source; what each says of the rows was compared by hand.

const toy = `---
title: Seal Pup
summary: A small seal to hold
designer: Saltmarsh Yarnworks
version: 1.0.0
date: 2026-11-02
terms: US
level: easy
made-for: toy
gauge: { stitch: sc, sts: 16, rows: 16, over: 10 cm, hook: 4 mm, after: as worked }
conventions: { turning-chains: { sc: not counted } }
materials:
  yarns:
    - { letter: A, weight: 4, fibre: 100% wool, ball: { grams: 50, metres: 100 }, needs: [15 g] }
    - { letter: B, weight: 4, fibre: 100% wool, ball: { grams: 50, metres: 100 }, needs: [5 g] }
  hooks: [4 mm]
  notions:
    - { what: fibrefill, amount: [30 g], for: head }
    - { what: stitch marker, count: 1, for: first stitch of the round }
    - { what: safety eyes, count: 2, for: face }
    - { what: yarn needle, count: 1, for: ends }
pieces:
  - name: Head
    rows: |
      Rnd 1: With A, 6 sc in magic ring. (6)
      Rnd 2: 2 sc in each st around. (12)
      Rnd 3: (Sc in next st, 2 sc in next st) 6 times. (18)
      Rnd 4: (Sc in next 2 sts, 2 sc in next st) 6 times. (24)
      Rnds 5-9: Sc in each st around. (24)
      Fasten off.
  - name: Ear
    make: 2
    rows: |
      Rnd 1: With B, 5 sc in magic ring. (5)
      Rnd 2: 2 sc in each st around. (10)
      Fasten off.
finished:
  - { what: diameter, of: Head, is: [5 cm] }
changes:
  - { version: 1.0.0, date: 2026-11-02, what: First release. }
---

Worked in a spiral. Embroider the eyes for little ones. Weave in the ends.

`

const jersey = `---
title: Quay Jersey
summary: A plain jersey from the neck down
designer: Saltmarsh Yarnworks
version: 1.0.0
date: 2026-11-02
terms: US
level: intermediate
made-for: garment
sizes: [S, M, L, XL]
gauge: { stitch: dc, sts: 16, rows: 10, over: 10 cm, hook: 5 mm, after: washed }
conventions: { turning-chains: { dc: counted } }
materials:
  yarns:
    - { weight: 3, fibre: 100% wool, ball: { grams: 50, metres: 110 }, needs: [90 g, 100 g, 110 g, 120 g] }
  hooks: [5 mm, 4 mm]
  notions:
    - { what: buttons, count: [5, 5, 6, 6], for: band }
    - { what: stitch marker, count: 4, for: raglan }
pieces:
  - name: Yoke
    rows: |
      Foundation: Ch 82 (90, 98, 106).
      Row 1 (WS): Dc in 4th ch from hook (skipped ch count as dc) and in each ch across. (80 (88, 96, 104))
      Rows 2-10: Ch 3 (counts as dc), turn, dc in next st and in each st across. (80 (88, 96, 104))
  - name: Body
    on: Yoke
    rows: |
      Rows 1-20: Ch 3 (counts as dc), turn, dc in next st and in each st across. (80 (88, 96, 104))
      Fasten off.
  - name: Sleeve
    make: 2
    rows: |
      Foundation: Ch 32 (34, 36, 38).
      Row 1: Dc in 4th ch from hook (skipped ch count as dc) and in each ch across. (30 (32, 34, 36))
      Rows 2-12: Ch 3 (counts as dc), turn, dc in next st and in each st across. (30 (32, 34, 36))
      Fasten off.
finished:
  - { what: width, of: Body, is: [50 cm, 55 cm, 60 cm, 65 cm] }
changes:
  - { version: 1.0.0, date: 2026-11-02, what: First release. }
---

Worked from the top down. With the 4 mm hook for the edge. Weave in the ends.

`

function told(front: string, body: string): readonly string[] {
  return checkPattern({ path: 'pattern.md', text: `${front}${body}\n` }).diagnostics.map(({ code, message }) => `${code}: ${message}`)
}

describe('a toy', () => {
  test.each([
    'You need 1 ball of A and 1 ball of B.',
    'A side has 5 × 11 + 4 × 2 = 63 stitches between its corners, 3 × 12 − 6 = 30 at the top.',
    'All round that is 2 × (3 + 63 + 3 + 50) = 238, or (2 + 3) × 4 + 5 = 25.',
    'One ball of A makes three heads.',
    'Worked in worsted (aran) yarn.',
    'Any DK or worsted yarn will do.',
    'A bulky yarn gives a larger seal.',
    'Round 3 has 12 stitches of A.',
    'Round 4 has 12 sts in B and the others in A.',
    'It is 20 cm wide, 30 cm long (8 in, 12 in).',
    'A rug of 9 in x 12 in (23 cm x 30 cm).',
    'It measures 23 cm x 30 cm (9 in x 12 in).',
    'The grey ties in with the neckline.',
    'Gauge matters here: 16 sts and 16 rows to 4 in (10 cm) in sc, after washing.',
    'You should have 24 stitches after Round 4; if you have 25, you have worked one increase too many.',
    'At the end of every round count your stitches: there should be 6 more than in the round before.',
    'Place a marker in the 12th stitch of Round 5.',
    'Attach the eyes between Rounds 5 and 6, with 4 stitches between them.',
    'Sew each ear to Rounds 2-4, about 6 stitches apart.',
    'The ears sit 8 stitches apart on Round 3.',
    'Work the first 3 rounds in A, then change to B.',
    'For a longer body, repeat Round 6 as often as you like; each round adds 0.6 cm.',
    'Weave in all ends; trim them to 1 cm (½ in).',
    'Leave a 30 cm (12 in) tail for sewing.',
    'Leave a tail of 12 in/30 cm.',
    'The finished toy is about 15 cm (6 in) tall.',
    'Use a 3.5 mm hook (E-4) if you crochet loosely.',
    'If your gauge is tighter, go up to a 4.5 mm hook.',
    'Hook: 4 mm (US G-6).',
    'Skip the first stitch of Round 3 if you have too many.',
    'Note: In Round 3 slip stitch over the first 8 stitches, chain 1, and work to the end of the round.',
    'Remember: leave the last 6 stitches of Round 4 unworked.',
    'Tip: Work 8 stitches of Round 3 loosely.',
    'Round 1 is worked into the ring, Rounds 2-4 increase, Rounds 5-9 are plain.',
    'Rounds 5, 6, 7, 8 and 9 are alike.',
    'Stuff the head firmly before you close it.',
    'Do not stuff the ears.',
    'The pattern uses US terms: a US sc is a UK dc.',
    'In UK terms, sc is called double crochet (dc).',
    'Make the head first, then both ears.',
    'Repeat the instructions of Round 2 for the second ear.',
    'You will have used about 15 g of A by Round 9.',
    'Version 1.0.1 corrects Round 3, which said 20.',
    'Row gauge is less important than stitch gauge.',
    'Rows 5 and 6 of the colour chart are worked in B.',
    'Sizes: one size.',
    'Copyright 2026 Saltmarsh Yarnworks. For personal use; you may sell up to 20 finished toys.',
    'Tested by twelve makers.',
    'If you have any questions, write to help@saltmarsh.example.',
    'Wash by hand at 30 °C.',
    'Thank you to everybody who tested this pattern!',
    'Work inc as 2 sc in one stitch, dec as sc2tog.',
    'Inv dec: insert hook in front loops of next 2 sts, yo, draw through 2 loops, yo, draw through 2 loops.',
    '*Note:* the right side faces out.',
    '**Tip:** count at the end of Round 4 (24 sts).',
    'Rnd 4 ends with 24 sts and the last inc falls on the seam.',
    'End of Round 3: 18 sts.',
    'Round 3 has 18 stitches: 6 increases and 12 plain stitches.',
    'After Round 2 you have 12 stitches, after Round 3 18.',
    'There are 24 stitches all the way from Round 4 to Round 9.',
    'The last round has 24 stitches; gather them with the yarn tail.',
    'Fold the piece in half at stitch 12 of Round 4.',
    'Insert a 12 mm safety eye on either side of Round 6, or embroider the eyes for a small child.',
    'Join A with a slip stitch in the first stitch of Round 9.',
    'Cut two circles of felt, 2 cm across.',
    'Take care not to twist the chain.',
    'This makes a good gift: 3 of them take 75 g.',
    'The two sides of the ear are not alike.',
    'Two strands of yarn held together give a larger toy.',
    'It takes 1 ball of 50 g (100 m), and about 2 hours.',
    'It takes 1 ball of 50 g, 110 yds (100 m).',
    'The yarn: 100 m (109 yds) per 50 g (1.76 oz).',
    '100 g = 3.5 oz; 50 g = 1.75 oz.',
    'The toy stands 6" (15 cm) high.',
    'The chain should be 10 cm or 4 in long.',
    'Each square measures 4 x 4 in (10 x 10 cm).',
    'It is 10 x 12 cm (4 x 4¾ in).',
    'From 8 to 10 in (20 to 25 cm) round the belly.',
    '2.5 cm / 1 in seam.',
    'Work even for 2 in (5 cm) more, ending with a WS row.',
    'A multiple of 6 makes a flat disc.',
    'Turn the work. In the next round, work 24 sc around.',
    'You need 4 ears for a litter of two pups.',
    'Sew on both eyes with 2 strands.',
    'Three ears would look odd.',
    'Round 24 does not exist, so stop at Round 9.',
    'Start at Row 1 again for the second ear.',
    'See the photo on the cover.',
    'See page 4 for the stitch key.',
    'As in Round 3, begin each increase with the marked stitch.',
    'In each of the 6 segments of Round 4 there are 4 stitches.',
    'Rnds 5-9 (5 rnds): sc in each st around (24 sts).',
    'ch 1 does not count as a stitch.',
    'Do not turn at the end of the round.',
    'Half of the 24 stitches of Round 9 lie in front.',
    'The size is easy to change with another yarn and hook: worsted yarn and a 5 mm hook give 20 cm.',
    'Any aran-weight yarn (UK) or worsted (US) will do.',
    'Hang it with a cord of 20 ch.',
    'Read your counts: Round 2, 12; Round 3, 18; Round 4, 24.',
    '1 x 24 = 24 stitches, 2 x 12 = 24 as well.',
    'Count 6 × 4 = 24.',
  ])('%s', (sentence) => {
    expect(told(toy, sentence)).toEqual([])
  })
})

describe('a jersey in four sizes', () => {
  test.each([
    'Sizes S (M, L, XL) fit a chest of 86 (96, 106, 116) cm.',
    'To fit chest: 34 (38, 42, 46) in / 86 (96, 106, 116) cm.',
    'Finished chest 36 (40, 44, 48) in, 91.5 (101.5, 112, 122) cm, with 5 cm of ease.',
    'Instructions are for size S; M, L and XL are in brackets.',
    'After Row 10 you have 80 (88, 96, 104) sts.',
    'You should have 80 stitches at the end of Row 10 in size S, 88 in M.',
    'At the end of the yoke there are 80 (88, 96, 104) stitches in all.',
    'The Body begins with Row 1 of the Body and ends with Row 20.',
    'Work Rows 1-10 of the Yoke, then Rows 1-20 of the Body.',
    'The Sleeves are worked as the Body, from Row 1.',
    'Each Sleeve has 30 (32, 34, 36) stitches.',
    'Sew the side seams from the hem to the underarm, 20 rows.',
    'Block all pieces to the measurements in the schematic.',
    'With RS facing, pick up and sc 40 stitches along each front.',
    'Change to the smaller hook for the ribbing.',
    'The ribbing is worked with a 4 mm hook.',
    'Work in rows, turning at the end of each.',
    'Sew buttons opposite the buttonholes.',
    'Sew on 5 buttons.',
    'Sew on 5 (5, 6, 6) buttons opposite the buttonholes.',
    'Place 4 markers at the raglan lines.',
    'One stitch marker in each of the 4 raglan corners.',
    'Take measurements 2 cm from the edge.',
    'For a longer body, work 10 more rows; each row adds 0.8 cm and takes 4 g.',
    'You need 2 (2, 3, 3) balls.',
    'Yarn: 6 (7, 8, 9) balls of 50 g / 110 m.',
    'The yarn is DK (UK) or light worsted.',
    'Size M has 88 stitches and size L 96.',
    'In size XL only, work one row more.',
    'Sizes S to L are alike up to Row 6.',
    'The chain of 81 is for size S.',
    'Ch 3 at the start of a row counts as a dc.',
    'Row 1 is a wrong side row.',
    'The pattern is written for right-handers.',
    'If you are between sizes, choose the larger one.',
    'Gauge: 16 sts and 10 rows = 10 cm / 4 in in dc, 5 mm hook.',
    'Adjust the hook to get gauge.',
    'Fasten off. Weave in the ends.',
    'The body is worked in one piece to the armholes, 45 (46, 47, 48) cm.',
    'See the notes for the raglan increases.',
    'Read all the rows for your size before you begin.',
    'Increase 8 stitches in every second row, 5 times: 40 stitches more.',
    'There are 8 increases in each increase row, so the yoke grows from 40 to 80 stitches in 5 rows.',
    'Rows 2, 4, 6, 8 and 10 are increase rows.',
    'Rep Rows 3 and 4 until the piece measures 30 cm.',
    'On the last row, do not turn.',
    'The last row has 80 (88, 96, 104) stitches.',
    'There should be 20 stitches on each sleeve, 20 on each front and 40 on the back.',
    'Front and back have 40 stitches each.',
    'A US size 8 hook is 5 mm.',
    'Use US H-8 (5 mm).',
  ])('%s', (sentence) => {
    expect(told(jersey, sentence)).toEqual([])
  })
})

describe('the guard can fail', () => {
  test('both patterns tell of a sentence that is not true', () => {
    expect(told(toy, 'Round 3 has 20 stitches.')).toHaveLength(1)
    expect(told(jersey, 'Row 21 begins the collar.')).toHaveLength(1)
  })
})
