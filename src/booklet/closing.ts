import type { Pattern } from '../pattern/pattern.ts'
import type { Block, Booklet, Inline, Section } from './booklet.ts'
import { dateText } from './date-text.ts'
import { capital, sentence } from './figures.ts'
import { typeset } from './typeset.ts'

/** Help, rights and credits, and what each version brought. What the pattern does not say is left out. */
export function closingOf(pattern: Pattern): Pick<Booklet, 'closing' | 'versions'> {
  const { contact, errata, licence, credits = [], designer, date, changes } = pattern
  const year = /^\d{4}/.exec(date ?? '')?.[0]
  const rights = licence === undefined && contact === undefined && errata === undefined && credits.length === 0 ? [] : [
    ...(contact === undefined ? [] : [paragraph('Help: ', contact)]),
    ...(errata === undefined ? [] : [paragraph('Corrections: ', errata)]),
    ...credits.map(({ part, by }) => paragraph(`${capital(part)} by `, typeset(sentence(by)))),
    ...(designer === undefined ? [] : [paragraph('', typeset(`© ${year === undefined ? '' : `${year} `}${sentence(designer)}${licence === undefined ? '' : ` ${sentence(licence)}`}`))]),
  ]
  const closing: readonly Section[] = rights.length === 0 ? [] : [{ heading: 'Help and rights', blocks: rights }]
  const versions: Section | undefined = changes.length < 2 ? undefined : {
    heading: 'Versions', blocks: changes.map(({ version, date: day, what }) => paragraph(`${version}, ${dateText(day)}. `, typeset(sentence(what)))),
  }
  return { ...(closing.length === 0 ? {} : { closing }), ...(versions === undefined ? {} : { versions }) }
}

/** A paragraph that begins with a strong word; an address in it is a link. */
function paragraph(lead: string, text: string): Block {
  const plain = { strong: false, emphasis: false }
  const linked = text.split(/((?:https?:\/\/)[^\s,;]+[^\s,;.]|[\w.+-]+@[\w-]+\.[\w.-]*\w)/).filter((part) => part !== '').map((part): Inline =>
    /^https?:/.test(part) ? { ...plain, text: part, href: part } : /^\S+@\S+\.\w/.test(part) ? { ...plain, text: part, href: `mailto:${part}` } : { ...plain, text: part })
  return { kind: 'paragraph', inlines: [...(lead === '' ? [] : [{ ...plain, text: lead, strong: true }]), ...linked] }
}
