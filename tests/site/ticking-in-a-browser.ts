import { readFileSync } from 'node:fs'
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { servedInABrowser } from '../support/served-in-a-browser.ts'
import type { BuiltSite } from './site.test.ts'

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const
const desk = { viewport: { width: 1280, height: 900 } } as const
/** A window that lies behind another one paints nothing. */
const inBackground = { polling: 100 } as const
const gangplank = '/patterns/gangplank/'

/** Somebody works a pattern: ticks, leaves, comes back, rips back, takes the progress along. */
export function ticking(site: () => BuiltSite): void {
  const served = servedInABrowser(() => site().dist)

  const open = (address: string, options: BrowserContextOptions = phone, prepare?: (context: BrowserContext) => Promise<unknown>) => served.open(address, options, prepare)
  const box = (page: Page, name: string) => page.getByRole('checkbox', { name, exact: true })
  const bar = (page: Page) => page.getByRole('group', { name: 'Row in hand' })
  const tick = (page: Page) => bar(page).getByRole('button', { name: /^Tick / }).click()
  const progress = (page: Page) => page.locator('.tape-words').innerText().then((words) => words.split('\n'))
  const toRows = (page: Page) => page.locator('.part').first().scrollIntoViewIfNeeded()

  describe('ticks', () => {
    // Rows 1 to 6 of the mat make 24 + 18 + 24 + 3 × 24 = 138 stitches of 24 + 18 + 24 + 114 × 24 = 2,802, added by hand.
    test('stay over a reload, and the page says how far the work is', async () => {
      const { context, page } = await open(gangplank)
      await toRows(page)
      for (let row = 1; row <= 6; row += 1) await tick(page)
      expect(await progress(page)).toEqual(['Row 7 of 117', '138 of 2,802 stitches'])
      await page.reload()
      for (const row of [1, 2, 3]) expect(await box(page, `Row ${row}`).isChecked()).toBe(true)
      expect(await progress(page)).toEqual(['Row 7 of 117', '138 of 2,802 stitches'])
      expect(await page.locator('tr.here .here-head').innerText()).toBe('You are here: Row 7')
      expect(await page.locator('.bar .saved').innerText()).toBe('Saved on this phone')
      await context.close()
    })

    test('are taken back one by one, and in a stretch after ripping back', async () => {
      const { context, page } = await open(gangplank, desk)
      for (const row of [1, 2, 3]) await box(page, `Row ${row}`).check()
      await page.locator('tr.here').getByRole('button', { name: 'Back' }).click()
      expect(await box(page, 'Row 3').isChecked()).toBe(false)
      await page.getByRole('button', { name: 'Show all 114 boxes' }).click()
      await box(page, 'Row 20').check()
      await page.getByRole('button', { name: 'Tick Rows 3 to 19 before it' }).click()
      expect(await progress(page)).toContain('Row 21 of 117')
      await box(page, 'Row 12').uncheck()
      await page.getByRole('button', { name: 'Un-tick Rows 13 to 20 after it' }).click()
      expect(await progress(page)).toContain('Row 12 of 117')
      expect(await box(page, 'Row 11').isChecked()).toBe(true)
      await context.close()
    })

    test('are kept for each copy of a piece; when one is done the next is taken in hand', async () => {
      const { context, page } = await open('/patterns/cleat-pair/')
      await toRows(page)
      expect(await progress(page)).toEqual(['Round 1 of 4, copy 1 of 2', '0 of 60 stitches'])
      for (let row = 1; row <= 4; row += 1) await tick(page)
      expect(await page.getByRole('status').innerText()).toBe('Cleat, copy 1 is done. Next: Cleat, copy 2.')
      expect(await progress(page)).toEqual(['Round 1 of 4, copy 2 of 2', '0 of 60 stitches'])
      expect(await page.locator('#cleat-1 input').isChecked()).toBe(false)
      await page.getByRole('button', { name: 'Copy 1, 4 of 4 done' }).click()
      expect(await box(page, 'Round 1').isChecked()).toBe(true)
      await context.close()
    })

    test('count the repeats within a row, and forget them with the row', async () => {
      const { context, page } = await open('/patterns/cleat-pair/')
      await toRows(page)
      await tick(page)
      await tick(page)
      // Round 3 puts an increase in every second of 12 stitches: six times.
      const repeats = page.getByRole('group', { name: 'Repeats of this row' })
      expect(await repeats.getByRole('button').count()).toBe(6)
      await repeats.getByRole('button', { name: 'Repeat 2 done' }).click()
      expect(await repeats.locator('.repeats-done').innerText()).toBe('Repeats done: 2 of 6')
      await page.reload()
      expect(await repeats.locator('.repeats-done').innerText()).toBe('Repeats done: 2 of 6')
      await toRows(page)
      await tick(page)
      expect(await repeats.locator('.repeats-done').innerText()).toBe('Repeats done: 0 of 6')
      await context.close()
    })

    test('are made and taken back with the keyboard alone, and said to a reader of screens', async () => {
      const { context, page } = await open(gangplank, desk)
      await page.locator('tr.here').getByRole('button', { name: 'Tick Row 1' }).focus()
      await page.keyboard.press('Space')
      await page.keyboard.press('Space')
      expect(await page.getByRole('status').innerText()).toBe('Row 2 ticked. Next: Row 3.')
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Tick Row 3')
      await page.keyboard.press('Backspace')
      expect(await box(page, 'Row 2').isChecked()).toBe(false)
      expect(await box(page, 'Row 1').isChecked()).toBe(true)
      await context.close()
    })

    test('and pencil notes stand in two windows at once', async () => {
      const { context, page } = await open(gangplank, desk)
      const other = await context.newPage()
      await other.goto(`${served.origin}${gangplank}`)
      await box(page, 'Row 1').check()
      await other.waitForFunction(() => document.querySelector<HTMLInputElement>('#mat-1 input')?.checked, undefined, inBackground)
      await box(other, 'Row 2').check()
      await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#mat-2 input')?.checked, undefined, inBackground)
      expect(await box(page, 'Row 1').isChecked()).toBe(true)
      await page.getByLabel('Pencil').fill('went up a hook')
      await page.getByLabel('Pencil').blur()
      await box(page, 'Row 3').check()
      await other.locator('#mat-3 .pencilled').waitFor()
      expect(await other.locator('#mat-3 .pencilled').innerText()).toBe('went up a hook')
      await context.close()
    })

    test('go to a file and come back from it on another device; a file of something else changes nothing', async () => {
      const { context, page } = await open(gangplank, desk)
      await box(page, 'Row 1').check()
      await box(page, 'Row 2').check()
      const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save to a file' }).click()])
      expect(download.suggestedFilename()).toBe('gangplank-progress.json')
      const file = await download.path()
      const kept = readFileSync(file, 'utf8')
      expect(Object.keys((JSON.parse(kept) as { ticks: object }).ticks)).toEqual(['mat-1', 'mat-2'])
      const elsewhere = await open(gangplank, desk)
      const give = (page: Page, name: string, text: string) => page.locator('input[type=file]').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) })
      for (const wrong of ['not a record', '{"ticks":{"mat-1":"x"}}', kept.replace('"gangplank"', '"float"')]) {
        await give(elsewhere.page, 'wrong.json', wrong)
        await elsewhere.page.getByText('nothing was changed').waitFor()
        expect(await box(elsewhere.page, 'Row 1').isChecked()).toBe(false)
        await elsewhere.page.getByRole('button', { name: 'Close' }).last().click()
      }
      await give(elsewhere.page, 'progress.json', kept)
      await elsewhere.page.getByText('Read from the file: 2 ticks.').waitFor()
      expect(await box(elsewhere.page, 'Row 2').isChecked()).toBe(true)
      await elsewhere.context.close()
      await context.close()
    })
  })

  describe('a new version', () => {
    test('keeps the ticks and shows which of the ticked rows reads otherwise', async () => {
      const { context, page } = await open('/patterns/cleat-pair/', desk, (context) => context.route('**/patterns/cleat-pair/', async (route) => {
        // The older version: another number, and other words in Round 3.
        const answer = await route.fetch()
        const html = await answer.text()
        await route.fulfill({ response: answer, body: html.replace('data-version="1.1.0"', 'data-version="1.0.0"').replace(/(id="cleat-3"[^>]*data-digest=")/, '$10ld') })
      }))
      for (const row of [1, 2, 3]) await box(page, `Round ${row}`).check()
      await context.unroute('**/patterns/cleat-pair/')
      await page.reload()
      expect(await page.locator('.correction').allInnerTexts()).toEqual(['Round 3 was corrected in 1.1.0; you had ticked it. Seen'])
      expect(await page.getByRole('status').innerText()).toBe('This is version 1.1.0; you began with 1.0.0. One row that you had ticked was corrected.')
      expect(await box(page, 'Round 3').isChecked()).toBe(true)
      await page.reload()
      await page.getByRole('button', { name: 'Seen' }).click()
      expect(await page.locator('.correction').count()).toBe(0)
      await page.reload()
      expect(await page.locator('.correction').count()).toBe(0)
      expect(await box(page, 'Round 3').isChecked()).toBe(true)
      await context.close()
    })
  })

  describe('choices', () => {
    test('of a size holds for every figure, is kept, and needs no script to be seen', async () => {
      for (const javaScriptEnabled of [true, false]) {
        const { context, page } = await open(gangplank, { ...desk, javaScriptEnabled })
        await page.locator('label:has(#size-1)').click()
        await page.getByText('Only my size').click()
        expect(await page.locator('#mat-2 .count').innerText()).toBe('36')
        expect(await page.locator('#mat-2 .change').innerText()).toBe('−12')
        expect(await page.locator('.materials tbody .amount').first().innerText()).toMatch(/^192\sm/)
        if (javaScriptEnabled) {
          expect(await progress(page)).toEqual(['Row 1 of 117', '0 of 5,604 stitches'])
          await page.reload()
          expect(await page.locator('#mat-2 .count').innerText()).toBe('36')
        }
        await context.close()
      }
    })

    test('of terms changes the words and none of the ticks', async () => {
      const { context, page } = await open(gangplank, desk)
      await box(page, 'Row 1').check()
      await page.getByRole('navigation', { name: 'Terms' }).getByRole('link', { name: 'UK' }).click()
      await page.waitForURL(/uk-terms\/#here$/)
      expect(await page.locator('html').getAttribute('lang')).toBe('en-GB')
      expect(await page.locator('#mat-2 .text').innerText()).toMatch(/dc2tog/)
      expect(await box(page, 'Row 1').isChecked()).toBe(true)
      expect(await page.locator('.correction').count()).toBe(0)
      await context.close()
    })

    test('of the left hand moves boxes and thumb bar over, of large type sets all larger', async () => {
      const { context, page } = await open(gangplank)
      const left = (selector: string) => page.locator(selector).first().evaluate((element) => element.getBoundingClientRect().left)
      expect(await left('#mat-2 .tick')).toBeLessThan(await left('#mat-2 .text'))
      await page.getByRole('button', { name: 'Options' }).click()
      await page.locator('label:has(#hand-left)').click()
      await page.locator('label:has(#type-large)').click()
      await page.keyboard.press('Escape')
      await page.reload()
      expect(await left('#mat-2 .tick')).toBeGreaterThan(await left('#mat-2 .text'))
      expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe('20px')
      await context.close()
    })
  })
}
