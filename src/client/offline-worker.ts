import { clientsClaim } from 'workbox-core'
import { cleanupOutdatedCaches, matchPrecache, precacheAndRoute } from 'workbox-precaching'
import { registerRoute, setCatchHandler } from 'workbox-routing'
import { CacheFirst, NetworkFirst } from 'workbox-strategies'

/** What a worker has around it, as far as this one needs it. */
interface WorkerScope extends Pick<Window, 'caches'> {
  readonly skipWaiting: () => Promise<void>
  readonly addEventListener: (type: 'message', listen: (event: MessageEvent & { readonly waitUntil: (until: Promise<unknown>) => void }) => void) => void
  /** What every page needs, written into the worker by the build. */
  readonly shell: readonly { readonly url: string; readonly revision: string | null }[]
  /** Where the site stands: `/`. */
  readonly base: string
}

const scope = globalThis as unknown as WorkerScope
const pages = 'pages'
const parts = 'parts'

void scope.skipWaiting()
clientsClaim()
cleanupOutdatedCaches()
precacheAndRoute([...scope.shell], { directoryIndex: '', cleanURLs: false })

// A page is the newest one while there is a network, and the one that was seen last when there is none or it is slow.
registerRoute(({ request }) => request.mode === 'navigate', new NetworkFirst({ cacheName: pages, networkTimeoutSeconds: 3, matchOptions: { ignoreSearch: true } }))
// Styles, script and fonts have names that change with what is in them. An older page that was kept still finds its own.
registerRoute(({ url }) => url.pathname.startsWith(`${scope.base}_astro/`), new CacheFirst({ cacheName: parts }))

setCatchHandler(async ({ request, url }) => {
  if (request.destination !== 'document') return Response.error()
  return (await matchPrecache(`${url?.pathname ?? ''}index.html`)) ?? (await matchPrecache(`${scope.base}offline/index.html`)) ?? Response.error()
})

// A page that is open says what to keep: itself, and what it is made of.
scope.addEventListener('message', (event) => {
  const { keep, made } = event.data as { readonly keep?: readonly string[]; readonly made?: readonly string[] }
  event.waitUntil(Promise.all([add(pages, keep ?? [], true), add(parts, made ?? [], false)]))
})

/** Puts addresses into a cache. What is there already is fetched again only where it may have changed. */
async function add(name: string, addresses: readonly string[], again: boolean): Promise<void> {
  const cache = await scope.caches.open(name)
  for (const address of addresses) {
    if (!again && (await cache.match(address))) continue
    await cache.add(address).catch(() => undefined)
  }
}
