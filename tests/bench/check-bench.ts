import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { parseDocument } from 'yaml'
import { checkPattern } from '../../src/pattern/check-pattern.ts'
import { tenKilobytes } from './ten-kilobytes.ts'
import { turnByTurn, type Ratio } from './turn-by-turn.ts'

/**
 * Time to check a file of ten kilobytes against the time that two general parsers take to read it and count nothing: yaml its
 * front-matter and remark-parse the whole file; then the least that any reader of such a file does, each parser its own half.
 */
export function checkBench(turns = 60): readonly Ratio[] {
  const source = tenKilobytes()
  const { diagnostics, pieces } = checkPattern(source)
  if (diagnostics.length > 0) throw new Error(`the bench's own pattern does not come out: ${diagnostics[0]?.message}`)
  const markdown = unified().use(remarkParse).freeze()
  const closing = source.text.indexOf('\n---\n') + 5
  const [front, body] = [source.text.slice(4, closing - 4), source.text.slice(closing)]
  const check = () => checkPattern(source)
  const file = turnByTurn(check, () => [parseDocument(front, { keepSourceTokens: true }), markdown.parse(source.text)], turns)
  const halves = turnByTurn(check, () => [parseDocument(front, { keepSourceTokens: true }), markdown.parse(body)], turns)
  const rows = pieces.reduce((sum, piece) => sum + piece.rows.length, 0)
  const shown = ({ ours, theirs }: typeof file) => `${ours.toFixed(1)} ms against ${theirs.toFixed(1)} ms for ${source.text.length} bytes, ${rows} rows`
  return [
    { name: 'check, time against yaml and remark-parse of the file', ratio: file.ratio, detail: shown(file) },
    { name: 'check, time against yaml and remark-parse, a half each', ratio: halves.ratio, detail: shown(halves) },
  ]
}
