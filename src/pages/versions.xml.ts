import rss from '@astrojs/rss'
import type { APIRoute } from 'astro'
import { cards } from '../build/published.ts'
import { address } from '../components/address.ts'
import { patternFolder } from '../components/paper-path.ts'
import { publisherOf } from '../components/shelf-line.ts'

/** A feed of new patterns and new versions, newest first. */
export const GET: APIRoute = async (context) => {
  const all = await cards()
  const publisher = publisherOf(all)
  const items = all.flatMap(({ slug, title, listing }) => listing.changes.map(({ version, date, what }) => ({
    title: `${title} ${version}`, description: what, pubDate: new Date(`${date}T12:00:00Z`), link: `${address(patternFolder(slug))}#version-${version}`,
  })))
  return rss({
    title: `${publisher}: new versions`, description: `New patterns and new versions by ${publisher}.`, site: context.site ?? context.url, trailingSlash: false,
    items: items.sort((a, b) => b.pubDate.getTime() - a.pubDate.getTime() || a.title.localeCompare(b.title)).slice(0, 100),
  })
}
