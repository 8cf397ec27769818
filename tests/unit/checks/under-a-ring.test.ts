import { expect, test } from 'vitest'
import { told } from './checked.ts'

// A tub on a ring of 16 chains, with a rim of points: 16 stitches, in every fourth (sc, ch 2, sc) = 20 sc and 4 spaces. Its base is worked on the
// other side of the ring: 16 chains there, whatever chains the rim has. All sums by hand.
const tub = (under: string, total = 16): string => `  - name: Tub
    rows: |
      Rnd 1 (RS): Ch 16, join with sl st in first ch to form a ring, ch 1, sc in each ch around, join with sl st in first sc. (16)
      Rnds 2-4: Ch 1, sc in each st around, join with sl st in first sc. (16)
      Rnd 5: Ch 1, *sc in next 3 sts, (sc, ch 2, sc) in next st; rep from * around, join with sl st in first sc. Fasten off. (20 sc, 4 ch-2 sps)
  - name: Base
    on: Tub
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in the underside of first ch, ch 1, ${under}, join with sl st in first sc. (${total})
      Rnd 2: Ch 1, [sc in next 2 sts, sc2tog] 4 times, join with sl st in first sc. Fasten off. (12)`

test.each(['sc in the underside of each of the 16 ch', 'sc in the underside of each ch around', 'sc in the underside of same ch, sc in the underside of each of next 15 ch'])('%s', (words) => expect(told(tub(words))).toEqual([]))
test('one too many is told', () => expect(told(tub('sc in the underside of each of the 17 ch', 17))[0]).toMatch(/^row-overruns: round 1/))
