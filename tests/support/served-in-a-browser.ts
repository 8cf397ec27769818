import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { startBrowser } from './browser.ts'
import { serve, type StaticServer } from './static-server.ts'

/** A folder that is served, and a browser before it. */
export interface Served {
  readonly browser: Browser
  /** `http://localhost:…`, without a slash at its end. */
  readonly origin: string
  /** A page in a window of its own. The worker for times without a network has tests of its own, and is kept out. */
  open(address: string, options: BrowserContextOptions, prepare?: (context: BrowserContext) => Promise<unknown>): Promise<{ readonly context: BrowserContext; readonly page: Page }>
}

/** Serves a folder and starts a browser for the tests of the suite that it is called in; both end with it. */
export function servedInABrowser(folder: () => string): Served {
  let browser: Browser
  let server: StaticServer
  beforeAll(async () => {
    browser = await startBrowser()
    server = await serve(folder())
  })
  afterAll(async () => {
    await browser?.close()
    await server?.stop()
  })
  return {
    get browser() {
      return browser
    },
    get origin() {
      return server.origin
    },
    async open(address, options, prepare) {
      const context = await browser.newContext({ serviceWorkers: 'block', ...options })
      await prepare?.(context)
      const page = await context.newPage()
      await page.goto(`${server.origin}${address}`)
      return { context, page }
    },
  }
}
