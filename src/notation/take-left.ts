import type { Reader } from './reader.ts'

/** How sure it is that stitches are left: `are left unworked`, or `remain`, which may only tell how many there are. */
export type LeftState = 'sure' | 'may-be'

const linking = new Set(['that', 'which', 'are', 'is', 'were', 'was', 'be', 'being', 'stay', 'stays', 'will', 'should', 'have', 'been', 'still', 'now', 'then', 'all', 'yet', 'not', 'never', 'unstitched'])
const remaining = new Set(['left', 'remain', 'remains', 'remaining', 'rem', 'waiting', 'over'])
const free = new Set(['unworked', 'free', 'unused', 'untouched', 'undone', 'unmade', 'behind', 'skipped', 'missed', 'open'])

/** Takes `left unworked`, `are not worked`, `remain and are left unworked`, `that are left stay unworked`, `over`: what is said of stitches that a row leaves. */
export function takeLeft(reader: Reader): LeftState | undefined {
  const { at } = reader
  let [not, state]: [boolean, LeftState | undefined] = [false, undefined]
  for (;;) {
    if (/^(?:not|never)$/.test(reader.word())) not = true
    if (reader.takeOne(linking) || reader.word(-1) === 'left' && reader.take('-', 'over')) continue
    if (reader.takeOne(free) || not && reader.take('worked', 'in|into|on?')) state = 'sure'
    else if (reader.takeOne(remaining)) state ??= reader.word(-1) === 'over' && reader.word(-2) === 'left' ? 'sure' : 'may-be'
    else if (state === undefined || !(reader.word() === 'and' && linking.has(reader.word(1))) || !reader.take('and')) break
  }
  if (state === undefined) reader.at = at
  return state
}

/** Takes `at the end of the row`, `at the far end`, `on the other side`: where on the row they lie. */
export function takeAtEnd(reader: Reader): boolean {
  const { at } = reader
  const end = reader.take('at|on', 'the|this|that?', 'very|far|other|opposite|left|right|second|same|neck|armhole|outer|inner?', '-?', 'hand?', 'end|edge|side')
  if (end) reader.take('of', 'the|this|that?', 'row|piece|edge|side')
  else reader.at = at
  return end || asFarAs(reader)
}

/** `4 hdc are left to the centre back`, `up to the join`: as far as a place that is passed by. */
function asFarAs(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('up?', 'to|until|before', 'the', 'centre|center|middle|join|seam|marker|edge', '-?', 'back|front?')) return true
  reader.at = at
  return false
}
