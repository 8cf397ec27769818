import { isMainOrContrast } from './parse-yarn.ts'
import type { Reader } from './reader.ts'

/** Takes `ring`, `a magic ring`, `an adjustable loop`, `MR`, `a loop`. */
export function takeRing(reader: Reader): boolean {
  if (isMainOrContrast(reader, reader.peek()?.text ?? '')) return false
  return reader.take('a|an?', 'magic|adjustable|yarn|slip|sliding', 'ring|circle|loop') || reader.take('ring|circle') || reader.take('a|an?', 'mr|ar|mc')
    || reader.take('a', 'ring|circle|loop') || reader.take('center|centre|middle', 'of?', 'the?', 'ring') || reader.take('beginning|beg|starting|start|first|original', 'ring')
}
