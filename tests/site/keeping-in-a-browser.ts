import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { servedInABrowser } from '../support/served-in-a-browser.ts'
import { serve } from '../support/static-server.ts'
import type { BuiltSite } from './site.test.ts'

const desk = { viewport: { width: 1280, height: 900 } } as const
const gangplank = '/patterns/gangplank/'

/** Where nothing can be kept, and where there is no network. */
export function keeping(site: () => BuiltSite): void {
  const served = servedInABrowser(() => site().dist)

  const open = (address: string, options: BrowserContextOptions = desk, prepare?: (context: BrowserContext) => Promise<unknown>) => served.open(address, options, prepare)
  const box = (page: Page, name: string) => page.getByRole('checkbox', { name, exact: true })
  const progress = (page: Page) => page.locator('.tape-words').innerText().then((words) => words.split('\n'))

  describe('a device that keeps nothing', () => {
    test('with a full storage the page says so, and goes on', async () => {
      const { context, page } = await open('/404.html', desk)
      await page.evaluate(() => {
        for (let piece = 2 ** 22; piece >= 1; piece = Math.floor(piece / 2)) {
          for (let at = 0; ; at += 1) {
            try {
              localStorage.setItem(`filler-${piece}-${at}`, 'x'.repeat(piece))
            } catch {
              break
            }
          }
        }
      })
      await page.goto(`${served.origin}${gangplank}`)
      expect(await page.locator('.bar .saved').innerText()).toBe('Not saved here: save to a file')
      await box(page, 'Row 1').check()
      await box(page, 'Row 2').check()
      expect(await progress(page)).toContain('Row 3 of 117')
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save to a file' }).click()])
      expect(readFileSync(await download.path(), 'utf8')).toContain('"mat-2"')
      await context.close()
    })

    test('with a closed storage too', async () => {
      const { context, page } = await open(gangplank, desk, (context) => context.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('closed', 'SecurityError') } })
      }))
      await box(page, 'Row 1').check()
      expect(await progress(page)).toContain('Row 2 of 117')
      expect(await page.locator('.bar .saved').innerText()).toBe('Not saved here: save to a file')
      await context.close()
    })
  })

  describe('without a network', () => {
    test('a page that was opened once is there, ticks and all; the shelf is too; another page says why it is not', async () => {
      const mortal = await serve(site().dist)
      const context = await served.browser.newContext(desk)
      const page = await context.newPage()
      await page.goto(`${mortal.origin}${gangplank}`)
      await box(page, 'Row 1').check()
      await page.evaluate(async () => {
        await navigator.serviceWorker.ready
        while ((await (await caches.open('pages')).keys()).length < 2) await new Promise((resolve) => setTimeout(resolve, 50))
      })
      await mortal.stop()
      await page.reload()
      expect(await box(page, 'Row 1').isChecked()).toBe(true)
      await box(page, 'Row 2').check()
      expect(await page.evaluate(() => getComputedStyle(document.body).fontFamily)).toContain('Source Sans 3')
      expect(await page.evaluate(async () => [...await document.fonts.ready].filter(({ status }) => status === 'error').length)).toBe(0)
      await page.goto(`${mortal.origin}${gangplank}uk-terms/`)
      expect(await box(page, 'Row 2').isChecked()).toBe(true)
      await page.goto(`${mortal.origin}/`)
      expect(await page.getByText('You have Gangplank → Quay open at Row 3 of 117.').isVisible()).toBe(true)
      await page.goto(`${mortal.origin}/patterns/float/`)
      expect(await page.locator('h1').innerText()).toBe('No network')
      await context.close()
    })

    test('the pattern as one file opens from a disk, asks nobody, and keeps its ticks', async () => {
      const context = await served.browser.newContext({ ...desk, offline: true })
      const page = await context.newPage()
      const troubles: string[] = []
      page.on('console', (message) => troubles.push(message.text()))
      page.on('pageerror', (error) => troubles.push(String(error)))
      page.on('request', (request) => {
        if (!/^(?:file|data):/.test(request.url())) troubles.push(request.url())
      })
      const file = pathToFileURL(join(site().dist, 'patterns/gangplank/gangplank-1.0.0.html')).href
      await page.goto(file)
      await box(page, 'Row 1').check()
      await page.reload()
      expect(await box(page, 'Row 1').isChecked()).toBe(true)
      expect(await page.evaluate(async () => [...await document.fonts.ready].filter(({ status }) => status === 'loaded').length)).toBeGreaterThan(3)
      expect(troubles).toEqual([])
      await context.close()
    })
  })
}
