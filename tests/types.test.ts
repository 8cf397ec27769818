import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'

// Beside the other tests, and not before them: the compiler works on one core alone.
test('the compiler finds nothing', async () => {
  const found = await promisify(execFile)('npx', ['tsc', '--noEmit'], { maxBuffer: 10_000_000 }).then(({ stdout }) => stdout, (reason: { stdout: string }) => reason.stdout)
  expect(found).toBe('')
})
