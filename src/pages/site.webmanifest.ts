import type { APIRoute } from 'astro'
import { address } from '../components/address.ts'
import { booklets } from '../components/published.ts'
import { publisherOf } from '../components/shelf-line.ts'

/** Lets a phone put the shelf among its own programs. Colours as the pages have them. */
export const GET: APIRoute = async () => Response.json({
  name: publisherOf(await booklets()),
  short_name: publisherOf(await booklets()),
  start_url: address(''),
  scope: address(''),
  display: 'minimal-ui',
  background_color: '#fbfcfb',
  theme_color: '#0b4a5e',
  icons: [{ src: address('icon.svg'), sizes: 'any', type: 'image/svg+xml' }],
})
