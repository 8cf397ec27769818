import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { SenseFacts } from './sense-facts.ts'

const entry = /^(?:[*_]{0,2})([A-Za-z][A-Za-z\d. -]{0,9}?)(?:\(s\))?(?:[*_]{0,2})\s*(?:[:=–—]|-\s|\|)\s*\S/

/** An entry of the pattern's own list of abbreviations that no row and no note uses. The list that is printed is made from the rows and has only what they use. */
export function abbreviationNotUsed({ rows, prose }: SenseFacts): readonly Diagnostic[] {
  const list = prose.filter(({ kind, under }) => kind === 'body' && /^abbreviations?\b/i.test(under ?? ''))
  const words = [...rows, ...prose.filter((passage) => !list.includes(passage))].map(({ text }) => text).join('\n')
  return list.flatMap((passage) => passage.text.split('\n').flatMap((line, index, lines): readonly Diagnostic[] => {
    const abbr = entry.exec(line.trim())?.[1]?.trim()
    if (abbr === undefined || abbr.split(' ').length > 2 || new RegExp(String.raw`(?<![\p{L}])\d*${abbr.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}(?:s|es)?(?![\p{L}])`, 'iu').test(words)) return []
    const before = lines.slice(0, index).reduce((sum, { length }) => sum + length + 1, 0)
    const start = passage.start + before + line.indexOf(abbr)
    return [{
      code: 'abbreviation-not-used',
      message: `\`${abbr}\` stands in the list of abbreviations, but no row uses it`,
      primary: { span: { start, end: start + abbr.length }, text: 'in no row' },
      secondary: [],
    }]
  }))
}
