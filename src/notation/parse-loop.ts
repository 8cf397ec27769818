import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** `in the back loop only of`, `BLO`, `in front lps of`. */
export function takeLoop(reader: Reader, draft: { loop?: 'back' | 'front' | 'third' | 'free' }): void {
  const at = reader.at
  reader.take('the')
  const side = reader.take('blo|bl|tbl|blps') ? 'back' : reader.take('flo|fl|tfl') ? 'front'
    : reader.take('back|rear', 'loop|loops|lp|lps') ? 'back' : reader.take('front', 'loop|loops|lp|lps') ? 'front'
    : reader.take('third|3rd', 'loop|loops|lp|lps') ? 'third' : reader.take('back', 'bump|bumps|hump|humps|bar|bars') ? 'third' : undefined
  if (!side) {
    reader.at = at
    return
  }
  reader.take('only')
  draft.loop = side
}

const lead = 'work|works|working|take|taking|pick|picking|catch|catching|use|using|insert|inserting|go|going|keep|keeping'

/** `in both loops of`, `through both lps`, `under both front and back loops of`: the stitch as it is worked anyway. */
export function takeBothLoops(reader: Reader): boolean {
  return reader.take('both', 'the|of?', 'the?', 'top?', 'loops|lps', 'only?') || reader.take('both', 'the?', 'front|back', 'and|&', 'the?', 'front|back', 'loops|lps|loop|lp', 'only?')
}

/** Takes `working this round in`, `taking up`, `picking up only`, `inserting the hook through`: what stands before a loop that is said for more than one stitch. */
export function takeLoopLead(reader: Reader): void {
  reader.take('always|still?', lead, 'up?', 'this?', 'row|rnd|round?', 'the?', 'hook?', 'only?')
  reader.take('in|into|through|under|to', 'only?')
}

/** Whether words of such a lead, or a loop itself, stand here. */
export const leadsToLoop = new RegExp(`^(?:in|into|through|always|still|${lead}|blo|flo|bl|fl|back|front)$`)

const forTheRow = /^(?:(?:work|tak|pick|catch|us|insert|go|keep)(?:e|ing)? )?(?:up )?(?:this (?:row|rnd|round) )?(?:the hook )?(?:only )?(?:(?:in|into|through|under|to) )?(?:only )?(?:the )?(?:(?<back>blo|bl|(?:back|rear) (?:loops?|lps?))|(?<front>flo|fl|front (?:loops?|lps?))|(?<third>(?:third|3rd) (?:loops?|lps?)))(?: only)?(?: of (?:each|every|all) (?:sts?|stitch|stitches|sc|hdc|dc|tr))?(?: throughout| around| across)?$/

/** `Ch 1, working in back loops only, sc in each st around`: said for the whole row before its first stitch. */
export function loopSaid(items: readonly Instruction[]): 'back' | 'front' | 'third' | undefined {
  const first = items.findIndex(({ node }) => node !== 'aside' && node !== 'chain' && node !== 'turn' && node !== 'start' && node !== 'join')
  const said = items.slice(0, Math.max(0, first)).flatMap((item) => (item.node === 'aside' && item.words !== undefined ? [forTheRow.exec(item.words)?.groups ?? {}] : []))
  if (said.some(({ back }) => back)) return 'back'
  if (said.some(({ front }) => front)) return 'front'
  return said.some(({ third }) => third) ? 'third' : undefined
}
