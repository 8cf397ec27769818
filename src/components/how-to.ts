import type { Booklet, MaterialLine } from '../booklet/booklet.ts'
import { address } from './address.ts'

/** What machines read of a pattern: schema.org's HowTo with supplies, tools, steps and yield; a pattern that is sold is a work without its steps. */
export function howTo(booklet: Booklet, { withRows, site, path }: { readonly withRows: boolean; readonly site: URL; readonly path: string }): object {
  const fact = (label: string) => booklet.facts.find((one) => one.label === label)?.value
  const url = new URL(address(path), site).href
  const about = {
    '@context': 'https://schema.org',
    name: plain(booklet.title),
    ...(booklet.summary ? { description: plain(booklet.summary) } : {}),
    url,
    version: booklet.version,
    datePublished: booklet.date,
    inLanguage: booklet.terms === 'UK' ? 'en-GB' : 'en-US',
    author: { '@type': 'Organization', name: plain(booklet.publisher) },
    isAccessibleForFree: withRows,
    ...(fact('Level') ? { educationalLevel: fact('Level') } : {}),
  }
  if (!withRows) return { '@type': 'CreativeWork', ...about }
  const things = booklet.materials.filter(({ kind }) => kind !== 'total')
  const item = (line: MaterialLine) => ({ name: plain([line.item, line.make].filter(Boolean).join(': ')), ...(line.amount.length > 0 ? { requiredQuantity: plain(line.amount.join('; ')) } : {}) })
  return {
    '@type': 'HowTo',
    ...about,
    ...(fact('Makes') ? { yield: plain(fact('Makes') ?? '') } : {}),
    supply: things.filter(({ kind }) => kind === 'yarn').map((line) => ({ '@type': 'HowToSupply', ...item(line) })),
    tool: things.filter(({ kind }) => kind === 'tool').map((line) => ({ '@type': 'HowToTool', ...item(line) })),
    step: booklet.parts.map(({ name, lines, counting }) => ({
      '@type': 'HowToSection',
      name: plain(name),
      itemListElement: lines.map((line) => {
        const text = plain(line.text.map((run) => run.text).join(''))
        return line.kind === 'row'
          ? { '@type': 'HowToStep', name: `${counting} ${plain(line.label)}`, text, url: `${url}#${line.id}` }
          : { '@type': 'HowToStep', text }
      }),
    })),
  }
}

const plain = (text: string) => text.replaceAll('\u00a0', ' ')
