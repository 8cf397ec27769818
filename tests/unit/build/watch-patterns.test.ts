import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test, vi } from 'vitest'
import { checkBytes } from '../../../src/build/check-bytes.ts'
import { watchPatterns } from '../../../src/build/watch-patterns.ts'

test('what is saved between the first check and the watching is checked as well', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'watch-'))
  const fileOf = (total: number) => ({ path: 'mat.md', bytes: Buffer.from(`---\ntitle: Mat\nterms: US\npieces:\n  - name: Mat\n    rows: |\n      Rnd 1: 6 sc in magic ring. (${total})\n---\n`) })
  let end: (value?: unknown) => void = () => undefined
  let printed = ''
  const last = watchPatterns({
    checked: [checkBytes(fileOf(7))], files: [fileOf(7)], form: 'report', options: {}, check: checkBytes, folders: [folder],
    read: async () => [fileOf(6)],
    print: (text) => void (printed += text),
    until: new Promise((resolve) => (end = resolve)),
  })
  await vi.waitFor(() => expect(printed).toMatch(/^watching[^]*\nmended: error\[total-mismatch\]: round 1 makes 6 stitches, but its total says 7\nmat\.md: 1 piece, 1 row: all add up/))
  end()
  expect((await last)[0]?.diagnostics.filter(({ code }) => code === 'total-mismatch')).toEqual([])
  rmSync(folder, { recursive: true })
})
