import type { APIRoute } from 'astro'
import { publisherName } from '../build/published.ts'
import { address } from '../components/address.ts'

/** Lets a phone put the shelf among its own programs. Colours as the pages have them. */
export const GET: APIRoute = async () => Response.json({
  name: await publisherName(),
  short_name: await publisherName(),
  start_url: address(''),
  scope: address(''),
  display: 'minimal-ui',
  background_color: '#fbfcfb',
  theme_color: '#0b4a5e',
  icons: [{ src: address('icon.svg'), sizes: 'any', type: 'image/svg+xml' }],
})
