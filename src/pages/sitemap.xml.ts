import type { APIRoute } from 'astro'
import { cards, guideEntries, helpEntries } from '../build/published.ts'
import { address } from '../components/address.ts'
import { termsFolder } from '../components/paper-path.ts'

/** What search engines should know (sitemaps.org, 0.9): patterns in each of their terms, and the guides. The ledger is for editors. */
export const GET: APIRoute = async ({ site, url }) => {
  const at = (path: string) => new URL(address(path), site ?? url).href
  const patterns = (await cards()).flatMap(({ slug, terms, alsoIn, date }) => [terms, ...(alsoIn === undefined ? [] : [alsoIn])].map((one) => ({ path: termsFolder(slug, one, terms), date })))
  const guides = ['', 'reading-rows/', 'glossary/', 'help/', 'help/editors-list/', 'guide/', ...(await guideEntries()).map(({ name }) => `guide/${name}/`), ...(await helpEntries()).map(({ code }) => `help/${code}/`)].map((path) => ({ path, date: '' }))
  const entries = [...guides, ...patterns].map(({ path, date }) => `<url><loc>${at(path)}</loc>${date === '' ? '' : `<lastmod>${date}</lastmod>`}</url>`)
  const xml = `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join('\n')}\n</urlset>\n`
  return new Response(xml, { headers: { 'Content-Type': 'application/xml' } })
}
