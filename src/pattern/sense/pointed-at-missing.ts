import { visit } from 'unist-util-visit'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { toPublish, type SenseFacts } from './sense-facts.ts'

const pointing = /\b(?:see|as (?:shown )?(?:in|on)|shown (?:in|on)|refer to|follow(?:ing)?|watch|look at|row \d+ of) (?:the |our |this |my )?((?:stitch |symbol |colou?r |filet |video )?(?:charts?|photo(?:graph)?s?|pictures?|figures?|fig\.|videos?|tutorials?|links?))\b(?! on (?:the (?:cover|front|back|site|website|shop)|our|my))/i

/** The text points to a chart, a picture or a link, and the file holds none. What a chart shows is not compared with the rows. */
export function pointedAtMissing(facts: SenseFacts): readonly Diagnostic[] {
  let pictures = 0
  let links = 0
  visit(facts.pattern.body, (node) => {
    if (node.type === 'image' || node.type === 'imageReference') pictures += 1
    if (node.type === 'link' || node.type === 'linkReference') links += 1
  })
  return [...facts.prose, ...(toPublish(facts) ? facts.rows : [])].flatMap((passage) => sentencesOf(passage)).flatMap((sentence): readonly Diagnostic[] => {
    const match = pointing.exec(sentence.text)
    if (!match || denies(sentence.text, match.index) || links > 0 || pictures > 0 && !/video|tutorial|link/i.test(match[1]!)) return []
    return [{
      code: 'pointed-at-missing',
      message: `the text points to \`${match[1]}\`, but the file holds no ${/video|tutorial|link/i.test(match[1]!) ? 'link' : 'picture'}`,
      primary: { span: spanOf(sentence, match), text: 'not in the file' },
      secondary: [],
      ...(/chart/i.test(match[1]!) && { note: 'charts are not read: what a chart says of a row is not compared with it' }),
    }]
  })
}
