import { expect, test } from 'vitest'
import { helpHtml } from '../../../src/build/help-html.ts'

test('front-matter is not shown, prose is', () => {
  expect(helpHtml('---\ncode: total-mismatch\n---\n\nA *promise*.\n')).toBe('<p>A <em>promise</em>.</p>')
})

test('carets become an underlined stretch of the row above, with the code under it', () => {
  const html = helpHtml('```rows last=20\n2: sc in next 18 sts. (20 sts)\n                      ^^^^^^^^ total-mismatch\n3: sc around. (20)\n```\n')
  expect(html).toContain('<p class="wrong">2: sc in next 18 sts. <mark>(20 sts)</mark></p><p class="verdict">total-mismatch</p>')
  expect(html).toContain('<p>3: sc around. (20)</p>')
  expect(html).not.toContain('^')
})

test('two marks in one row, in one line of carets', () => {
  const html = helpHtml('```rows\n1: abc def\n   ^^^ row-unreadable  \n       ^^^ stitch-unknown\n```\n')
  expect(html).toContain('1: <mark>abc</mark> <mark>def</mark>')
})

test('a report keeps its columns and can be reached with the keyboard', () => {
  const html = helpHtml('```report\nerror[x]: <y>\n  |\n```\n')
  expect(html).toBe('<pre class="wide" tabindex="0" role="region" aria-label="What the report says">error[x]: &#x3C;y>\n  |</pre>')
})

test('a file to type runs over, unless carets stand under its letters', () => {
  expect(helpHtml('```pattern\ntitle: A\n  Row 1: sc\n```\n')).toBe('<pre class="wraps"><span>title: A</span><span>  Row 1: sc</span></pre>')
  expect(helpHtml('```pattern\ntitle: A\n       ^ key-unknown\n```\n')).toContain('<pre class="wide" tabindex="0" role="region" aria-label="A pattern file">title: A\n')
})

test('two tables have two names', () => {
  const html = helpHtml('| a |\n| - |\n| 1 |\n\nAnd\n\n| b |\n| - |\n| 2 |\n')
  expect(html).toContain('aria-label="Table"')
  expect(html).toContain('aria-label="Table 2"')
})

test('no HTML of a help page comes through as HTML', () => {
  expect(helpHtml('<script>alert(1)</script>\n\n`<b>`\n')).not.toMatch(/<script|<b>/)
})
