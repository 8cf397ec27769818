import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'

/** What the row begins with. */
const begins = /^(?:skip|sk|miss|join|rejoin|attach|leave|leaving|start|starting|beg|beginning|count)$/

/** `with RS facing sk 8 sc`, `RS of the front facing and leaving next 8 sc unworked`: how the work is held, with no comma before what is done. */
export function parseFacing(reader: Reader): Aside | undefined {
  const { at, start } = reader
  reader.take('with|from?', 'the?')
  if (reader.take('rs|ws') || reader.take('right|wrong', 'side|sides')) {
    if (reader.take('of', 'the?') && takePieceName(reader) === undefined) reader.take('work|piece|front|back|body|fabric|sleeve|strap|first|panel')
    const facing = reader.take('facing', 'you|me|up|outwards?')
    if (facing && begins.test(reader.word(reader.word() === 'and' ? 1 : 0))) return { node: 'aside', start, end: reader.end }
  }
  reader.at = at
  return undefined
}
